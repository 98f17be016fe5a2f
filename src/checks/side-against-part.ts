// The check that says where an injury names two different sides of the body.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const sideAgainstPart = fromProblems({
  code: 'side-against-part',
  severity: 'warning',
  title: 'Part and side name different sides',
  explanation: explain({
    found: 'The part of an injury names one side of the body, and `side` names the other.',
    matters:
      'Nobody can tell which one hurts. Until it is put right, cautions are given for both sides; nothing is cleared.',
    raises: {
      'ansa.student.yaml': `student: 1
hand: right
injuries: [{ part: lead wrist, side: right }]`,
    },
    accepts: {
      'ansa.student.yaml': `student: 1
hand: right
injuries: [{ part: lead wrist, side: left }]`,
    },
    source: 'the lead side is the one nearer the target: left for a right-handed player.',
  }),
});
