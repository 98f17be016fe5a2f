// The check that says which measurement of a computed quantity comes without a word of how sure it is.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

const workspace = `swingwright: 1
derived:
  delivery.swing_gap:
    is: delivery.path - delivery.arc.direction
    unit: deg
    bounds: -20..20 deg`;

const lesson = (gap: string): string => `swing: 1
delivery:
  swing_gap: ${gap}`;

export const missingUncertainty = fromProblems({
  code: 'missing-uncertainty',
  severity: 'warning',
  title: 'Nobody says how sure this is',
  explanation: explain({
    found:
      'A quantity that this workspace computes was measured as well, and neither the measurement, its method nor `swingwright.yaml` says how sure it is.',
    matters:
      'The measurement cannot be weighed against the rest of the record, so it is left out; an invented uncertainty would let it win or lose by chance.',
    raises: { 'lesson.swing.yaml': lesson('3 deg'), 'swingwright.yaml': workspace },
    accepts: { 'lesson.swing.yaml': lesson('3 deg ± 1 deg'), 'swingwright.yaml': workspace },
    source: 'JCGM 100:2008, 0.1: without its uncertainty a result cannot be compared.',
  }),
});
