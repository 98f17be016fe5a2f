// What may be taken where nobody entered it, each said aloud as an assumption; knows no steps and no entries.
// Never the club's speed, loft, attack, path, face or arc: those missing means that there is no number.
import { representativeHeads, type HeadKind, type RepresentativeHead } from '../physics/heads.ts';
import { shaftKicks } from '../physics/loft.ts';
import { grounds } from '../physics/run.ts';
import type { Context } from './rule.ts';
import type { Assumption } from './value.ts';

const degree = Math.PI / 180;
const judgement = 'judgement';

/** The representative head of a kind of club; undefined where the kind is not known. */
export function headOf(clubKind: string | undefined): RepresentativeHead | undefined {
  return isHeadKind(clubKind) ? representativeHeads[clubKind] : undefined;
}

/** Every assumption open to a player with such a club and such wind, in a fixed order. */
export function priorsFor(context: Context): readonly Assumption[] {
  return [...weather, ...strike, soleHeight(context), shaftKick(context), ...headMass(context)];
}

/**
 * Where no wind is entered, its direction is not known either: the step of the flight then takes it from halfway between
 * ahead and the side, so that this u stands for 1 m/s along and 1 m/s across the line of flight.
 */
const stillAirUncertainty = Math.SQRT2;

const weather: readonly Assumption[] = [
  {
    id: 'conditions.temperature',
    value: 288.15,
    u: 8,
    words: 'air at 15 °C',
    source: 'ISO 2533:1975, sea level; spread by judgement',
  },
  {
    id: 'conditions.altitude',
    value: 0,
    u: 150,
    words: 'a place at sea level',
    source: 'ISO 2533:1975; spread by judgement',
  },
  {
    id: 'conditions.humidity',
    value: 0.5,
    u: 0.2,
    words: 'half-saturated air',
    source: judgement,
  },
  {
    id: 'conditions.wind',
    value: 0,
    u: stillAirUncertainty,
    words: 'still air',
    source: 'judgement: nobody notes a breath of 1 m/s',
  },
  {
    id: 'conditions.ground_give',
    value: grounds.medium.give,
    u: (grounds.soft.give - grounds.firm.give) / 2,
    words: 'ground neither soft nor firm',
    source: 'judgement: from medium as far as to soft or to firm',
  },
];

const strike: readonly Assumption[] = [
  {
    id: 'strike.across',
    value: 0,
    u: 0.008,
    words: 'a strike neither toward heel nor toe',
    source: 'judgement: a practised player’s spread',
  },
  {
    id: 'strike.height',
    value: 0,
    u: 0.006,
    words: 'a strike neither high nor low on the face',
    source: 'judgement: a practised player’s spread',
  },
];

function soleHeight(context: Context): Assumption {
  const id = 'strike.sole_height';
  if (context.clubKind === 'driver') {
    const words = 'the sole 2 cm above the ground at a teed ball';
    return { id, value: 0.02, u: 0.012, words, source: judgement };
  }
  const words = 'the sole level with the ground at the ball';
  return { id, value: 0, u: isHeadKind(context.clubKind) ? 0.004 : 0.012, words, source: judgement };
}

function shaftKick(context: Context): Assumption {
  const id = 'club.shaft_kick';
  if (!isHeadKind(context.clubKind)) {
    const words = 'a shaft that adds 2° of loft at the strike, as over all clubs';
    return { id, value: 2 * degree, u: 2 * degree, words, source: judgement };
  }
  const { value, u, source } = shaftKicks[context.clubKind];
  const words = `a shaft that adds ${(value / degree).toFixed(1)}° of loft at the strike`;
  return { id, value, u, words, source };
}

function headMass(context: Context): readonly Assumption[] {
  const known = headOf(context.clubKind);
  if (!known) return [];
  const words = `a head of ${(known.head.mass * 1000).toFixed(0)} g`;
  return [
    {
      id: 'club.head_mass',
      value: known.head.mass,
      u: known.massUncertainty,
      words,
      source: known.source,
    },
  ];
}

function isHeadKind(kind: string | undefined): kind is HeadKind {
  return kind !== undefined && Object.hasOwn(representativeHeads, kind);
}
