// Names of quantities and values as the reader meets them in hovers and hints; computes nothing.
import { nameWithin } from '../checks/agreement.ts';
import { showValue } from '../measure/show.ts';
import { relationNamed } from '../model/own-model.ts';
import type { Value } from '../model/value.ts';
import type { Registry } from '../registry/registry.ts';
import { code } from './markdown.ts';

/** "shaft lean at impact", "carry"; an id that the registry does not hold stands as it is. */
export function nameOf(id: string, registry: Registry): string {
  const relation = relationNamed(id);
  if (relation !== undefined) return `the relation ${code(relation)}`;
  const quantity = registry.find(id);
  return quantity === undefined ? code(id) : nameWithin(quantity);
}

/** "a, b and c", cut after a few so that a hover stays short. */
export function list(words: readonly string[], most = 5): string {
  const shown =
    words.length > most ? [...words.slice(0, most - 1), `${words.length - most + 1} more`] : words;
  return shown.length < 2 ? shown.join('') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)!}`;
}

/** "4.0 deg right ± 1.1 deg". */
export function short({ id, value, u }: Pick<Value, 'id' | 'value' | 'u'>, registry: Registry): string {
  const quantity = registry.find(id);
  return quantity === undefined ? '' : showValue(quantity, value, u);
}

/** "carry, wind and loft", longest share of the variance first. */
export function originOf({ from, shares }: Value, registry: Registry): string {
  const byShare = [...from].sort((a, b) => (shares.get(b) ?? 0) - (shares.get(a) ?? 0));
  return list(byShare.map((id) => nameOf(id, registry)));
}

/** A smaller share is not told: "from club speed 2 %" reads as if hardly anything came from it. */
const leastTold = 0.1;

/** "face direction 54 %, club path 31 % and 2 more": the two with the largest shares of the variance. */
export function foremostOf({ from, shares }: Value, registry: Registry): string {
  const byShare = [...from].sort((a, b) => (shares.get(b) ?? 0) - (shares.get(a) ?? 0));
  const named = byShare.slice(0, 2).map((id) => {
    const share = shares.get(id) ?? 0;
    const name = nameOf(id, registry);
    return share >= leastTold ? `${name} ${Math.round(100 * share)} %` : name;
  });
  const rest = byShare.length - named.length;
  return list(rest > 0 ? [...named, `${rest} more`] : named);
}

/** "no wind, a centred strike"; empty where nothing was assumed. */
export function assumptionsOf({ assumed }: Value): string {
  return list([...new Set(assumed.map(({ words }) => words))]);
}
