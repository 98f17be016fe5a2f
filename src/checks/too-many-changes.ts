// The check that says when a plan asks more of a student than can be worked on until the next lesson.
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const plan = (count: number): string =>
  ['delivery.attack', 'delivery.path', 'delivery.face', 'checkpoints.impact.shaft_lean']
    .slice(0, count)
    .map((id) => `  - { change: ${id}, because: heavy }\n`)
    .join('');

export const tooManyChanges: Check = {
  code: 'too-many-changes',
  severity: 'warning',
  title: 'More changes than a student can keep',
  explanation: explain({
    found:
      'The plan names more changes than the workspace allows: three, unless `most_changes` says otherwise.',
    matters:
      'A student who is to change many things changes none of them, and nobody can tell afterwards which one did what.',
    raises: `swing: 1\nmisses: [heavy]\nplan:\n${plan(4)}`,
    accepts: `swing: 1\nmisses: [heavy]\nplan:\n${plan(3)}`,
    source: 'common practice, no source.',
  }),
  kinds: ['swing'],
  find: ({ document, workspace }) => {
    if (document.kind !== 'swing') return [];
    const most = workspace?.document.mostChanges ?? 3;
    const first = document.plan[most];
    if (first === undefined) return [];
    return [
      {
        span: first.change?.span ?? first.span,
        message: `Found ${document.plan.length} changes in one plan; expected at most ${most}.`,
      },
    ];
  },
};
