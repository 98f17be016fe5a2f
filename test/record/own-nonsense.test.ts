// What makes no sense in a workspace's own declarations is said at the very place, and what makes sense is taken.
import assert from 'node:assert/strict';
import { analyseFiles } from '../checks/files.ts';

/** Code and marked text of everything found in a workspace file. */
function foundIn(text: string): readonly string[] {
  const { findings, document } = analyseFiles({ 'swingwright.yaml': `swingwright: 1\n${text}\n` });
  const lines = document.text.split('\n');
  return findings.map(
    ({ code, range: { start, end } }) =>
      `${code}: ${lines[start.line]!.slice(start.character, start.line === end.line ? end.character : undefined)}`,
  );
}

const quantity = (fields: string): string =>
  `quantities:\n  delivery.bow: { unit: deg, bounds: -5..15 deg, uncertainty: 1 deg, ${fields} }`;

describe('nonsense in the workspace file', () => {
  it('is a direction that means something else already', () => {
    for (const word of [
      'cm',
      'by',
      'radar',
      '"±"',
      '"left by"',
      '"in front"',
      '"3"',
      '"~"',
      'deg',
      '"a..b"',
      '""',
    ])
      assert.deepEqual(
        foundIn(quantity(`directions: { ${word}: positive, closed: negative }`)),
        [`unknown-word: ${word}`],
        word,
      );
    assert.deepEqual(foundIn(quantity('directions: { open: positive, Open: negative }')), [
      'unknown-word: Open',
    ]);
    for (const words of [
      'open: positive, closed: negative',
      'toward heel: positive',
      '"o\'clock": positive',
      'öffen: positive',
    ])
      assert.deepEqual(foundIn(quantity(`directions: { ${words} }`)), [], words);
  });

  it('is practice outside of the bounds, own or inherited, and an uncertainty wider than these', () => {
    assert.deepEqual(foundIn(quantity('practice: 0..16 deg')), ['number-out-of-range: 0..16 deg']);
    assert.deepEqual(
      foundIn('quantities: { delivery.wand: { like: delivery.face, practice: 0..400 deg } }'),
      ['number-out-of-range: 0..400 deg'],
    );
    assert.deepEqual(foundIn(quantity('practice: -5..15 deg')), []);
    const wide = quantity('title: Bow').replace('1 deg', '21 deg');
    assert.deepEqual(foundIn(wide), ['number-out-of-range: 21 deg']);
    assert.deepEqual(foundIn(wide.replace('21', '20')), []);
  });

  it('is an empty message, a condition or a formula of nothing', () => {
    const check = (when: string, message: string): string =>
      `checks: { a: { when: ${when}, message: ${message} } }`;
    assert.deepEqual(foundIn(check('delivery.path > 1 deg', '" "')), ['missing-key: " "']);
    assert.deepEqual(foundIn(check('1 < 2', 'Hm.')), ['unreadable-expression: 1 < 2']);
    assert.deepEqual(foundIn(check('delivery.path > 1 deg', 'Hm.')), []);
    assert.deepEqual(foundIn('derived: { delivery.three: { is: 3 deg, unit: deg, bounds: 0..9 deg } }'), [
      'unreadable-expression: 3 deg',
    ]);
  });
});
