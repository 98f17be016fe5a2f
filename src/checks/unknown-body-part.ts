// The check that says which words name no known part of the body.
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { fromProblems } from './from-problems.ts';

export const unknownBodyPart = fromProblems({
  code: 'unknown-body-part',
  severity: 'warning',
  title: 'Unknown part of the body',
  explanation: explain({
    found: 'A caution or an injury names no part of the body that is known.',
    matters:
      'Cautions and injuries meet by these names: about a part that is not known nobody would be warned.',
    raises: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    title: Rises before the strike
    cautions: [lowr back]`,
    },
    accepts: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    title: Rises before the strike
    cautions: [lower back]`,
    },
    source: 'the list of parts in schemas/QUANTITIES.md.',
  }),
  fixes: writeNearest,
});
