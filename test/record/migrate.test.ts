// Files go from version to version by edits that keep everything else; the steps here are made up, since version 1 is the first.
import assert from 'node:assert/strict';
import { format, migrate, renameKey, type Format } from '../../src/record/migrate.ts';

/** Two steps: a key gets another name, then one further in. */
const third: Format = {
  version: 3,
  migrations: [
    { kind: 'swing', from: 1, edits: (tree) => renameKey(tree, ['tool'], 'club') },
    { kind: 'swing', from: 2, edits: (tree) => renameKey(tree, ['delivery', 'dive'], 'attack') },
  ],
};

const text = `# before all
swing: 1 # the first
tool:   "hybrid" # not an iron
delivery: { dive: 3 deg down } # steep
notes: >
  dive: no key
`;

describe('migrating', () => {
  it('goes through every version, keeps comments and spaces, and touches no word that only looks alike', () => {
    const moved = migrate('swing', text, third);
    assert.ok(moved.kind === 'moved');
    assert.equal(moved.from, 1);
    assert.equal(
      moved.text,
      text.replace('swing: 1', 'swing: 3').replace('tool', 'club').replace('{ dive', '{ attack'),
    );
    assert.deepEqual(migrate('swing', moved.text, third), { kind: 'present' });
  });

  it('starts in the middle, and keeps the line ends', () => {
    const later = text.replace('swing: 1', 'swing: 2').replaceAll('\n', '\r\n');
    const moved = migrate('swing', later, third);
    assert.ok(moved.kind === 'moved');
    assert.equal(moved.text, later.replace('swing: 2', 'swing: 3').replace('{ dive', '{ attack'));
  });

  it('refuses a newer version, one that nothing leads on from, none, and what is no YAML', () => {
    const refused = (source: string, known: Format = third): string => {
      const result = migrate('swing', source, known);
      assert.ok(result.kind === 'refused', source);
      return result.reason;
    };
    assert.match(refused('swing: 4\n'), /version 4 .* none after 3/);
    assert.match(refused('swing: 0\n'), /version 0 of the format, from which nothing leads on/);
    assert.match(refused('swing: 0\n', format), /version 0/);
    assert.match(refused('date: 2026-05-14\n'), /no version/);
    assert.match(refused('swing: one\n'), /no version/);
    assert.match(refused('swing: 1\ntool: { a: 1\n'), /not YAML/);
  });

  it('leaves a file of the present version as it is', () => {
    assert.deepEqual(migrate('swing', 'swing: 1\n'), { kind: 'present' });
  });
});
