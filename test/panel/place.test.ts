// The cursor stands on the smallest entry around it, or on the only one of its line.
import assert from 'node:assert/strict';
import { sheetOf } from '../../src/language/sheet.ts';
import { thingAt } from '../../src/panel/place.ts';
import { lineTableOf, positionAt } from '../../src/analysis/positions.ts';
import { analysed } from '../language/analysed.ts';

function at(marked: string): string | undefined {
  const text = marked.replace('$0', '');
  const position = positionAt(lineTableOf(text), marked.indexOf('$0'));
  return thingAt(sheetOf(analysed(text))!.things, position);
}

describe('the thing at the cursor', () => {
  it('is the entry that the cursor stands in, key and value alike', () => {
    assert.equal(at('swing: 1\ndelivery:\n  pa$0th: 2 deg right\n  face: 1 deg right\n'), 'delivery.path');
    assert.equal(at('swing: 1\ndelivery:\n  path: 2 deg right\n  face: 1 deg ri$0ght\n'), 'delivery.face');
  });

  it('is the nearer one of two on a line', () => {
    assert.equal(at('swing: 1\ndelivery: { path: 2 deg right, face: 1$0 deg right }\n'), 'delivery.face');
  });

  it('is the only entry of the line, wherever on it the cursor stands', () => {
    assert.equal(at('swing: 1\ndelivery:\n$0  path: 2 deg right # by radar\n'), 'delivery.path');
    assert.equal(at('swing: 1\ndelivery:\n  path: 2 deg right # by ra$0dar\n'), 'delivery.path');
  });

  it('is none between two entries of a line, nor where none is', () => {
    assert.equal(at('swing: 1\n$0delivery: { path: 2 deg right, face: 1 deg right }\n'), undefined);
    assert.equal(at('swing$0: 1\ndelivery: { path: 2 deg right, face: 1 deg right }\n'), undefined);
  });
});
