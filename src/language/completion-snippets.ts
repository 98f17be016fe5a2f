// Proposes whole stretches with places to fill in: a record, a checkpoint, a fault, a change, a window, a long form, a goal; only where they are asked for by name.
import { stepOf } from '../record/lines.ts';
import { isPlainWord } from '../record/plain-word.ts';
import { checkpoints, type Quantity } from '../registry/quantity.ts';
import { clubKinds, shapeWords } from './completion-vocabulary.ts';
import { habitOf, wantedIds } from './completion-habits.ts';
import { asValue, escapeSnippet, type Proposal } from './completion-item.ts';
import { placeAt, quantityAt, type Path } from './completion-place.ts';
import { proposeFiles } from './completion-references.ts';
import { ids } from './completion-ids.ts';
import { faultWords, reasonWords } from './completion-words.ts';
import type { Desire } from './completion.ts';

/** Numbers the places to fill in, in the order in which they are written. */
interface Stops {
  readonly gap: (words?: string) => string;
  readonly choice: (words: readonly string[]) => string;
  /** A choice that is come to after everything else. */
  readonly last: (words: readonly string[]) => string;
}

const mostChoices = 12;
/** Beyond all that a form has; places are gone through in the order of their numbers. */
const mostStops = 1000;

/** Snippets that put keys into the mapping at `path`. */
export function proposeMappings(desire: Desire, path: Path): Proposal[] {
  const { analysis, cursor } = desire;
  const { kind } = analysis.document;
  if (cursor.style !== 'block' || cursor.quote !== '' || /^\s*:|^\s+[^\s#]/.test(cursor.after)) return [];
  if (path.length === 0 && kind === 'swing' && cursor.siblings.size === 0) return [newRecord(desire)];
  if (kind === 'swing' && path.length === 1 && path[0] === 'checkpoints') return checkpointForms(desire);
  if (kind === 'swing' && path.length > 0) return entryForm(desire, path);
  if (kind === 'faults' && path.length === 1 && path[0] === 'book') return [newFault(desire)];
  if (kind === 'student' && path.length === 1 && path[0] === 'bag') return [newClub()];
  return [];
}

/** Snippets for one value or one item of a list. */
export function proposeForms(desire: Desire, path: Path): Proposal[] {
  const { analysis } = desire;
  const { kind } = analysis.document;
  const isItem = typeof path.at(-1) === 'number';
  if (isItem && path.length === 2) {
    if (kind === 'swing' && path[0] === 'faults') return [statedFault(desire)];
    if (kind === 'swing' && path[0] === 'plan') return [change(desire)];
    if (path[0] === 'goals') return [goal(desire)];
  }
  const quantity = quantityAt(kind, path, analysis.subject.registry);
  if (quantity === undefined || /^(?:value|window|give_or_take)$/.test(String(path.at(-1)))) return [];
  if (kind === 'template') return [window(quantity, desire)];
  return placeAt(kind, path)?.below?.['value'] !== undefined && path[0] !== 'goals'
    ? [longForm(quantity, desire)]
    : [];
}

function newRecord(desire: Desire): Proposal {
  const { newline, today, earlier, analysis } = desire;
  const marks = stops();
  const { gap, choice } = marks;
  const paths = (kind: 'student' | 'template' | 'faults', usual: string | undefined): string =>
    choice(proposeFiles(kind, desire, [usual]).map(({ text }) => text));
  const lines = [
    'swing: 1',
    `student: ${paths('student', earlier?.student?.value)}`,
    `date: ${gap(today)}`,
    `club: ${gap(earlier?.club && asValue(earlier.club.value, '', 'block'))}`,
    `template: ${paths('template', earlier?.template?.value)}`,
    `faults_from: ${paths('faults', earlier?.faultsFrom?.value)}`,
  ];
  const measured = [...(earlier?.entries.keys() ?? [])].filter(
    (id) => analysis.subject.registry.find(id)?.section !== 'conditions',
  );
  const asked = measured.length > 0 ? measured : wantedIds(analysis, earlier);
  const tree = measuredLines(asked, desire, marks);
  return snippet(
    'new record',
    [...lines, ...tree].join(newline),
    'a whole record to fill in',
    'swing new record',
  );
}

/** A checkpoint with what the template, the faults, the plan or the record before ask for there. */
function checkpointForms(desire: Desire): Proposal[] {
  const { cursor, newline, text } = desire;
  return checkpoints.flatMap((checkpoint) => {
    if (cursor.siblings.has(checkpoint)) return [];
    const asked = askedBelow(`checkpoints.${checkpoint}`, desire);
    if (asked.length === 0) return [];
    const marks = stops();
    const inner = asked.map(
      (quantity) =>
        `${' '.repeat(cursor.column + stepOf(text))}${quantity.key}: ${blank(quantity, desire, marks)}`,
    );
    return [
      snippet(
        `${checkpoint} with its entries`,
        [`${checkpoint}:`, ...inner].join(newline),
        toFillIn(asked),
        checkpoint,
      ),
    ];
  });
}

/** All that is still asked for in this mapping. */
function entryForm(desire: Desire, path: Path): Proposal[] {
  const { cursor, newline } = desire;
  const prefix = path.join('.');
  const asked = askedBelow(prefix, desire).filter(
    ({ id, key }) => id === `${prefix}.${key}` && !cursor.siblings.has(key),
  );
  if (asked.length < 2) return [];
  const marks = stops();
  const lines = asked.map((quantity) => `${quantity.key}: ${blank(quantity, desire, marks)}`);
  return [
    snippet(
      'entries asked for',
      lines.join(`${newline}${' '.repeat(cursor.column)}`),
      toFillIn(asked),
      'entries asked for',
    ),
  ];
}

function toFillIn({ length }: readonly Quantity[]): string {
  return length === 1 ? '1 entry to fill in' : `${length} entries to fill in`;
}

function askedBelow(prefix: string, { analysis, earlier }: Desire): readonly Quantity[] {
  const all = new Set([...wantedIds(analysis, earlier), ...(earlier?.entries.keys() ?? [])]);
  return [...all].flatMap((id) =>
    id.startsWith(`${prefix}.`) ? (analysis.subject.registry.find(id) ?? []) : [],
  );
}

/** Keys and blanks for these ids, mapping by mapping in the order of a record; indented as the record before this one. */
function measuredLines(asked: readonly string[], desire: Desire, marks: Stops): readonly string[] {
  const { analysis, earlier, text } = desire;
  const step = stepOf(earlier?.text ?? text);
  const lines: string[] = [];
  const write = (found: readonly Quantity[], depth: number): void => {
    const groups = new Map<string, Quantity[]>();
    for (const quantity of found) {
      const part = quantity.id.split('.')[depth]!;
      groups.set(part, [...(groups.get(part) ?? []), quantity]);
    }
    for (const [part, below] of groups) {
      const indent = ' '.repeat(depth * step);
      const [only] = below;
      if (only?.id.split('.').length === depth + 1)
        lines.push(`${indent}${part}: ${blank(only, desire, marks)}`);
      else {
        lines.push(`${indent}${part}:`);
        write(below, depth + 1);
      }
    }
  };
  const inOrder = asked
    .flatMap((id) => analysis.subject.registry.find(id) ?? [])
    .filter(({ section }) => /^(?:checkpoints|delivery|ground|strike|flight)$/.test(section));
  const sections = ['checkpoints', 'delivery', 'ground', 'strike', 'flight'];
  const place = ({ section, checkpoint }: Quantity): number =>
    sections.indexOf(section) * 10 + checkpoints.findIndex((one) => one === checkpoint);
  write(
    inOrder.toSorted((a, b) => place(a) - place(b)),
    0,
  );
  return lines;
}

/** A number to fill in, with the unit, direction and method that are usual; in quotes where YAML could not read them without it. */
function blank(quantity: Quantity, desire: Desire, { gap, last }: Stops): string {
  const habit = habitOf(quantity, desire);
  const number = gap();
  const words = opposites(quantity, habit.directions);
  const word = turn(habit.isOneSided ? words.slice(0, 1) : words, last);
  const unit = habit.unit === '' ? '' : ` ${habit.unit}`;
  const by = habit.method === undefined ? '' : ` by ${habit.method}`;
  return unit + by === '' || isPlainWord((unit + by).trim(), 'block')
    ? `${number}${escapeSnippet(unit)}${word}${escapeSnippet(by)}`
    : `"${number}${escapeSnippet(unit)}${word}${escapeSnippet(asValue(by, '"', 'block'))}"`;
}

function statedFault(desire: Desire): Proposal {
  const { gap, choice } = stops();
  const faults = faultWords(desire).map(({ word }) => asValue(word, '', 'flow'));
  const text = `{ fault: ${choice(faults)}, at: ${choice(checkpoints)}, note: "${gap('what was seen')}" }`;
  return snippet('a fault', text, 'a fault with checkpoint and note', 'fault');
}

function change(desire: Desire): Proposal {
  const { newline, cursor } = desire;
  const { gap, choice } = stops();
  const faults = reasonWords(desire).map(({ word }) => asValue(word, '', 'flow'));
  const near = ids(desire)
    .filter(({ id }) => id.startsWith('checkpoints.address.'))
    .map(({ id }) => id);
  if (cursor.style === 'flow') {
    const text = `{ change: ${choice(near)}, to: ${gap()}, because: [${choice(faults)}], proof: ${gap('delivery.attack < 0 deg')} }`;
    return snippet('a change', text, 'a change with reason and proof', 'change');
  }
  const indent = `${newline}${' '.repeat(cursor.column)}`;
  const text = [
    `change: ${choice(near)}`,
    `to: ${gap()}`,
    `because: [${choice(faults)}]`,
    `proof: ${gap('delivery.attack < 0 deg')}`,
  ].join(indent);
  return snippet('a change', text, 'a change with reason and proof', 'change');
}

function goal(desire: Desire): Proposal {
  const { gap, choice } = stops();
  const flight = (key: string): string => {
    const quantity = desire.analysis.subject.registry.find(`flight.${key}`)!;
    return habitOf(quantity, desire).unit;
  };
  const text = `{ shape: ${choice(shapeWords)}, start: ${gap('0..2')} ${flight('start')} ${choice(['right', 'left'])}, carry: ${gap('150')} ${flight('carry')} }`;
  return snippet('a goal', text, 'shape, start and carry', 'goal');
}

function window(quantity: Quantity, desire: Desire): Proposal {
  const { gap, choice } = stops();
  const { unit, directions } = habitOf(quantity, desire);
  const text = `{ window: ${gap('0')}..${gap('1')} ${escapeSnippet(unit)}${turn(opposites(quantity, directions), choice)}, strict: ${choice(['gentle', 'firm'])}, source: ${gap('common practice')} }`;
  return snippet('a window', text, 'with strictness and source', 'window');
}

function longForm(quantity: Quantity, desire: Desire): Proposal {
  const { gap, choice } = stops();
  const { unit, directions, methods } = habitOf(quantity, desire);
  const text = `{ value: ${gap('0')}${unit === '' ? '' : ` ${escapeSnippet(unit)}`}${turn(opposites(quantity, directions), choice)}, by: ${choice(methods.map((name) => asValue(name, '', 'flow')))}, note: "${gap()}" }`;
  return snippet('the long form', text, 'value, method and note', 'long form');
}

/** One word for each direction, the likeliest first: `back` says nothing else than `backward`. */
function opposites({ directions }: Quantity, words: readonly string[]): readonly string[] {
  const meanings = new Map<string, string>();
  for (const word of words) {
    const found = directions.find((one) => one.word === word);
    const meaning = `${found?.sign} ${found?.bearing}`;
    if (!meanings.has(meaning)) meanings.set(meaning, word);
  }
  return [...meanings.values()];
}

function turn(directions: readonly string[], choice: Stops['choice']): string {
  return directions.length === 0 ? '' : ` ${choice(directions)}`;
}

function newFault({ newline, cursor, text }: Desire): Proposal {
  const { gap, choice } = stops();
  const indent = ' '.repeat(cursor.column + stepOf(text));
  const lines = [
    `${gap('name-of-the-fault')}:`,
    `${indent}title: ${gap('The fault in a few words')}`,
    `${indent}explanation: ${gap('What it is and why it matters')}`,
    `${indent}at: [${choice(checkpoints)}]`,
    `${indent}evidence: ${gap('checkpoints.impact.lead_pressure < 70 %')}`,
  ];
  return snippet('a fault', lines.join(newline), 'title, checkpoint and evidence', 'fault');
}

function newClub(): Proposal {
  const { gap, choice } = stops();
  const text = `${gap('seven iron')}: { kind: ${choice(clubKinds)}, loft: ${gap('33')} deg, lie: ${gap('62')} deg, length: ${gap('37')} in, head_mass: ${gap('270')} g }`;
  return snippet('a club', text, 'kind, loft, lie, length and mass of the head', 'club');
}

function snippet(label: string, text: string, detail: string, filter: string): Proposal {
  return { label, text: `${text}$0`, detail, filter, kind: 'snippet', isSnippet: true };
}

function stops(): Stops {
  let count = 0;
  const gap = (words = ''): string => `\${${++count}:${escapeSnippet(words)}}`;
  const offer = (words: readonly string[], number: number): string =>
    `\${${number}|${words.map((word) => word.replace(/[\\,|$}]/g, '\\$&')).join(',')}|}`;
  const choice = (words: readonly string[]): string =>
    words.length < 2 ? gap(words[0]) : offer(words.slice(0, mostChoices), ++count);
  const last = (words: readonly string[]): string =>
    words.length < 2
      ? escapeSnippet(words[0] ?? '')
      : offer(words.slice(0, mostChoices), mostStops + ++count);
  return { gap, choice, last };
}
