// The check that says which quantity of a workspace's own has the id of one that is known already.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const quantityAlreadyKnown = fromProblems({
  code: 'quantity-already-known',
  severity: 'error',
  title: 'Quantity already known',
  explanation: explain({
    found: 'A quantity of the workspace has the id of a known one, or one that a known id begins with.',
    matters:
      'One id must mean one thing in every record, so that the own quantity is not taken. Give it an id of its own; `like` takes over what the known one says.',
    raises: {
      'swingwright.yaml': `swingwright: 1
quantities:
  delivery.face: { like: delivery.path }`,
    },
    accepts: {
      'swingwright.yaml': `swingwright: 1
quantities:
  delivery.face_by_wand: { like: delivery.face }`,
    },
    source: 'the file format of this project.',
  }),
});
