// Tests of the check bare-direction.
import assert from 'node:assert/strict';
import { analyseFiles, applied, assertMarked, assertNone, messageOf } from './files.ts';

const address = (value: string): string => `swing: 1
checkpoints:
  address:
    ball_position: ${value}`;

/** What the fixes make of the value, in their order. */
function fixesOf(text: string): readonly string[] {
  const finding = analyseFiles(text).findings.find(({ code }) => code === 'bare-direction');
  return (finding?.fixes ?? []).map(({ edits, preferred }) => {
    assert.equal(preferred, false);
    return applied(text, edits).replace(/^.*: (?=\S.*$)/s, '');
  });
}

describe('bare-direction', () => {
  it('marks a number with neither word nor sign', () => {
    const analysis = assertMarked(
      'bare-direction',
      `${address('9 cm by tape')}
#                  ^^^^ hint[bare-direction]`,
    );
    assert.equal(
      messageOf(analysis, 'bare-direction'),
      'Found no direction; read as `ahead`; expected `ahead` or `behind`.',
    );
  });

  it('takes a word, a sign, or zero', () => {
    for (const value of ['9 cm behind', '-9 cm', '+9 cm', '0 cm', '~9 cm ahead', '9 cm ± 2 cm behind'])
      assertNone('bare-direction', address(value));
    assertNone('bare-direction', 'swing: 1\nflight: { carry: 171 m }');
  });

  it('writes either word, and prefers none', () => {
    assert.deepEqual(fixesOf(address('9 cm')), ['9 cm ahead', '9 cm behind']);
    assert.deepEqual(fixesOf(address('9')), ['9 ahead', '9 behind']);
    assert.deepEqual(fixesOf(address('~9 cm ± 2 cm by tape')), [
      '~9 cm ahead ± 2 cm by tape',
      '~9 cm behind ± 2 cm by tape',
    ]);
    assert.deepEqual(fixesOf(address('9 ± 2 cm')), ['9 ± 2 cm ahead', '9 ± 2 cm behind']);
    for (const fixed of ['9 cm ahead', '9 ahead', '~9 cm behind ± 2 cm by tape', '9 ± 2 cm behind'])
      assert.deepEqual(
        analyseFiles(address(fixed)).findings.filter(({ severity }) => severity === 'error'),
        [],
      );
  });

  it('marks a window without a direction, and the long form', () => {
    const goal = 'swing: 1\ngoals:\n  - { start: 1..3 deg }';
    const analysis = analyseFiles(goal);
    assert.match(messageOf(analysis, 'bare-direction'), /read as `right`/);
    const [right, left] = analysis.findings.find(({ code }) => code === 'bare-direction')!.fixes;
    assert.equal(applied(goal, right!.edits), goal.replace('deg', 'deg right'));
    assert.equal(applied(goal, left!.edits), goal.replace('deg', 'deg left'));
    assertNone('bare-direction', 'swing: 1\ngoals:\n  - { start: 1 deg left..3 deg right }');
    assertNone('bare-direction', 'swing: 1\ngoals:\n  - { start: -1..3 deg }');
    const long = address('{ value: 9 cm, give_or_take: 2 cm }');
    assert.equal(
      applied(
        long,
        analyseFiles(long).findings.find(({ code }) => code === 'bare-direction')!.fixes[1]!.edits,
      ),
      address('{ value: 9 cm behind, give_or_take: 2 cm }'),
    );
  });

  it('finds none in the clean samples', async () => {
    const { readFileSync } = await import('node:fs');
    const at = new URL('../../samples/tove/2026-04-18-seven-iron.swing.yaml', import.meta.url);
    assertNone('bare-direction', readFileSync(at, 'utf8'));
  });
});
