// The `methods` command: what it says, what it writes, and how it ends.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { swingwright, withFolder } from './program.ts';

const record = (i: number): string =>
  `swing: 1\ndelivery: { face: [${i} deg right by radar, ${i + (i % 2 === 0 ? 5 : 1)} deg right by eye] }\n`;
const practice = {
  'swingwright.yaml': 'swingwright: 1 # ours\n',
  ...Object.fromEntries(Array.from({ length: 12 }, (_, i) => [`l${i}.swing.yaml`, record(i % 6)])),
};

describe('methods', () => {
  it('says how far they agree, and keeps the figure where it is asked to', () =>
    withFolder(practice, (folder) => {
      const { code, out } = swingwright(['methods', '.'], folder);
      assert.equal(code, 0);
      assert.match(out, /eye less radar, 12 pairs\n {4}bias \+3\.00 deg/);
      assert.match(
        out,
        /For the method table\n {2}eye: face direction \(delivery\.face\) ± 3\.\d deg, from 12 pairs with radar/,
      );
      assert.equal(readFileSync(join(folder, 'swingwright.yaml'), 'utf8'), practice['swingwright.yaml']);
      assert.match(swingwright(['methods', '.', '--write'], folder).out, /Written to swingwright\.yaml\.\n$/);
      assert.match(
        readFileSync(join(folder, 'swingwright.yaml'), 'utf8'),
        /^swingwright: 1 # ours\nmethods: \{ eye: \{ uncertainty: \{ delivery\.face: 3\.\d deg \} \} \}\n$/,
      );
      assert.equal(swingwright(['check', 'swingwright.yaml'], folder).code, 0);
      const { out: json } = swingwright(['methods', '.', '--format', 'json'], folder);
      const [pair] = (JSON.parse(json) as { paired: { bias: number; limits: number[] }[] }).paired;
      assert.ok(Math.abs(pair!.bias - 3) < 1e-9 && pair!.limits[0]! < -0.9);
    }));

  it('says where nothing was measured twice, or a quantity was not', () =>
    withFolder({ 'a.swing.yaml': 'swing: 1\n' }, (folder) => {
      const { code, out } = swingwright(['methods'], folder);
      assert.equal(code, 1);
      assert.match(out, /Found nothing that was measured twice in 1 record; expected/);
      assert.equal(swingwright(['methods', 'nowhere'], folder).code, 2);
    }));
});
