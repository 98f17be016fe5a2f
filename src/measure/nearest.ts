// Finds the known word that a mistyped one most resembles; knows nothing of what the words mean.

/**
 * The candidate nearest to `word` by edit distance (insert, delete, replace, swap neighbours; letter case ignored), or
 * undefined where none is near: a third of the letters may be wrong, at least one. A word of two letters or more that
 * begins a candidate is near to it, and so is one of three that leaves letters of it out ("mtr"). Of equally near ones one of the
 * same length wins ("gk" is "kg" and not "g"), then the longest common beginning, then the order given.
 */
export function findNearest(word: string, candidates: readonly string[]): string | undefined {
  const typed = word.toLowerCase();
  // Nothing that is known is this long, and the distance costs the product of both lengths.
  if (typed.length === 0 || typed.length > 64) return undefined;
  const allowed = Math.min(Math.ceil(typed.length / 3), typed.length - 1);
  let best: string | undefined;
  let bestScore = Infinity;
  for (const candidate of candidates) {
    const known = candidate.toLowerCase();
    const begins = typed.length > 1 && known.startsWith(typed);
    // What is farther than the best so far is not measured out.
    const limit = Math.min(allowed, Math.ceil(bestScore));
    const distance = begins ? Math.min(1, known.length - typed.length) : editDistance(typed, known, limit);
    const isNear = begins || distance <= limit;
    if (!isNear && !shortens(typed, known)) continue;
    const isOtherLength = !begins && typed.length !== known.length;
    const far = isNear ? distance + (isOtherLength ? 1 / 2 : 0) : abbreviated;
    const score = far - commonBeginning(typed, known) / 256;
    if (score >= bestScore) continue;
    best = candidate;
    bestScore = score;
  }
  return best;
}

/** How far a word is that leaves letters out: farther than one wrong letter. */
const abbreviated = 1.75;

/** "dgr" for "degree": from its first letter on, in order, at least half of the letters. */
function shortens(typed: string, known: string): boolean {
  if (typed.length < 3 || known.length > 2 * typed.length || typed[0] !== known[0]) return false;
  let at = 0;
  for (const letter of known) if (letter === typed[at]) at++;
  return at === typed.length;
}

/** The optimal string alignment distance, or anything above `limit` as soon as it is sure to exceed it. */
function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before: number[] = [];
  let above: number[] = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let leastOfRow = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, before[j - 2]! + 1);
      row.push(least);
      if (least < leastOfRow) leastOfRow = least;
    }
    // No later row, nor one reached by a swap, can be less than the least of this one.
    if (leastOfRow > limit) return limit + 1;
    before = above;
    above = row;
  }
  return above[b.length]!;
}

function commonBeginning(a: string, b: string): number {
  let length = 0;
  while (length < a.length && length < b.length && a[length] === b[length]) length++;
  return length;
}
