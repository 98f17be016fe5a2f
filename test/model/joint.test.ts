// Means and covariances of several quantities from one fit, against the posterior and against what must hold between them.
import assert from 'node:assert/strict';
import { settleAgreement } from '../../src/model/agreement.ts';
import { jointOf } from '../../src/model/joint.ts';
import type { Observation, Situation } from '../../src/model/value.ts';

const deg = Math.PI / 180;
const entered = (entries: readonly (readonly [string, number, number])[]): Situation => ({
  hand: 'right',
  clubKind: undefined,
  windBearing: undefined,
  observations: new Map(entries.map(([id, value, u]): [string, Observation] => [id, { id, value, u }])),
});

const { agreement, outcome } = settleAgreement(
  entered([
    ['delivery.face', 1 * deg, 1 * deg],
    ['delivery.path', 5 * deg, 2 * deg],
  ]),
);
const ids = ['delivery.face', 'delivery.path', 'delivery.face_to_path'];

describe('joint means and covariances', () => {
  const joint = jointOf(outcome!, ids)!;

  it('have the posterior on their diagonal', () => {
    for (const [i, id] of ids.entries()) {
      const { value, u } = agreement.posterior.get(id)!;
      assert.ok(Math.abs(joint.means[i]! - value) < 1e-12);
      assert.ok(Math.abs(joint.covariance[i * 4]! / u ** 2 - 1) < 1e-9);
    }
  });

  it('are symmetric', () => {
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++)
        assert.ok(Math.abs(joint.covariance[i * 3 + j]! - joint.covariance[j * 3 + i]!) < 1e-15);
  });

  it('know that face to path is the face less the path', () => {
    // cov(f − p, f) = var f and cov(f − p, p) = −var p for independent f and p, but for the windows of both.
    const [varFace, varPath] = [joint.covariance[0]!, joint.covariance[4]!];
    const covFacePath = joint.covariance[1]!;
    assert.ok(Math.abs(joint.covariance[6]! - (varFace - covFacePath)) < 1e-9 * varFace);
    assert.ok(Math.abs(joint.covariance[7]! - (covFacePath - varPath)) < 1e-9 * varPath);
  });

  it('are not given for what the fit does not know', () => {
    assert.equal(jointOf(outcome!, ['delivery.face', 'checkpoints.top.lead_pressure']), undefined);
  });
});
