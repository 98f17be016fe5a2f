// Mentions of quantities wherever ids stand: as keys, as words and in expressions; knows no kind of file.
import { scan } from '../judgement/scan.ts';
import type { Span } from '../measure/measure.ts';
import type { Located } from '../record/document.ts';
import type { Registry } from '../registry/registry.ts';
import type { Mention } from './mentions.ts';

/** What can be measured where a file lies. Two workspaces that declare the same id mean two quantities by it. */
export interface Home {
  readonly registry: Registry;
  /** The URI of the nearest workspace file, if there is one. */
  readonly workspace: string | undefined;
}

export function quantityAt(name: string, span: Span, role: Mention['role'], home: Home): Mention {
  const workspace = isOwn(name, home.registry) ? home.workspace : undefined;
  return { thing: { kind: 'quantity', name, workspace }, span, role };
}

export function quantityNamed({ value, span }: Located<string>, home: Home): readonly Mention[] {
  return home.registry.find(value) === undefined ? [] : [quantityAt(value, span, 'use', home)];
}

/** Where escapes or folding part the text from what it says, a name in it has the place of all of it. */
export function inExpression({ value, span }: Located<string>, home: Home): readonly Mention[] {
  const isPlain = span.end - span.start === value.length;
  return scan(value).tokens.flatMap((token): Mention[] => {
    if (token.kind !== 'name' || home.registry.find(token.name) === undefined) return [];
    const { start, end } = token.span;
    const place = isPlain ? { start: span.start + start, end: span.start + end } : span;
    return [quantityAt(token.name, place, 'use', home)];
  });
}

/** The place of a key without its quotes. */
export function inner({ value, span }: Located<string>, text: string): Span {
  const within = { start: span.start + 1, end: span.end - 1 };
  return text.slice(within.start, within.end) === value ? within : span;
}

export function unquoted(span: Span, text: string): Span {
  const isQuoted = /^["']/.test(text.slice(span.start, span.end));
  return isQuoted ? { start: span.start + 1, end: span.end - 1 } : span;
}

const ownIds = new WeakMap<Registry, ReadonlySet<string>>();

function isOwn(id: string, registry: Registry): boolean {
  const ids = ownIds.get(registry) ?? new Set(registry.own.map((own) => own.id));
  ownIds.set(registry, ids);
  return ids.has(id);
}
