// The `faults` command prints verdicts, causes and misses as text and JSON, and exits as `derive` does.
import assert from 'node:assert/strict';
import { resolve } from 'node:path';
import { swingwright, withFolder } from './program.ts';

const house = `faults: 1
book:
  weight-back:
    title: Weight stays back
    at: impact
    evidence: checkpoints.impact.lead_pressure < 70 %
    tends_to: [{ effect: checkpoints.impact.shaft_lean, direction: backward }]
  handle-trails:
    evidence: checkpoints.impact.shaft_lean < 0 deg
    tends_to: [{ effect: delivery.delivered_loft, direction: more }]
  short-turn: { evidence: checkpoints.top.shoulder_turn < 80 deg }
`;
const record = `swing: 1
faults_from: house.faults.yaml
checkpoints:
  top: { shoulder_turn: 60 deg closed ± 2 deg }
  impact: { lead_pressure: 65 % ± 4 % }
faults: [{ fault: weight-back, at: impact }, { fault: handle-trails }]
misses: [high, slice]
`;
const files = { 'a.swing.yaml': record, 'house.faults.yaml': house };

describe('swingwright faults', () => {
  it('prints each verdict with its evidence, what nobody stated, causes, misses and findings', () => {
    withFolder(files, (folder) => {
      const { code, out } = swingwright(['faults', 'a.swing.yaml'], folder);
      assert.equal(code, 0);
      assert.match(
        out,
        /^Stated\n {2}weight-back at impact: supported \(89 %\) \(Weight stays back\)\n {4} +89 % {2}checkpoints\.impact\.lead_pressure < 70 % {2}pressure in the lead foot at impact 65 % ± 4 %$/m,
      );
      assert.match(out, /^ {2}handle-trails: cannot tell$/m);
      assert.match(out, /^Not stated, but shown\n {2}short-turn: over 99 %$/m);
      assert.match(
        out,
        /^Causes\n {2}weight-back leads to handle-trails, through checkpoints\.impact\.shaft_lean$/m,
      );
      assert.match(
        out,
        /^Misses\n {2}high: handle-trails; weight-back \(through handle-trails\)\n {2}slice: no stated fault explains it$/m,
      );
      assert.match(out, /miss-not-explained/);
    });
  });

  it('prints the same as JSON, with values in the unit shown', () => {
    withFolder(files, (folder) => {
      const json = JSON.parse(
        swingwright(['faults', 'a.swing.yaml', '--format', 'json'], folder).out,
      ) as Record<string, unknown>;
      assert.deepEqual(Object.keys(json), [
        'format',
        'file',
        'stated',
        'unstated',
        'causes',
        'misses',
        'findings',
      ]);
      const [first] = json.stated as Record<string, unknown>[];
      assert.deepEqual(first, {
        fault: 'weight-back',
        title: 'Weight stays back',
        book: 'house.faults.yaml',
        at: 'impact',
        verdict: 'supported',
        // Φ(1.25), from a table: 0.8944.
        probability: 0.8944,
        evidence: [
          {
            expression: 'checkpoints.impact.lead_pressure < 70 %',
            weight: 1,
            probability: 0.8944,
            values: { 'checkpoints.impact.lead_pressure': { value: 65, u: 4, unit: '%' } },
            missing: [],
          },
        ],
        isSeenHere: true,
      });
      assert.deepEqual(json.causes, [
        {
          from: 'weight-back',
          to: 'handle-trails',
          isContradicted: false,
          through: 'checkpoints.impact.shaft_lean',
        },
      ]);
    });
  });

  it('refuses what is no record, what has no fault book and what is not there', () => {
    withFolder({ ...files, 'b.swing.yaml': 'swing: 1\n' }, (folder) => {
      const refused = (name: string) => {
        const { code, err } = swingwright(['faults', name], folder);
        assert.equal(code, 2);
        return err;
      };
      assert.match(refused('house.faults.yaml'), /is not a swing record/);
      assert.match(refused('b.swing.yaml'), /has no fault book; expected one at `faults_from`/);
      assert.match(refused('c.swing.yaml'), /there is no such file/);
    });
  });

  it('finds in the samples one fault supported, one contradicted and none amiss in the clean record', () => {
    const at = (name: string): string =>
      swingwright(['faults', `${name}.swing.yaml`], resolve(import.meta.dirname, '../../samples')).out;
    assert.match(at('bram/2026-05-02-driver'), /turn-stops-short at top: supported/);
    assert.match(at('bram/2026-05-09-seven-iron'), /handle-trails at impact: contradicted/);
    assert.match(at('odile/2026-05-16-four-hybrid'), /trail-side-loaded leads to handle-trails/);
    assert.match(at('tove/2026-04-18-seven-iron'), /^1 file: no findings$/m);
  });
});
