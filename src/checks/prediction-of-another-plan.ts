// The check that says which stored prediction is not what the plan beside it leads to.
import type { Prediction } from '../judgement/prediction.ts';
import { showValue } from '../measure/show.ts';
import { origins } from '../record/change.ts';
import type { Entry } from '../record/document.ts';
import { nameWithin } from './agreement.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';

const record = (stored: string): string => `swing: 1
student: ansa.student.yaml
club: hybrid
checkpoints: { impact: { shaft_lean: 5 deg forward ± 2 deg } }
delivery: { club_speed: 41 m/s ± 0.5 m/s, attack: 3 deg down, path: 3 deg left ± 0.5 deg, face: 0 deg ± 0.5 deg }
misses: [slice]
plan: [{ change: delivery.face_to_path, to: 1 deg right ± 0.5 deg, because: slice }]
predicted:
  flight.start: ${stored} ± 0.8 deg by model`;
const student = `student: 1
hand: right
bag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }`;

export const predictionOfAnotherPlan: Check = {
  code: 'prediction-of-another-plan',
  severity: 'information',
  title: 'A stored prediction that this plan does not make',
  explanation: explain({
    found:
      'What stands below `predicted` by the model or by a belief differs from what the plan leads to now by more than the uncertainty that was stored with it.',
    matters:
      'The next lesson is held against what is stored. Where the plan was changed since, that would be a test of a plan that nobody made. Store what the plan predicts anew, unless the student is practising by the old one.',
    raises: { 'lesson.swing.yaml': record('1 deg right'), 'ansa.student.yaml': student },
    accepts: { 'lesson.swing.yaml': record('2 deg left'), 'ansa.student.yaml': student },
    source: 'the model and the beliefs of the fault book; one standard uncertainty by judgement.',
  }),
  kinds: ['swing'],
  find: ({ document, forecast, workspace }) => {
    if (document.kind !== 'swing' || forecast === undefined || forecast.changes.length === 0) return [];
    return [...document.predicted.values()].flatMap(
      (entry) => differing(entry, forecast.whole, workspace?.document.coverage ?? 1) ?? [],
    );
  },
};

function differing(
  { quantity, readings, valueSpan }: Entry,
  whole: Prediction,
  coverage: number,
): RawFinding | undefined {
  const [measure] = readings.map((reading) => reading.measure);
  const { value = null, u = null } = whole.outlooks.get(quantity.id) ?? {};
  if (measure === undefined || readings.length !== 1 || value === null || u === null) return undefined;
  if (!origins.some((origin) => origin === measure.method) || measure.stated === undefined) return undefined;
  const uStored = measure.stated / coverage;
  if (Math.abs(measure.value - value) <= uStored) return undefined;
  const stored = showValue(quantity, measure.value, uStored);
  const foreseen = showValue(quantity, value, u);
  return {
    span: valueSpan,
    message: `The stored ${nameWithin(quantity)} is ${stored}; the plan as it stands now leads to ${foreseen}.`,
  };
}
