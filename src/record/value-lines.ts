// What a file says, one value a line in an order of its own, so that two versions differ only where a value does; knows no version control.
import { printMeasure } from '../measure/print.ts';
import { builtIn, type Registry } from '../registry/registry.ts';
import type { Entry, FileKind } from './document.ts';
import { headersOf } from './known-keys.ts';
import { knownKeys } from './keys.generated.ts';
import { parseDocument } from './parse.ts';
import { readTree } from './read-tree.ts';
import { isEmpty, type Tree } from './tree.ts';

/**
 * `delivery.attack: 3.5 deg down by radar`. Measurements stand in the unit of their quantity and items of lists by what they are
 * about: comments, spaces, order of keys, units and forms make no difference. What YAML cannot read is given as it is written.
 */
export function valueLines(kind: FileKind, text: string, registry: Registry = builtIn): readonly string[] {
  return valuesIn(kind, text, registry)?.map(lineOfValue) ?? text.split(/\r?\n/);
}

/** A signature hangs on this very form. */
export function lineOfValue({ path, value }: ValueLine): string {
  return `${path.join('.')}: ${value}`;
}

/** One value with the keys and names that lead to it. */
export interface ValueLine {
  readonly path: readonly string[];
  readonly value: string;
}

/** The same, keys and values apart; undefined where YAML cannot read the text. */
export function valuesIn(
  kind: FileKind,
  text: string,
  registry: Registry = builtIn,
): readonly ValueLine[] | undefined {
  const { tree, isDamaged } = readTree(text, headersOf(kind));
  if (tree === undefined || isDamaged) return undefined;
  const document = parseDocument(kind, text, registry);
  const entries = document.kind === 'swing' ? document.entries : new Map<string, Entry>();
  const read = [...entries.values()].filter(
    ({ valueSpan }) =>
      !document.problems.some(
        ({ code, span }) => !/^bare-/.test(code) && span.start < valueSpan.end && span.end > valueSpan.start,
      ),
  );
  const known = new Map<number, Entry>(read.map((entry) => [entry.valueSpan.start, entry]));
  const lines: ValueLine[] = [];
  gather(tree, [], known, registry, lines);
  const tops = Object.keys(knownKeys[kind]);
  const ids = registry.quantities.map(({ id }) => id);
  const rank = (order: readonly string[], word: string): number => {
    const at = order.indexOf(word);
    return at < 0 ? order.length : at;
  };
  const places = lines.map((line) => {
    const id = line.path.join('.');
    return { ...line, id, top: rank(tops, line.path[0] ?? ''), place: rank(ids, id) };
  });
  return places
    .sort((a, b) => a.top - b.top || a.place - b.place || compare(a.id, b.id))
    .map(({ path, value }) => ({ path, value }));
}

function gather(
  tree: Tree,
  path: readonly string[],
  known: ReadonlyMap<number, Entry>,
  registry: Registry,
  lines: ValueLine[],
): void {
  const entry = known.get(tree.span.start);
  if (entry !== undefined && entry.readings.length > 0) {
    lines.push({ path, value: readingsOf(entry) });
    return;
  }
  if (tree.kind === 'scalar') {
    lines.push({ path, value: isEmpty(tree) ? '' : tree.source.replace(/\s+/g, ' ').trim() });
    return;
  }
  if (tree.kind === 'list') {
    for (const [i, item] of tree.items.entries())
      gather(item, [...path, nameOf(item) ?? String(i + 1)], known, registry, lines);
    return;
  }
  for (const { key, value } of tree.pairs.values()) gather(value, [...path, key], known, registry, lines);
}

/** In the quantity's own unit and first direction words, whatever was written. */
function readingsOf({ quantity, readings }: Entry): string {
  return readings
    .map(({ measure, doubtful, note, seen }) => {
      // Where the wind comes from stands in the word alone.
      const direction = measure.bearing === undefined ? undefined : measure.direction;
      const plain = printMeasure({ ...measure, unit: undefined, direction }, quantity);
      const said = [
        ...(doubtful ? ['doubtful'] : []),
        ...(note === undefined ? [] : [note]),
        ...(seen === undefined ? [] : [`seen ${seen}`]),
      ];
      return said.length === 0 ? plain : `${plain} (${said.join('; ')})`;
    })
    .join(', ');
}

/** What an item of a list is about, which is what it goes by. */
export function nameOf(item: Tree): string | undefined {
  if (item.kind !== 'map') return undefined;
  for (const key of ['id', 'fault', 'change', 'miss', 'part', 'effect', 'expression']) {
    const word = item.pairs.get(key)?.value;
    if (word?.kind === 'scalar' && word.plain !== null) return word.source;
  }
  return undefined;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
