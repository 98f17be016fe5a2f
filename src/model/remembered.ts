// Keeps the last results of costly pure functions; knows nothing of what they mean.

/**
 * The same function, of which the last `room` results are kept with their arguments. Since it is pure, nobody can tell but by the
 * clock: the same numbers, to the last bit, give the same result whatever was asked before.
 *
 * @param width how many numbers the function takes, always.
 */
export function remembered<Result>(
  width: number,
  room: number,
  compute: (numbers: readonly number[]) => Result,
): (numbers: readonly number[]) => Result {
  const keys = new Float64Array(width * room);
  const results: Result[] = [];
  let next = 0;

  const place = (numbers: readonly number[]): number => {
    for (let n = 0; n < results.length; n++) {
      let i = 0;
      while (i < width && Object.is(keys[n * width + i], numbers[i])) i++;
      if (i === width) return n;
    }
    return -1;
  };

  return (numbers) => {
    const known = place(numbers);
    if (known >= 0) return results[known]!;
    const result = compute(numbers);
    keys.set(numbers, next * width);
    results[next] = result;
    next = (next + 1) % room;
    return result;
  };
}

/** Keeps the last `room` results by a text that says all that they depend on; asks for those that it has not. */
export function rememberedByText<Result>(room: number): (key: string, compute: () => Result) => Result {
  const results = new Map<string, Result>();
  return (key, compute) => {
    const known = results.get(key);
    if (known !== undefined) return known;
    const result = compute();
    results.set(key, result);
    const [oldest] = results.keys();
    if (results.size > room) results.delete(oldest!);
    return result;
  };
}
