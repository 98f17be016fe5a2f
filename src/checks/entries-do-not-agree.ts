// The check that says where the entries of a record do not agree as a whole, though no single one stands out.
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';

/** One honest record in a thousand is as far out of agreement with itself; chosen so that it is no habit to see this. */
const least = 0.001;

export const entriesDoNotAgree: Check = {
  code: 'entries-do-not-agree',
  severity: 'information',
  title: 'Entries do not agree as a whole',
  explanation: explain({
    found:
      'Each entry fits the others well enough by itself, but all of them together are farther apart than their uncertainties allow.',
    matters:
      'Uncertainties that are stated too small, or several small errors at once, are the usual reasons. The page on why a quantity is what it is shows which entries are at odds.',
    raises: `delivery:
  club_speed: 40 m/s ± 0.5 m/s
  path: 4 deg right ± 0.5 deg
  face: 1 deg right ± 0.5 deg
  face_to_path: 5.4 deg left ± 0.5 deg
flight:
  ball_speed: 56 m/s ± 0.5 m/s
  speed_ratio: 1.46 ± 0.01
  start: 1 deg right ± 0.3 deg
  carry: 150 m ± 2 m
  curve: 5 m right ± 1 m
  finish: 12 m right ± 1 m`,
    accepts: `delivery:
  path: 4 deg right ± 0.5 deg
  face: 1 deg right ± 0.5 deg
  face_to_path: 3.2 deg left ± 0.5 deg`,
    source:
      'the global test of data reconciliation: χ² against its degrees of freedom (VDI 2048; Narasimhan & Jordache 2000).',
  }),
  kinds: ['swing'],
  find: ({ agreement, document }) =>
    agreement?.status === 'solved' && agreement.conflicts.length === 0 && agreement.p < least
      ? [finding(document)]
      : [],
};

function finding({ text }: Subject['document']): RawFinding {
  const message =
    'The entries do not agree as a whole (probability under 0.1 %), and no single one stands out; expected smaller differences, or larger uncertainties.';
  return { span: { start: 0, end: text.search(/[\r\n]|$/) }, message };
}
