// Gathers what proposals need beside the analysis: the files around, the student's last lesson and today's date; knows no protocol.
import type { Analysis } from '../analysis/result.ts';
import type { CompletionRequest } from '../language/index.ts';
import type { SwingRecord } from '../record/document.ts';
import { kindOf } from '../record/kind.ts';
import { parseDocument } from '../record/parse.ts';
import { resolveReference } from '../record/reference.ts';
import type { Files } from './files.ts';

/** More of the latest records than this are not looked through for the student's own. */
const mostLooked = 6;

export type Surroundings = Pick<CompletionRequest, 'files' | 'earlier' | 'today'>;

/** `roots` are the folders to look through. */
export async function surroundingsOf(
  analysis: Analysis,
  files: Files,
  roots: readonly string[],
  now: Date,
): Promise<Surroundings> {
  const lists = await Promise.all(roots.map((root) => files.list(root).catch((): readonly string[] => [])));
  const found = [...new Set(lists.flat())];
  const earlier = await earlierRecord(analysis, found, files);
  return { files: found, earlier, today: dayOf(now) };
}

/**
 * The last record before this one in the same folder, of the same student where this one names one, of the same club if there is
 * one, and with something measured if there is one: a lesson that is still empty hides no habit.
 */
async function earlierRecord(
  { uri, document, subject: { registry } }: Analysis,
  found: readonly string[],
  files: Files,
): Promise<SwingRecord | undefined> {
  if (document.kind !== 'swing') return undefined;
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
  const alike = lessons.filter(({ club }) => club?.value === document.club?.value);
  return alike.find(isMeasured) ?? alike[0] ?? lessons.find(isMeasured) ?? lessons[0];
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
