// The check that says which goal the plan of a record cannot reach, with what it would take.
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { needWords } from './forecast-words.ts';

const record = (carry: string): string => `swing: 1
student: ansa.student.yaml
club: hybrid
checkpoints: { impact: { shaft_lean: 5 deg forward ± 2 deg } }
delivery: { club_speed: 41 m/s ± 0.5 m/s, attack: 3 deg down, path: 0 deg, face: 0 deg }
goals: [{ carry: ${carry} }]
plan: [{ change: delivery.face_to_path, to: 0 deg ± 1 deg, because: carry }]`;
const student = `student: 1
hand: right
bag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }`;

export const goalOutOfReach: Check = {
  code: 'goal-out-of-reach',
  severity: 'information',
  title: 'A goal that the plan cannot reach',
  explanation: explain({
    found:
      'With the plan made as written, less than one in twenty chances are left that the goal is reached. A carry needs more club speed, by more than two standard uncertainties, than the plan has; a start, a curve, a finish or a shape needs a face or a path that is not seen with this kind of club.',
    matters:
      'A student who works toward what cannot come from this plan is disappointed by it; a nearer goal, or more speed, can be agreed on now.',
    raises: { 'lesson.swing.yaml': record('260 m'), 'ansa.student.yaml': student },
    accepts: { 'lesson.swing.yaml': record('165 m'), 'ansa.student.yaml': student },
    source:
      'the model of impact and flight; what is seen with a club: common practice, no source; one in twenty and two standard uncertainties by judgement.',
  }),
  kinds: ['swing'],
  find: ({ uri, document, forecast }) => {
    if (document.kind !== 'swing' || forecast === undefined || document.plan.length === 0) return [];
    return forecast.goals.flatMap((goal): RawFinding[] => {
      const words = needWords(goal, 'plan');
      if (words === undefined) return [];
      const isHere = goal.uri === uri;
      const span = isHere ? goal.now.wanted.span : (document.plan[0]!.change?.span ?? document.plan[0]!.span);
      const related = isHere ? [] : [{ uri: goal.uri, span: goal.now.wanted.span, message: 'The goal' }];
      return [{ span, message: `Out of reach: ${words}.`, related }];
    });
  },
};
