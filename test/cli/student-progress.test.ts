// `progress` shows one student over the lessons, from files on the disk.
import assert from 'node:assert/strict';
import { cleanRecord, student, swingwright, withFolder } from './program.ts';

const files = {
  'swingwright.yaml': 'swingwright: 1\nshow: { angle: rad }\n',
  'ansa.student.yaml': student,
  'a.swing.yaml': cleanRecord,
  'b.swing.yaml': cleanRecord
    .replace('03-07', '03-21')
    .replace('2 deg right by radar', '4 deg left by radar'),
};

describe('swingwright progress', () => {
  it('tells each quantity over the lessons, in the units shown', () => {
    withFolder(files, (folder) => {
      const { code, out, err } = swingwright(
        ['progress', 'ansa.student.yaml', '--quantity', 'delivery.path'],
        folder,
      );
      assert.equal(err, '');
      assert.equal(code, 0);
      assert.match(
        out,
        /^Ansa\n\neight iron: 2 lessons from 2026-03-07 to 2026-03-21\n {2}club path: 0\.105 rad further left ± 0\.025 rad/,
      );
      const json = JSON.parse(
        swingwright(
          ['progress', 'ansa.student.yaml', '--quantity', 'delivery.path', '--format', 'json'],
          folder,
        ).out,
      ) as { clubs: { quantities: { unit: string; points: { date: string; value: number }[] }[] }[] };
      const [path] = json.clubs[0]!.quantities;
      assert.equal(path!.unit, 'rad');
      assert.deepEqual(
        path!.points.map(({ date, value }) => [date, value.toFixed(4)]),
        [
          ['2026-03-07', '0.0349'],
          ['2026-03-21', '-0.0698'],
        ],
      );
      assert.match(
        swingwright(['progress', 'ansa.student.yaml', '--format', 'html'], folder).out,
        /<h1>Progress of Ansa<\/h1>/,
      );
    });
  });

  it('ends with 2 and a reason where there is nothing to show', () => {
    withFolder(files, (folder) => {
      const refused = (...args: readonly string[]): string => {
        const { code, err } = swingwright(['progress', ...args], folder);
        assert.equal(code, 2);
        return err;
      };
      assert.match(refused('a.swing.yaml'), /is of no student/);
      assert.match(refused('nobody.student.yaml'), /there is no such file/);
      assert.match(refused('ansa.student.yaml', '--club', 'driver'), /has no lesson with `driver`/);
      assert.match(
        refused('ansa.student.yaml', '--quantity', 'delivery.pth'),
        /`delivery\.pth` is no quantity/,
      );
    });
    withFolder({ 'ansa.student.yaml': student }, (folder) => {
      const { code, out } = swingwright(['progress', 'ansa.student.yaml'], folder);
      assert.deepEqual([code, out], [0, 'Ansa: no lessons.\n']);
    });
  });
});
