// The `next` command: what a record still has to measure, the most telling first, as text or as JSON.
import pc from 'picocolors';
import { createCache } from '../analysis/cache.ts';
import { findLessons } from '../analysis/lessons.ts';
import { methodWords, narrowingWords, nextEntriesOf, type NextEntry } from '../analysis/next-entries.ts';
import type { FileState } from '../analysis/result.ts';
import { listFolder, loadFile, toPath } from '../disk/files.ts';
import { differenceFromSI } from '../measure/units.ts';
import { analyseRecord } from './record.ts';
import { tidy } from './shots.ts';

/** 0 whatever there is to measure; 2 where the record cannot be read. */
export async function next(path: string, format: 'text' | 'json', signal: AbortSignal): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  const lessons = await findLessons(analysis, {
    files: new Map<string, FileState>(),
    load: loadFile,
    list: listFolder,
    signal,
    cache: createCache(),
  });
  const entries = nextEntriesOf(analysis, lessons);
  process.stdout.write(format === 'json' ? jsonOf(toPath(analysis.uri), entries) : textOf(entries));
  return 0;
}

function textOf(entries: readonly NextEntry[]): string {
  if (entries.length === 0) return 'Nothing that could be measured would tell much more.\n';
  const wide = Math.max(...entries.map(({ quantity }) => quantity.id.length));
  const rows = entries.map((entry) => {
    const place = entry.place === 'student' ? " (in the student's file)" : '';
    const why = [
      ...(entry.reason === 'proof' ? ['the plan asks for it'] : []),
      ...entry.narrowings.map(narrowingWords),
    ];
    return `  ${entry.quantity.id.padEnd(wide)}  ${methodWords(entry)}${place}\n    ${pc.dim(why.join('; '))}`;
  });
  return `${[pc.bold('To measure next'), ...rows].join('\n')}\n`;
}

function jsonOf(file: string, entries: readonly NextEntry[]): string {
  const next = entries.map(({ quantity, method, u, reason, place, narrowings }) => ({
    id: quantity.id,
    method: method ?? null,
    u: tidy(differenceFromSI(u, quantity.unit)),
    unit: quantity.unit,
    reason,
    place,
    narrows: narrowings.map((one) => ({
      id: one.quantity.id,
      unit: one.quantity.unit,
      before: tidy(differenceFromSI(one.before, one.quantity.unit)),
      after: tidy(differenceFromSI(one.after, one.quantity.unit)),
      was_known: one.wasKnown,
      is_known: one.isKnown,
    })),
  }));
  return `${JSON.stringify({ format: 1, file, next }, null, 2)}\n`;
}
