// The check that says which derived quantities of a workspace follow from themselves.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const circularDerivation = fromProblems({
  code: 'circular-derivation',
  severity: 'error',
  title: 'A quantity that follows from itself',
  explanation: explain({
    found: 'A derived quantity of the workspace follows, by itself or through others, from itself.',
    matters:
      'Such a circle gives no number, so that none of its quantities is computed. What holds in both directions is a relation: write it under `relations`.',
    raises: {
      'swingwright.yaml': `swingwright: 1
derived:
  delivery.first: { like: delivery.face, is: delivery.second + 1 deg }
  delivery.second: { like: delivery.face, is: delivery.first - 1 deg }`,
    },
    accepts: {
      'swingwright.yaml': `swingwright: 1
derived:
  delivery.first: { like: delivery.face, is: delivery.face + 1 deg }
  delivery.second: { like: delivery.face, is: delivery.first - 1 deg }`,
    },
    source: 'the file format of this project.',
  }),
});
