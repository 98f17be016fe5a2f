import assert from 'node:assert/strict';
import { resolve } from 'node:path';
import { swingwright, withFolder } from './program.ts';

const tove = resolve(import.meta.dirname, '../../samples/tove/2026-04-18-seven-iron.swing.yaml');
const here = import.meta.dirname;
const lesson = `swing: 1
delivery:
  face: 1 deg right ± 1 deg
  path: 5 deg right ± 1 deg
  attack: 4 deg down ± 1 deg
`;

describe('swingwright explain, of a quantity', () => {
  it('gives value, interval, steps, shares and what it would be without each entry, as text', () => {
    const { code, out } = swingwright(['explain', tove, 'delivery.low_point.ahead'], here);
    assert.equal(code, 0);
    assert.match(out, /^Low point \(delivery\.low_point\.ahead\), computed$/m);
    assert.match(out, /^ {2}\d+\.\d cm ahead ± \d\.\d cm\n {2}95 %: \d+\.\d\.\.\d+\.\d cm ahead$/m);
    assert.match(out, /^How it follows\n[^]*low point ahead = −R · sin θ\n {4}Geometry of a circle/m);
    assert.match(
      out,
      /^What its uncertainty comes from\n[^]*^ +\d+ % {2}attack angle 4\.1 deg down ± 1\.0 deg$/m,
    );
    assert.match(out, /^What it would be without an entry\n[^]*^ {2}delivery\.attack +\d/m);
  });

  it('says of an entry whether it is checked', () => {
    assert.match(
      swingwright(['explain', tove, 'delivery.attack'], here).out,
      /\. Checked, and it fits: the others say /,
    );
    withFolder({ 'a.swing.yaml': lesson }, (folder) => {
      assert.match(
        swingwright(['explain', 'a.swing.yaml', 'delivery.attack'], folder).out,
        /Unchecked: nothing else in this record says anything about it\./,
      );
    });
  });

  it('gives the same as JSON in shown units, shares that sum to one', () => {
    withFolder({ 'a.swing.yaml': lesson }, (folder) => {
      const { out } = swingwright(
        ['explain', 'a.swing.yaml', 'delivery.face_to_path', '--format', 'json'],
        folder,
      );
      const json = JSON.parse(out) as {
        value: number;
        u: number;
        interval: number[];
        kind: string;
        steps: { rule: string }[];
        shares: { share: number; key: string }[];
      };
      assert.deepEqual([json.value, json.kind], [-4, 'derived']);
      assert.ok(Math.abs(json.u - Math.SQRT2) < 1e-9);
      // 1.96 standard uncertainties either side.
      assert.ok(Math.abs(json.interval[1]! - json.interval[0]! - 2 * 1.959964 * Math.SQRT2) < 1e-6);
      assert.deepEqual(json.shares.map(({ key }) => key).sort(), ['delivery.face', 'delivery.path']);
      assert.ok(Math.abs(json.shares.reduce((sum, { share }) => sum + share, 0) - 1) < 1e-9);
      assert.ok(json.steps.some(({ rule }) => rule === 'face-to-path' || rule === 'face-from-path'));
    });
  });

  it('says what would give a quantity that is not known, and names the nearest of one that does not exist', () => {
    withFolder({ 'a.swing.yaml': lesson }, (folder) => {
      const low = swingwright(['explain', 'a.swing.yaml', 'delivery.low_point.ahead'], folder);
      assert.equal(low.code, 2);
      assert.match(low.err, /delivery\.arc\.inclination and delivery\.arc\.radius would give it/);
      const slip = swingwright(['explain', 'a.swing.yaml', 'delivery.atack'], folder);
      assert.equal(slip.code, 2);
      assert.match(slip.err, /no quantity `delivery\.atack`; did you mean `delivery\.attack`\?/);
      assert.equal(swingwright(['explain', 'no.swing.yaml', 'delivery.attack'], folder).code, 2);
    });
  });
});
