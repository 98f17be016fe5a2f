// Says which hand a record or a student's file is about; where nobody says so, there is none.
import type { Subject } from './subject.ts';

export function handOf(subject: Subject): 'left' | 'right' | undefined {
  const { document, student } = subject;
  return (document.kind === 'student' ? document : student?.document)?.hand?.value;
}
