// A rewrite is not offered where a part of the measure could not be read: it would drop what it does not know.
import assert from 'node:assert/strict';
import { rewritesAt } from '../../src/language/rewrites.ts';
import { marked } from '../marked.ts';
import { analysed } from './analysed.ts';

function titles(measure: string): readonly string[] {
  const { text, position } = marked(`swing: 1\ndelivery:\n  attack: ${measure}\n`);
  return rewritesAt(analysed(text), { start: position, end: position }).map(({ title }) => title);
}

describe('a measure that was not read whole', () => {
  for (const measure of [
    '4$0 deg down by raddar',
    '4$0 deg down by tape measure',
    '4$0 deg down by radar by eye',
    '4$0 deg down by radar, careful',
    '4$0 deg down ± 1 cm',
    '4$0 deg down ± by radar',
    '4$0 degs dwn by radar',
    '{ value: 4$0 deg down, by: raddar }',
    '{ value: 4$0 deg down, give_or_take: 1 cm }',
    '{ value: 4$0 deg down, bogus: 3 }',
    '[4$0 deg down by raddar, 3 deg down by radar]',
  ])
    it(`is not rewritten: ${measure.replace('$0', '')}`, () => {
      assert.deepEqual(titles(measure), []);
    });

  for (const measure of [
    '{ value: 4$0 deg down ± 1 deg, give_or_take: 2 deg }',
    '{ value: 4$0 deg down by radar, by: eye }',
  ])
    it(`keeps what it says twice: ${measure.replace('$0', '')}`, () => {
      assert.ok(!titles(measure).some((title) => title.startsWith('Write in the short form')));
    });

  it('is rewritten once it is mended', () => {
    const offered = titles('4$0 deg down by radar');
    for (const title of ['Write in the long form: attack angle', 'Mark it doubtful'])
      assert.ok(offered.includes(title), offered.join('; '));
    assert.ok(titles('{ value: 4$0 deg down, by: radar }').includes('Write in the short form: attack angle'));
  });

  it('hinders no other one', () => {
    const { text, position } = marked(
      'swing: 1\ndelivery:\n  attack: 4$0 deg down by radar\n  path: 1 deg right by raddar\n',
    );
    const offered = rewritesAt(analysed(text), { start: position, end: position });
    assert.ok(offered.some(({ title }) => title === 'Mark it doubtful'));
  });
});
