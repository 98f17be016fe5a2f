// The check that says which goal a plan moves away from, where that is as good as certain.
import { leadsAway, mostAway } from '../judgement/leads-away.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { goalWords } from './forecast-words.ts';

const record = (to: string): string => `swing: 1
student: ansa.student.yaml
club: hybrid
checkpoints: { impact: { shaft_lean: 5 deg forward ± 2 deg } }
delivery: { club_speed: 41 m/s ± 0.5 m/s, attack: 3 deg down, path: 3 deg left ± 0.5 deg, face: 0 deg ± 0.5 deg }
misses: [slice]
goals: [{ start: 1 deg left..1 deg right }]
plan: [{ change: delivery.face_to_path, to: ${to} ± 0.5 deg, because: slice }]`;
const student = `student: 1
hand: right
bag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }`;

export const planLeadsAway: Check = {
  code: 'plan-leads-away',
  severity: 'warning',
  title: 'A plan that leads away from a goal',
  explanation: explain({
    found:
      'With the plan made as written, what a goal asks for ends farther outside its window than it is now: 97.5 % certain or more.',
    matters: 'The plan and the goal contradict each other; one of them is meant otherwise.',
    raises: { 'lesson.swing.yaml': record('9 deg right'), 'ansa.student.yaml': student },
    accepts: { 'lesson.swing.yaml': record('1 deg right'), 'ansa.student.yaml': student },
    source: 'the model and, where only that reaches, the beliefs of the fault book; 97.5 % by judgement.',
  }),
  kinds: ['swing'],
  find: ({ uri, document, forecast }) => {
    if (document.kind !== 'swing' || forecast === undefined || document.plan.length === 0) return [];
    return forecast.goals
      .filter((goal) => leadsAway(goal, forecast.whole))
      .map((goal): RawFinding => {
        const place = mostAway(goal, forecast.changes)?.planned ?? document.plan[0]!;
        const span = place.change?.span ?? place.span;
        const related = [{ uri: goal.uri || uri, span: goal.now.wanted.span, message: 'The goal' }];
        return { span, message: `The plan leads away from a goal: ${goalWords(goal)}.`, related };
      });
  },
};
