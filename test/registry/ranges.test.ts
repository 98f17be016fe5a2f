// Holds bounds and practice windows against people who exist, slips that cannot be, and published figures.
import assert from 'node:assert/strict';
import { fromSI, toSI } from '../../src/measure/units.ts';
import type { QuantityId } from '../../src/registry/generated.ts';
import { checkpoints } from '../../src/registry/quantity.ts';
import { findQuantity } from '../../src/registry/registry.ts';

describe('bounds', () => {
  /** Values that real people and their clubs have; each must lie inside the bounds. */
  const real: readonly (readonly [QuantityId, number, string, string])[] = [
    ['student.stature', 272, 'cm', 'the tallest person on record, from memory'],
    ['student.stature', 85, 'cm', 'a toddler with a plastic club, from memory'],
    ['student.mass', 12, 'kg', 'a toddler, from memory'],
    ['checkpoints.address.lead_elbow_bend', -15, 'deg', 'an overstretched elbow, from memory'],
    ['checkpoints.top.lead_wrist_bow', -85, 'deg', 'a loose wrist, from memory'],
    ['checkpoints.impact.lead_pressure', 20, '%', 'the style that runs back at impact, Ball & Best 2007'],
    ['checkpoints.finish.shoulder_turn', -180, 'deg', 'shoulders turned right round, common practice'],
    ['delivery.club_speed', 52, 'm/s', 'scratch players with a driver, Nesbit & Serrano 2005'],
    ['delivery.club_speed', 70, 'm/s', 'a long driver, from memory'],
    ['flight.speed_ratio', 1.488, '', 'e 0.83, 200 g, square; Penner 2001'],
    ['flight.total', 471, 'm', 'the longest recorded drive, 515 yd, from memory'],
    ['club.length', 45.5, 'in', 'a driver, common practice'],
    ['club.lie', 71, 'deg', 'an upright putter, common practice'],
    ['conditions.pressure', 795, 'hPa', 'ISO 2533 at 2000 m'],
    ['delivery.arc.inclination', 45, 'deg', 'a driver plane, from memory'],
  ];
  for (const [id, value, unit, who] of real) {
    it(`admits ${value} ${unit} for ${id}: ${who}`, () => {
      const bounds = findQuantity(id)?.bounds;
      assert.ok(bounds !== undefined);
      assert.ok(bounds.min <= toSI(value, unit) && toSI(value, unit) <= bounds.max);
    });
  }

  /** Values that nobody can have; a slip of a digit or of a unit. */
  const impossible: readonly (readonly [QuantityId, number, string])[] = [
    ['student.stature', 17.1, 'cm'],
    ['checkpoints.impact.lead_pressure', 130, '%'],
    ['flight.speed_ratio', 1.9, ''],
    ['flight.carry', 1710, 'm'],
    ['delivery.club_speed', 110, 'm/s'],
    ['club.length', 60, 'in'],
    ['delivery.obliquity', -3, 'deg'],
  ];
  for (const [id, value, unit] of impossible) {
    it(`refuses ${value} ${unit} for ${id}`, () => {
      const bounds = findQuantity(id)?.bounds;
      assert.ok(bounds !== undefined);
      assert.ok(toSI(value, unit) < bounds.min || bounds.max < toSI(value, unit));
    });
  }

  it('holds clubs to 18 to 48 inches (Equipment Rules, part 2)', () => {
    const bounds = findQuantity('club.length')?.bounds;
    assert.ok(bounds !== undefined);
    assert.deepEqual([fromSI(bounds.min, 'in'), fromSI(bounds.max, 'in')], [18, 48]);
  });
});

describe('practice', () => {
  it('holds the timing of Grober & Cholewicki 2006: 0.27 s down, 0.80 s back', () => {
    const top = findQuantity('checkpoints.top.time')?.practice;
    const address = findQuantity('checkpoints.address.time')?.practice;
    assert.ok(top !== undefined && address !== undefined);
    assert.ok(top.min < 0.27 && 0.27 < top.max);
    assert.ok(address.min < 1.07 && 1.07 < address.max);
  });

  it('lets the checkpoints follow each other in time', () => {
    const windows = checkpoints.flatMap((c) => findQuantity(`checkpoints.${c}.time`)?.practice ?? []);
    for (const [index, window] of windows.entries()) {
      const next = windows[index + 1];
      if (next === undefined) continue;
      assert.ok(next.max < window.max && next.min < window.min);
    }
  });

  it('has nothing to say of the lean of the shaft where the club is above the hands', () => {
    assert.equal(findQuantity('checkpoints.top.shaft_lean')?.practice, undefined);
    assert.ok(findQuantity('checkpoints.impact.shaft_lean')?.practice);
  });
});
