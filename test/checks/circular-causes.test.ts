// Tests of the check circular-causes.
import { assertMarked, assertNone } from './files.ts';

describe('circular-causes', () => {
  const stands = `  stands-up:
    evidence: checkpoints.impact.forward_bend < 20 deg
    tends_to: [{ effect: checkpoints.impact.head_height, direction: more }]`;

  it('marks the effect that closes the circle', () => {
    assertMarked('circular-causes', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence: checkpoints.impact.head_height > 4 cm
    tends_to: [{ effect: checkpoints.impact.forward_bend, direction: less }]
#                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ warning[circular-causes]
${stands}`,
    });
  });

  it('marks it in the book that closes it over one that it extends', () => {
    assertMarked('circular-causes', {
      'own.faults.yaml': `faults: 1
extends: base.faults.yaml
book:
  early-lift:
    evidence: checkpoints.impact.head_height > 4 cm
    tends_to: [{ effect: checkpoints.impact.forward_bend, direction: less }]
#                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ warning[circular-causes]`,
      'base.faults.yaml': `faults: 1\nbook:\n${stands}`,
    });
  });

  it('says nothing where the effect goes the other way, or where the fault that it meets is overridden', () => {
    assertNone('circular-causes', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence: checkpoints.impact.head_height > 4 cm
    tends_to: [{ effect: checkpoints.impact.forward_bend, direction: more }]
${stands}`,
    });
    assertNone('circular-causes', {
      'own.faults.yaml': `faults: 1
extends: base.faults.yaml
book:
  stands-up: { title: Stands up }
  early-lift:
    evidence: checkpoints.impact.head_height > 4 cm
    tends_to: [{ effect: checkpoints.impact.forward_bend, direction: less }]`,
      'base.faults.yaml': `faults: 1\nbook:\n${stands}`,
    });
  });
});
