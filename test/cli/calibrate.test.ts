import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { swingwright, withFolder } from './program.ts';

const samples = resolve(import.meta.dirname, '../../samples/tove');
const record = 'swing: 1\nconditions: { temperature: 13 °C, altitude: 240 m }\nshots: a.csv\n';
const csv = readFileSync(join(samples, 'shots/2026-04-18-seven-iron.csv'), 'utf8').replace(
  'Flown (m),Off line (m)',
  'carry [m],finish [m]',
);
const practice = {
  'a.swing.yaml': record,
  'a.csv': csv,
  'swingwright.yaml': '\ufeff# ours\nswingwright: 1\nshots: { by: radar }\n',
};

describe('swingwright calibrate', () => {
  it('prints the fit and writes nothing unless asked', () => {
    withFolder(practice, (folder) => {
      const { code, out } = swingwright(['calibrate'], folder);
      assert.equal(code, 0);
      assert.match(out, /^Drag × \d\.\d{3} ± 0\.\d{3}.*from 1\d shots of 1 record\.$/m);
      assert.match(out, /^Carry less prediction, root mean square: \d\.\d m before, \d\.\d m after\.$/m);
      assert.equal(readFileSync(join(folder, 'swingwright.yaml'), 'utf8'), practice['swingwright.yaml']);
    });
  });

  it('writes it to the workspace file with --write, and keeps every byte that was there', () => {
    withFolder(practice, (folder) => {
      const { code, out } = swingwright(['calibrate', '.', '--write'], folder);
      assert.equal(code, 0);
      assert.match(out, /^Written to swingwright\.yaml\.$/m);
      const text = readFileSync(join(folder, 'swingwright.yaml'), 'utf8');
      assert.ok(text.startsWith(practice['swingwright.yaml']));
      assert.match(text.slice(practice['swingwright.yaml'].length), /^calibration: \{ drag: .* \}\n$/);
      assert.equal(swingwright(['check'], folder).code, 0);
    });
  });

  it('ends with 1 where the shots say too little, and with 2 where there is no folder', () => {
    withFolder({ 'a.swing.yaml': 'swing: 1\n' }, (folder) => {
      const { code, out } = swingwright(['calibrate', '--write'], folder);
      assert.equal(code, 1);
      assert.match(out, /^Not calibrated\. Found 0 shots/);
      assert.equal(swingwright(['calibrate', 'nowhere'], folder).code, 2);
    });
  });
});
