// Tests of which quantity a size with `per` is for, and of what is said where that cannot be told.
import assert from 'node:assert/strict';
import { perQuantity } from '../../src/judgement/cause-quantity.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { assertMarked, assertNone } from '../checks/files.ts';

const two = `faults: 1
book:
  stays-back:
    evidence:
      - checkpoints.lead_arm_parallel_down.lead_pressure < 60 %
      - checkpoints.impact.lead_pressure < 70 %
      - checkpoints.impact.shaft_lean < 2 deg
    tends_to:
`;

function causeIn(effect: string): string | undefined {
  const document = parseDocument('faults', `${two}      - { effect: delivery.attack, ${effect} }\n`);
  assert.ok(document.kind === 'faults');
  const fault = document.faults.get('stays-back')!;
  return perQuantity(fault, fault.tendsTo[0]!, builtIn)?.id;
}

describe('the cause that a size is for', () => {
  it('is the only quantity of the evidence with that dimension', () => {
    assert.equal(causeIn('size: 1 deg per 5 deg'), 'checkpoints.impact.shaft_lean');
    assert.equal(causeIn('size: 1 deg'), undefined);
  });

  it('is the one that `of` names', () => {
    const id = 'checkpoints.impact.lead_pressure';
    assert.equal(causeIn(`size: 1 deg per 5 %, of: ${id}`), id);
  });

  it('is asked for where it could be several', () => {
    assert.equal(causeIn('size: 1 deg per 5 %'), undefined);
    assertMarked('missing-key', {
      'house.faults.yaml': `${two}      - { effect: delivery.attack, size: 1 deg per 5 % }
#                                                    ^ error[missing-key]`,
    });
    assertNone('missing-key', {
      'house.faults.yaml': `${two}      - { effect: delivery.attack, size: 1 deg per 5 %, of: checkpoints.impact.lead_pressure }`,
    });
  });

  it('is said to be missing where the evidence has none of that dimension', () => {
    assertMarked('wrong-dimension', {
      'house.faults.yaml': `${two}      - { effect: delivery.attack, size: 1 deg per 5 cm }
#                                                    ^^ error[wrong-dimension]`,
    });
    assertMarked('wrong-dimension', {
      'house.faults.yaml': `${two}      - { effect: delivery.attack, size: 1 deg per 5 %, of: checkpoints.impact.shaft_lean }
#                                                    ^ error[wrong-dimension]`,
    });
  });

  it('has to be one of the evidence', () => {
    assertMarked('unknown-word', {
      'house.faults.yaml': `${two}      - { effect: delivery.attack, of: checkpoints.top.lead_pressure, size: 1 deg per 5 % }
#                                      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ error[unknown-word]`,
    });
  });
});
