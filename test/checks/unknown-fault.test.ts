// Tests of the check unknown-fault.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('unknown-fault', () => {
  it('marks a fault that is in no book', () => {
    assertMarked('unknown-fault', {
      'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
faults:
  - fault: low-hand
#          ^^^^^^^^ warning[unknown-fault]`,
      'house.faults.yaml': `faults: 1
book:
  low-hands: { title: Low hands }`,
    });
  });

  it('takes a fault of a book that the book extends', () => {
    assertNone('unknown-fault', {
      'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
faults:
  - fault: low-hands`,
      'house.faults.yaml': `faults: 1
extends: base.faults.yaml`,
      'base.faults.yaml': `faults: 1
book:
  low-hands: { title: Low hands }`,
    });
  });

  it('writes the nearest fault', () => {
    assertFixedTo(
      'unknown-fault',
      {
        'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
faults:
  - { fault: low-hand, note: seen twice }`,
        'house.faults.yaml': `faults: 1
book:
  low-hands: { title: Low hands }`,
      },
      `swing: 1
faults_from: house.faults.yaml
faults:
  - { fault: low-hands, note: seen twice }`,
    );
  });

  it('says nothing without a book, or while a book is missing that may define the fault', () => {
    assertNone('unknown-fault', 'swing: 1\nfaults:\n  - fault: low-hand');
    assertNone('unknown-fault', {
      'lesson.swing.yaml': 'swing: 1\nfaults_from: house.faults.yaml\nfaults:\n  - fault: low-hand',
      'house.faults.yaml': 'faults: 1\nextends: base.faults.yaml',
    });
  });
});
