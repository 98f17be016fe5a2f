// What the entries together say of each quantity, entered or not; leaves out what only windows of practice say.
import { builtIn } from '../registry/registry.ts';
import type { PosteriorValue } from './agreement-result.ts';
import { mirroredNumber, type Player } from './mirror.ts';
import type { Reconciliation } from './reconciliation.ts';
import { rowDot } from './rows.ts';
import { windowVariance } from './statistics.ts';

/** A number that windows have more than this share in is no finding about this swing. */
export const mostOfWindows = 0.5;

/**
 * Value and standard uncertainty of every quantity of the registry that the entries inform, by id.
 *
 * @param wanted those ids only.
 */
export function posteriorOf(
  { forward, values, slopes, moves }: Reconciliation,
  player: Player,
  wanted: readonly string[] = forward.ids,
): ReadonlyMap<string, PosteriorValue> {
  const { registry = builtIn } = player;
  const posterior = new Map<string, PosteriorValue>();
  for (const id of wanted) {
    const node = forward.nodeOf.get(id);
    if (node === undefined || !registry.find(id)) continue;
    const variance = rowDot(slopes, node, moves(node));
    if (!(variance > 0 && variance < Infinity)) continue;
    if (windowVariance(forward.parameters, moves(node)) > mostOfWindows * variance) continue;
    posterior.set(id, { value: mirroredNumber(id, values[node]!, player), u: Math.sqrt(variance) });
  }
  return posterior;
}
