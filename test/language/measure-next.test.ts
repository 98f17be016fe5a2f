// What a lesson still has to measure, as an editor shows it: a branch of the outline, and keys in the right places.
import assert from 'node:assert/strict';
import { nextEntriesOf } from '../../src/analysis/next-entries.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import { addKeysToMeasureNext, nextSymbols } from '../../src/language/measure-next.ts';
import type { Lesson } from '../../src/analysis/lessons.ts';
import { analysed, everywhere, student } from './analysed.ts';

const files = { 'mira.student.yaml': student };
const header = 'swing: 1\nstudent: mira.student.yaml\ndate: 2026-06-01\nclub: hybrid\n';
const read = (text: string, name = 'b.swing.yaml'): Analysis => analysed(text, { name, files });

const planned = read(
  `swing: 1
student: mira.student.yaml
date: 2026-05-14
club: hybrid
checkpoints:
  address: { lead_pressure: 52 % by pressure mat }
flight: { carry: 150 m by rangefinder }
plan:
  - change: checkpoints.address.stance_width
    to: 41 cm
    proof: checkpoints.lead_arm_parallel_down.lead_pressure > 65 %
`,
  'a.swing.yaml',
);
const lessons: readonly Lesson[] = [
  { uri: planned.uri, date: '2026-05-14', club: 'hybrid', analysis: planned },
];

/** The text with the keys added, and the ids that were added. */
function added(text: string): { readonly text: string; readonly title: string } {
  const analysis = read(text);
  const [rewrite] = addKeysToMeasureNext(analysis, nextEntriesOf(analysis, lessons), everywhere);
  assert.ok(rewrite !== undefined, 'nothing is offered');
  const done = [...rewrite.edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((so, { span, text: put }) => so.slice(0, span.start) + put + so.slice(span.end), text);
  return { text: done, title: rewrite.title };
}

describe('what to measure next', () => {
  it('is what the plan asks for, before all others', () => {
    const entries = nextEntriesOf(read(header), lessons);
    assert.deepEqual(
      entries.slice(0, 2).map(({ quantity, reason }) => [quantity.id, reason]),
      [
        ['checkpoints.address.stance_width', 'proof'],
        ['checkpoints.lead_arm_parallel_down.lead_pressure', 'proof'],
      ],
    );
  });

  it('asks no more for a proof that is measured', () => {
    const text = `${header}checkpoints:\n  address: { stance_width: 44 cm }\n`;
    const ids = nextEntriesOf(read(text), lessons).map(({ quantity }) => quantity.id);
    assert.ok(!ids.includes('checkpoints.address.stance_width'));
    assert.equal(ids[0], 'checkpoints.lead_arm_parallel_down.lead_pressure');
  });

  it('takes the method that measured the like of it last, at its uncertainty', () => {
    const entries = nextEntriesOf(read(header), lessons);
    const pressure = entries.find(({ quantity }) => quantity.key === 'lead_pressure')!;
    assert.equal(pressure.method, 'pressure mat');
    assert.equal(pressure.u, pressure.quantity.uncertainty.by['pressure mat']);
  });

  it('takes the uncertainty without an instrument where nobody knows of one', () => {
    const [entry] = nextEntriesOf(read(header), lessons);
    assert.equal(entry!.method, undefined);
    assert.equal(entry!.u, entry!.quantity.uncertainty.otherwise);
  });

  it('is for the goals where there are some', () => {
    const text = `${header}goals:\n  - { carry: 160 m }\n`;
    const [entry] = nextEntriesOf(read(text), []);
    assert.deepEqual(
      entry!.narrowings.map(({ quantity }) => quantity.id),
      ['flight.carry'],
    );
  });

  it('is a branch of the outline that leads to where each goes', () => {
    const text = `${header}checkpoints:\n  address:\n    head: 4 cm behind\n`;
    const analysis = read(text);
    const [branch, ...others] = nextSymbols(analysis, nextEntriesOf(analysis, lessons));
    assert.deepEqual(others, []);
    assert.equal(branch!.name, 'To measure next');
    const [width, pressure] = branch!.children;
    assert.deepEqual(
      [width!.name, pressure!.name],
      ['address.stance_width', 'lead_arm_parallel_down.lead_pressure'],
    );
    assert.deepEqual(width!.selectionRange.start, { line: 5, character: 9 });
    assert.deepEqual(pressure!.selectionRange.start, { line: 4, character: 11 });
    assert.match(width!.detail, /the plan asks for it/);
    assert.match(pressure!.detail, /^by pressure mat, ± .* %/);
  });

  it('is nothing in other files, and in those that cannot be read', () => {
    for (const [name, text] of [
      ['mira.student.yaml', student],
      ['x.swing.yaml', '{'],
      ['y.swing.yaml', ''],
    ] as const)
      assert.doesNotThrow(() =>
        nextSymbols(analysed(text, { name }), nextEntriesOf(analysed(text, { name }), [])),
      );
    assert.deepEqual(nextEntriesOf(analysed(student, { name: 'mira.student.yaml' }), lessons), []);
  });
});

describe('the keys to measure next', () => {
  it('go into blocks, each at the end of its own, with the comments where they were', () => {
    const { text, title } = added(`${header}checkpoints: # seen
  address: # at rest
    head: 4 cm behind # by eye
delivery:
  face: 1 deg right # square
`);
    assert.ok(
      text.startsWith(`${header}checkpoints: # seen
  address: # at rest
    head: 4 cm behind # by eye
    stance_width:
  lead_arm_parallel_down:
    lead_pressure:
delivery:
  face: 1 deg right # square
`),
      text,
    );
    assert.match(
      title,
      /^Add the keys to measure next: `address\.stance_width`, `lead_arm_parallel_down\.lead_pressure`/,
    );
  });

  it('go between braces where the record is written so', () => {
    const { text } = added(`${header}checkpoints: { address: { head: 4 cm behind } }\n`);
    assert.match(
      text,
      /^checkpoints: \{ address: \{ head: 4 cm behind, stance_width: \}, lead_arm_parallel_down: \{ lead_pressure: \} \}$/m,
    );
  });

  it('bring the parts of a record that are not there yet, before its goals', () => {
    const { text } = added(`${header}goals:\n  - { carry: 160 m }\n`);
    assert.match(text, /club: hybrid\ncheckpoints:\n {2}address:\n {4}stance_width:\n/);
    assert.match(text, /\nflight:\n {2}carry:\ngoals:\n/);
  });

  it('keep line ends as they are', () => {
    const { text } = added(`${header}checkpoints:\n  address:\n`.replaceAll('\n', '\r\n'));
    assert.doesNotMatch(text, /[^\r]\n/);
  });

  it('raise nothing but that there is no value yet, and are not offered again', () => {
    const analysis = read(added(`${header}checkpoints:\n`).text);
    const loud = analysis.findings.filter(({ severity }) => severity === 'error' || severity === 'warning');
    assert.deepEqual(loud, []);
    assert.deepEqual(addKeysToMeasureNext(analysis, nextEntriesOf(analysis, lessons), everywhere), []);
  });

  it('are offered on the keys of the parts only', () => {
    const analysis = read(`${header}checkpoints:\n`);
    const entries = nextEntriesOf(analysis, lessons);
    const at = (line: number) => ({ start: { line, character: 2 }, end: { line, character: 2 } });
    assert.equal(addKeysToMeasureNext(analysis, entries, at(4)).length, 1);
    assert.equal(addKeysToMeasureNext(analysis, entries, at(1)).length, 0);
  });
});
