// What the steps may know of a situation beside their inputs; knows no steps.
import { bodyTables, type BodyTableName } from '../physics/body-tables.ts';
import type { Context } from './rule.ts';
import type { Situation } from './value.ts';

/** Of a situation that is already as for a right-handed player. */
export function contextOf(situation: Situation): Context {
  const { hand, clubKind, windBearing, bodyTable, calibration, registry, own } = situation;
  return {
    clubKind,
    windBearing,
    bodyTable,
    calibration,
    registry,
    own,
    ...(hand === undefined && { hand: 'unknown' }),
  };
}

/** The published table that a student's file names; undefined for a word that is none. */
export function bodyTableNamed(word: string | undefined): BodyTableName | undefined {
  return word !== undefined && Object.hasOwn(bodyTables, word) ? (word as BodyTableName) : undefined;
}
