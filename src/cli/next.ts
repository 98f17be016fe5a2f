// The `next` command: what a record still has to measure, the most telling first, as text or as JSON.
import { jsonText } from './formats/json-text.ts';
import pc from 'picocolors';
import { planCautions } from '../analysis/cautions.ts';
import { findLessons, type Lesson } from '../analysis/lessons.ts';
import { methodWords, narrowingWords, nextEntriesOf, type NextEntry } from '../analysis/next-entries.ts';
import { openPlanOf } from '../analysis/open-plan.ts';
import type { Analysis } from '../analysis/result.ts';
import { clubOf } from '../analysis/same-club.ts';
import { toPath } from '../disk/files.ts';
import { differenceFromSI } from '../measure/units.ts';
import { printable } from './formats/text.ts';
import { practiceAround } from './practice.ts';
import { analyseRecord } from './record.ts';
import { tidy } from './shots.ts';

/** 0 whatever there is to measure; 2 where the record cannot be read. */
export async function next(path: string, format: 'text' | 'json', signal: AbortSignal): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  const lessons = await findLessons(analysis, practiceAround(signal));
  const entries = nextEntriesOf(analysis, lessons);
  const cautions = cautionsFor(analysis, lessons, entries);
  process.stdout.write(
    format === 'json' ? jsonOf(toPath(analysis.uri), entries, cautions) : textOf(entries, cautions),
  );
  return 0;
}

/** Where the plan asks for an entry, that of the plan; an open plan may stand in an earlier lesson. */
function cautionsFor(
  analysis: Analysis,
  lessons: readonly Lesson[],
  entries: readonly NextEntry[],
): readonly string[] {
  if (!entries.some(({ reason }) => reason === 'proof')) return [];
  const own = lessons.find(({ uri }) => uri === analysis.uri);
  const open = own && openPlanOf(lessons, { date: own.date, club: clubOf(own) });
  const plans = [analysis, ...(open === undefined ? [] : [open.from.analysis])];
  return [...new Set(plans.flatMap(planCautions))];
}

function textOf(entries: readonly NextEntry[], cautions: readonly string[]): string {
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
  const told =
    cautions.length === 0 ? [] : ['', 'Caution', ...cautions.map((line) => `  ${printable(line)}`)];
  return `${[pc.bold('To measure next'), ...rows, ...told].join('\n')}\n`;
}

function jsonOf(file: string, entries: readonly NextEntry[], cautions: readonly string[]): string {
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
  return jsonText({ format: 1, file, next, cautions });
}
