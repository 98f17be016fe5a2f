// What a comparison costs beside the analyses of the two records: full ones, and the lessons of the samples. Bundled, in one process.
import { readFileSync } from 'node:fs';
import { analyse } from '../../src/analysis/analyse.ts';
import { compareRecords, isRecord, type RecordAnalysis } from '../../src/analysis/compare.ts';
import { comparedRecord, comparisonPage } from '../../src/draw/comparison.tsx';
import type { FileState } from '../../src/analysis/result.ts';
import { fullRecord } from './full-record.ts';

const practice = 'file:///practice/';
const rounds = 40;

function analysedRecord(uri: string, text: string, student?: string): RecordAnalysis {
  const file = (at: string): FileState => {
    if (at === uri) return { kind: 'text', text };
    if (student !== undefined)
      return at.endsWith('.student.yaml') ? { kind: 'text', text: student } : { kind: 'missing' };
    try {
      return { kind: 'text', text: readFileSync(at.replace(practice, 'samples/'), 'utf8') };
    } catch {
      return { kind: 'missing' };
    }
  };
  const analysis = analyse(uri, { file });
  if (!isRecord(analysis)) throw new Error(`no record ${uri}`);
  return analysis;
}

/** Every third number another one: as much as can change between two lessons. */
function changed(text: string): string {
  let at = 0;
  return text.replace(/: (\d+(?:\.\d+)?)(?= )/g, (all, number: string) =>
    (at += 1) % 3 === 0 ? `: ${(Number(number) * 1.04).toFixed(2)}` : all,
  );
}

function timed(act: () => unknown): number {
  const start = performance.now();
  act();
  return performance.now() - start;
}

function told(words: string, first: RecordAnalysis, second: RecordAnalysis): void {
  const times = Array.from({ length: rounds + 1 }, () => {
    const start = performance.now();
    compareRecords(first, second);
    return performance.now() - start;
  });
  const [cold, ...warm] = times;
  const { entries, computed, findings } = compareRecords(first, second);
  const middle = warm.sort((a, b) => a - b)[rounds >> 1]!;
  const page = (): string =>
    comparisonPage(comparedRecord('a', first), comparedRecord('b', second), compareRecords(first, second));
  const [coldPage, warmPage] = [timed(page), timed(page)];
  console.log(
    `${words}, its page: first ${coldPage.toFixed(0)} ms with its figures fitted, then ${warmPage.toFixed(0)} ms (${Math.round(page().length / 1024)} kB)`,
  );
  console.log(
    `${words}: first ${cold!.toFixed(1)} ms, then ${middle.toFixed(1)} ms (${entries.length} entries, ${computed.length} computed numbers, ${findings.length} findings differ)`,
  );
}

const { record, student } = fullRecord();
const uri = `${practice}full.swing.yaml`;
const lines = record.split('\n').length;
console.log('A comparison beyond its two analyses');
told(
  `  two records of ${lines} lines`,
  analysedRecord(uri, record, student),
  analysedRecord(uri, changed(record), student),
);
const [first, second] = ['03', '24'].map((day) => {
  const path = `runa/2026-08-${day}-six-iron.swing.yaml`;
  return analysedRecord(practice + path, readFileSync(`samples/${path}`, 'utf8'));
});
told('  two lessons of the samples', first!, second!);
