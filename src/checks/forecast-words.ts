// Plans, predictions and goals in words, and the lines that keep them in a record; shared by editor and command line, computes nothing.
import { withArticle } from '../measure/article.ts';
import type { Outlook, Prediction } from '../judgement/prediction.ts';
import type { Standing } from '../judgement/goal-standing.ts';
import { inPoints, showSpread, showValue, showWindow } from '../measure/show.ts';
import type { FaceNeed } from '../judgement/face-need.ts';
import type { GoalForecast } from '../judgement/forecast.ts';
import type { SpeedNeed } from '../judgement/speed-need.ts';
import { lowerFirst } from '../measure/quote.ts';
import { hasSides } from '../judgement/proof.ts';

/** Of 95 % of a normal distribution, in standard uncertainties. */
export const coverage95 = 1.959964;

/** What a plan is made for; other quantities move too, and are left for whoever asks. */
const foremost = [
  'delivery.low_point.ahead',
  'delivery.attack',
  'delivery.face_to_path',
  'flight.start',
  'flight.curve',
  'flight.carry',
  'flight.finish',
];

export function foremostOf({ outlooks }: Prediction, further: readonly string[] = []): readonly Outlook[] {
  const ids = new Set([...foremost, ...further]);
  return [...ids].flatMap((id) => outlooks.get(id) ?? []);
}

/** "face direction kept at 1.2 deg right ± 0.5 deg", of what nobody plans to change while the path is changed. */
export function keptWords({ kept }: Prediction): readonly string[] {
  return kept.map(({ quantity, value, u }) => {
    const title = lowerFirst(quantity.title);
    return `${title} kept ${value === null ? 'where it is' : `at ${showValue(quantity, value, u)}`}`;
  });
}

/** "carry 171 m (95 %: 160..182 m), 3 m more ± 1 m, by model". */
export function outlookWords({ quantity, origin, value, u, difference, uDifference }: Outlook): string {
  const title = lowerFirst(quantity.title);
  const parts: string[] = [];
  if (value !== null && u !== null)
    parts.push(`${showValue(quantity, value, u)} (95 %: ${spreadOf(quantity, value, u)})`);
  if (difference !== null)
    parts.push(
      isUnreadable(quantity, difference, uDifference)
        ? 'moves by less than anybody can read'
        : `moves ${movedWords(quantity, difference, uDifference)}`,
    );
  return `${title} ${parts.length === 0 ? 'moves, nobody can tell how far' : parts.join(', ')}, by ${origin}`;
}

/** A tenth of how exactly it is read without an instrument, at the most that is likely (a judgement). */
function isUnreadable({ uncertainty }: Outlook['quantity'], difference: number, u: number | null): boolean {
  return Math.abs(difference) + 2 * (u ?? 0) < uncertainty.otherwise / 10;
}

/** Where 95 of 100 such values lie: "160..182 m". */
export function spreadOf(quantity: Outlook['quantity'], value: number, u: number): string {
  const { min, max } = quantity.bounds;
  const [low, high] = [value - coverage95 * u, value + coverage95 * u];
  // What cannot be is no part of where it may lie.
  const isPossible = value >= min && value <= max;
  return showWindow(quantity, isPossible ? Math.max(min, low) : low, isPossible ? Math.min(max, high) : high);
}

export function movedWords(quantity: Outlook['quantity'], difference: number, u: number | null): string {
  const isSided = hasSides(quantity);
  const shown = inPoints(showValue(quantity, isSided ? difference : Math.abs(difference), u));
  return isSided ? shown : `${shown} ${difference < 0 ? 'less' : 'more'}`;
}

/** "carry 176..180 m: now 171 m ± 3 m (4 %), then 174 m ± 4 m (20 %)"; of a single number also what is taken for it. */
export function goalWords({ now, then }: Pick<GoalForecast, 'now' | 'then'>): string {
  const { wanted } = now;
  const window = showWindow(wanted.quantity, wanted.min, wanted.max);
  const title = lowerFirst(wanted.quantity.title);
  const asked = wanted.asked === undefined ? `${title} ${window}` : `${wanted.asked} (${title})`;
  const later = then.value === now.value ? '' : `, then ${standingWords(then, 'then')}`;
  return `${wanted.key === 'shape' ? 'shape: ' : ''}${asked}${singleWords(wanted)}: now ${standingWords(now)}${later}`;
}

/** "shape draw: not held against the numbers, since nobody says which hand plays". */
export function unheldWords({
  shape,
  reason,
}: {
  readonly shape: { readonly value: string };
  readonly reason: string;
}): string {
  return `shape ${shape.value}: not held against the numbers, since ${reason}`;
}

/** "carry 4 % → 20 %". */
export function goalInShort({ now, then }: GoalForecast): string {
  const { key, quantity } = now.wanted;
  const title = key === 'contact' || key === 'shape' ? `${key} (${lowerFirst(quantity.title)})` : key;
  return `${title} ${percentOf(now.chance)} → ${percentOf(then.chance)}`;
}

/** "By model: start direction 3.0 deg right ± 1.0 deg, curve …; by belief: …", of what is wanted first. */
export function effectsInShort(prediction: Prediction, wanted: readonly string[]): string {
  const known = foremostOf(prediction, wanted).filter(({ difference }) => difference !== null);
  const first = known.filter(({ quantity }) => wanted.includes(quantity.id));
  const shown = [...first, ...known.filter((one) => !first.includes(one))].slice(0, 3);
  return (['model', 'belief'] as const)
    .flatMap((by) => {
      const moved = shown
        .filter(({ origin }) => origin === by)
        .map(
          ({ quantity, difference, uDifference }) =>
            `${lowerFirst(quantity.title)} ${movedWords(quantity, difference!, uDifference)}`,
        );
      return moved.length === 0 ? [] : [`by ${by}: ${moved.join(', ')}`];
    })
    .join('; ');
}

/** " (178 m ± 6 m, as exactly as it is read without an instrument)": why a single number has a window. */
function singleWords({ quantity, single }: Standing['wanted']): string {
  if (single === undefined) return '';
  const why = single.by === 'written' ? 'as written' : 'as exactly as it is read without an instrument';
  return ` (${showValue(quantity, single.value)} ± ${showSpread(quantity, single.leeway)}, ${why})`;
}

export function standingWords({ wanted, value, u, chance }: Standing, when: 'now' | 'then' = 'now'): string {
  if (value === undefined) return when === 'now' ? 'not measured' : 'nobody can tell';
  return `${showValue(wanted.quantity, value, u)} (${percentOf(chance)})`;
}

/**
 * "carry 178 m needs 43.5 m/s ± 1.5 m/s of club speed; this plan gives 41 m/s ± 1 m/s", and where nobody swings so fast: "no club speed up to 80 m/s
 * gives carry 275 m; 52 m/s, the fastest seen with an iron, gives 174 m, and this plan 36 m/s ± 1 m/s".
 */
export function needWords({ then, need }: GoalForecast, planned: 'plan' | 'record'): string | undefined {
  if (need === undefined) return undefined;
  return need.kind === 'speed' ? speedWords(then, need, planned) : faceWords(then, need, planned);
}

/**
 * "curve 40..50 m right needs face to path 22..31 deg right; seen with an iron is 15 deg left..15 deg right, which gives curve 28 m right ± 6 m at
 * the nearest, and this plan gives curve 3 m right ± 2 m".
 */
function faceWords(
  { wanted, value, u }: Standing,
  { unseen, nearest, clubKind, isBesides }: FaceNeed,
  planned: 'plan' | 'record',
): string {
  const { quantity, min, max } = wanted;
  const title = lowerFirst(quantity.title);
  const asked = `${title} ${showWindow(quantity, min, max)}${isBesides ? ' beside the rest of the goal' : ''}`;
  const near = `${title} ${showValue(quantity, nearest.value, nearest.u)}`;
  const given = `this ${planned} gives ${title} ${showValue(quantity, value!, u)}`;
  if (unseen === undefined)
    return `no face and path seen${withClub(clubKind)} give ${asked}; the nearest is ${near}, and ${given}`;
  const need = `${lowerFirst(unseen.quantity.title)} ${showWindow(unseen.quantity, unseen.needed.min, unseen.needed.max)}`;
  const seen = showWindow(unseen.quantity, unseen.seen.min, unseen.seen.max);
  return `${asked} needs ${need}; seen${withClub(clubKind)} is ${seen}, which gives ${near} at the nearest, and ${given}`;
}

function speedWords({ wanted: goal }: Standing, need: SpeedNeed, planned: 'plan' | 'record'): string {
  const { quantity, min, max } = goal;
  const title = lowerFirst(quantity.title);
  const inSpeed = {
    ...quantity,
    dimension: 'speed',
    unit: 'm/s',
    shown: 'm/s',
    directions: [],
    decimals: 1,
  } as const;
  const speed = (value: number, u?: number): string => showValue(inSpeed, value, u);
  const wanted = `${title} ${showValue(quantity, (min + max) / 2)}`;
  const given = `this ${planned} gives ${speed(need.planned, need.uPlanned)}`;
  if (need.fastest === undefined)
    return `${wanted} needs ${speed(need.speed!, need.uSpeed)} of club speed; ${given}`;
  const { speed: seen, gives, clubKind } = need.fastest;
  const fastest = `the fastest seen${withClub(clubKind)} is ${speed(seen)}, which gives ${title} ${showValue(quantity, gives)}`;
  return need.speed === undefined
    ? `no club speed that anybody reaches gives ${wanted}; ${fastest}, and ${given}`
    : `${wanted} needs ${speed(need.speed, need.uSpeed)} of club speed; ${fastest}, and ${given}`;
}

/** " with an iron", or nothing where the kind of club is not known. */
export function withClub(clubKind: string | undefined): string {
  return clubKind === undefined ? '' : ` with ${withArticle(clubKind)}`;
}

function percentOf(chance: number | undefined): string {
  if (chance === undefined) return 'nobody can tell';
  const percent = Math.round(100 * chance);
  return percent === 0 ? 'under 1 %' : percent === 100 ? 'over 99 %' : `${percent} %`;
}

/** What stands below `predicted:`, with as many standard uncertainties after ± as the workspace writes. */
export function predictedPairs(
  prediction: Prediction,
  further: readonly string[],
  coverage: number,
): readonly (readonly [id: string, value: string])[] {
  return foremostOf(prediction, further).flatMap(({ quantity, value, u, origin }) =>
    value === null || u === null
      ? []
      : [[quantity.id, `${writable(quantity, value, u * coverage)} by ${origin}`] as const],
  );
}

/** The lines of `predicted:`, one a quantity. */
export function predictedText(prediction: Prediction, further: readonly string[], coverage: number): string {
  const lines = predictedPairs(prediction, further, coverage).map(([id, value]) => `  ${id}: ${value}\n`);
  return lines.length === 0 ? '' : `predicted:\n${lines.join('')}`;
}

/** A number that reads back whole, with its direction word before the ±. */
function writable(quantity: Outlook['quantity'], value: number, u: number): string {
  return showValue(quantity, value, u);
}
