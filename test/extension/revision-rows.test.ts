// What the view of a record's revisions says in a shallow clone, outside of the workspace, and before the first commit.
import assert from 'node:assert/strict';
import { rowsOf, summaryOf } from '../../src/extension/revision-rows.ts';

const past = (hash: string) => ({ hash, subject: `lesson ${hash}`, day: '2026-05-14' });
const none = 'No commit holds this record yet.';
const said = async (found: Parameters<typeof rowsOf>[0]): Promise<readonly string[]> =>
  Promise.all(
    rowsOf(found, none).rows.map((row) =>
      summaryOf(row, 'the oldest version here', (before, revision) =>
        Promise.resolve(`${before.hash} to ${revision?.hash ?? 'now'}`),
      ),
    ),
  );

describe('the rows of revisions', () => {
  it('are the record as it stands and each commit, held against the one before', async () => {
    assert.deepEqual(await said([past('c'), past('b'), past('a')]), [
      'c to now',
      'b to c',
      'a to b',
      'the oldest version here',
    ]);
  });

  it('end in a shallow clone with the oldest version that it holds, which is held against nothing', async () => {
    assert.deepEqual(await said([past('c')]), ['c to now', 'the oldest version here']);
  });

  it('are none of a file in no repository of the workspace, or in no commit, and a sentence stands in their place', () => {
    const outside = 'The file lies in no git repository that VS Code has open.';
    assert.deepEqual(rowsOf(outside, none), { rows: [], message: outside });
    assert.deepEqual(rowsOf([], none), { rows: [], message: none });
  });
});
