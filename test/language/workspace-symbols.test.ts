// Students, lessons, faults and templates are found by name.
import assert from 'node:assert/strict';
import { findWorkspaceSymbols } from '../../src/language/index.ts';
import { cardsIn, lessons, shown } from './practice.ts';

const find = (query: string): string[] =>
  findWorkspaceSymbols(cardsIn(), query).map(({ name, containerName }) => `${name} (${containerName})`);

describe('symbols of the workspace', () => {
  it('are students, templates, faults, and lessons by day and club with the newest first', () => {
    assert.deepEqual(find(''), [
      'Ansa (student)',
      'weight-back (Another)',
      'handle-trails (base.faults.yaml)',
      'weight-back (Weight stays back)',
      'Iron from the turf (template)',
      'Mira (student)',
      'weight-back (other.faults.yaml)',
      '2026-06-01 seven iron (Mira)',
      '2026-05-14 hybrid (Mira)',
      'hybrid (Ansa)',
    ]);
  });

  it('are found by letters in their order, by whose lesson it was too', () => {
    assert.deepEqual(find('mira 7'), []);
    assert.deepEqual(find('sevmira'), ['2026-06-01 seven iron (Mira)']);
    assert.deepEqual(find('HANDLE'), ['handle-trails (base.faults.yaml)']);
  });

  it('lead to the name in its file', () => {
    const [symbol] = findWorkspaceSymbols(cardsIn(), 'handle-trails');
    assert.equal(symbol?.location.uri, `${lessons}base.faults.yaml`);
    assert.equal(shown(symbol.location.uri, symbol.location.range), 'base.faults.yaml:4: handle-trails');
  });
});
