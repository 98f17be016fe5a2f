// The check that says which rows of a file of shots cannot be read, on the reference that leads to the file.
import type { Check } from './check.ts';
import { explain } from './explain.ts';
import { listedShotProblems } from './shot-problems.ts';

export const unreadableRow: Check = {
  code: 'unreadable-row',
  severity: 'warning',
  title: 'Unreadable rows in a file of shots',
  explanation: explain({
    found: 'Some rows of the file of shots cannot be read as meant.',
    matters:
      'They are left out whole and the other rows are used; an empty cell, `-` or `n/a` is no value and leaves the rest of its row in use.',
    raises: {
      'lesson.swing.yaml': `swing: 1
shots: shots.csv`,
      'shots.csv': `carry [m],start [deg]
168,1 right
17O,2 left`,
    },
    accepts: {
      'lesson.swing.yaml': `swing: 1
shots: shots.csv`,
      'shots.csv': `carry [m];start [deg]
168,5;1 right
171 m;-2
-;3`,
    },
    source: 'the file format of this project.',
  }),
  kinds: ['swing'],
  find: (subject) => {
    const { rowProblems = [], unreadRows = 0 } = subject.shots?.file ?? {};
    return listedShotProblems(subject, rowProblems, unreadRows, ['row', 'rows']);
  },
};
