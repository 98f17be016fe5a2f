// A number of things in words; knows no thing.

/** "1 shot", "3 shots", "2 entries". */
export function counted(count: number, one: string, several = `${one}s`): string {
  return `${count} ${count === 1 ? one : several}`;
}
