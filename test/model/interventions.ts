// Changes and records to make them to, and how near a number must come; for tests of interventions.
import assert from 'node:assert/strict';
import { accountOf } from '../../src/model/account.ts';
import type { Change } from '../../src/model/intervention.ts';
import type { Observation, Situation } from '../../src/model/value.ts';
import { degree, deliveryIds, situationOf } from './situations.ts';

export const to = (id: string, amount: number, u = 0): Change => ({ id, kind: 'to', amount, u });
export const by = (id: string, amount: number, u = 0): Change => ({ id, kind: 'by', amount, u });

export function close(actual: number | null | undefined, expected: number, within: number, what = ''): void {
  assert.ok(
    typeof actual === 'number' && Math.abs(actual - expected) <= within,
    `${what} ${actual} is not ${expected} ± ${within}`,
  );
}

export function entered(
  rows: Readonly<Record<string, readonly [number, number]>>,
  rest: Partial<Situation> = {},
) {
  const observations = Object.entries(rows).map(([id, [value, u]]): [string, Observation] => [
    id,
    { id, value, u },
  ]);
  return accountOf({
    hand: 'right',
    clubKind: 'iron',
    windBearing: undefined,
    ...rest,
    observations: new Map(observations),
  });
}

export const delivered = accountOf(situationOf([...deliveryIds, 'delivery.arc.direction']));

export const arc = {
  'delivery.attack': [-3.5 * degree, 0.5 * degree],
  'delivery.arc.radius': [1.6, 0.08],
  'delivery.arc.inclination': [58 * degree, 2 * degree],
  'delivery.arc.direction': [1 * degree, 1.5 * degree],
  'delivery.face': [2 * degree, 1 * degree],
} as const;
