// Finds the next entry without a value, for who writes without a mouse; knows the schemas' places and changes nothing.
import { headersOf } from '../record/known-keys.ts';
import { kindOf, kindOfText } from '../record/kind.ts';
import { readTree } from '../record/read-tree.ts';
import { isEmpty, type Pair, type Tree } from '../record/tree.ts';
import { placeAt, type Path } from './completion-place.ts';

export interface EmptyEntry {
  /** The offset at which the value is to be typed, once the space is there. */
  readonly at: number;
  /** Whether a space has to be put in right before it: a value needs one behind its colon, and one before what follows. */
  readonly needsSpace: boolean;
}

/**
 * The first one behind the offset, else the first of the text; undefined where every entry has a value. A section, or a list of
 * mappings, that holds nothing yet is no entry.
 */
export function findNextEmpty(uri: string, text: string, offset: number): EmptyEntry | undefined {
  const kind = kindOf(uri) ?? kindOfText(text);
  const { tree } = readTree(text, headersOf(kind));
  const found = new Map<number, EmptyEntry>();
  const walk = (node: Tree, path: Path): void => {
    if (node.kind === 'scalar') return;
    if (node.kind === 'list') return node.items.forEach((item, index) => walk(item, [...path, index]));
    for (const pair of node.pairs.values()) {
      const below = [...path, pair.key];
      const isMeasured = placeAt(kind, pair.key === 'value' ? path : below)?.below?.['value'] !== undefined;
      const holds = placeAt(kind, below)?.holds ?? 'value';
      const isWaiting = isEmpty(pair.value) ? holds === 'value' : isMeasured && lacksDigits(pair.value);
      const entry = isWaiting ? emptyBehind(text, pair) : undefined;
      // What an alias repeats stands in the text once.
      if (entry !== undefined) found.set(entry.at, entry);
      walk(pair.value, below);
    }
  };
  if (tree !== undefined) walk(tree, []);
  const inOrder = [...found.values()].toSorted((a, b) => a.at - b.at);
  return inOrder.find(({ at }) => at > offset) ?? inOrder[0];
}

/** True of a measurement as a form leaves it, `deg right by video`: it holds no number before its method. */
function lacksDigits(value: Tree): boolean {
  return (
    value.kind === 'scalar' && typeof value.plain === 'string' && !/\d/.test(value.source.split(/\bby\b/)[0]!)
  );
}

/** Undefined where a word such as `null`, or no colon at all, stands behind the key. */
function emptyBehind(text: string, { keySpan, value }: Pair): EmptyEntry | undefined {
  const isForm = value.kind === 'scalar' && value.plain !== null;
  if (isForm && value.offset !== undefined && value.offset > value.span.start)
    return { at: value.offset, needsSpace: false };
  const [lead] = /^["']?[ \t]*:/.exec(text.slice(keySpan.end)) ?? [];
  if (lead === undefined) return undefined;
  const colon = keySpan.end + lead.length;
  const [, space, next] = /^([ \t]*)([^\r\n]?)/.exec(text.slice(colon))!;
  if (!isForm && !/^[,}\]#]?$/.test(next!)) return undefined;
  const isTight = space === '' || (space!.length === 1 && next !== '' && next !== ',');
  return { at: colon + 1, needsSpace: isTight };
}
