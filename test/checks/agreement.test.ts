// Tests of the sentence that says what the other entries make of one.
import assert from 'node:assert/strict';
import { misfits } from '../../src/checks/agreement.ts';
import { analyseFiles } from './files.ts';

const assumption = (id: string) => ({ id, value: 0, u: 1, words: `a usual ${id}`, source: 'invented' });

describe('a misfit', () => {
  const { subject } = analyseFiles('swing: 1\ndelivery: { path: 2 deg right ± 1 deg, attack: 3 deg down }');
  const expected = { value: -1, u: 0.01, from: ['delivery.attack'] };

  it('names the two assumptions with the largest shares in the variance', () => {
    const [finding] = misfits(subject, 'delivery.path', {
      ...expected,
      assumed: ['grip', 'lie', 'loft', 'turf'].map(assumption),
      shares: new Map([
        ['assumed:grip', 0.1],
        ['assumed:lie', 0.5],
        ['assumed:loft', 0.05],
        ['assumed:turf', 0.3],
      ]),
    });
    assert.match(finding?.message ?? '', /, assuming a usual lie, a usual turf and 2 more\.$/);
  });

  it('names all where there are but two, each once, and none where there is none', () => {
    const messageWith = (ids: readonly string[]): string =>
      misfits(subject, 'delivery.path', { ...expected, assumed: ids.map(assumption) })[0]?.message ?? '';
    assert.match(messageWith(['grip', 'lie', 'lie']), /, assuming a usual grip and a usual lie\.$/);
    assert.doesNotMatch(messageWith([]), /assuming/);
  });
});
