// `swingwright fix` makes the obvious mends, tells of each, and leaves every other byte alone.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { cleanRecord, student, swingwright, withFolder } from './program.ts';

const broken = cleanRecord
  .replace('path: 2 deg right by radar', 'path: 2 dge right by radr # at the turf')
  .replace('face:', 'fac:');
const files = { 'a.swing.yaml': broken, 'ansa.student.yaml': student };

describe('swingwright fix', () => {
  it('mends what has one obvious mend, says where, and keeps the rest', () => {
    withFolder(files, (folder) => {
      const { code, out } = swingwright(['fix', 'a.swing.yaml'], folder);
      assert.equal(code, 0);
      assert.match(out, /^a\.swing\.yaml:6:11 {2}Write `deg` {2}unknown-unit$/m);
      assert.match(out, /^a\.swing\.yaml:7:3 {2}Write `face` {2}unknown-key$/m);
      assert.match(out, /^a\.swing\.yaml:6:24 {2}Write `radar` {2}unknown-method$/m);
      assert.match(out, /^3 mends made\.$/m);
      assert.equal(
        readFileSync(join(folder, 'a.swing.yaml'), 'utf8'),
        cleanRecord.replace('right by radar', 'right by radar # at the turf'),
      );
      assert.equal(readFileSync(join(folder, 'ansa.student.yaml'), 'utf8'), student);
      assert.equal(swingwright(['fix', 'a.swing.yaml'], folder).out, 'Nothing to mend.\n');
    });
  });

  it('keeps to the codes that are asked for, and writes nothing in a dry run', () => {
    withFolder(files, (folder) => {
      const dry = swingwright(['fix', '.', '--dry-run'], folder);
      assert.match(dry.out, /to make; nothing was written\.$/m);
      assert.equal(readFileSync(join(folder, 'a.swing.yaml'), 'utf8'), broken);
      const one = swingwright(['fix', '.', '--code', 'unknown-key'], folder);
      assert.match(one.out, /^1 mend made\.$/m);
      assert.equal(readFileSync(join(folder, 'a.swing.yaml'), 'utf8'), broken.replace('fac:', 'face:'));
    });
  });

  it('keeps a byte order mark and the line ends of the file', () => {
    const text = `\ufeff${broken}`.replaceAll('\n', '\r\n');
    withFolder({ ...files, 'a.swing.yaml': text }, (folder) => {
      assert.equal(swingwright(['fix', 'a.swing.yaml', '--code', 'unknown-key'], folder).code, 0);
      assert.equal(readFileSync(join(folder, 'a.swing.yaml'), 'utf8'), text.replace('fac:', 'face:'));
    });
  });

  it('ends with 2 and changes nothing where a file is not there, is no UTF-8, or a code is not known', () => {
    const bytes = Buffer.concat([Buffer.from(broken), Buffer.from([0xff, 0x0a])]);
    withFolder({ ...files, 'b.swing.yaml': bytes }, (folder) => {
      assert.equal(swingwright(['fix', 'c.swing.yaml'], folder).code, 2);
      assert.equal(swingwright(['fix', 'b.swing.yaml'], folder).code, 2);
      assert.deepEqual(readFileSync(join(folder, 'b.swing.yaml')), bytes);
      const { code, err } = swingwright(['fix', 'a.swing.yaml', '--code', 'unknown-kex'], folder);
      assert.equal(code, 2);
      assert.match(err, /no finding `unknown-kex`/);
      assert.equal(readFileSync(join(folder, 'a.swing.yaml'), 'utf8'), broken);
    });
  });

  it('mends no name in the run that mends what the workspace declares', () => {
    const lesson = 'swing: 1\ndelivery: { fade: 3 deg right by radar }\n';
    const workspace = 'swingwright: 1\nquantites: { delivery.fade: { like: delivery.face } }\n';
    withFolder({ 'a.swing.yaml': lesson, 'swingwright.yaml': workspace }, (folder) => {
      const { out } = swingwright(['fix', '.'], folder);
      assert.match(out, /Write `quantities`/);
      assert.match(
        out,
        /^1 mend of a name waits until `swingwright\.yaml` has no findings; then run this again\.$/m,
      );
      assert.equal(readFileSync(join(folder, 'a.swing.yaml'), 'utf8'), lesson);
      assert.equal(swingwright(['fix', '.'], folder).out, 'Nothing to mend.\n');
    });
  });
});
