// `compare` lays two records, two revisions of one, or a record and a template beside one another, as text, JSON or a page.
import assert from 'node:assert/strict';
import { committed, repository } from '../disk/repository.ts';
import { cleanRecord, student, swingwright, withFolder } from './program.ts';

const later = cleanRecord.replace('03-07', '03-21').replace('2 deg right by radar', '4 deg left by radar');
const files = {
  'ansa.student.yaml': student,
  'a.swing.yaml': cleanRecord,
  'b.swing.yaml': later,
  'iron.template.yaml':
    'template: 1\ntitle: House irons\nclubs: [iron]\ndelivery:\n  path: { window: 0..3 deg right, strict: firm }\n  attack: 2..6 deg down\n',
};

describe('swingwright compare', () => {
  it('says what differs, and whether by more than measuring twice explains', () => {
    withFolder(files, (folder) => {
      const { code, out, err } = swingwright(['compare', 'a.swing.yaml', 'b.swing.yaml'], folder);
      assert.equal(err, '');
      assert.equal(code, 0);
      assert.match(out, /^A {2}a\.swing\.yaml {2}\(2026-03-07, eight iron, Ansa\)\nB {2}b\.swing\.yaml/);
      assert.match(out, /1 entry changed, \d+ the same; 1 differs by more than measuring twice explains\./);
      // Radar reads a path to 1 degree (the table of methods): 6 of √2 · 1.
      assert.match(
        out,
        /club path {2}2\.0 deg right ± 1\.0 deg → 4\.0 deg left ± 1\.0 deg {2}6\.0 deg further left ± 1\.4 deg {2}larger, 4\.2 u/,
      );
    });
  });

  it('gives numbers in the units shown as JSON', () => {
    withFolder(files, (folder) => {
      const { out } = swingwright(['compare', 'a.swing.yaml', 'b.swing.yaml', '--format', 'json'], folder);
      const json = JSON.parse(out) as {
        isSame: boolean;
        entries: { quantity: string; size: string; difference: number; unit: string }[];
      };
      assert.equal(json.isSame, false);
      assert.deepEqual(
        json.entries.map(({ quantity, size, difference, unit }) => [
          quantity,
          size,
          Math.round(difference * 1e6) / 1e6,
          unit,
        ]),
        [['delivery.path', 'larger', -6, 'deg']],
      );
    });
  });

  it('says of two hands that left and right are not mirrored, and names both hands as JSON', () => {
    const other = student.replace(/^hand: \w+/m, 'hand: left');
    const left = cleanRecord.replace('ansa.student.yaml', 'bo.student.yaml');
    withFolder({ ...files, 'bo.student.yaml': other, 'c.swing.yaml': left }, (folder) => {
      const { out } = swingwright(['compare', 'a.swing.yaml', 'c.swing.yaml'], folder);
      assert.match(out, /A plays right-handed and B left-handed\. .* compared as they are, not mirrored/);
      const json = JSON.parse(
        swingwright(['compare', 'a.swing.yaml', 'c.swing.yaml', '--format', 'json'], folder).out,
      ) as { head: unknown[] };
      assert.deepEqual(json.head[1], { of: 'hand', before: 'right', after: 'left' });
    });
  });

  it('says that nothing differs between a record and itself', () => {
    withFolder(files, (folder) => {
      const { code, out } = swingwright(['compare', 'a.swing.yaml', 'a.swing.yaml'], folder);
      assert.equal(code, 0);
      assert.match(out, /Nothing differs: \d+ entries say the same\./);
    });
  });

  it('compares revisions with what they referred to then', () => {
    withFolder({}, (folder) => {
      repository(folder);
      committed(folder, files);
      committed(folder, { 'a.swing.yaml': later, 'ansa.student.yaml': student.replace('36 deg', '38 deg') });
      const { code, out, err } = swingwright(['compare', 'HEAD~1:a.swing.yaml', 'a.swing.yaml'], folder);
      assert.equal(err, '');
      assert.equal(code, 0);
      assert.match(out, /^A {2}HEAD~1:a\.swing\.yaml \([0-9a-f]{7}\) {2}\(2026-03-07/);
      assert.match(out, /loft of the club {2}36.* → 38/);
      assert.match(out, /date {2}2026-03-07 → 2026-03-21/);
      const { out: none } = swingwright(['compare', 'HEAD:a.swing.yaml', 'a.swing.yaml'], folder);
      assert.match(none, /Nothing differs/);
    });
  });

  it('holds a record against a template, whichever comes first', () => {
    withFolder(files, (folder) => {
      const one = swingwright(['compare', 'b.swing.yaml', 'iron.template.yaml'], folder);
      assert.equal(one.code, 0);
      assert.match(one.out, /Of 2 windows: 1 outside, 1 not known\./);
      assert.match(
        one.out,
        /club path {5}0\.\.3 deg right, firm {3}4\.0 deg left ± 1\.0 deg {2}outside: 4\.0 u/,
      );
      assert.equal(swingwright(['compare', 'iron.template.yaml', 'b.swing.yaml'], folder).out, one.out);
      const { windows } = JSON.parse(
        swingwright(['compare', 'b.swing.yaml', 'iron.template.yaml', '--format', 'json'], folder).out,
      ) as { windows: { state: string }[] };
      assert.deepEqual(
        windows.map(({ state }) => state),
        ['outside', 'not known'],
      );
      assert.match(
        swingwright(['compare', 'b.swing.yaml', 'iron.template.yaml', '--format', 'html'], folder).out,
        /House irons/,
      );
    });
  });

  it('ends with 2 and a reason where something cannot be read or compared', () => {
    withFolder(files, (folder) => {
      const refused = (...args: readonly string[]): string => {
        const { code, out, err } = swingwright(['compare', ...args], folder);
        assert.equal(code, 2);
        assert.equal(out, '');
        return err;
      };
      assert.match(
        refused('a.swing.yaml', 'c.swing.yaml'),
        /cannot read `c\.swing\.yaml`: there is no such file\./,
      );
      assert.match(
        refused('HEAD:a.swing.yaml', 'a.swing.yaml'),
        /cannot read `HEAD:a\.swing\.yaml`: the file lies in no git repository\./,
      );
      assert.match(
        refused('ansa.student.yaml', 'a.swing.yaml'),
        /cannot compare `ansa\.student\.yaml`: expected two records/,
      );
      assert.match(refused('iron.template.yaml', 'iron.template.yaml'), /cannot compare/);
    });
  });

  it('lets no name steer the terminal or the page', () => {
    const hostile = 'name: "\\e[31m<script>alert(1)</script>\\u202e"\n';
    withFolder({ ...files, 'ansa.student.yaml': student.replace('name: Ansa\n', hostile) }, (folder) => {
      const { out } = swingwright(['compare', 'a.swing.yaml', 'b.swing.yaml'], folder);
      // eslint-disable-next-line no-control-regex
      assert.doesNotMatch(out, /[\u001b\u202e]/);
      const { out: page } = swingwright(
        ['compare', 'a.swing.yaml', 'b.swing.yaml', '--format', 'html'],
        folder,
      );
      // eslint-disable-next-line no-control-regex
      assert.doesNotMatch(page, /<script|[\u001b\u202e]/);
      assert.match(page, /&lt;script/);
    });
  });
});
