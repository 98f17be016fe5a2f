// Students, lessons, faults, templates and what a workspace has of its own by name, for an editor's search; reads no file.
import type { Card } from '../analysis/cards.ts';
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import type { Span } from '../measure/measure.ts';
import { lastNameIn } from '../record/reference.ts';
import type { WorkspaceSymbol } from './shapes.ts';

const kinds = { student: 5, template: 11, quantity: 16, fault: 20, record: 24, rule: 14 } as const;

/** More than this nobody looks through. */
const mostSymbols = 500;

/** Those whose name or place holds the letters of the query one after another, newest lessons first. */
export function findWorkspaceSymbols(cards: readonly Card[], query: string): WorkspaceSymbol[] {
  const students = new Map(
    cards.filter(({ kind }) => kind === 'student').map((card) => [card.uri, cardName(card)]),
  );
  const wanted = [...query.toLowerCase()].filter((letter) => letter.trim() !== '');
  const found: WorkspaceSymbol[] = [];
  for (const card of [...cards].sort(byUse)) {
    for (const symbol of symbolsOn(card, students)) {
      if (found.length === mostSymbols) return found;
      if (holdsInOrder(`${symbol.name} ${symbol.containerName}`.toLowerCase(), wanted)) found.push(symbol);
    }
  }
  return found;
}

/** What a file is called, else its name without its suffix. */
export function cardName({ title, uri }: Pick<Card, 'title' | 'uri'>): string {
  if (title !== undefined && title.value.trim() !== '') return title.value;
  return lastNameIn(uri).replace(/\.[a-z]+\.yaml$/, '');
}

function symbolsOn(card: Card, students: ReadonlyMap<string, string>): readonly WorkspaceSymbol[] {
  switch (card.kind) {
    case 'student':
      return [symbol(card, cardName(card), kinds.student, card.title?.span, 'student')];
    case 'template':
      return [symbol(card, cardName(card), kinds.template, card.title?.span, 'template')];
    case 'swing': {
      const name = [card.date, card.club].filter((word) => word !== undefined).join(' ');
      const whose = card.student === undefined ? undefined : students.get(card.student);
      return [symbol(card, name === '' ? cardName(card) : name, kinds.record, undefined, whose ?? 'record')];
    }
    case 'faults':
      return [...card.faults.values()].map(({ id, title }) =>
        symbol(card, id.value, kinds.fault, id.span, title ?? lastNameIn(card.uri)),
      );
    case 'workspace':
      return ownSymbols(card);
    case 'review':
      return [];
  }
}

/** As declared: what belongs to several checkpoints is one. */
function ownSymbols(card: Card): readonly WorkspaceSymbol[] {
  const declared = card.mentions.filter(({ role }) => role === 'definition');
  const bySpan = new Map(declared.map((mention) => [mention.span.start, mention]));
  return [...bySpan.values()].map(({ thing, span }) =>
    symbol(
      card,
      card.text.slice(span.start, span.end),
      thing.kind === 'quantity' ? kinds.quantity : kinds.rule,
      span,
      `own ${thing.kind}`,
    ),
  );
}

function symbol(
  { uri, text }: Card,
  name: string,
  kind: WorkspaceSymbol['kind'],
  span: Span | undefined,
  containerName: string,
): WorkspaceSymbol {
  const start = { line: 0, character: 0 };
  const range = span === undefined ? { start, end: start } : rangeOf(lineTableOf(text), span);
  return { name: name === '' ? '…' : name, kind, location: { uri, range }, containerName };
}

/** What is looked for more often first: all that is not a lesson, by its place, then lessons with the newest first. */
function byUse(a: Card, b: Card): number {
  if ((a.kind === 'swing') !== (b.kind === 'swing')) return a.kind === 'swing' ? 1 : -1;
  const [one, other] = [a.date ?? '', b.date ?? ''];
  if (one !== other) return one < other ? 1 : -1;
  return a.uri < b.uri ? -1 : a.uri > b.uri ? 1 : 0;
}

function holdsInOrder(text: string, letters: readonly string[]): boolean {
  let at = 0;
  for (const letter of letters) {
    at = text.indexOf(letter, at) + 1;
    if (at === 0) return false;
  }
  return true;
}
