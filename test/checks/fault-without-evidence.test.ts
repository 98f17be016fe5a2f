// Tests of the check fault-without-evidence.
import { assertMarked, assertNone } from './files.ts';

describe('fault-without-evidence', () => {
  it('marks a fault that nothing would show', () => {
    assertMarked('fault-without-evidence', {
      'house.faults.yaml': `faults: 1
book:
  late: { title: Late }
# ^^^^ hint[fault-without-evidence]`,
    });
  });

  it('takes evidence that cannot be read, which is told where it stands', () => {
    assertNone('fault-without-evidence', {
      'house.faults.yaml': 'faults: 1\nbook: { late: { evidence: 1 < } }',
    });
  });
});
