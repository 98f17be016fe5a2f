// Tests of the check circular-derivation.
import { assertMarked, assertNone } from './files.ts';

describe('circular-derivation', () => {
  it('marks every expression of a circle, and not what only follows from it', () => {
    assertMarked('circular-derivation', {
      'swingwright.yaml': `swingwright: 1
derived:
  delivery.first: { like: delivery.face, is: delivery.second + 1 deg }
#                                            ^^^^^^^^^^^^^^^^^^^^^^^ error[circular-derivation]
  delivery.second: { like: delivery.face, is: delivery.first - 1 deg }
#                                             ^^^^^^^^^^^^^^^^^^^^^^ error[circular-derivation]
  delivery.third: { like: delivery.face, is: delivery.first - 1 deg }
  delivery.self: { like: delivery.face, is: 2 * delivery.self }
#                                           ^^^^^^^^^^^^^^^^^ error[circular-derivation]`,
    });
  });

  it('says nothing of a chain', () => {
    assertNone('circular-derivation', {
      'swingwright.yaml': `swingwright: 1
derived:
  delivery.second: { like: delivery.face, is: delivery.first - 1 deg }
  delivery.first: { like: delivery.face, is: delivery.face + 1 deg }`,
    });
  });
});
