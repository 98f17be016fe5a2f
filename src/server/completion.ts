// Gathers what proposals need beside the analysis: the files around, the student's last lesson and today's date; knows no protocol.
import type { Analysis } from '../analysis/result.ts';
import type { CompletionRequest } from '../language/index.ts';
import type { Entry, SwingRecord } from '../record/document.ts';
import { kindOf } from '../record/kind.ts';
import { parseDocument } from '../record/parse.ts';
import { resolveReference } from '../record/reference.ts';
import type { Files } from './files.ts';

/** More of the latest records than this are not looked through for the student's own. */
const mostLooked = 6;

export type Surroundings = Pick<CompletionRequest, 'files' | 'earlier' | 'usual' | 'today'>;

/** `roots` are the folders to look through. */
export async function surroundingsOf(
  analysis: Analysis,
  files: Files,
  roots: readonly string[],
  now: Date,
): Promise<Surroundings> {
  const lists = await Promise.all(roots.map((root) => files.list(root).catch((): readonly string[] => [])));
  const found = [...new Set(lists.flat())];
  const lessons = await earlierLessons(analysis, found, files);
  return { files: found, earlier: lessons[0], usual: usualIn(lessons), today: dayOf(now) };
}

/**
 * The records before this one in the same folder, of the same student where this one names one: those of the same club first, of
 * these those with something measured, so that a lesson that is still empty hides no habit, and of these the latest.
 */
async function earlierLessons(
  { uri, document, subject: { registry } }: Analysis,
  found: readonly string[],
  files: Files,
): Promise<readonly SwingRecord[]> {
  if (document.kind !== 'swing') return [];
  const folder = folderOf(uri);
  const records = found.filter(
    (other) => other !== uri && kindOf(other) === 'swing' && folderOf(other) === folder,
  );
  const student = document.student === undefined ? undefined : resolveReference(uri, document.student.value);
  const date = document.date?.value ?? '9999';
  const lessons: SwingRecord[] = [];
  // Names that begin with the day come in the order of days.
  for (const other of records.toSorted().reverse().slice(0, mostLooked)) {
    const state = files.get(other) ?? (await files.load(other));
    if (state.kind !== 'text') continue;
    const record = kept(other, state.text, registry);
    if (record === undefined || (record.date !== undefined && record.date.value > date)) continue;
    const theirs = record.student === undefined ? undefined : resolveReference(other, record.student.value);
    if (student === undefined || theirs === student) lessons.push(record);
  }
  const rank = (record: SwingRecord): number =>
    (record.club?.value === document.club?.value ? 0 : 2) + (isMeasured(record) ? 0 : 1);
  return lessons.toSorted((a, b) => rank(a) - rank(b));
}

/** What the last lesson left out is as it was in the one before that had it. */
function usualIn(lessons: readonly SwingRecord[]): ReadonlyMap<string, Entry> {
  const usual = new Map<string, Entry>();
  for (const { entries } of lessons)
    for (const [id, entry] of entries) if (!usual.has(id) && entry.readings.length > 0) usual.set(id, entry);
  return usual;
}

function isMeasured({ entries }: SwingRecord): boolean {
  return [...entries.values()].some(({ readings }) => readings.length > 0);
}

interface Parsed {
  readonly text: string;
  readonly registry: Registry;
  readonly record: SwingRecord | undefined;
}

type Registry = Analysis['subject']['registry'];

const parsed = new Map<string, Parsed>();

function kept(uri: string, text: string, registry: Registry): SwingRecord | undefined {
  const before = parsed.get(uri);
  if (before?.text === text && before.registry === registry) return before.record;
  const document = parseDocument('swing', text, registry);
  const record = document.kind === 'swing' ? document : undefined;
  if (parsed.size > 50) parsed.clear();
  parsed.set(uri, { text, registry, record });
  return record;
}

function folderOf(uri: string): string {
  return uri.slice(0, uri.lastIndexOf('/'));
}

/** In the coach's own time zone. */
function dayOf(now: Date): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
