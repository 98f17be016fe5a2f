// `swingwright migrate` says of each file which version it is of, and refuses what it does not know.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { cleanRecord, student, swingwright, withFolder } from './program.ts';

describe('swingwright migrate', () => {
  it('leaves files of the present version alone', () => {
    withFolder({ 'a.swing.yaml': cleanRecord, 'ansa.student.yaml': student }, (folder) => {
      const { code, out } = swingwright(['migrate', '.', '--write'], folder);
      assert.equal(code, 0);
      assert.match(out, /^a\.swing\.yaml: is of version 1, the present one$/m);
      assert.equal(readFileSync(join(folder, 'a.swing.yaml'), 'utf8'), cleanRecord);
    });
  });

  it('ends with 1 on a newer version and writes nothing, with 2 on a file that is not there', () => {
    const newer = cleanRecord.replace('swing: 1', 'swing: 2');
    withFolder({ 'a.swing.yaml': newer }, (folder) => {
      const { code, out } = swingwright(['migrate', 'a.swing.yaml', '--write'], folder);
      assert.equal(code, 1);
      assert.match(out, /found version 2 of the format, and this Swingwright knows none after 1/);
      assert.equal(readFileSync(join(folder, 'a.swing.yaml'), 'utf8'), newer);
      assert.equal(swingwright(['migrate', 'b.swing.yaml'], folder).code, 2);
    });
  });
});
