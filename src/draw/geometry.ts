// Places on a picture: numbers with fixed decimals, directions seen from above, paths as text; knows no quantity.

/** A place in the units of the view box: right and down positive. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** With two decimals, so that pictures can be compared as text; nothing that is not finite reaches a picture. */
export function fixed(value: number): number {
  return Number.isFinite(value) ? Math.round(value * 100) / 100 + 0 : 0;
}

/** The place at a distance from another in a direction: 0 is up on the picture, rad, right positive. */
export function toward(from: Place, direction: number, distance: number): Place {
  return { x: from.x + distance * Math.sin(direction), y: from.y - distance * Math.cos(direction) };
}

/** "M 1 2 L 3 4": straight lines through the places. */
export function lineThrough(places: readonly Place[]): string {
  return places.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'} ${fixed(x)} ${fixed(y)}`).join(' ');
}

/** A sector of a ring round a place, between two directions and two radii. */
export function ringSector(
  centre: Place,
  directions: readonly [number, number],
  radii: readonly [number, number],
): string {
  const [from, to] = directions[0] <= directions[1] ? directions : [directions[1], directions[0]];
  const [inner, outer] = radii;
  const [a, b, c, d] = [
    toward(centre, from, inner),
    toward(centre, from, outer),
    toward(centre, to, outer),
    toward(centre, to, inner),
  ];
  const long = to - from > Math.PI ? 1 : 0;
  const arc = (radius: number, sweep: number, { x, y }: Place): string =>
    `A ${fixed(radius)} ${fixed(radius)} 0 ${long} ${sweep} ${fixed(x)} ${fixed(y)}`;
  return `${lineThrough([a, b])} ${arc(outer, 1, c)} L ${fixed(d.x)} ${fixed(d.y)} ${inner > 0 ? arc(inner, 0, a) : ''} Z`;
}
