// What a workspace adds to the model may give no number, or be tighter than anything is read: neither bends the fit.
import assert from 'node:assert/strict';
import { analyseFiles } from '../checks/files.ts';

function withDerived(is: string, path: string) {
  return analyseFiles({
    'a.swing.yaml': `swing: 1\ndelivery: { path: ${path}, face: 3 deg right ± 3 deg }\n`,
    'swingwright.yaml': `swingwright: 1\nderived:\n  delivery.d: { unit: ratio, bounds: -100..100, is: ${is} }\n`,
  });
}

describe('a derived quantity that has no number', () => {
  for (const is of ['sqrt(delivery.path / 1 deg)', 'log(delivery.path / 1 deg)'])
    it(`gives none, and leaves the others as they are: ${is}`, () => {
      const analysis = withDerived(is, '2 deg left ± 3 deg');
      assert.equal(analysis.derivation?.values.get('delivery.d'), undefined);
      const path = analysis.agreement?.posterior.get('delivery.path')?.value;
      const plain = withDerived('delivery.path / 1 deg', '2 deg left ± 3 deg');
      assert.equal(path, plain.agreement?.posterior.get('delivery.path')?.value);
    });

  it('gives one where there is one', () => {
    const value = withDerived('sqrt(delivery.path / 1 deg)', '4 deg right ± 0.1 deg');
    assert.ok(Math.abs(value.derivation!.values.get('delivery.d')!.value - 2) < 0.01);
  });
});

describe('a relation tighter than anything is read', () => {
  it('says the same as one that is tight enough', () => {
    const agreed = (u: string): number =>
      analyseFiles({
        'a.swing.yaml': 'swing: 1\ndelivery: { wand: 0 deg, face: 3 deg right }\n',
        'swingwright.yaml': `swingwright: 1
quantities: { delivery.wand: { like: delivery.face } }
relations: { w: { says: delivery.wand ≈ delivery.face ± ${u} deg } }
`,
      }).agreement?.p ?? NaN;
    const wide = agreed('0.01');
    assert.ok(wide > 0.4 && wide < 0.6);
    for (const u of ['0.001', '0.0001', '0.00001', '0.000001', '1e-9'])
      assert.ok(Math.abs(agreed(u) - wide) < 0.001, `${u}: ${agreed(u)}`);
  });
});
