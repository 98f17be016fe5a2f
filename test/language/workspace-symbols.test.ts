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

  it('are own quantities, derived ones, relations and checks, each once', () => {
    const files = {
      'swingwright.yaml': `swingwright: 1
quantities:
  delivery.wand: { like: delivery.face }
  checkpoints.rib_turn: { like: checkpoints.shoulder_turn, at: [top, impact] }
derived: { delivery.far: { like: delivery.face, is: 2 * delivery.wand } }
relations: { alike: { says: delivery.wand ≈ delivery.face ± 1 deg } }
checks: { wide: { when: delivery.wand > 3 deg, message: Wide. } }
`,
    };
    const symbols = findWorkspaceSymbols(cardsIn(files), '');
    assert.deepEqual(
      symbols.map(({ name, containerName }) => `${name} (${containerName})`),
      [
        'delivery.wand (own quantity)',
        'checkpoints.rib_turn (own quantity)',
        'delivery.far (own quantity)',
        'alike (own relation)',
        'wide (own check)',
      ],
    );
    const { uri, range } = symbols[2]!.location;
    assert.equal(shown(uri, range, files), 'swingwright.yaml:5: delivery.far');
  });

  it('lead to the name in its file', () => {
    const [symbol] = findWorkspaceSymbols(cardsIn(), 'handle-trails');
    assert.equal(symbol?.location.uri, `${lessons}base.faults.yaml`);
    assert.equal(shown(symbol.location.uri, symbol.location.range), 'base.faults.yaml:4: handle-trails');
  });
});
