// One question is out at a time, and the next one is the latest that was asked meanwhile.
import assert from 'node:assert/strict';
import { latestOnly } from '../../src/panel/latest.ts';

describe('questions to the model', () => {
  it('are sent one at a time, and those that were overtaken never', () => {
    const sent: number[] = [];
    const { ask, answered } = latestOnly<number>((question) => sent.push(question));
    for (const question of [1, 2, 3]) ask(question);
    assert.deepEqual(sent, [1]);
    answered();
    assert.deepEqual(sent, [1, 3]);
    ask(4);
    assert.deepEqual(sent, [1, 3]);
    answered();
    answered();
    assert.deepEqual(sent, [1, 3, 4]);
    ask(5);
    assert.deepEqual(sent, [1, 3, 4, 5]);
  });
});
