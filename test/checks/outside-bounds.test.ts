// Tests of the check outside-bounds.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

describe('outside-bounds', () => {
  it('marks what cannot be, in the record, its shots and its goals', () => {
    assertMarked(
      'outside-bounds',
      `swing: 1
delivery:
  attack: 75 deg down
#         ^^^^^^^^^^^ error[outside-bounds]
shots:
  - carry: 900 m
#          ^^^^^ error[outside-bounds]
goals:
  - carry: 150..900 m
#          ^^^^^^^^^^ error[outside-bounds]`,
    );
  });

  it('takes the edge itself', () => {
    assertNone(
      'outside-bounds',
      `swing: 1
delivery:
  attack: 60 deg down
checkpoints: { address: { lead_pressure: 100 % } }`,
    );
  });

  it('names the bound and its source', () => {
    const analysis = assertMarked(
      'outside-bounds',
      `swing: 1
delivery:
  attack: 75 deg down
#         ^^^^^^^^^^^ error[outside-bounds]`,
    );
    assert.match(
      messageOf(analysis, 'outside-bounds'),
      /^Attack angle 75\.0 deg down is outside what is possible; expected 60 deg down\.\.60 deg up \(judgement: .+\)\.$/,
    );
  });

  it('marks a club in the bag and a window of a template', () => {
    assertMarked('outside-bounds', {
      'mira.student.yaml': `student: 1
bag:
  long:
    length: 60 in
#           ^^^^^ error[outside-bounds]`,
    });
    assertMarked('outside-bounds', {
      'irons.template.yaml': `template: 1
delivery:
  attack: 2..80 deg down
#         ^^^^^^^^^^^^^^ error[outside-bounds]`,
    });
  });

  it('marks what a plan or a fault book wants to end at', () => {
    assertMarked(
      'outside-bounds',
      `swing: 1
plan:
  - { change: delivery.attack, to: 75 deg down }
#                                  ^^^^^^^^^^^ error[outside-bounds]`,
    );
    assertMarked('outside-bounds', {
      'house.faults.yaml': `faults: 1
book:
  low-hands:
    changes:
      - { change: checkpoints.impact.lead_pressure, to: 80..120 % }
#                                                       ^^^^^^^^^ error[outside-bounds]`,
    });
  });
});
