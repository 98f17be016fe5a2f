// Holds the words for checkpoints, kinds of club and shapes of shot against the trade's.
import assert from 'node:assert/strict';
import { checkpointWords, clubKindMeanings, clubKinds, shapes } from '../../src/registry/generated.ts';
import { checkpoints } from '../../src/registry/quantity.ts';
import { findShape } from '../../src/registry/registry.ts';

describe('words', () => {
  it('says what happens at each checkpoint, in their order', () => {
    assert.deepEqual(Object.keys(checkpointWords), checkpoints);
  });

  it('knows five kinds of club and says what each is', () => {
    assert.deepEqual(clubKinds, ['driver', 'fairway', 'hybrid', 'iron', 'wedge']);
    assert.deepEqual(Object.keys(clubKindMeanings), clubKinds);
  });

  it('knows every start with every curve', () => {
    for (const start of ['push', 'pull', 'straight']) {
      for (const curve of ['fade', 'draw']) assert.ok(findShape(`${start} ${curve}`), `${start} ${curve}`);
    }
    assert.equal(new Set(shapes.map((shape) => shape.word)).size, shapes.length);
  });

  it('reads a push as a start to the right and a draw as a curve to the left of a right-handed player', () => {
    assert.deepEqual(findShape('push draw'), { word: 'push draw', start: 1, curve: -1, large: false });
    assert.deepEqual(findShape('fade'), { word: 'fade', start: undefined, curve: 1, large: false });
    assert.deepEqual(findShape('hook'), { word: 'hook', start: undefined, curve: -1, large: true });
    assert.equal(findShape('shank'), undefined);
  });
});
