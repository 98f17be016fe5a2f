// The `rename` command: gives a fault, a club or what a workspace has of its own another name in every file below a path; writes only when all can be written.
import { readFile, writeFile } from 'node:fs/promises';
import { URI } from 'vscode-uri';
import type { Card } from '../analysis/cards.ts';
import type { Mention } from '../analysis/mentions.ts';
import { sameAs } from '../analysis/occurrences.ts';
import { applyEdits, rename, type FileEdits } from '../analysis/renaming.ts';
import { toPath, toUri } from '../disk/files.ts';
import { cardsBelow } from './archive.ts';
import { printable } from './formats/text.ts';

export const renamed = ['fault', 'club', 'quantity', 'check', 'relation'] as const;
export type Renamed = (typeof renamed)[number];

export interface RenameRequest {
  readonly kind: Renamed;
  readonly from: string;
  readonly to: string;
  readonly path: string;
  /** A file that mentions the one that is meant, where there are several of that name. */
  readonly of: string | undefined;
}

/** 0 where it was renamed, 1 where it cannot be, 2 where something could not be read or written. */
export async function renameCommand(request: RenameRequest, signal: AbortSignal): Promise<number> {
  const { path, kind, from } = request;
  // Of a quantity often only the last word of its id is written.
  const word = kind === 'quantity' ? from.slice(from.lastIndexOf('.') + 1) : from;
  const cards = await cardsBelow(path, word, signal);
  if (cards === undefined) return 2;
  const chosen = choose(request, cards);
  const renaming =
    typeof chosen === 'string'
      ? { kind: 'refused' as const, reason: chosen }
      : rename(chosen, request.to, cards);
  if (renaming.kind === 'refused') {
    process.stderr.write(`swingwright: ${printable(renaming.reason)}\n`);
    return 1;
  }
  return write(renaming.files);
}

/** The one mention that is meant, or why none is. */
function choose({ kind, from, of }: RenameRequest, cards: readonly Card[]): Mention | string {
  const found = cards.flatMap(({ uri, mentions }) =>
    mentions
      .filter(({ thing }) => thing.kind === kind && isCalled(thing, from))
      .map((mention) => ({ uri, mention })),
  );
  const here = of === undefined ? found : found.filter(({ uri }) => uri === toUri(of));
  const made = here.filter(({ mention }) => mention.role === 'definition');
  const [first, ...others] = made.length > 0 ? made : here;
  if (first === undefined)
    return `No ${kind} \`${from}\` is mentioned ${of === undefined ? 'there' : `in \`${of}\``}; \`swingwright references\` lists what is.`;
  const isSame = sameAs(first.mention.thing, cards);
  const isOther = ({ thing }: Mention): boolean =>
    thing.kind === 'quantity' && first.mention.thing.kind === 'quantity'
      ? thing.workspace !== first.mention.thing.workspace
      : !isSame(thing);
  const other = others.find(({ mention }) => isOther(mention));
  if (other === undefined) return first.mention;
  const places = [first, other].map(({ uri }) => `\`${toPath(uri)}\``).join(' and ');
  return `There are several of the name \`${from}\`, in ${places}; say with \`--of FILE\` which one is meant.`;
}

/** What belongs to several checkpoints may be called as it is declared, without one. */
function isCalled({ kind, name }: Mention['thing'], from: string): boolean {
  if (name === from || kind !== 'quantity') return name === from;
  return name.replace(/^checkpoints\.[^.]+\./, 'checkpoints.') === from;
}

async function write(files: readonly FileEdits[]): Promise<number> {
  const texts: { readonly file: string; readonly uri: string; readonly text: string }[] = [];
  for (const { uri, text, edits } of files) {
    const file = URI.parse(uri).fsPath;
    const found = await readWhole(file).catch((error: unknown) => failed('read', uri, error));
    if (found === undefined) return 2;
    const mark = found.startsWith('\ufeff') ? '\ufeff' : '';
    if (found.slice(mark.length) !== text) return failed('read', uri, new Error('it changed meanwhile')) ?? 2;
    texts.push({ file, uri, text: mark + applyEdits({ text, edits }) });
  }
  for (const { file, uri, text } of texts) {
    const isWritten = await writeFile(file, text).then(
      () => true,
      (error: unknown) => failed('write', uri, error),
    );
    if (isWritten === undefined) return 2;
  }
  const places = files.reduce((sum, { edits }) => sum + edits.length, 0);
  process.stdout.write(
    files.map(({ uri, edits }) => `${printable(toPath(uri))}: ${edits.length}\n`).join(''),
  );
  process.stdout.write(`Renamed in ${count(places, 'place')} of ${count(files.length, 'file')}.\n`);
  return 0;
}

/** Refuses a text in another encoding, which could not be written back as it was. */
async function readWhole(file: string): Promise<string> {
  return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(await readFile(file));
}

function failed(what: 'read' | 'write', uri: string, error: unknown): undefined {
  const reason = error instanceof Error ? error.message : String(error);
  process.stderr.write(`swingwright: cannot ${what} \`${printable(toPath(uri))}\`: ${printable(reason)}.\n`);
  return undefined;
}

function count(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? '' : 's'}`;
}
