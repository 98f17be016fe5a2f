// What a handout of one lesson tells, as plain data: what was seen, what causes what, at most three changes, what is measured next; in no language.
import type { Caution, Fault, Injury, PlannedChange, SwingRecord } from '../record/document.ts';
import type { GoalForecast } from '../judgement/forecast.ts';
import type { Verdicts } from '../judgement/judgement.ts';
import type { Outlook } from '../judgement/prediction.ts';
import { standingNumber } from '../judgement/standing-number.ts';
import type { JudgedReading } from '../model/agreement-result.ts';
import type { Value } from '../model/value.ts';
import { foremostOf } from '../checks/forecast-words.ts';
import { isMinorOn } from '../record/date.ts';
import { meets } from '../registry/body.ts';
import { languages, isLanguage, type Language } from '../registry/language.ts';
import type { Quantity } from '../registry/quantity.ts';
import { asAllSay } from './as-all-say.ts';
import type { Lesson } from './lessons.ts';
import { nextEntriesOf, type NextEntry } from './next-entries.ts';
import { askedFor, forecastOf, goalsOf, mostChangesIn } from './plan.ts';
import type { Analysis } from './result.ts';
import { whatIfOf } from './what-if.ts';

/** Injuries are part of a handout only where somebody asks for them. */
export type Health = 'named' | 'left out';

/** SI, as this player sees left and right. */
type Now = Pick<Value, 'value' | 'u'>;

export interface HandoutChange {
  readonly planned: PlannedChange;
  readonly quantity: Quantity;
  /** As entered; what all entries together say, from where predictions start, where the two are apart. */
  readonly now: Now | undefined;
  /** SI; the same where the plan names one number. Undefined where it names none. */
  readonly aim: { readonly from: number; readonly to: number } | undefined;
  /** The faults that it is for, or else those that name it among what helps. */
  readonly faults: readonly Fault[];
  readonly feel: string | undefined;
  readonly drills: readonly string[];
  /** Parts of the body that these faults' changes and drills load, whatever the student's file says of them. */
  readonly loads: readonly Caution[];
  /** The record as `now` has it, for pictures. */
  readonly present: Analysis;
  /** The record with this change made, for pictures. */
  readonly then: Analysis | undefined;
}

/** Something that a whole handout would have. */
export type Gap =
  'student' | 'name' | 'date' | 'club' | 'numbers' | 'faults' | 'goals' | 'plan' | 'drills' | 'feel';

export interface Handout {
  readonly language: Language;
  readonly analysis: Analysis;
  readonly name: string | undefined;
  readonly date: string | undefined;
  readonly club: string | undefined;
  readonly isMinor: boolean;
  readonly verdicts: Verdicts | undefined;
  readonly goals: readonly GoalForecast[];
  /** Of the ball's flight, in the words of the format, as goals for this club ask for them. */
  readonly shapes: readonly string[];
  readonly changes: readonly HandoutChange[];
  /** How many the plan has beyond these; nothing that the handout foresees counts on them. */
  readonly furtherChanges: number;
  readonly outlooks: readonly { readonly outlook: Outlook; readonly now: Now | undefined }[];
  /** The record with every change of the plan made. */
  readonly then: Analysis | undefined;
  readonly proofs: readonly string[];
  readonly next: readonly NextEntry[];
  /** Readings that do not fit the others. */
  readonly conflicts: readonly JudgedReading[];
  /** Those that the changes load; empty unless they were asked for. */
  readonly injuries: readonly Injury[];
  /** Of the student's file, for the coach's own alone; without what speaks of an injured part, unless that was asked for. */
  readonly notes: string | undefined;
  readonly gaps: readonly Gap[];
}

export type HandoutResult =
  | { readonly kind: 'handout'; readonly handout: Handout }
  | { readonly kind: 'refused'; readonly words: string };

/** More than these are for the lesson after the next, whatever a workspace allows. */
const mostOnPage = 3;

/**
 * `lessons` are those of this student alone, for they say how the coach usually measures.
 *
 * @param wanted the language that was asked for; otherwise that of the record, of the student, of the workspace, English
 */
export function handoutOf(
  analysis: Analysis,
  lessons: readonly Lesson[],
  { language: wanted, health }: { readonly language: string | undefined; readonly health: Health },
): HandoutResult {
  const { document, subject, account } = analysis;
  if (document.kind !== 'swing')
    return {
      kind: 'refused',
      words: 'Found a file of another kind; expected a record that ends in `.swing.yaml`.',
    };
  const language = languageOf(wanted, document, analysis);
  if (!isLanguage(language)) return { kind: 'refused', words: unknownLanguage(language) };
  const student = subject.student?.document;
  const limit = Math.min(mostOnPage, mostChangesIn(subject));
  const changes = document.plan.flatMap((planned) => changeOf(planned, analysis) ?? []);
  const shown = changes.slice(0, limit);
  // What is foreseen is of what is shown, so that words, tables and pictures speak of one plan.
  const held =
    shown.length === changes.length ? document : { ...document, plan: shown.map(({ planned }) => planned) };
  const known = held === document ? subject : { ...subject, document: held };
  const forecast = forecastOf(known, account);
  const goals = goalsOf(subject);
  const [name, date, club] = [student?.name?.value, document.date?.value, document.club?.value];
  const born = student?.born?.value;
  const then = thenOf(analysis, shown);
  return {
    kind: 'handout',
    handout: {
      language,
      analysis,
      name: name?.trim() === '' ? undefined : name,
      date,
      club,
      isMinor: born !== undefined && date !== undefined && isMinorOn(born, date),
      verdicts: subject.judgement,
      goals: forecast?.goals ?? [],
      shapes: goals.flatMap(({ goal }) => goal.shape?.value ?? []),
      changes: shown,
      furtherChanges: changes.length - shown.length,
      outlooks:
        forecast === undefined || changes.length === 0
          ? []
          : foremostOf(forecast.whole, askedFor(known, forecast)).map((outlook) => ({
              outlook,
              now: account && standingNumber(outlook.quantity.id, account),
            })),
      then,
      proofs: [...new Set(held.plan.flatMap(({ proof }) => proof?.value ?? []))],
      next: nextEntriesOf(analysis, lessons),
      conflicts: analysis.agreement?.entries.filter(({ verdict }) => verdict === 'conflict') ?? [],
      injuries: health === 'named' ? injuriesOf(shown, analysis) : [],
      notes: notesOf(analysis, health),
      gaps: gapsIn(analysis, document, shown, goals.length),
    },
  };
}

function languageOf(wanted: string | undefined, document: SwingRecord, { subject }: Analysis): string {
  const { student, workspace } = subject;
  const written = document.language ?? student?.document.language ?? workspace?.document.language;
  return wanted ?? written?.value ?? 'en';
}

function unknownLanguage(word: string): string {
  return `Found the language \`${word}\`; expected one of ${languages.map((one) => `\`${one}\``).join(', ')}.`;
}

function changeOf(planned: PlannedChange, analysis: Analysis): HandoutChange | undefined {
  const { quantity, to, because } = planned;
  if (quantity === undefined) return undefined;
  const { judgement } = analysis.subject;
  const book = [...(judgement?.faults.values() ?? [])].map(({ fault }) => fault);
  const reasons = new Set(because.map(({ value }) => value));
  const meant = book.filter(({ id }) => reasons.has(id.value));
  const naming = book.filter((fault) => fault.changes.some((one) => one.quantity?.id === quantity.id));
  const faults = meant.length > 0 ? meant : naming;
  const target = to?.target;
  const aim =
    target === undefined
      ? undefined
      : target.kind === 'window'
        ? { from: target.from, to: target.to }
        : { from: target.value, to: target.value };
  const loads = [...new Set([...meant, ...naming])].flatMap(({ cautions }) => cautions);
  return {
    planned,
    quantity,
    ...nowOf(quantity, analysis),
    aim,
    faults,
    feel: planned.feel ?? feelOf(quantity, faults),
    drills: [...new Set(faults.flatMap(({ drills }) => drills))],
    loads: loads.filter(({ part }, i) => loads.findIndex((one) => one.part.value === part.value) === i),
    then: aim && whatIfOf(analysis, [{ id: quantity.id, to: (aim.from + aim.to) / 2 }])?.then,
  };
}

/** Apart is more than one standard uncertainty of the entry, which that of the difference never exceeds, for what all say holds the entry too. */
function nowOf({ id }: Quantity, analysis: Analysis): Pick<HandoutChange, 'now' | 'present'> {
  const { account, derivation } = analysis;
  const entry = derivation?.values.get(id);
  const all = account && standingNumber(id, account);
  const isApart =
    account !== undefined &&
    entry?.kind === 'entered' &&
    all !== undefined &&
    Math.abs(all.value - entry.value) > (entry.u ?? Infinity);
  return isApart ? { now: all, present: asAllSay(analysis, account) } : { now: entry, present: analysis };
}

/** Of this very change where the book has it; else of the first one that helps against the same fault. */
function feelOf({ id }: Quantity, faults: readonly Fault[]): string | undefined {
  const all = faults.flatMap(({ changes }) => changes);
  const own = all.filter(({ quantity }) => quantity?.id === id);
  return [...own, ...all].find(({ feel }) => feel !== undefined)?.feel;
}

function thenOf(analysis: Analysis, changes: readonly HandoutChange[]): Analysis | undefined {
  const settings = changes.flatMap(({ quantity, aim }) =>
    aim === undefined ? [] : [{ id: quantity.id, to: (aim.from + aim.to) / 2 }],
  );
  return settings.length === 0 ? undefined : whatIfOf(analysis, settings)?.then;
}

function injuriesOf(changes: readonly HandoutChange[], { subject }: Analysis): readonly Injury[] {
  const { injuries = [], hand } = subject.student?.document ?? {};
  const loaded = changes.flatMap(({ loads }) => loads.flatMap(({ place }) => place ?? []));
  return injuries.filter(
    ({ place }) => place === undefined || loaded.some((part) => meets(part, place, hand?.value)),
  );
}

/** A sentence that names a part which the same file notes as injured is a note on health, wherever it stands. */
function notesOf({ subject }: Analysis, health: Health): string | undefined {
  const { notes, injuries = [] } = subject.student?.document ?? {};
  const parts = injuries.flatMap(({ part, place }) => [part.value, ...(place ? [place.part.name] : [])]);
  const words = parts.map((part) => part.trim().toLowerCase()).filter((part) => part !== '');
  const told = (notes ?? '')
    .split(/(?<=[.!?])\s+|\n+/)
    .filter((sentence) => health === 'named' || !words.some((word) => sentence.toLowerCase().includes(word)));
  const whole = told.join(' ').trim();
  return whole === '' ? undefined : whole;
}

function gapsIn(
  { subject, derivation }: Analysis,
  document: SwingRecord,
  changes: readonly HandoutChange[],
  goals: number,
): readonly Gap[] {
  const missing: Readonly<Record<Gap, boolean>> = {
    student: subject.student === undefined,
    name: subject.student !== undefined && (subject.student.document.name?.value.trim() ?? '') === '',
    date: document.date === undefined,
    club: document.club === undefined,
    numbers: ![...(derivation?.values.keys() ?? [])].some((id) =>
      /^(checkpoints|delivery|flight|strike|ground)\./.test(id),
    ),
    faults: document.faults.length === 0,
    goals: goals === 0,
    plan: changes.length === 0,
    drills: changes.some(({ drills }) => drills.length === 0),
    feel: changes.some(({ feel }) => feel === undefined),
  };
  return (Object.keys(missing) as Gap[]).filter((gap) => missing[gap]);
}
