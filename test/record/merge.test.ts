// Merging two edits of one file: as a person would, nothing lost, marks only where both changed one thing.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { merge } from '../../src/record/merge.ts';
import { piecesOf, printPieces } from '../../src/record/pieces.ts';
import { yamlSamples } from '../samples.ts';
import { merged } from './merged.ts';

const lesson = `# Two lessons in one.
swing: 1
date: 2026-05-14   # a Thursday
club: hybrid

checkpoints:
  # before the ball
  address: { stance_width: 47 cm by tape, lead_pressure: 50 % }
  impact:
    shaft_lean: 9 deg forward   # by the phone
    lead_pressure: { value: 66 %, by: pressure mat }
delivery:
  attack: 3.5 deg down
  path: 5 deg right
  face: [1 deg right by radar, 3 deg right by eye]
faults:
  - { fault: hangs-back, at: impact, note: "stays, until late" }
  - fault: face-open
    note: seldom
plan: []
`;

const change = (from: string | RegExp, to: string, text = lesson): string => {
  const changed = text.replace(from, to);
  assert.notEqual(changed, text);
  return changed;
};

describe('cutting a file into keys', () => {
  for (const [path, text] of yamlSamples)
    it(`gives ${path} back as it was`, () => {
      const pieces = piecesOf(text);
      assert.ok(pieces);
      assert.equal(printPieces(pieces), text);
    });

  it('gives any text back as it was, or does not cut it', () => {
    const bits = fc.constantFrom(
      'a: 1\n',
      '  b: 2\n',
      '- c\n',
      '# d\n',
      '{ e: 1, f: }',
      '\r\n',
      '\n',
      ': ',
      '"g: h": i\n',
      '  - j: k\n    l: m\n',
      '? n\n',
      '&o p',
      '| \n  q\n',
      '[1,2]',
      '\t',
    );
    let cut = 0;
    fc.assert(
      fc.property(fc.array(bits, { maxLength: 12 }), (parts) => {
        const text = parts.join('');
        const pieces = piecesOf(text);
        if (pieces === undefined) return;
        cut += 1;
        assert.equal(printPieces(pieces), text.endsWith('\n') ? text : `${text}\n`);
      }),
      { numRuns: 3000 },
    );
    assert.ok(cut > 50, `${cut} were cut`);
  });
});

describe('merging', () => {
  it('keeps both changes of neighbouring keys, on one line too', () => {
    const { text, conflicts } = merged(
      lesson,
      change('47 cm by tape', '45 cm by tape', change('3.5 deg down', '4 deg down')),
      change('lead_pressure: 50 %', 'lead_pressure: 52 %', change('5 deg right', '6 deg right')),
    );
    assert.equal(conflicts, 0);
    assert.match(text, /address: \{ stance_width: 45 cm by tape, lead_pressure: 52 % \}/);
    assert.match(text, /attack: 4 deg down\n {2}path: 6 deg right/);
    assert.equal(text.length, lesson.length - '.5'.length);
  });

  it('marks one value that both changed, and nothing else', () => {
    const { text, conflicts } = merged(
      lesson,
      change('3.5 deg down', '4 deg down'),
      change('3.5 deg down', '5 deg down', change('50 %', '52 %')),
    );
    assert.equal(conflicts, 1);
    assert.match(
      text,
      /^delivery:\n<<<<<<< ours\n {2}attack: 4 deg down\n=======\n {2}attack: 5 deg down\n>>>>>>> theirs\n {2}path: 5 deg right\n/m,
    );
    assert.match(text, /52 %/);
  });

  it('marks the line where both changed one value between braces, each side with what the other changed beside', () => {
    const { text, conflicts } = merged(
      lesson,
      change('47 cm by tape, lead_pressure: 50 %', '45 cm by tape, lead_pressure: 51 %'),
      change('47 cm by tape', '44 cm by tape'),
    );
    assert.equal(conflicts, 1);
    assert.match(
      text,
      /<<<<<<< ours\n {2}# before the ball\n {2}address: \{ stance_width: 45 cm by tape, lead_pressure: 51 % \}\n=======\n {2}# before the ball\n {2}address: \{ stance_width: 44 cm by tape, lead_pressure: 51 % \}\n>>>>>>> theirs\n/,
    );
  });

  it('takes in what both added, ours first', () => {
    const { text, conflicts } = merged(
      lesson,
      change(
        '  path: 5',
        '  loft: 20 deg\n  path: 5',
        change('plan: []', 'plan:\n  - change: delivery.path\n    to: 3 deg right'),
      ),
      change(
        '  path: 5',
        '  # new\n  closure: 3\n  path: 5',
        change('note: seldom\n', 'note: seldom\n  - { fault: arm-folds }\n'),
      ),
    );
    assert.equal(conflicts, 0);
    assert.match(text, /attack: 3\.5 deg down\n {2}loft: 20 deg\n {2}# new\n {2}closure: 3\n {2}path/);
    assert.match(
      text,
      /note: seldom\n {2}- \{ fault: arm-folds \}\nplan:\n {2}- change: delivery\.path\n {4}to: 3 deg right\n$/,
    );
  });

  it('knows items of lists by what they are about', () => {
    const { text, conflicts } = merged(
      lesson,
      change('note: seldom', 'note: often'),
      change('  - { fault: hangs-back, at: impact, note: "stays, until late" }\n', ''),
    );
    assert.equal(conflicts, 0);
    assert.match(text, /faults:\n {2}- fault: face-open\n {4}note: often\nplan/);
    const readings = merged(
      lesson,
      change('1 deg right by radar', '2 deg right by radar'),
      change('3 deg right by eye', '4 deg right by eye'),
    );
    assert.equal(readings.conflicts, 0);
    assert.match(readings.text, /face: \[2 deg right by radar, 4 deg right by eye\]/);
    assert.equal(
      merged(lesson, change('1 deg right by radar', '2 deg right'), change('1 deg right by radar', '0 deg'))
        .conflicts,
      1,
    );
  });

  it('marks what one side changed and the other took out', () => {
    const { text, conflicts } = merged(
      lesson,
      change('  attack: 3.5 deg down\n', ''),
      change('3.5 deg down', '4 deg down'),
    );
    assert.equal(conflicts, 1);
    assert.match(text, /<<<<<<< ours\n=======\n {2}attack: 4 deg down\n>>>>>>> theirs/);
  });

  it('takes another form and another order along with values that the other side changed', () => {
    const block = change(
      'address: { stance_width: 47 cm by tape, lead_pressure: 50 % }',
      'address:\n    stance_width: 47 cm by tape\n    lead_pressure: 50 %',
    );
    const { text, conflicts } = merged(lesson, block, change('50 %', '52 %'));
    assert.equal(conflicts, 0);
    assert.match(text, / {4}stance_width: 47 cm by tape\n {4}lead_pressure: 52 %\n/);
    const moved = change(
      'delivery:\n  attack: 3.5 deg down\n  path: 5 deg right\n',
      'delivery:\n  path: 5 deg right\n  attack: 3.5 deg down\n',
    );
    const other = merged(lesson, moved, change('3.5 deg down', '4 deg down'));
    assert.equal(other.conflicts, 0);
    assert.match(other.text, /path: 5 deg right\n {2}attack: 4 deg down/);
  });

  it('merges comments as it merges values, and keeps line ends', () => {
    const { text, conflicts } = merged(
      lesson.replaceAll('\n', '\r\n'),
      change('# a Thursday', '# a fine Thursday').replaceAll('\n', '\r\n'),
      change('2026-05-14', '2026-05-15').replaceAll('\n', '\r\n'),
    );
    assert.equal(conflicts, 0);
    assert.match(text, /date: 2026-05-15 {3}# a fine Thursday\r\n/);
    assert.equal(text.replaceAll('\r\n', '').includes('\n'), false);
  });

  it('is left to lines where YAML cannot be read', () => {
    const wish = { ours: lesson, theirs: lesson, names: ['o', 't'], markLength: 7 } as const;
    assert.equal(merge({ ...wish, base: 'a: "b' }), undefined);
    assert.equal(merge({ ...wish, theirs: '- a list\n', base: lesson }), undefined);
  });
});

describe('merging values that say the same, and items that moved', () => {
  const fault = (inner: string): string => `swing: 1\nfaults: [{ fault: a, ${inner} }]\n`;

  it('marks a fault that both put to another place', () => {
    const { text, conflicts } = merged(fault('at: top'), fault('at: impact'), fault('at: finish'));
    assert.equal(conflicts, 1);
    assert.match(text, /<<<<<<< ours\n.*at: impact.*\n=======\n.*at: finish.*\n>>>>>>> theirs/);
  });

  it('keeps one fault where one side changed its place and the other added a note', () => {
    const noted = merged(fault('at: top'), fault('at: impact'), fault('at: top, note: late'));
    assert.deepEqual(noted, { text: fault('at: impact, note: late'), conflicts: 0 });
    const other = merged(fault('at: top'), fault('at: top, note: late'), fault('at: impact'));
    assert.deepEqual(other, { text: fault('at: impact, note: late'), conflicts: 0 });
  });

  it('keeps two faults of one name at two places apart', () => {
    const two = 'swing: 1\nfaults:\n  - { fault: a, at: top }\n  - { fault: a, at: impact }\n';
    const changed = two.replace('at: top }', 'at: finish }');
    const noted = two.replace('at: impact }', 'at: impact, note: late }');
    const both = changed.replace('at: impact }', 'at: impact, note: late }');
    assert.deepEqual(merged(two, changed, noted), { text: both, conflicts: 0 });
  });

  const carry = (value: string): string => `swing: 1\nflight: { carry: ${value} }\n`;

  it('takes another unit for no change', () => {
    assert.deepEqual(merged(carry('100 m'), carry('10000 cm'), carry('120 m')), {
      text: carry('120 m'),
      conflicts: 0,
    });
    assert.deepEqual(merged(carry('100 m'), carry('120 m'), carry('10000 cm')), {
      text: carry('120 m'),
      conflicts: 0,
    });
    const apex = (value: string): string => `swing: 1\nflight:\n  carry: 100 m\n${value}`;
    assert.deepEqual(merged(apex(''), apex('  apex: 20 m\n'), apex('  apex: 2000 cm\n')), {
      text: apex('  apex: 20 m\n'),
      conflicts: 0,
    });
    assert.equal(merged(carry('100 m'), carry('10001 cm'), carry('120 m')).conflicts, 1);
  });

  it('lets a key go above which the other side only added an empty line', () => {
    const base = 'swing: 1\nclub: hybrid\nnotes: late\n';
    const spaced = base.replace('notes', '\nnotes');
    const without = 'swing: 1\nclub: hybrid\n';
    assert.deepEqual(merged(base, spaced, without), { text: without, conflicts: 0 });
    assert.deepEqual(merged(base, without, spaced), { text: without, conflicts: 0 });
    assert.equal(merged(base, base.replace('notes', '# why\nnotes'), without).conflicts, 1);
  });
});
