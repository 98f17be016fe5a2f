// What the file of a handout is called, whatever a student's name holds; knows no file system.
import { lastNameIn } from '../record/reference.ts';
import { fileNameOf } from './file-name.ts';
import type { Handout } from './handout.ts';

/** "runa-2026-08-03-student.pdf": days and names sort well, and nothing in a name leads out of a folder. */
export function handoutFileName(
  { name, date, analysis }: Handout,
  audience: 'student' | 'file',
  format: 'html' | 'pdf',
): string {
  const record = lastNameIn(analysis.uri).replace(/\.swing\.yaml$/, '');
  const base = fileNameOf(name ?? record, 'handout');
  return [base, ...(date === undefined || name === undefined ? [] : [date]), `${audience}.${format}`].join(
    '-',
  );
}
