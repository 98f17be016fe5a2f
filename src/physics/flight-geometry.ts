// Start, curve, carry and finish of a flight seen from above, each from the others; knows nothing of the air.

/**
 * Where the ball lands, right of the target line: finish = carry · sin(start + asin(curve/carry)).
 * Lengths in m, right positive; start in rad. Exact geometry.
 *
 * @returns undefined where the curve is longer than the carry.
 */
export function finishFrom(start: number, curve: number, carry: number): number | undefined {
  const turn = angleOf(curve, carry);
  return turn === undefined ? undefined : carry * Math.sin(start + turn);
}

/** The curve that takes a ball from its start to its finish, m; inverse of `finishFrom` for landings ahead of the ball. */
export function curveFrom(start: number, finish: number, carry: number): number | undefined {
  const bearing = angleOf(finish, carry);
  return bearing === undefined ? undefined : carry * Math.sin(bearing - start);
}

/** The start from which a ball with that curve ends at that finish, rad. */
export function startFrom(curve: number, finish: number, carry: number): number | undefined {
  const turn = angleOf(curve, carry);
  const bearing = angleOf(finish, carry);
  return turn === undefined || bearing === undefined ? undefined : bearing - turn;
}

interface Window {
  readonly min: number;
  readonly max: number;
}

/**
 * Between which finishes every landing ahead of the ball lies that starts, curves and carries within these windows, by `finishFrom`.
 * It turns with start and curve; with the carry it is monotone but for where the curve is as long as the carry.
 */
export function finishWithin(start: Window, curve: Window, carry: Window): Window {
  const most = farthestRight(start.max, curve.max, carry);
  return { min: -farthestRight(-start.min, -curve.min, carry), max: most };
}

function farthestRight(start: number, curve: number, { min, max }: Window): number {
  const carries = [min, max, Math.min(max, Math.max(min, Math.abs(curve)))].map((far) => Math.max(far, 1e-3));
  const ends = carries.map((carry) => {
    const turn = Math.asin(Math.max(-1, Math.min(1, curve / carry)));
    return carry * Math.sin(Math.max(-Math.PI / 2, Math.min(Math.PI / 2, start + turn)));
  });
  return Math.max(...ends);
}

function angleOf(across: number, carry: number): number | undefined {
  return carry > 0 && Math.abs(across) <= carry && Number.isFinite(carry)
    ? Math.asin(across / carry)
    : undefined;
}
