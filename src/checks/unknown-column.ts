// The check that says which columns of a file of shots are not known, on the reference that leads to the file.
import type { Check } from './check.ts';
import { explain } from './explain.ts';
import { listedShotProblems } from './shot-problems.ts';

export const unknownColumn: Check = {
  code: 'unknown-column',
  severity: 'warning',
  title: 'Unknown column in a file of shots',
  explanation: explain({
    found: 'The first line of the file of shots names a column that is neither a quantity nor known by name.',
    matters:
      'What stands in that column is not read; write the id of a quantity, its short key, or name the column in `swingwright.yaml`, where it can also be ignored.',
    raises: {
      'lesson.swing.yaml': `swing: 1
shots: shots.csv`,
      'shots.csv': `carri [m],start [deg]
168,1 right`,
    },
    accepts: {
      'lesson.swing.yaml': `swing: 1
shots: shots.csv`,
      'shots.csv': `Flown (yd),start [deg],Mood
184,1 right,good`,
      'swingwright.yaml': `swingwright: 1
shots:
  columns:
    Flown (yd): { quantity: flight.carry, unit: yd }
    Mood: ignore`,
    },
    source: 'the file format of this project.',
  }),
  kinds: ['swing'],
  find: (subject) => {
    const problems = subject.shots?.file?.columnProblems ?? [];
    return listedShotProblems(subject, problems, problems.length, ['column', 'columns']);
  },
};
