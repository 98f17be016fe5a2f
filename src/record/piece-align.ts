// Tells which children of three versions of a value are the same one, and in which order they stand together; knows no text around them.
import type { Branch, Child } from './pieces.ts';

/** One child as it was, and as each side has it. */
export interface Known {
  readonly b: Child | undefined;
  readonly o: Child | undefined;
  readonly t: Child | undefined;
}

/** In our order; what only they have stands behind what it stands behind there. */
export function alignedChildren(b: Branch | undefined, o: Branch, t: Branch): readonly Known[] {
  const base = numbered(b?.children ?? []);
  const isList = o.kind === 'list';
  const ours = namedLike(base, numbered(o.children), isList);
  const theirs = namedLike(base, numbered(t.children), isList);
  const order = [...ours.keys()];
  let behind = -1;
  for (const name of theirs.keys()) {
    const at = order.indexOf(name);
    if (at >= 0) {
      behind = at;
      continue;
    }
    // What we took out keeps no place; what is new of theirs comes behind what is new of ours.
    let place = behind + 1;
    if (!base.has(name)) while (place < order.length && isOnlyOurs(order[place]!, base, theirs)) place += 1;
    order.splice(place, 0, name);
    behind = place;
  }
  return order.map((name) => ({ b: base.get(name), o: ours.get(name), t: theirs.get(name) }));
}

function isOnlyOurs(
  name: string,
  base: ReadonlyMap<string, Child>,
  theirs: ReadonlyMap<string, Child>,
): boolean {
  return !base.has(name) && !theirs.has(name);
}

/** By key; several of one key are told apart by their number. */
function numbered(children: readonly Child[]): Map<string, Child> {
  const found = new Map<string, Child>();
  for (const child of children) {
    let name = child.key;
    for (let n = 2; found.has(name); n += 1) name = `${child.key}\0${n}`;
    found.set(name, child);
  }
  return found;
}

/**
 * The children of a side by the names that they had before. Items of a list that are not named by what is in them are the same
 * where as many stand between the same neighbours: then their words were changed.
 */
function namedLike(
  base: ReadonlyMap<string, Child>,
  written: ReadonlyMap<string, Child>,
  isList: boolean,
): ReadonlyMap<string, Child> {
  if (!isList) return written;
  const side = atOtherPlaces(base, written);
  const named = new Map<string, Child>();
  const [before, now] = [[...base.keys()], [...side.keys()]];
  const kept = now.filter((name) => base.has(name));
  const gaps = [...kept, undefined];
  let [i, j] = [0, 0];
  for (const end of gaps) {
    const [from, to] = [
      end === undefined ? before.length : before.indexOf(end, i),
      end === undefined ? now.length : now.indexOf(end, j),
    ];
    const [lost, found] = [from < i ? [] : before.slice(i, from), now.slice(j, to)];
    const same = lost.length === found.length;
    for (const [k, name] of found.entries()) {
      const earlier = same ? lost[k] : undefined;
      const isUnnamed = earlier !== undefined && !base.get(earlier)!.isNamed && !side.get(name)!.isNamed;
      named.set(isUnnamed ? earlier : name, side.get(name)!);
    }
    if (end === undefined) break;
    named.set(end, side.get(end)!);
    [i, j] = [Math.max(i, from + 1), to + 1];
  }
  return named;
}

/** An item that only stands for another place than before is the same one, where no other is about the same thing. */
function atOtherPlaces(
  base: ReadonlyMap<string, Child>,
  side: ReadonlyMap<string, Child>,
): ReadonlyMap<string, Child> {
  const onlyOf = (from: ReadonlyMap<string, Child>, without: ReadonlyMap<string, Child>, stem: string) => {
    const found = [...from].filter(([name, child]) => !without.has(name) && child.stem === stem);
    return found.length === 1 ? found[0]![0] : undefined;
  };
  return new Map(
    [...side].map(([name, child]) => {
      if (base.has(name) || onlyOf(side, base, child.stem) === undefined) return [name, child];
      return [onlyOf(base, side, child.stem) ?? name, child];
    }),
  );
}
