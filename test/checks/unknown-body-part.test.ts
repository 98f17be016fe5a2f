// Tests of the check unknown-body-part.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('unknown-body-part', () => {
  it('marks a part that nobody knows, in a caution and in an injury', () => {
    assertMarked('unknown-body-part', {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    cautions: [lower back, lowr back]
#                          ^^^^^^^^^ warning[unknown-body-part]`,
    });
    assertMarked('unknown-body-part', {
      'ansa.student.yaml': `student: 1
injuries:
  - { part: trail wirst }
#           ^^^^^^^^^^^ warning[unknown-body-part]`,
    });
  });

  it('takes parts with a side and by other names', () => {
    assertNone('unknown-body-part', {
      'house.faults.yaml':
        'faults: 1\nbook: { early-lift: { cautions: [lead knee, lumbar spine, neck, both hips] } }',
    });
  });

  it('writes the nearest part', () => {
    assertFixedTo(
      'unknown-body-part',
      { 'ansa.student.yaml': 'student: 1\ninjuries: [{ part: trail wirst }]' },
      'student: 1\ninjuries: [{ part: trail wrist }]',
    );
  });
});
