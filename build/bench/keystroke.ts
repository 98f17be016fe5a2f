// One keystroke in a full record, to findings, hints and windows, against what the `yaml` package needs to parse that text.
import { parseDocument } from 'yaml';
import { analyse } from '../../src/analysis/analyse.ts';
import { createCache } from '../../src/analysis/cache.ts';
import type { FileState } from '../../src/analysis/result.ts';
import { findDiagnostics, findHints } from '../../src/language/index.ts';
import { fullRecord } from './full-record.ts';

const uri = 'file:///practice/bench.swing.yaml';
const rounds = 120;
const everything = { start: { line: 0, character: 0 }, end: { line: 10_000, character: 0 } };

const { record, student } = fullRecord();
const files = new Map<string, FileState>([
  ['file:///practice/bench.student.yaml', { kind: 'text', text: student }],
]);
const cache = createCache();
const snapshot = { file: (at: string): FileState => files.get(at) ?? { kind: 'missing' } };

/** Each text differs from the one before in one digit of one value, as when somebody types. */
const texts = Array.from({ length: rounds }, (_, round) =>
  record.replace(/club_speed: [\d.]+/, `club_speed: ${35 + (round % 2)}.${round % 10}`),
);

function keystroke(text: string): number {
  const started = performance.now();
  files.set(uri, { kind: 'text', text });
  const analysis = analyse(uri, snapshot, cache);
  findDiagnostics(analysis, (code) => code);
  findHints(analysis, everything, {
    units: true,
    faceToPath: true,
    lowPoint: true,
    flight: true,
    shots: true,
    windows: true,
    faults: true,
  });
  return performance.now() - started;
}

function bareParse(text: string): number {
  const started = performance.now();
  parseDocument(text);
  return performance.now() - started;
}

const median = (values: number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1]!;

for (const text of texts.slice(0, 40)) {
  keystroke(text);
  bareParse(text);
}
const ours: number[] = [];
const bare: number[] = [];
for (const text of texts) {
  ours.push(keystroke(text));
  bare.push(bareParse(text));
}
const ratio = median(ours) / median(bare);
console.log(
  `keystroke to findings and hints, ${record.split('\n').length} lines: ${median(ours).toFixed(1)} ms; ` +
    `bare parse ${median(bare).toFixed(1)} ms; ratio ${ratio.toFixed(2)} (target: at most 3)`,
);
