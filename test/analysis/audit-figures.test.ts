// The figures of an audit worked out a second time, from the model's numbers alone, with the matrices of a general library.
import assert from 'node:assert/strict';
import { dot, inv, multiply, transpose } from 'mathjs';
import { analyse } from '../../src/analysis/analyse.ts';
import { auditOf } from '../../src/analysis/audit.ts';
import { explainedOf } from '../../src/analysis/explained.ts';
import { mostOfWindows } from '../../src/model/posterior.ts';
import { reconcile } from '../../src/model/reconciliation.ts';
import { practice, snapshotWith, yamlSamples } from '../samples.ts';

/** A right-handed player's, so that nothing is mirrored, whose entries agree. */
const path = 'tove/2026-04-18-seven-iron.swing.yaml';

describe('the figures of an audit', function () {
  const analysis = analyse(practice + path, snapshotWith({}));
  const audit = auditOf(analysis)!;

  it('are redundancy numbers and normalised residuals of the linearised equations', () => {
    // Baarda 1968, A testing procedure for use in geodetic networks: R = I − A (AᵀPA)⁻¹ AᵀP, and w = v / (σ √r).
    const found = reconcile(analysis.account!.situation)!;
    const { parameters, predictions } = found.fit;
    const { priors, measurements, model } = found.problem;
    const scale = priors.map(({ u }, j) => (u === Infinity ? Math.max(1, Math.abs(parameters[j]!)) : u));
    // Slopes by differences, since the model's own are what is in question, in units of each prior's uncertainty. The model keeps
    // those of the flight for a neighbourhood, so that the two agree to some hundredths.
    const step = 3e-2;
    const columns = scale.map((unit, j) => {
      const [up, down] = [step, -step].map((by) => {
        const moved = Float64Array.from(parameters);
        moved[j]! += by * unit;
        return model.predict(moved)!;
      });
      return measurements.map(({ u }, i) => (up![i]! - down![i]!) / (2 * step) / u);
    });
    const slopes = transpose(columns);
    const prior = priors.map(({ u }, j) =>
      priors.map((_, k) => (j === k && u !== Infinity ? (scale[j]! / u) ** 2 : 0)),
    );
    const information = multiply(columns, slopes).map((row, j) => row.map((sum, k) => sum + prior[j]![k]!));
    const covariance = inv(information);
    let checked = 0;
    for (const [i, { value, u }] of measurements.entries()) {
      const { id, reading } = found.readings[found.measured[i]!]!;
      const row = slopes[i]!;
      const moves = multiply(covariance, row);
      const redundancy = 1 - dot(row, moves);
      const byWindows = moves.reduce(
        (sum, move, j) =>
          sum + (priors[j]!.kind === 'window' ? (move * scale[j]!) ** 2 / priors[j]!.u ** 2 : 0),
        0,
      );
      const judged = audit.rows.find((one) => one.quantity.id === id && one.reading === reading)?.judged;
      if (judged === undefined) continue;
      if (byWindows / ((1 - redundancy) * redundancy) > mostOfWindows) {
        assert.equal(judged.redundancy, 0, id);
        continue;
      }
      assert.ok(Math.abs(judged.redundancy - redundancy) < 0.02, `${id} ${judged.redundancy} ${redundancy}`);
      if (judged.w === null) continue;
      const w = (value - predictions[i]!) / (u * Math.sqrt(redundancy));
      assert.ok(Math.abs(judged.w - w) < 0.05 * Math.max(1, Math.abs(w)), `${id} ${judged.w} ${w}`);
      checked += 1;
    }
    assert.ok(checked > 5, `${checked} entries were checked`);

    // JCGM 100:2008, 5.1: what an input has in a variance is the square of its slope times its uncertainty.
    const concluded = audit.concluded.filter(({ id }) =>
      audit.rows.some(({ quantity }) => quantity.id === id),
    );
    assert.ok(concluded.length >= 2);
    for (const { id } of concluded) {
      const own = slopes[measurements.findIndex((_, i) => found.readings[found.measured[i]!]!.id === id)]!;
      const moves = multiply(covariance, own);
      for (const key of new Set(audit.rows.map(({ quantity }) => quantity.id))) {
        const share = measurements
          .map((_, i) => (found.readings[found.measured[i]!]!.id === key ? slopes[i]! : undefined))
          .reduce((sum, row) => sum + (row ? dot(row, moves) ** 2 : 0), 0);
        const told = audit.rows
          .filter(({ quantity }) => quantity.id === key)
          .reduce((sum, { shares }) => sum + shares.get(id)!, 0);
        assert.ok(Math.abs(told - share / dot(own, moves)) < 0.02, `${key} in ${id}`);
      }
    }
  });

  it('leave nothing of a variance out: what entries, assumptions and steps have in it is the whole', () => {
    let summed = 0;
    for (const [sample] of yamlSamples.filter(([name]) => name.endsWith('.swing.yaml'))) {
      const one = analyse(practice + sample, snapshotWith({}));
      const { concluded, rows } = auditOf(one)!;
      for (const { id } of concluded) {
        const { shares, u } = explainedOf(one, id)!;
        if (u === null) continue;
        const sum = shares.reduce((total, { share }) => total + share, 0);
        // Shares below a thousandth are left out of the list.
        assert.ok(sum < 1 + 1e-9 && sum > 0.97, `${sample} ${id}: ${sum}`);
        const ofEntries = shares
          .filter(({ kind }) => kind === 'entry')
          .reduce((total, { share }) => total + share, 0);
        const told = rows.reduce((total, row) => total + (row.shares.get(id) ?? 0), 0);
        assert.ok(Math.abs(told - ofEntries) < 1e-9, `${sample} ${id}: ${told} of ${ofEntries}`);
        summed += 1;
      }
    }
    assert.ok(summed > 10);
  });
});
