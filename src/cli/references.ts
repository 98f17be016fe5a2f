// The `references` command: every place below a path that mentions a fault, a club, a quantity, a miss or a file, as text or JSON.
import { jsonText } from './formats/json-text.ts';
import pc from 'picocolors';
import type { Card } from '../analysis/cards.ts';
import type { Mention } from '../analysis/mentions.ts';
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import { toPath, toUri } from '../disk/files.ts';
import { cardsBelow } from './archive.ts';
import { printable } from './formats/text.ts';

/** 0 where there is a mention, 1 where there is none, 2 where something could not be read. */
export async function references(
  name: string,
  path: string,
  format: 'text' | 'json',
  signal: AbortSignal,
): Promise<number> {
  const cards = await cardsBelow(path, undefined, signal);
  if (cards === undefined) return 2;
  const found = cards.flatMap((card) => placesOn(card, name));
  if (format === 'json') process.stdout.write(jsonText(found));
  else if (found.length > 0) process.stdout.write(found.map(line).join(''));
  else process.stderr.write(`swingwright: nothing mentions \`${printable(name)}\`.\n`);
  return found.length > 0 ? 0 : 1;
}

interface Place {
  readonly file: string;
  readonly kind: Mention['thing']['kind'];
  readonly name: string;
  readonly role: Mention['role'];
  readonly range: ReturnType<typeof rangeOf>;
}

function placesOn({ uri, text, mentions }: Card, name: string): Place[] {
  const here = mentions.filter(({ thing }) => thing.name === (thing.kind === 'file' ? toUri(name) : name));
  if (here.length === 0) return [];
  const table = lineTableOf(text);
  return here.map(({ thing: { kind }, role, span }) => ({
    file: toPath(uri),
    kind,
    name,
    role,
    range: rangeOf(table, span),
  }));
}

const roles: Readonly<Record<Mention['role'], string>> = {
  definition: 'defined',
  entry: 'entered',
  use: 'mentioned',
};

function line({ file, kind, role, range: { start } }: Place): string {
  return `${printable(file)}:${start.line + 1}:${start.character + 1}  ${pc.dim(`${kind} ${roles[role]}`)}\n`;
}
