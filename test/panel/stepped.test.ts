// Steps go from checkpoint to checkpoint and stop at the ends.
import assert from 'node:assert/strict';
import { stepped } from '../../src/panel/stepped.ts';

const checkpoints = ['address', 'top', 'impact'].map((name) => ({
  name,
  title: name,
  ids: [],
  pictures: [],
}));

describe('steps through the checkpoints', () => {
  it('lead to the next one and the one before, and no further than the ends', () => {
    assert.equal(stepped(checkpoints, 'address', 1), 'top');
    assert.equal(stepped(checkpoints, 'impact', -1), 'top');
    assert.equal(stepped(checkpoints, 'impact', 1), 'impact');
    assert.equal(stepped(checkpoints, 'address', -1), 'address');
  });

  it('begin at the first one where none was chosen, or one that is gone', () => {
    assert.equal(stepped(checkpoints, null, 1), 'top');
    assert.equal(stepped(checkpoints, 'finish', 1), 'top');
    assert.equal(stepped([], null, 1), null);
  });
});
