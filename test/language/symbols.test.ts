// The outline follows the text, with each value in one line.
import assert from 'node:assert/strict';
import { findSymbols } from '../../src/language/index.ts';
import type { DocumentSymbol } from '../../src/language/shapes.ts';
import { analysed } from './analysed.ts';

const tree = (symbols: readonly DocumentSymbol[], indent = ''): string =>
  symbols
    .map(({ name, detail, children }) => `${indent}${name}|${detail}\n${tree(children, `${indent}  `)}`)
    .join('');

describe('the outline', () => {
  it('gives keys with their values', () => {
    const symbols = findSymbols(analysed('swing: 1\ndelivery:\n  face: 1 deg right\n  path: 5 deg right\n'));
    assert.equal(tree(symbols), 'delivery|\n  face|1 deg right\n  path|5 deg right\n');
  });

  it('tells numbers from words, dates and paths', () => {
    const kinds = findSymbols(
      analysed('swing: 1\ntemplate: ../a.template.yaml\ndate: 2026-05-14\nclub: .5 iron\n'),
    ).map(({ name, kind }) => `${name} ${kind}`);
    // As the protocol numbers them: 15 a text, 16 a number.
    assert.deepEqual(kinds, ['template 15', 'date 15', 'club 16']);
  });

  it('ends each key on its last line, so that the next key is in none of those above', () => {
    const text =
      'swing: 1\ndelivery:\n  arc:\n    radius: 1.4 m # r\n  face: 1 deg right\n\n# the flight\nflight: { carry: 171 m, start: 0 deg }\nstrike:\n  across:\n';
    const ends = (symbols: readonly DocumentSymbol[]): string[] =>
      symbols.flatMap(({ name, range: { end }, children }) => [
        `${name} ${text.split('\n')[end.line]!.slice(0, end.character)}`,
        ...ends(children),
      ]);
    assert.deepEqual(ends(findSymbols(analysed(text))), [
      'delivery   face: 1 deg right',
      'arc     radius: 1.4 m # r',
      'radius     radius: 1.4 m # r',
      'face   face: 1 deg right',
      'flight flight: { carry: 171 m, start: 0 deg }',
      'carry flight: { carry: 171 m',
      'start flight: { carry: 171 m, start: 0 deg',
      'strike   across:',
      'across   across:',
    ]);
  });

  it('holds each name inside its range, and children inside their parents', () => {
    const text =
      'swing: 1\ncheckpoints:\n  impact:\n    shaft_lean: 9 deg forward\n\n  top: {}\n"":\n  - 1\n';
    const inside = (symbol: DocumentSymbol): void => {
      const { range, selectionRange, children, name } = symbol;
      assert.notEqual(name, '');
      const at = ({ line, character }: { line: number; character: number }): number =>
        line * 1000 + character;
      assert.ok(at(range.start) <= at(selectionRange.start) && at(selectionRange.end) <= at(range.end), name);
      for (const child of children) {
        assert.ok(
          at(range.start) <= at(child.range.start) && at(child.range.end) <= at(range.end),
          child.name,
        );
        inside(child);
      }
    };
    const symbols = findSymbols(analysed(text));
    assert.ok(symbols.length >= 2);
    for (const symbol of symbols) inside(symbol);
  });
});
