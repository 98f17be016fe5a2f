// The sheet of a record as plain data: what it says of itself in words, its pictures as SVG text, and where each thing stands in the text.
import { counted } from '../measure/counted.ts';
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import type { Analysis, TextRange } from '../analysis/result.ts';
import { conflictCodes } from '../analysis/lesson-state.ts';
import { forecastOf } from '../analysis/plan.ts';
import { goalWords } from '../checks/forecast-words.ts';
import { placeWords } from '../checks/verdict-words.ts';
import { svgOf } from '../draw/picture.tsx';
import { pictures, sheetsOf, type Sheet as Drawn } from '../draw/pictures.tsx';
import { cssTheme } from '../draw/theme.ts';
import type { Span } from '../measure/measure.ts';
import { upperFirst } from '../measure/quote.ts';
import { lastNameIn } from '../record/reference.ts';
import { checkpoints } from '../registry/quantity.ts';

export interface Sheet {
  readonly title: string;
  /** How the record stands, each a few words. */
  readonly state: readonly string[];
  readonly findings: readonly SheetFinding[];
  /** Goals with their chances now and after the plan. */
  readonly goals: readonly Placed[];
  readonly plan: readonly Placed[];
  /** What is known of quantities, by id. */
  readonly things: Readonly<Record<string, Thing>>;
  /** Those of which something is known, in the order of the swing. */
  readonly checkpoints: readonly SheetCheckpoint[];
  readonly sections: readonly SheetSection[];
}

export interface SheetCheckpoint {
  readonly name: string;
  readonly title: string;
  /** What is known there. */
  readonly ids: readonly string[];
  /** None of those that were not asked for. */
  readonly pictures: readonly SheetPicture[];
}

export interface Placed {
  readonly words: string;
  /** In the record; null for what stands in another file. */
  readonly range: TextRange | null;
}

export interface SheetFinding extends Placed {
  readonly severity: 'error' | 'warning' | 'information' | 'hint';
  readonly code: string;
}

export interface Thing {
  readonly title: string;
  /** "at impact"; empty of what belongs to no checkpoint. */
  readonly at: string;
  /** With unit, side and spread. */
  readonly number: string;
  /** Where it was written down; null for what was computed. */
  readonly range: TextRange | null;
}

export interface SheetSection {
  readonly name: string;
  readonly title: string;
  readonly pictures: readonly SheetPicture[];
}

export interface SheetPicture {
  readonly name: string;
  readonly title: string;
  readonly svg: string;
  /** Ids of what is drawn in it, each once, in the order drawn. */
  readonly ids: readonly string[];
}

/** The first word of a picture's name says where it belongs; these stand first, in this order. */
const sectionTitles: Readonly<Record<string, string>> = {
  strike: 'Strike',
  flight: 'Flight',
  pressure: 'Pressure',
  causes: 'Causes',
  agreement: 'Agreement',
};

/**
 * Undefined of what is no record of a swing. Figures are drawn of one checkpoint alone, the named one or else the first: those of all
 * would take longer than a frame.
 */
export function sheetOf(analysis: Analysis, checkpoint: string | null = null): Sheet | undefined {
  const { document, findings } = analysis;
  if (document.kind !== 'swing') return undefined;
  const table = lineTableOf(document.text);
  const place = (span: Span): TextRange => rangeOf(table, span);
  return {
    title: titleOf(analysis),
    state: stateOf(analysis),
    findings: findings.map(({ severity, code, message, range }) => ({
      severity,
      code,
      words: message,
      range,
    })),
    goals: (forecastOf(analysis.subject, analysis.account)?.goals ?? []).map((goal) => ({
      words: upperFirst(goalWords(goal)),
      range: goal.uri === analysis.uri ? place(goal.now.wanted.span) : null,
    })),
    plan: document.plan.map(({ change, to, span }) => ({
      words: [
        analysis.subject.registry.find(change?.value ?? '')?.title ?? change?.value ?? '…',
        ...(to === undefined ? [] : ['to', document.text.slice(to.span.start, to.span.end).trim()]),
      ].join(' '),
      range: place(change?.span ?? span),
    })),
    things: thingsOf(analysis, place),
    checkpoints: checkpointsOf(analysis, checkpoint),
    sections: sectionsOf(analysis),
  };
}

function titleOf({ document, subject, uri }: Analysis): string {
  const { club, date } = document.kind === 'swing' ? document : {};
  const words = [subject.student?.document.name?.value, club?.value, date?.value].filter(Boolean);
  return words.length > 0 ? words.join(', ') : lastNameIn(uri);
}

function stateOf({ findings }: Analysis): readonly string[] {
  const count = (isOne: (finding: (typeof findings)[number]) => boolean): number =>
    findings.filter(isOne).length;
  const conflicts = count(({ code }) => conflictCodes.has(code));
  const errors = count(({ severity }) => severity === 'error');
  return [
    conflicts === 0 ? 'No entry in conflict' : counted(conflicts, 'conflict'),
    ...(errors === 0 ? [] : [counted(errors, 'error')]),
    findings.length === 0 ? 'no finding' : counted(findings.length, 'finding', 'findings in all'),
  ];
}

function thingsOf(
  { document, derivation, subject }: Analysis,
  place: (span: Span) => TextRange,
): Sheet['things'] {
  const things: Record<string, Thing> = {};
  const entries = document.kind === 'swing' ? document.entries : new Map<string, never>();
  for (const { id, value, u } of derivation?.values.values() ?? []) {
    const quantity = subject.registry.find(id);
    if (quantity === undefined) continue;
    const entry = entries.get(id);
    things[id] = {
      title: quantity.title,
      at: placeWords(quantity.checkpoint).trim(),
      number: subject.show(quantity, value, u),
      range: entry === undefined ? null : place({ start: entry.keySpan.start, end: entry.valueSpan.end }),
    };
  }
  return things;
}

function checkpointsOf(analysis: Analysis, chosen: string | null): readonly SheetCheckpoint[] {
  const { derivation, subject } = analysis;
  const known = [...(derivation?.values.keys() ?? [])];
  const told = checkpoints.flatMap((name) => {
    const ids = known.filter((id) => subject.registry.find(id)?.checkpoint === name);
    return ids.length === 0 ? [] : [{ name, title: upperFirst(name.replaceAll('_', ' ')), ids }];
  });
  const drawnOne = (told.find(({ name }) => name === chosen) ?? told[0])?.name;
  return told.map((one) => ({
    ...one,
    pictures:
      one.name === drawnOne
        ? pictures
            .filter((picture) => picture.checkpoints)
            .flatMap((picture) => sheetsOf(picture, analysis, one.name).map(drawn))
        : [],
  }));
}

function sectionsOf(analysis: Analysis): readonly SheetSection[] {
  const sections = new Map<string, SheetPicture[]>(Object.keys(sectionTitles).map((name) => [name, []]));
  for (const picture of pictures.filter(({ checkpoints: isOfOne }) => !isOfOne))
    for (const sheet of sheetsOf(picture, analysis)) {
      const section = sheet.name.slice(0, `${sheet.name}-`.indexOf('-'));
      sections.set(section, [...(sections.get(section) ?? []), drawn(sheet)]);
    }
  return [...sections]
    .filter(([, drawn]) => drawn.length > 0)
    .map(([name, drawn]) => ({ name, title: sectionTitles[name] ?? upperFirst(name), pictures: drawn }));
}

function drawn({ name, title, draw }: Drawn): SheetPicture {
  const svg = svgOf(draw(cssTheme));
  return { name, title, svg, ids: idsIn(svg) };
}

function idsIn(svg: string): readonly string[] {
  return [...new Set([...svg.matchAll(/ data-id="([^"]+)"/g)].map(([, id = '']) => id))];
}
