// What a record is offered to be compared with: the student's earlier lessons with the same club first, the newest before the older.
import assert from 'node:assert/strict';
import { inGroups } from '../../src/extension/compare-order.ts';

const lesson = (uri: string, date: string | undefined, club: string | undefined) => ({ uri, date, club });
const lessons = [
  lesson('runa/1', '2026-03-07', 'six iron'),
  lesson('runa/2', '2026-04-02', 'Six  Iron'),
  lesson('runa/3', '2026-05-01', 'driver'),
  lesson('runa/4', '2026-06-01', 'six iron'),
  lesson('runa/5', '2026-07-01', 'six iron'),
  lesson('runa/6', undefined, 'six iron'),
  lesson('runa/7', '2026-02-01', undefined),
];
const files = ['a.template', 'runa/1', 'runa/2', 'runa/3', 'runa/5', 'runa/6', 'runa/7', 'tove/1'];
const grouped = (uri: string, known = lessons): unknown =>
  inGroups(files, (file) => file, uri, known).map((group) => [
    group.of,
    group.files.map(({ file }) => file).join(' '),
  ]);

describe('the files that a record is offered to be compared with', () => {
  it('begin with earlier lessons of the same student and club, the newest first', () => {
    assert.deepEqual(grouped('runa/4'), [
      ['same club', 'runa/2 runa/1 runa/5 runa/6'],
      ['same student', 'runa/3 runa/7'],
      ['others', 'a.template tove/1'],
    ]);
  });

  it('stay in their order where nobody knows the student', () => {
    assert.deepEqual(grouped('tove/2', []), [['others', files.join(' ')]]);
  });
});
