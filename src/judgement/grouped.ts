// Puts things with the same key together, in the order in which the keys come up; knows nothing of what they are.

export function grouped<Thing, Key>(
  things: readonly Thing[],
  keyOf: (thing: Thing) => Key,
): ReadonlyMap<Key, readonly Thing[]> {
  const groups = new Map<Key, Thing[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [thing]);
    else group.push(thing);
  }
  return groups;
}
