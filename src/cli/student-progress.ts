// The `progress` command: how one student came along, club by club, as text, JSON or a page.
import { jsonText } from './formats/json-text.ts';
import pc from 'picocolors';
import { findLessons } from '../analysis/lessons.ts';
import { whatGoalsGoBy } from '../analysis/comparison-words.ts';
import { dayOf, outcomeInShort } from '../analysis/outcome-words.ts';
import { progressOf, type ClubProgress, type ProgressRequest } from '../analysis/progress.ts';
import {
  gapsOf,
  goalPointWords,
  heldWords,
  movedWords,
  pointWords,
  targetWords,
  spanWords,
} from '../analysis/progress-words.ts';
import { settle } from '../analysis/settle.ts';
import { nameWithin } from '../checks/agreement.ts';
import { loadFile, toPath, toUri } from '../disk/files.ts';
import { progressPage } from '../draw/progress.tsx';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { printable } from './formats/text.ts';
import { practiceAround } from './practice.ts';
import { tidy } from './shots.ts';
import type { ComparisonFormat } from './compare.ts';

/** Prints the progress of the student of a file; 2 where it cannot be read, is of no student, or a quantity or club is not known. */
export async function studentProgress(
  path: string,
  request: ProgressRequest,
  format: ComparisonFormat,
  signal: AbortSignal,
): Promise<number> {
  const uri = toUri(path);
  const own = await loadFile(uri);
  if (own.kind !== 'text')
    return refuse(
      `cannot read \`${path}\`: ${own.kind === 'missing' ? 'there is no such file' : own.reason}`,
    );
  const practice = practiceAround(signal);
  const analysis = await settle(uri, practice.files, practice.load, signal, practice.cache);
  if (analysis.document.kind !== 'student')
    return refuse(`\`${path}\` is of no student; expected a file that ends in \`.student.yaml\``);
  const { registry } = analysis.subject;
  const unknown = request.quantities.find((id) => registry.find(id) === undefined);
  if (unknown !== undefined)
    return refuse(`\`${unknown}\` is no quantity; expected an id such as \`delivery.attack\``);
  const clubs = progressOf(await findLessons(analysis, practice), request);
  if (request.club !== undefined && clubs.length === 0)
    return refuse(`\`${path}\` has no lesson with \`${request.club}\``);
  const name = analysis.document.name?.value ?? toPath(uri);
  process.stdout.write(
    format === 'html'
      ? progressPage(name, clubs)
      : format === 'json'
        ? json(path, name, clubs)
        : text(name, clubs),
  );
  return 0;
}

function refuse(reason: string): number {
  process.stderr.write(`swingwright: ${printable(reason)}.\n`);
  return 2;
}

function text(name: string, clubs: readonly ClubProgress[]): string {
  if (clubs.length === 0) return `${printable(name)}: no lessons.\n`;
  return `${[pc.bold(printable(name)), ...clubs.map(clubText)].join('\n\n')}\n`;
}

function clubText(club: ClubProgress): string {
  const { series, goals, held, cautions, conflicts } = club;
  const conflicting = conflicts.filter(({ count }) => count > 0);
  const rows = [
    ...gapsOf(club).map((gap) => `  ${gap}`),
    ...series.flatMap((one) => [
      `  ${nameWithin(one.quantity)}: ${movedWords(one)}`,
      ...one.points.map((point) => `    ${dayOf(point.lesson)}  ${pointWords(one, point)}`),
      ...one.targets.map((target) => `    ${targetWords(one, target)}`),
    ]),
    ...goals.flatMap((goal) => [
      `  Goal, ${nameWithin(goal.quantity)}`,
      ...goal.points.map((point) => `    ${dayOf(point.lesson)}  ${goalPointWords(goal, point)}`),
    ]),
    ...(goals.length === 0 ? [] : [`  ${whatGoalsGoBy}`]),
    ...(held.length === 0 ? [] : ['  Plans']),
    ...held.map((one) => `    ${dayOf(one.lesson)}  ${heldWords(one)}`),
    ...(cautions.length === 0 ? [] : ['  Caution', ...cautions.map((line) => `    ${line}`)]),
    ...(conflicting.length === 0 ? ['  No entries in conflict'] : ['  Entries in conflict']),
    ...conflicting.map(({ lesson, count }) => `    ${dayOf(lesson)}  ${count}`),
  ];
  return [
    pc.bold(printable(`${club.club ?? 'Without a club'}: ${spanWords(club)}`)),
    ...rows.map(printable),
  ].join('\n');
}

function json(path: string, name: string, clubs: readonly ClubProgress[]): string {
  return jsonText({ format: 1, student: path, name, clubs: clubs.map(clubJson) });
}

function clubJson({
  club,
  lessons,
  undated,
  sameDays,
  series,
  unmeasured,
  goals,
  held,
  cautions,
  conflicts,
}: ClubProgress) {
  return {
    club: club ?? null,
    lessons: lessons.map(({ uri, date }) => ({ file: toPath(uri), date })),
    undated: undated.map(({ uri }) => toPath(uri)),
    daysWithSeveral: sameDays,
    quantities: series.map(({ quantity, points, change }) => ({
      quantity: quantity.id,
      unit: unitOf(quantity),
      points: points.map(({ lesson, value, low, high }) => ({
        date: lesson.date,
        file: toPath(lesson.uri),
        value: shown(quantity, value.value),
        u: tidy(differenceFromSI(value.u, unitOf(quantity))),
        interval: [shown(quantity, low), shown(quantity, high)],
        how: value.how,
        fitsItsRecord: !value.isInDoubt,
      })),
      change:
        change?.value === undefined
          ? null
          : { value: tidy(differenceFromSI(change.value, unitOf(quantity))), size: change.size },
    })),
    notMeasured: unmeasured.map(({ id }) => id),
    goals: goals.map(({ key, quantity, points }) => ({
      goal: key,
      quantity: quantity.id,
      unit: unitOf(quantity),
      points: points.map(({ lesson, standing: { wanted, value, chance } }) => ({
        date: lesson.date,
        from: shown(quantity, wanted.min),
        to: shown(quantity, wanted.max),
        value: value === undefined ? null : shown(quantity, value),
        chance: chance === undefined ? null : Number(chance.toFixed(4)),
      })),
    })),
    plans: held.map((one) => ({
      date: one.lesson.date,
      planOf: one.plan.date,
      decidedOn: (one.decided?.next ?? one.lesson).date,
      summary: outcomeInShort((one.decided ?? one).outcome),
    })),
    cautions,
    conflicts: conflicts.map(({ lesson, count }) => ({ date: lesson.date, count })),
  };
}

function unitOf({ shown: wanted, unit }: Quantity): string {
  return wanted ?? unit;
}

function shown(quantity: Quantity, value: number): number {
  return tidy(fromSI(value, unitOf(quantity)));
}
