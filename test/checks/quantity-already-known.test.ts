// Tests of the check quantity-already-known.
import { assertMarked, assertNone } from './files.ts';

describe('quantity-already-known', () => {
  it('marks an own quantity with the id of a known one, at its key', () => {
    assertMarked('quantity-already-known', {
      'swingwright.yaml': `swingwright: 1
quantities:
  delivery.face: { like: delivery.path }
# ^^^^^^^^^^^^^ error[quantity-already-known]
  delivery.arc: { like: delivery.path }
# ^^^^^^^^^^^^ error[quantity-already-known]
  delivery.face.wand: { like: delivery.path }
# ^^^^^^^^^^^^^^^^^^ error[quantity-already-known]`,
    });
  });

  it('marks a derived quantity that takes the id of an own one', () => {
    assertMarked('quantity-already-known', {
      'swingwright.yaml': `swingwright: 1
quantities:
  delivery.wand: { like: delivery.path }
derived:
  delivery.wand: { like: delivery.path, is: 2 * delivery.path }
# ^^^^^^^^^^^^^ error[quantity-already-known]`,
    });
  });

  it('says nothing of an id of its own', () => {
    assertNone('quantity-already-known', {
      'swingwright.yaml': 'swingwright: 1\nquantities:\n  delivery.wand: { like: delivery.path }',
    });
  });
});
