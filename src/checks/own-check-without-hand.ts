// The check that says which of the workspace's own checks cannot be judged while nobody has said which hand plays.
import type { Check } from './check.ts';
import { explain } from './explain.ts';
import { ownCode, placeOfOwn, standingOf } from './own-checks.ts';

const workspace = `swingwright: 1
checks:
  far-right: { when: delivery.path > 5 deg, message: "Found {delivery.path}." }`;

export const ownCheckWithoutHand: Check = {
  code: 'own-check-without-hand',
  severity: 'information',
  title: 'Own check without a hand',
  explanation: explain({
    found:
      'A check of the workspace holds for a player of one hand and not for one of the other, and nobody has said which hand plays.',
    matters:
      "Own checks are written as for a right-handed player, so that left and right change places for a left-handed one. `hand` in the student's file decides.",
    raises: {
      'lesson.swing.yaml': 'delivery: { path: 6 deg right by radar }',
      'swingwright.yaml': workspace,
    },
    accepts: {
      'lesson.swing.yaml': 'student: ansa.student.yaml\ndelivery: { path: 6 deg right by radar }',
      'ansa.student.yaml': 'student: 1\nhand: left',
      'swingwright.yaml': workspace,
    },
    source: 'how own checks are written (README, "Your own quantities, relations and checks").',
  }),
  kinds: ['swing'],
  find: (subject) =>
    subject.own.checks.flatMap((own) => {
      const code = ownCode(own.name.value);
      const isOff = subject.workspace?.document.severities.get(code)?.severity === 'off';
      if (isOff || standingOf(own, subject) !== 'handed') return [];
      const expected = "expected `hand: right` or `hand: left` in the student's file";
      const message = `Found no hand of the player, on which the check \`${code}\` turns; ${expected}.`;
      return [{ span: placeOfOwn(own, subject).span, message }];
    }),
};
