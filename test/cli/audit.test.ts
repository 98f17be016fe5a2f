// The `audit` command in each of its formats.
import assert from 'node:assert/strict';
import Papa from 'papaparse';
import { swingwright, withFolder } from './program.ts';

const files = {
  'a.swing.yaml':
    'swing: 1\ndelivery: { face: [1 deg right by radar, 3 deg right by eye], path: ~4 deg left }\n',
};

describe('audit', () => {
  it('prints what stands out and a row for each reading', () =>
    withFolder(files, (folder) => {
      const { code, out } = swingwright(['audit', 'a.swing.yaml'], folder);
      assert.equal(code, 0);
      assert.match(out, /^The conclusions are .*since there are no goals\.$/m);
      assert.match(out, /^Face direction, reading 2 .*eye/m);
      assert.match(out, /3 readings: 2 guessed/);
    }));

  it('writes CSV that reads back, with numbers as numbers', () =>
    withFolder(files, (folder) => {
      const { out } = swingwright(['audit', 'a.swing.yaml', '--format', 'csv'], folder);
      const rows: string[][] = [];
      Papa.parse(out, {
        delimiter: ',',
        skipEmptyLines: true,
        step: ({ data }) => rows.push([...data]),
      });
      const [head = [], ...body] = rows;
      assert.deepEqual(
        body.map((row) => [row[head.indexOf('id')], row[head.indexOf('value')], row[head.indexOf('guess')]]),
        [
          ['delivery.face', '1', 'false'],
          ['delivery.face', '3', 'true'],
          ['delivery.path', '-4', 'true'],
        ],
      );
      assert.ok(body.every((row) => row.length === head.length));
    }));

  it('refuses a record that a merge left with marks, and says where', () =>
    withFolder(
      {
        'a.swing.yaml':
          '<<<<<<< ours\nswing: 1\ndelivery: { path: 1 deg right }\n=======\nswing: 1\ndelivery: { path: 2 deg right }\n>>>>>>> theirs\n',
        'b.swing.yaml': 'swing: 1\n',
      },
      (folder) => {
        const { code, out, err } = swingwright(['audit', 'a.swing.yaml'], folder);
        assert.deepEqual([code, out], [2, '']);
        assert.match(err, /^swingwright: cannot audit `a\.swing\.yaml`: line 1: /);
        assert.equal(swingwright(['audit', 'b.swing.yaml'], folder).code, 0);
      },
    ));

  it('writes JSON and a page, and refuses what is no record', () =>
    withFolder(files, (folder) => {
      const json = JSON.parse(swingwright(['audit', 'a.swing.yaml', '--format', 'json'], folder).out) as {
        entries: { id: string; redundancy: number | null }[];
      };
      assert.equal(json.entries.length, 3);
      const page = swingwright(['audit', 'a.swing.yaml', '--format', 'html'], folder).out;
      assert.match(page, /^<!doctype html>/);
      assert.match(page, /<tr data-id="delivery\.path">/);
      assert.equal(swingwright(['audit', 'b.swing.yaml'], folder).code, 2);
    }));
});
