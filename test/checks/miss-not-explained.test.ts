// Tests of the check miss-not-explained.
import assert from 'node:assert/strict';
import { assertMarked, assertNone, messageOf } from './files.ts';

describe('miss-not-explained', () => {
  const house = `faults: 1
book:
  low-point-back:
    tends_to: [{ effect: delivery.low_point.ahead, direction: behind }]
  open-face:
    tends_to: [{ effect: flight.curve, direction: right }]`;

  it('marks a miss to which no stated fault tends, and names those of the book', () => {
    const analysis = assertMarked('miss-not-explained', {
      'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
faults: [{ fault: low-point-back }]
misses:
  - heavy
  - { miss: slice, note: with the driver }
#           ^^^^^ hint[miss-not-explained]
  - pull
#   ^^^^ hint[miss-not-explained]`,
      'house.faults.yaml': house,
    });
    assert.match(messageOf(analysis, 'miss-not-explained'), /the fault book has `open-face`/);
  });

  it('tells of a miss that is stated twice once', () => {
    assertMarked('miss-not-explained', {
      'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
misses: [slice, slice]
#        ^^^^^ hint[miss-not-explained]`,
      'house.faults.yaml': house,
    });
  });

  it('says nothing without a fault book', () => {
    assertNone('miss-not-explained', 'swing: 1\nmisses: [slice]');
  });
});
