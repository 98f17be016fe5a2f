// A comparison tells whatever voids a sign-off, and what no comparison tells voids none.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { compareRecords, isRecord, type RecordAnalysis } from '../../src/analysis/compare.ts';
import { summaryOf } from '../../src/analysis/comparison-words.ts';
import { diffInShort, diffLines } from '../../src/analysis/diff-words.ts';
import { fingerprintOf } from '../../src/record/fingerprint.ts';
import { analysed, student } from '../language/analysed.ts';

const files = { 'mira.student.yaml': student };

function record(text: string): RecordAnalysis {
  const analysis = analysed(text, { files });
  assert.ok(isRecord(analysis));
  return analysis;
}

/** Each can be left out, or written in one of its ways: those of one list say the same. */
const parts: readonly (readonly (readonly string[])[])[] = [
  [['club: hybrid\n'], ['club: iron\n']],
  [['language: de\n'], ['language: en\n'], ['language:\n', '']],
  [['notes: late\n', 'notes:   "late"\n'], ['notes: |\n  tired\n  today\n'], ['notes:\n', '']],
  [
    ['delivery: { face: 0.6 deg right by radar }\n', 'delivery: { face: 0.6 by radar }\n'],
    ['delivery: { face: 0.6 deg right by camera }\n'],
    ['delivery: { face: odd }\n'],
    ['delivery: { face: even }\n'],
    ['delivery: { face: [0.6 deg right by radar, 2 deg left by eye] }\n'],
    ['delivery: { face: [0.6 deg right by radar, 2 deg left by eye], path: ~1 deg left }\n'],
    ['delivery: { face: { value: 0.6 deg right, by: radar, note: held } }\n'],
    ['delivery:\n', 'delivery: {}\n', ''],
  ],
  [['flight: { carry: 120 m }\n', 'flight: { carry: 12000 cm } # paced\n'], ['flight: { carry: 130 m }\n']],
  [
    ['faults: [{ fault: a, at: top }]\n', 'faults:\n  - { at: top, fault: a }\n'],
    ['faults: [{ fault: a, at: impact }]\n'],
    ['faults: [{ fault: a, at: top, note: seldom }]\n'],
    ['faults: [a]\n'],
    ['faults: []\n', 'faults:\n', ''],
  ],
  [['misses: [slice]\n'], ['misses: [{ miss: slice, note: wet }]\n'], ['misses: []\n', 'misses:\n', '']],
  [['goals: [{ carry: 130 m }]\n'], ['goals: [{ carry: 131 m, note: soon }]\n'], ['goals:\n', '']],
  [
    ['plan: [{ change: delivery.face, to: 0 deg }]\n'],
    ['plan: [{ change: delivery.face, to: 1 deg left, note: slowly }]\n'],
    ['plan: [{ change: delivery.face, to: 1 deg left, feel: light }]\n'],
    ['plan:\n', 'plan: []\n'],
  ],
];

const written = fc.tuple(
  ...parts.map((ways) =>
    fc.constantFrom(...ways.flatMap((same, meaning) => same.map((text) => ({ text, meaning })))),
  ),
);

const textOf = (chosen: readonly { readonly text: string }[]): string =>
  `swing: 1\nstudent: mira.student.yaml\n${chosen.map(({ text }) => text).join('')}`;

describe('what a comparison tells and what voids a sign-off', () => {
  it('tells a miss that is gone from a list once, and a note by what it is about', () => {
    const before = record('swing: 1\nmisses: [heavy, slice]\nfaults: [{ fault: late, note: seldom }]\n');
    const after = record('swing: 1\nmisses: [slice]\nfaults: [{ fault: late, note: often }]\n');
    const comparison = compareRecords(before, after);
    assert.deepEqual(
      comparison.signed.map(({ key }) => key),
      ['faults.late.note'],
    );
    assert.match(summaryOf(comparison).join(' '), /1 miss told otherwise, the note on late differs\./);
  });

  it('is one set, whatever was edited', () => {
    let changed = 0;
    fc.assert(
      fc.property(
        written,
        written,
        fc.array(fc.boolean(), { minLength: parts.length, maxLength: parts.length }),
        (a, b, kept) => {
          const second = b.map((one, i) => (kept[i] ? a[i]! : one));
          const [before, after] = [textOf(a), textOf(second)];
          const isMeant = a.some(({ meaning }, i) => meaning !== second[i]!.meaning);
          const isVoid = fingerprintOf(before) !== fingerprintOf(after);
          assert.equal(isVoid, isMeant);
          const comparison = compareRecords(record(before), record(after));
          // A finding on how something is written is told too, and is no value.
          const told = diffLines({ ...comparison, findings: [] });
          assert.equal(told.length > 0, isVoid, told.map(({ words }) => words).join('; '));
          if (isVoid) assert.ok(!comparison.isSame && diffInShort(comparison) !== 'no value changed');
          changed += isVoid ? 1 : 0;
        },
      ),
      { numRuns: 150 },
    );
    assert.ok(changed > 30);
  });

  const told = (before: string, after: string): readonly string[] =>
    diffLines({ ...compareRecords(record(before), record(after)), findings: [] }).map(
      ({ sign, words }) => `${sign} ${words}`,
    );
  const head = 'swing: 1\nstudent: mira.student.yaml\nclub: hybrid\n';

  it('tells notes, languages, unread entries and the note on a fault', () => {
    assert.deepEqual(told(`${head}notes: late\n`, `${head}notes: tired\nlanguage: de\n`), [
      '~ notes: late → tired',
      '+ language: de',
    ]);
    assert.deepEqual(told(`${head}delivery: { face: odd }\n`, `${head}delivery: { face: even }\n`), [
      '~ delivery.face: odd → even',
    ]);
    assert.deepEqual(
      told(`${head}faults: [{ fault: a }]\n`, `${head}faults: [{ fault: a, note: seldom }]\n`),
      ['+ faults.a.note: seldom'],
    );
  });

  it('tells of one more reading no more than there is, and of a goal what it was', () => {
    const [line = ''] = told(
      `${head}delivery: { face: 1 deg right by radar }\n`,
      `${head}delivery: { face: [1 deg right by radar, 1 deg right by radar] }\n`,
    );
    assert.match(line, /; other uncertainty, readings$/);
    assert.deepEqual(told(`${head}goals: [{ carry: 130 m }]\n`, `${head}goals: [{ carry: 135 m }]\n`), [
      '~ goal, carry 124..136 m → carry 129..141 m',
    ]);
  });

  it('says once what the numbers say of a fault before and after it was stated', () => {
    const [line = ''] = told(head, `${head}faults: [{ fault: a }]\n`);
    assert.match(line, /; the numbers say [^→]+$/);
  });
});
