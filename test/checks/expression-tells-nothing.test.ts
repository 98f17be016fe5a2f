// Tests of the check expression-tells-nothing, and of relations between what is computed from one another.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, codesOf } from './files.ts';

const own = (lines: string): { 'swingwright.yaml': string } => ({
  'swingwright.yaml': `swingwright: 1\n${lines}\n`,
});
const check = (when: string): string =>
  own(`checks: { far: { when: "${when}", message: "Found {delivery.path}." } }`)['swingwright.yaml'];

describe('expression-tells-nothing', () => {
  it('marks a division by zero, and what has no root or logarithm, at its characters', () => {
    const marks = (marked: string): unknown =>
      assertMarked('expression-tells-nothing', { 'swingwright.yaml': marked });
    marks(`swingwright: 1
checks:
  far:
    message: Far.
    when: delivery.path / 0 > 1 deg
#                         ^ warning[expression-tells-nothing]`);
    marks(`swingwright: 1
checks:
  far:
    message: Far.
    when: delivery.release_ratio > 2 * log(0 - 1)
#                                      ^^^^^^^^^^ warning[expression-tells-nothing]`);
  });

  it('marks a condition of an own check that always or never holds, or gives no number', () => {
    for (const when of [
      'delivery.path > 4000 deg',
      'delivery.path < 4000 deg',
      'sqrt(0 - 1 - square(delivery.release_ratio)) > 1',
      'delivery.path / (1 - 1) > 1 deg',
    ])
      assert.deepEqual(
        codesOf(analyseFiles({ 'swingwright.yaml': check(when) })),
        ['expression-tells-nothing'],
        when,
      );
    for (const when of [
      'delivery.path > 4 deg',
      'sqrt(delivery.release_ratio - 3) > 1',
      '1 / delivery.release_ratio > 0.3',
    ])
      assertNone('expression-tells-nothing', { 'swingwright.yaml': check(when) });
  });

  it('marks a derived quantity that never has a number', () => {
    const derived = (is: string): readonly string[] =>
      codesOf(analyseFiles(own(`derived: { delivery.odd: { unit: ratio, bounds: 0..5, is: ${is} } }`)));
    assert.deepEqual(derived('log(0 - delivery.release_ratio)'), ['expression-tells-nothing']);
    assert.deepEqual(derived('delivery.release_ratio / 0'), ['expression-tells-nothing']);
    assert.deepEqual(derived('log(delivery.release_ratio)'), []);
  });

  it('knows a relation that never holds since one side is computed from the other', () => {
    const related = (says: string): readonly string[] =>
      codesOf(
        analyseFiles(
          own(
            `derived:\n  delivery.turned: { like: delivery.face, is: delivery.face + 1 deg }\n  delivery.again: { like: delivery.face, is: 2 * delivery.turned - delivery.face }\nrelations: { alike: { says: ${says} } }`,
          ),
        ),
      );
    assert.deepEqual(related('delivery.turned ≈ delivery.face + 9 deg ± 1 deg'), ['relation-tells-nothing']);
    assert.deepEqual(related('delivery.again ≈ delivery.face + 2 deg ± 1 deg'), ['relation-tells-nothing']);
    assert.deepEqual(related('delivery.turned ≈ delivery.path + 9 deg ± 1 deg'), []);
    assert.deepEqual(related('sqrt(0 - 1 - square(delivery.release_ratio)) ≈ 1 ± 1'), [
      'relation-tells-nothing',
    ]);
  });
});
