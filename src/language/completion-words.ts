// Proposes the words that may stand for a value: clubs of the bag, faults of the books, shapes, misses, parts of the body, ids, dates; measurements and expressions are another's.
import { handOf } from '../checks/handed.ts';
import { statedReasons } from '../checks/stated-reasons.ts';
import type { Subject } from '../checks/subject.ts';
import { harmless } from '../measure/quote.ts';
import { anchorsOf } from '../record/anchor.ts';
import { wordBeside } from '../record/cursor.ts';
import { bodyWords } from '../registry/body.ts';
import { contacts, misses } from '../registry/generated.ts';
import { meaningOfMiss } from '../registry/meaning-of-miss.ts';
import { checkpoints } from '../registry/quantity.ts';
import { changeWords, findMiss } from '../registry/registry.ts';
import { unique } from './completion-habits.ts';
import { ids, type Word } from './completion-ids.ts';
import { asValue, type Proposal } from './completion-item.ts';
import { placeAt, quantityBeside, type Path } from './completion-place.ts';
import { proposeFiles } from './completion-references.ts';
import { workspaceWords } from './completion-workspace.ts';
import type { Desire } from './completion.ts';

/** Words for the value at `path`; empty where anything may stand. */
export function proposeWords(desire: Desire, path: Path): Proposal[] {
  const { analysis, cursor, earlier } = desire;
  const { kind } = analysis.document;
  const key = String(path.findLast((part) => typeof part === 'string') ?? '');
  const first = path[0];
  if (kind === 'swing' && path.length === 1) {
    if (key === 'student') return proposeFiles('student', desire, [earlier?.student?.value]);
    if (key === 'template') return proposeFiles('template', desire, [earlier?.template?.value]);
    if (key === 'faults_from') return proposeFiles('faults', desire, [earlier?.faultsFrom?.value]);
    if (key === 'shots') return proposeFiles('shots', desire, []);
  }
  if (kind === 'faults' && key === 'extends') return proposeFiles('faults', desire, []);
  if (kind === 'review' && key === 'of') return proposeFiles('swing', desire, []);
  const words =
    (kind === 'workspace' ? workspaceWords(desire, path) : undefined) ??
    (key === 'at' ? placesOf(desire) : wordsFor(desire, key, first, path));
  return words.map(({ word, detail }) => ({
    label: word,
    // Known words are plain, and a version is a number.
    text:
      placeAt(kind, path)?.words?.includes(word) === true ? word : asValue(word, cursor.quote, cursor.style),
    kind: 'word',
    detail,
  }));
}

function wordsFor(desire: Desire, key: string, first: unknown, path: Path): readonly Word[] {
  const { analysis, earlier, today, text, cursor } = desire;
  const { document, subject } = analysis;
  const { kind } = document;
  switch (key) {
    case 'date':
      return [{ word: today, detail: 'today' }];
    case 'club': {
      const bag = document.kind === 'student' ? document.bag : subject.student?.document.bag;
      const named = [...(bag?.values() ?? [])].map(({ name, kind: of }) => ({
        word: name.value,
        detail: of?.value,
      }));
      return named.toSorted(
        (a, b) => Number(b.word === earlier?.club?.value) - Number(a.word === earlier?.club?.value),
      );
    }
    case 'fault':
      return faultWords(desire);
    case 'because':
      return reasonWords(desire);
    case 'miss':
    case 'misses':
      return misses.map(({ word }) => ({ word, detail: missMeaning(word, subject) }));
    case 'contact':
      return contacts.map(({ word, meaning }) => ({ word, detail: meaning }));
    case 'part':
    case 'cautions':
      return bodyWords.map((word) => ({ word }));
    case 'change':
    case 'effect':
      return ids(desire).map(({ id, title }) => ({ word: id, detail: title }));
    case 'about':
      return placesOfRecord(desire);
    case 'direction': {
      const about = quantityBeside(text, cursor, subject.registry);
      if (kind !== 'faults') return [];
      return about === undefined ? [{ word: 'more' }, { word: 'less' }] : changeWords(about);
    }
    default: {
      const known = placeAt(kind, path)?.words ?? [];
      return known.map((word) => ({
        word,
        detail: first === 'misses' ? missMeaning(word, subject) : undefined,
      }));
    }
  }
}

/** What a remark may be about: what the record holds, in its order, else any quantity. */
function placesOfRecord(desire: Desire): readonly Word[] {
  const { record } = desire.analysis.subject;
  const known = record === undefined ? [] : [...anchorsOf(record.document).values()];
  if (known.length > 0) return known.map(({ about, value }) => ({ word: about, detail: harmless(value) }));
  return ids(desire).map(({ id, title }) => ({ word: id, detail: title }));
}

/** What the numbers show, then the book in its order; what is stated already comes last. */
export function faultWords({ analysis: { document, subject } }: Desire): readonly Word[] {
  if (document.kind !== 'swing') return [];
  const stated = document.faults.map(({ fault }) => fault.value);
  const shown = subject.judgement?.unstated.map(({ fault }) => fault.id.value) ?? [];
  const known = faultTitles(subject);
  return unique([...shown, ...known.keys()])
    .filter((id) => known.has(id))
    .toSorted((a, b) => Number(stated.includes(a)) - Number(stated.includes(b)))
    .map((word) => ({ word, detail: known.get(word) }));
}

/** Only what the record states: any other reason would be found fault with. */
export function reasonWords({ analysis: { subject } }: Desire): readonly Word[] {
  const known = faultTitles(subject);
  return statedReasons(subject).map((word) => ({
    word,
    detail: known.get(word) ?? missMeaning(word, subject) ?? 'goal',
  }));
}

function missMeaning(word: string, subject: Subject): string | undefined {
  const miss = findMiss(word);
  return miss && meaningOfMiss(miss, handOf(subject));
}

function faultTitles({ faultBooks }: Subject): ReadonlyMap<string, string | undefined> {
  return new Map(
    faultBooks.flatMap((book) =>
      [...book.document.faults.values()].map((fault) => [fault.id.value, fault.title] as const),
    ),
  );
}

/** The checkpoints at which the fault named beside can be seen, then the others in their order. */
function placesOf({ analysis, cursor, text }: Desire): readonly Word[] {
  const name = wordBeside(text, cursor, 'fault');
  const fault = analysis.subject.faultBooks
    .flatMap(({ document }) => [...document.faults.values()])
    .find(({ id }) => id.value === name);
  return unique([...(fault?.at.map(({ value }) => value) ?? []), ...checkpoints]).map((word) => ({ word }));
}
