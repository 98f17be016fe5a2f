// One keystroke in a full record, to findings, hints and agreement, against what the `yaml` package needs to parse that text; then
// floor by floor. Times are medians, each beside a bare parse measured in the same moment; no text comes twice, so nothing is cached.
import { parseDocument as bareParse } from 'yaml';
import { analyse } from '../../src/analysis/analyse.ts';
import { createCache } from '../../src/analysis/cache.ts';
import { findingsOf } from '../../src/analysis/findings.ts';
import { nextEntriesOf } from '../../src/analysis/next-entries.ts';
import { lineTableOf, positionAt } from '../../src/analysis/positions.ts';
import type { Analysis, FileState } from '../../src/analysis/result.ts';
import { situationOf } from '../../src/analysis/situation.ts';
import { findCompletions, findDiagnostics, findHints } from '../../src/language/index.ts';
import { accountOf } from '../../src/model/account.ts';
import { settleAgreement } from '../../src/model/agreement.ts';
import { derive } from '../../src/model/derive.ts';
import type { SwingRecord } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { fullRecord } from './full-record.ts';

const uri = 'file:///practice/bench.swing.yaml';
const [warmUp, rounds] = [60, 150];
const everything = { start: { line: 0, character: 0 }, end: { line: 10_000, character: 0 } };
const hints = {
  units: true,
  faceToPath: true,
  lowPoint: true,
  flight: true,
  shots: true,
  windows: true,
  faults: true,
};

const { record, student } = fullRecord();
const files = new Map<string, FileState>([
  ['file:///practice/bench.student.yaml', { kind: 'text', text: student }],
]);
const snapshot = { file: (at: string): FileState => files.get(at) ?? { kind: 'missing' } };
const cache = createCache();

/** Where somebody types, and a place of the text whose number grows by a little each time. */
const keystrokes = [
  ['ball speed, which all of the flight hangs on', /(\bball_speed: )([\d.]+)/, 0.013],
  ['club speed, which all of the delivery hangs on', /(\bclub_speed: )([\d.]+)/, 0.013],
  [
    'a knee at the takeaway, which only the balance there hangs on',
    /(takeaway:[\s\S]*?lead_knee: )([\d.]+)/,
    0.013,
  ],
  ['an angle at the top that nothing hangs on', /(top:[\s\S]*?trail_elbow_bend: )([\d.]+)/, 0.05],
] as const;

let typed = 0;
function next(place: RegExp, by: number): string {
  typed += 1;
  const text = record.replace(
    place,
    (_, key: string, number: string) => key + (Number(number) + typed * by).toFixed(4),
  );
  if (text === record) throw new Error(`nothing to type at ${String(place)}`);
  return text;
}

function keystroke(text: string): void {
  files.set(uri, { kind: 'text', text });
  const analysis = analyse(uri, snapshot, cache);
  findDiagnostics(analysis, (code) => code);
  findHints(analysis, everything, hints);
}

/** Processor time, ms, of all threads, so that what else the machine does counts for nothing. */
function timed(run: () => unknown): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1]!;

console.log(`a record of ${record.split('\n').length} lines with ${record.match(/: \S/g)!.length} values`);
for (const [words, place, by] of keystrokes) {
  const [ours, bare]: [number[], number[]] = [[], []];
  for (let round = -warmUp; round < rounds; round++) {
    const text = next(place, by);
    const times = [timed(() => keystroke(text)), timed(() => bareParse(text))] as const;
    if (round < 0) continue;
    ours.push(times[0]);
    bare.push(times[1]);
  }
  const ratio = (median(ours) / median(bare)).toFixed(2);
  console.log(
    `${median(ours).toFixed(1)} ms, ${ratio} × the bare parse of ${median(bare).toFixed(1)} ms: ${words}`,
  );
}

/** What one floor after the other adds, for a text that differs in the ball's speed. */
const shares = new Map<string, number[]>();
function measured<T>(floor: string, run: () => T): T {
  let result: T | undefined;
  const time = timed(() => (result = run()));
  shares.set(floor, [...(shares.get(floor) ?? []), time]);
  return result as T;
}

files.set(uri, { kind: 'text', text: record });
const { subject, ...rest } = analyse(uri, snapshot);
for (let round = 0; round < warmUp + rounds; round++) {
  if (round === warmUp) shares.clear();
  const text = next(...([keystrokes[0][1], keystrokes[0][2]] as const));
  measured('bare parse by the yaml package', () => bareParse(text));
  const document = measured('record: parse, read, check the shape', () => parseDocument('swing', text));
  const situation = measured('analysis: weigh the readings', () =>
    situationOf(document as SwingRecord, subject.student?.document, subject.club, undefined, {
      registry: subject.registry,
      model: undefined,
    }),
  );
  measured('model: derive', () => derive(situation));
  measured('model: agree', () => settleAgreement(situation));
  const account = measured('model: say what each number came from, the fit being known', () =>
    accountOf(situation),
  );
  const { derivation, agreement } = account;
  const anew = { ...subject, document, derivation, agreement };
  const findings = measured('checks', () => findingsOf(anew));
  measured('language: diagnostics and hints', () => {
    const analysis = { ...rest, document, subject: anew, derivation, agreement, account, findings };
    findDiagnostics(analysis, (code) => code);
    findHints(analysis, everything, hints);
  });
}
for (const [floor, times] of shares) console.log(`${median(times).toFixed(2).padStart(6)} ms  ${floor}`);

/** What an editor asks for beside: proposals in a line that is being typed, and what to measure next, each for a text never seen before. */
const asked: readonly (readonly [words: string, run: (analysis: Analysis) => unknown])[] = [
  [
    'one list of proposals, the analysis being there',
    (analysis) =>
      findCompletions(analysis, {
        position: positionAt(
          lineTableOf(analysis.document.text),
          analysis.document.text.indexOf('ball_speed'),
        ),
        files: [...files.keys()],
        earlier: undefined,
        usual: new Map(),
        today: '2026-05-14',
        snippets: true,
        asksAgain: true,
      }),
  ],
  ['what to measure next, the analysis being there', (analysis) => nextEntriesOf(analysis, [])],
];
for (const [words, run] of asked) {
  const [ours, bare]: [number[], number[]] = [[], []];
  for (let round = -10; round < 30; round++) {
    const text = next(keystrokes[0][1], keystrokes[0][2]);
    files.set(uri, { kind: 'text', text });
    const analysis = analyse(uri, snapshot, cache);
    findDiagnostics(analysis, (code) => code);
    const times = [timed(() => run(analysis)), timed(() => bareParse(text))] as const;
    if (round < 0) continue;
    ours.push(times[0]);
    bare.push(times[1]);
  }
  const ratio = (median(ours) / median(bare)).toFixed(2);
  console.log(
    `${median(ours).toFixed(1)} ms, ${ratio} × the bare parse of ${median(bare).toFixed(1)} ms: ${words}`,
  );
}
