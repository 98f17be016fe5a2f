// Tests of the check circular-reference.
import { assertMarked, assertNone } from './files.ts';

describe('circular-reference', () => {
  it('marks a book that extends itself by way of another', () => {
    assertMarked('circular-reference', {
      'house.faults.yaml': `faults: 1
extends: guest.faults.yaml
#        ^^^^^^^^^^^^^^^^^ error[circular-reference]`,
      'guest.faults.yaml': `faults: 1
extends: house.faults.yaml`,
    });
  });

  it('takes a book that extends another', () => {
    assertNone('circular-reference', {
      'house.faults.yaml': `faults: 1
extends: guest.faults.yaml`,
      'guest.faults.yaml': `faults: 1`,
    });
  });

  it('marks a book that extends itself', () => {
    assertMarked('circular-reference', {
      'house.faults.yaml': `faults: 1
extends: house.faults.yaml
#        ^^^^^^^^^^^^^^^^^ error[circular-reference]`,
    });
  });

  it('says nothing in a record whose fault books go round, for the books say it themselves', () => {
    assertNone('circular-reference', {
      'lesson.swing.yaml': 'swing: 1\nfaults_from: house.faults.yaml',
      'house.faults.yaml': 'faults: 1\nextends: guest.faults.yaml',
      'guest.faults.yaml': 'faults: 1\nextends: house.faults.yaml',
    });
  });
});
