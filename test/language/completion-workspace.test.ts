// Proposals in the workspace file know its sections, also where the text is half typed.
import assert from 'node:assert/strict';
import { proposed } from './proposals.ts';

const own = 'swingwright: 1\nquantities: { delivery.wobble: { like: delivery.path } }\n';

function labels(source: string): string[] {
  return proposed('swingwright.yaml', own + source).items.map(({ label }) => label);
}

describe('proposals in the workspace file', () => {
  it('are quantities and functions in a derived quantity, a relation and a check, own ones included', () => {
    for (const source of [
      'derived:\n  delivery.rock:\n    is: $0',
      'derived:\n  delivery.rock:\n    is: 2 * del$0',
      'derived: { delivery.rock: { is: abs(del$0',
      'relations:\n  alike:\n    says: del$0',
      'relations:\n  alike:\n    says: delivery.path ≈ $0',
      'checks:\n  much:\n    when: $0',
    ]) {
      const found = labels(source);
      assert.ok(found.includes('delivery.wobble'), source);
      assert.ok(found.includes('median'), source);
    }
  });

  it('are quantities behind `like` and behind the `at` of a check, and checkpoints behind that of a quantity', () => {
    assert.ok(labels('derived:\n  delivery.rock:\n    like: del$0').includes('delivery.wobble'));
    const at = labels('checks:\n  much:\n    at: $0');
    assert.ok(at.includes('delivery.wobble') && !at.includes('impact'));
    const places = 'swingwright: 1\nquantities:\n  checkpoints.heel:\n    at: [$0]';
    assert.ok(proposed('swingwright.yaml', places).items.some(({ label }) => label === 'impact'));
  });

  it('are dimensions and quantities below `show`', () => {
    const found = labels('show:\n  $0');
    assert.ok(found.includes('length') && found.includes('delivery.wobble'));
  });
});
