// The check that says where a list, a mapping or a single value stands in the place of another.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const wrongShape = fromProblems({
  code: 'wrong-shape',
  severity: 'error',
  title: 'Wrong shape',
  explanation: explain({
    found: 'A list, a mapping or a single value stands where something else belongs.',
    matters: 'It is not read.',
    raises: `delivery: 41 m/s`,
    accepts: `delivery: { club_speed: 41 m/s }`,
    source: 'the file format of this project.',
  }),
  lasting: true,
});
