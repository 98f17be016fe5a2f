// Parts of the body are found by their words, and meet where one belongs to the other on the same side.
import assert from 'node:assert/strict';
import { bodyWords, findBodyPlace, meets } from '../../src/registry/body.ts';
import { bodyParts } from '../../src/registry/generated.ts';

const place = (words: string) => {
  const found = findBodyPlace(words);
  assert.ok(found, words);
  return found;
};

describe('a part of the body', () => {
  it('is found by its name, by other words, with a side before it', () => {
    assert.equal(place('lower back').part.name, 'lower back');
    assert.equal(place('Lumbar  Spine').part.name, 'lower back');
    assert.deepEqual([place('trail wrist').part.name, place('trail wrist').side], ['wrist', 'trail']);
    assert.equal(place('both knees').side, 'both');
  });

  it('is not found where there is none such, or where it has no sides', () => {
    for (const words of ['lowr back', 'lead neck', 'lead', '', 'knee lead'])
      assert.equal(findBodyPlace(words), undefined);
  });

  it('has a name of its own, and so has what it is also called', () => {
    const words = bodyParts.flatMap(({ name, also }) => [name, ...also]);
    assert.equal(new Set(words).size, words.length);
    for (const word of bodyWords) assert.ok(findBodyPlace(word), word);
  });

  it('meets itself, what it belongs to and what belongs to it', () => {
    assert.ok(meets(place('lower back'), place('back'), 'right'));
    assert.ok(meets(place('back'), place('lower back'), 'right'));
    assert.ok(meets(place('arm'), place('thumb'), 'right'));
    assert.ok(!meets(place('upper back'), place('lower back'), 'right'));
    assert.ok(!meets(place('knee'), place('ankle'), 'right'));
  });

  it('meets only on the same side, where both sides are known', () => {
    assert.ok(meets(place('lead knee'), place('left knee'), 'right'));
    assert.ok(!meets(place('lead knee'), place('right knee'), 'right'));
    assert.ok(meets(place('lead knee'), place('right knee'), 'left'));
    assert.ok(meets(place('lead knee'), place('right knee'), undefined));
    assert.ok(meets(place('lead knee'), place('knee'), 'right'));
    assert.ok(meets(place('both knees'), place('right knee'), 'right'));
  });
});
