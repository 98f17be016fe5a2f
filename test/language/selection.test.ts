// A selection grows from the word to the file, each step larger than the last.
import assert from 'node:assert/strict';
import { findSelectionRanges } from '../../src/language/index.ts';
import { offsetAt } from '../../src/language/places.ts';
import { lineTableOf } from '../../src/analysis/positions.ts';
import type { SelectionRange } from '../../src/language/shapes.ts';
import { marked } from '../marked.ts';
import { analysed } from './analysed.ts';

function steps(source: string): string[] {
  const { text, position } = marked(source);
  const table = lineTableOf(text);
  const found: string[] = [];
  const [range] = findSelectionRanges(analysed(text), [position]);
  for (let step: SelectionRange | undefined = range; step !== undefined; step = step.parent)
    found.push(text.slice(offsetAt(table, step.range.start), offsetAt(table, step.range.end)));
  return found;
}

describe('a growing selection', () => {
  it('takes word, part of the measure, value, entry, section and file', () => {
    const text = 'swing: 1\ndelivery:\n  path: 5 deg ri$0ght ± 1 deg by radar\n  face: 0 deg\n';
    const section = 'path: 5 deg right ± 1 deg by radar\n  face: 0 deg';
    assert.deepEqual(steps(text), [
      'right',
      '5 deg right',
      '5 deg right ± 1 deg by radar',
      'path: 5 deg right ± 1 deg by radar',
      section,
      `delivery:\n  ${section}`,
      text.replace('$0', ''),
    ]);
  });

  it('takes the method, and one of several measurements', () => {
    assert.deepEqual(
      steps('swing: 1\ndelivery: { face: [1 deg right by radar, 3 deg right by e$0ye] }\n').slice(0, 4),
      ['eye', 'by eye', '3 deg right by eye', '[1 deg right by radar, 3 deg right by eye]'],
    );
  });

  it('takes a key, then its entry', () => {
    assert.deepEqual(steps('swing: 1\nflight:\n  ca$0rry: 150 m\n').slice(0, 3), [
      'carry',
      'carry: 150 m',
      'flight:\n  carry: 150 m',
    ]);
  });

  it('gives something at every offset of a half-typed text', () => {
    const text = 'swing: 1\ndelivery: { path: [1 deg ri\n  "fa: x\n';
    for (let at = 0; at <= text.length; at += 1) {
      const found = steps(`${text.slice(0, at)}$0${text.slice(at)}`);
      assert.equal(found.at(-1), text);
      for (const [place, step] of found.slice(1).entries())
        assert.ok(step.length > found[place]!.length && step.includes(found[place]!));
    }
  });
});
