// The steps from cause to effect of the whole record, one for each quantity that follows from others; knows no entries' values.
import { arcRules } from './rules/arc.ts';
import { faceRules } from './rules/face.ts';
import { flightRules } from './rules/flight.ts';
import { groundRules } from './rules/ground.ts';
import { impactRules } from './rules/impact.ts';
import { linkageRules } from './rules/linkage.ts';
import { loftRules } from './rules/loft.ts';
import { postureRules } from './rules/posture.ts';
import type { Context, Rule } from './rule.ts';

/** In a fit the loft is turned open with the face, where deriving from single entries takes a square face. */
const superseded = 'delivered-loft';

/**
 * No two of these give the same quantity, and they run in no circle: body and club → linkage → arc → face and loft →
 * impact → flight, with ground, strike and balance beside them.
 */
export function forwardRules(context: Context, isEntered: (id: string) => boolean): readonly Rule[] {
  return [...allForwardRules(isEntered), ...ownRules(context)].filter(
    (rule) => (rule.appliesTo?.(context) ?? true) && (rule.requires?.some(isEntered) ?? true),
  );
}

function ownRules({ own }: Context): readonly Rule[] {
  return own === undefined ? [] : [...own.rules, ...own.relations.map(({ rule }) => rule)];
}

/** Those that only a fit takes, for whoever looks up a formula by name. */
export function rulesOfFit(): readonly Rule[] {
  return [...linkageRules(() => true), ...loftRules, ...groundRules, ...postureRules(() => true)];
}

function allForwardRules(isEntered: (id: string) => boolean): readonly Rule[] {
  const shared = [...arcRules, ...faceRules, ...impactRules, ...flightRules];
  return [
    ...postureRules(isEntered),
    ...linkageRules(isEntered),
    ...loftRules,
    ...groundRules,
    ...shared.filter((rule) => rule.direction !== 'inverse' && rule.name !== superseded),
  ];
}
