// Asks what an open record still has to measure, at rest only: it takes longer than a keystroke may.
import { nextEntriesOf, type NextEntry } from '../analysis/next-entries.ts';
import type { Desk } from './desk.ts';

/** Milliseconds without a new request before the outline is worth the work. */
const rest = 150;

/** None where the document has changed or the request is cancelled meanwhile. */
export async function nextAtRest(
  desk: Desk,
  uri: string,
  signal: AbortSignal,
): Promise<readonly NextEntry[]> {
  const before = await desk.current(uri, signal).catch(() => undefined);
  if (before === undefined || before.analysis.document.kind !== 'swing') return [];
  await new Promise((resolve) => setTimeout(resolve, rest));
  const now = signal.aborted ? undefined : await desk.current(uri, signal).catch(() => undefined);
  return now === undefined || now.version !== before.version ? [] : nextNow(desk, uri, signal);
}

export async function nextNow(desk: Desk, uri: string, signal: AbortSignal): Promise<readonly NextEntry[]> {
  const lessons = await desk.lessons(uri, signal).catch(() => undefined);
  const own = lessons?.find((lesson) => lesson.uri === uri)?.analysis;
  const alone = own ?? (await desk.current(uri, signal).catch(() => undefined))?.analysis;
  return alone === undefined ? [] : nextEntriesOf(alone, lessons ?? []);
}
