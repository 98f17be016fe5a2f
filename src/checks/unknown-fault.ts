// The check that says which stated fault is in none of the fault books.
import { findNearest } from '../measure/nearest.ts';
import { resolveReference } from '../record/reference.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { writeNearest } from './fixes.ts';
import { sentenceOf } from './from-problems.ts';
import type { Subject } from './subject.ts';

const book = `faults: 1
book:
  low-hands: { title: Low hands }`;

export const unknownFault: Check = {
  code: 'unknown-fault',
  severity: 'warning',
  title: 'Fault not in the book',
  explanation: explain({
    found: 'The record states a fault that neither its fault book nor one that this extends defines.',
    matters: 'What would show the fault, and what changes it, is not known.',
    raises: {
      'lesson.swing.yaml': 'swing: 1\nfaults_from: house.faults.yaml\nfaults: [{ fault: low-hand }]',
      'house.faults.yaml': book,
    },
    accepts: {
      'lesson.swing.yaml': 'swing: 1\nfaults_from: house.faults.yaml\nfaults: [{ fault: low-hands }]',
      'house.faults.yaml': book,
    },
    source: 'the file format of this project.',
  }),
  kinds: ['swing'],
  find: (subject) => {
    if (subject.document.kind !== 'swing' || !areComplete(subject.faultBooks)) return [];
    const known = new Set(subject.faultBooks.flatMap(({ document }) => [...document.faults.keys()]));
    const names = [...known];
    return (
      subject.document.faults
        .filter(({ fault }) => !known.has(fault.value))
        // A guess costs a look at every fault of the book.
        .map(({ fault }, at) => findingOf(fault, at < mostGuesses ? names : [], subject))
    );
  },
};

const mostGuesses = 100;

/** Where a book is missing or not read yet, it may define what the others do not. */
function areComplete(books: Subject['faultBooks']): boolean {
  const last = books.at(-1);
  if (last === undefined) return false;
  const { extends: reference } = last.document;
  if (reference === undefined) return true;
  const uri = resolveReference(last.uri, reference.value);
  return books.some((book) => book.uri === uri);
}

function findingOf(
  fault: { readonly value: string; readonly span: RawFinding['span'] },
  known: readonly string[],
  subject: Subject,
): RawFinding {
  const nearest = findNearest(fault.value, known);
  const named = { span: fault.span, ...(nearest === undefined ? {} : { nearest }) };
  const found = `the fault \`${fault.value}\``;
  return {
    span: fault.span,
    message: sentenceOf({ ...named, found, expected: 'a fault of the fault book' }),
    related: subject.faultBooks.slice(0, 1).map(({ uri, document }) => {
      const first = document.faults.values().next().value;
      return { uri, span: first?.id.span ?? { start: 0, end: 0 }, message: 'The fault book' };
    }),
    fixes: writeNearest(named, subject),
  };
}
