// How sure a changed swing is, and how far it moves: against draws through the formula of the arc.
import assert from 'node:assert/strict';
import { accountOf } from '../../src/model/account.ts';
import { intervene } from '../../src/model/intervention.ts';
import { findQuantity } from '../../src/registry/registry.ts';
import { normals } from './draws.ts';
import { arc, by, close, entered, to } from './interventions.ts';
import { degree, deliveryIds, situationOf } from './situations.ts';

describe('what is uncertain after a change', () => {
  /** The arc as it is written in handbooks, with what the step may be off. */
  const lowPoint = (attack: number, radius: number, inclination: number): number =>
    (-radius * Math.sin(attack)) / Math.sin(inclination);
  const off = (ahead: number): number => Math.hypot(0.03 * ahead, 0.005);

  it('is what draws through the formula of the arc give, for the value and for how far it moves', () => {
    const normal = normals(20261125);
    const account = entered(arc);
    const at = account.agreement.posterior;
    const target = -1.5 * degree;
    const exactness = 0.4 * degree;
    const effect = intervene(account, [to('delivery.attack', target, exactness)])!.effects.get(
      'delivery.low_point.ahead',
    )!;
    const practice = findQuantity('delivery.attack')!.practice!;
    const moved = (target - at.get('delivery.attack')!.value) / (practice.max - practice.min);
    const kept = Math.exp((-moved * moved) / 2);
    const values: number[] = [];
    const differences: number[] = [];
    for (let n = 0; n < 40_000; n++) {
      const draw = (id: string): number => at.get(id)!.value + at.get(id)!.u * normal();
      const [radius, inclination] = [draw('delivery.arc.radius'), draw('delivery.arc.inclination')];
      const before = lowPoint(draw('delivery.attack'), radius, inclination);
      const after = lowPoint(target + exactness * normal(), radius, inclination);
      const shown = normal();
      const anew = kept * shown + Math.sqrt(1 - kept * kept) * normal();
      values.push(after + off(effect.value!) * anew);
      differences.push(
        after + off(effect.value!) * anew - (before + off(at.get('delivery.low_point.ahead')!.value) * shown),
      );
    }
    for (const [drawn, value, u] of [
      [values, effect.value!, effect.u!],
      [differences, effect.difference!, effect.uDifference!],
    ] as const) {
      const mean = drawn.reduce((a, b) => a + b) / drawn.length;
      const deviation = Math.sqrt(drawn.reduce((a, b) => a + (b - mean) ** 2, 0) / drawn.length);
      close(u / deviation, 1, 0.02, 'u');
      close((value - mean) / deviation, 0, 0.02, 'value');
    }
  });

  it('is little for a difference in which what is uncertain is common to both', () => {
    const account = accountOf(situationOf([...deliveryIds, 'delivery.arc.direction']));
    const { u, uDifference } = intervene(account, [by('delivery.club_speed', 1)])!.effects.get(
      'flight.carry',
    )!;
    assert.ok(uDifference! < 0.2 * u!, `${uDifference} of ${u}`);
  });

  it('keeps what the record has shown the model to be off', () => {
    const off3 = entered({ ...arc, 'delivery.low_point.ahead': [0.14, 0.005] });
    const now = off3.agreement.posterior.get('delivery.low_point.ahead')!.value;
    const { value, difference } = intervene(off3, [by('delivery.attack', 0.1 * degree)])!.effects.get(
      'delivery.low_point.ahead',
    )!;
    close(difference, (-1.6 * 0.1 * degree) / Math.sin(58 * degree), 2e-4);
    close(value! - difference!, now, 1e-5);
  });

  it('covers several quantities together', () => {
    const intervention = intervene(entered(arc), [to('delivery.face', 0, degree)])!;
    const { means, covariance } = intervention.joint([
      'delivery.face',
      'delivery.path',
      'delivery.face_to_path',
    ]);
    close(means[0]! - means[1]!, means[2]!, 1e-9);
    close(covariance[8], covariance[0]! + covariance[4]! - 2 * covariance[1]!, 1e-9);
    close(covariance[0], degree ** 2, 1e-9);
    close(covariance[1], 0, 1e-12);
  });
});
