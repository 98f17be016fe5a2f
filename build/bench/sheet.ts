// How long a sheet takes once the analysis is there, for a record with every quantity in it: words and pictures, as text, and what the page compares.
import { createCache } from '../../src/analysis/cache.ts';
import { analyse } from '../../src/analysis/analyse.ts';
import type { Analysis, FileState } from '../../src/analysis/result.ts';
import { computedFlightOf } from '../../src/analysis/flight-path.ts';
import { flightWindowsOf } from '../../src/analysis/windows.ts';
import { sheetOf, whatIf } from '../../src/language/index.ts';
import type { Sheet } from '../../src/language/sheet.ts';
import { fullRecord } from './full-record.ts';

const { record, student } = fullRecord();
const uri = 'file:///practice/bench.swing.yaml';
const cache = createCache();

/** The record with another ball speed each time, as if somebody typed. */
function analysed(turn: number): Analysis {
  const text = record.replace(/\bball_speed: [\d.]+/, (words) => `${words}${turn + 1}`);
  const files = new Map<string, FileState>([
    [uri, { kind: 'text', text }],
    ['file:///practice/bench.student.yaml', { kind: 'text', text: student }],
  ]);
  return analyse(uri, { file: (at) => files.get(at) ?? { kind: 'missing' } }, cache);
}

const pictures = ({ sections, checkpoints }: Sheet): readonly string[] =>
  [...sections, ...checkpoints].flatMap((one) => one.pictures.map(({ svg }) => svg));

const parts: Record<string, number[]> = {
  windows: [],
  flight: [],
  sheet: [],
  json: [],
  compare: [],
  whatIf: [],
};
let last: Sheet | undefined;
let [size, changed] = [0, 0];
for (let turn = 0; turn < 60; turn++) {
  const analysis = analysed(turn);
  const asking = performance.now();
  flightWindowsOf(analysis);
  const wondering = performance.now();
  computedFlightOf(analysis);
  const start = performance.now();
  const sheet = sheetOf(analysis)!;
  const drawn = performance.now();
  const text = JSON.stringify(sheet);
  const read = JSON.parse(text) as Sheet;
  const sent = performance.now();
  const before = last === undefined ? [] : pictures(last);
  changed = pictures(read).filter((svg, i) => svg !== before[i]).length;
  const compared = performance.now();
  whatIf(analysis, [{ id: 'delivery.path', value: (turn % 9) - 4 }]);
  const asked = performance.now();
  [last, size] = [read, text.length];
  if (turn < 20) continue;
  parts['windows']!.push(wondering - asking);
  parts['flight']!.push(start - wondering);
  parts['sheet']!.push(drawn - start);
  parts['json']!.push(sent - drawn);
  parts['compare']!.push(compared - sent);
  parts['whatIf']!.push(asked - compared);
}

const middle = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[times.length >> 1]!;
const [windows, flight, sheet, json, compare, first] = [
  'windows',
  'flight',
  'sheet',
  'json',
  'compare',
  'whatIf',
].map((part) => middle(parts[part]!));
console.log(
  `sheet of a full record, ${Object.keys(last!.things).length} values, ${pictures(last!).length} pictures (${changed} changed), ${(size / 1000).toFixed(0)} kB\n` +
    `  ${(sheet! + json! + compare!).toFixed(1)} ms after the analysis: ${sheet!.toFixed(1)} ms words and pictures, ${json!.toFixed(1)} ms there and back as JSON, ${compare!.toFixed(2)} ms to compare; beside that ${windows!.toFixed(1)} ms for the windows of the flight and ${flight!.toFixed(1)} ms for what the others say of it, which hints ask for too and which are kept; what if, the first time in a record: ${first!.toFixed(1)} ms`,
);
