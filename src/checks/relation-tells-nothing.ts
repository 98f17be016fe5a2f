// The check that says which relation of the workspace holds for every swing, or for none.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

const workspace = (says: string): string => `swingwright: 1
relations:
  path-and-arc: { says: ${says} }`;

export const relationTellsNothing = fromProblems({
  code: 'relation-tells-nothing',
  severity: 'warning',
  title: 'A relation that tells nothing',
  explanation: explain({
    found:
      'An equation in `swingwright.yaml` holds whatever its quantities are, or for nothing that is possible of them.',
    matters:
      'The one can never find a slip, the other would call every record wrong; so it has no part in the agreement.',
    raises: {
      'swingwright.yaml': workspace('delivery.path ≈ delivery.arc.direction ± 400 deg'),
    },
    accepts: {
      'swingwright.yaml': workspace('delivery.path ≈ delivery.arc.direction ± 4 deg'),
    },
    source: 'the bounds of the quantities; four standard uncertainties apart counts as never (judgement).',
  }),
  kinds: ['workspace'],
});
