// Tests of what a miss means for either hand.
import assert from 'node:assert/strict';
import { findMiss } from '../../src/registry/registry.ts';
import { meaningOfMiss } from '../../src/registry/meaning-of-miss.ts';

const of = (word: string, hand: 'left' | 'right' | undefined): string => meaningOfMiss(findMiss(word)!, hand);

describe('what a miss means', () => {
  // A left-hander's slice and push go left, hook and pull right: common practice, no source.
  it('changes sides for a left-handed player', () => {
    assert.equal(of('slice', 'right'), 'curves too much to the right');
    assert.equal(of('slice', 'left'), 'curves too much to the left');
    assert.equal(of('hook', 'left'), 'curves too much to the right');
    assert.equal(of('push', 'left'), 'starts to the left of the target line');
    assert.equal(of('pull', 'left'), 'starts to the right of the target line');
  });

  it('keeps the sides of the target line, and what has no side', () => {
    assert.equal(of('right', 'left'), of('right', 'right'));
    assert.equal(of('heavy', 'left'), of('heavy', undefined));
  });

  it('says both where no hand is known', () => {
    assert.equal(of('slice', undefined), 'curves too much to the right (for a left-handed player, left)');
  });
});
