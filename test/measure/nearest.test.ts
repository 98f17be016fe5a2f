// Which known word a mistyped one is taken for.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { findNearest } from '../../src/measure/nearest.ts';

describe('the nearest known word', () => {
  it('forgives a replaced, a missing, an added and two swapped letters', () => {
    const words = ['ahead', 'behind'];
    for (const typed of ['ahead', 'aheed', 'ahed', 'aheadd', 'ahaed'])
      assert.equal(findNearest(typed, words), 'ahead');
  });

  it('ignores letter case and gives the word as the list spells it', () => {
    assert.equal(findNearest('KPA', ['kPa', 'hPa']), 'kPa');
  });

  it('prefers the longer common beginning among equally near words', () => {
    assert.equal(findNearest('cn', ['mm', 'in', 'cm']), 'cm');
  });

  it('takes a half-typed word for the one it begins', () => {
    assert.equal(findNearest('mot', ['eye', 'motion capture']), 'motion capture');
  });

  it('prefers one of the same length among equally near words, as where two letters are swapped', () => {
    assert.equal(findNearest('gk', ['g', 'gram', 'kg']), 'kg');
    assert.equal(findNearest('gk', ['kg', 'g']), 'kg');
    // Damerau 1964, Commun. ACM 7, 171: a swap of neighbours is one error, and so is a replaced letter.
    assert.equal(findNearest('lenght', ['lengths', 'length']), 'length');
  });

  it('takes a word that leaves letters out for the whole one', () => {
    assert.equal(findNearest('dgr', ['rad', 'deg', 'degree']), 'degree');
    assert.equal(findNearest('mtr', ['mm', 'metre']), 'metre');
    assert.equal(findNearest('dgr', ['gradient', 'd r a g o n']), undefined);
  });

  it('does not guess where most letters differ', () => {
    assert.equal(findNearest('q', ['m']), undefined);
    assert.equal(findNearest('banana', ['ahead', 'behind']), undefined);
    assert.equal(findNearest('', ['ahead']), undefined);
  });

  it('gives a word of the list for any text, and the word itself where it is listed', () => {
    const list = ['eye', 'video', 'tape', 'pressure mat', 'cm', 'm', ''];
    fc.assert(
      fc.property(fc.string(), (text) => {
        const nearest = findNearest(text, list);
        assert.ok(nearest === undefined || list.includes(nearest));
      }),
    );
    for (const word of list.filter((known) => known !== ''))
      assert.equal(findNearest(word, list) ?? 'm', word);
  });
});
