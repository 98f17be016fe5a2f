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
      'An equation in `swingwright.yaml` holds whatever its quantities are within their bounds, or never holds there, or gives no number there.',
    matters:
      'One that always holds never finds a slip, and one that never holds would call every record wrong. It has no part in the agreement.',
    raises: {
      'swingwright.yaml': workspace('delivery.path ≈ delivery.arc.direction ± 400 deg'),
    },
    accepts: {
      'swingwright.yaml': workspace('delivery.path ≈ delivery.arc.direction ± 4 deg'),
    },
    source:
      'the bounds of the quantities; sides that are four standard uncertainties apart everywhere count as never equal (judgement). Of an equation that is not linear it is only found that both sides always differ by the same, or have no number.',
  }),
  kinds: ['workspace'],
});
