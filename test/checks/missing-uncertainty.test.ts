// Tests of the check missing-uncertainty.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone } from './files.ts';

const workspace = (more = ''): string => `swingwright: 1
derived:
  delivery.swing_gap: { is: delivery.path - delivery.face, unit: deg, bounds: -20..20 deg${more} }
`;
const lesson = (gap: string): string =>
  `swing: 1\ndelivery:\n  path: 4 deg right ± 1 deg\n  face: 1 deg right ± 1 deg\n  swing_gap: ${gap}\n`;
const files = (gap: string, more = '') => ({
  'a.swing.yaml': lesson(gap),
  'swingwright.yaml': workspace(more),
});

describe('missing-uncertainty', () => {
  it('marks a computed quantity that is measured, and takes the computed number', () => {
    const analysis = assertMarked('missing-uncertainty', {
      'a.swing.yaml': `${lesson('9 deg')}#            ^ warning[missing-uncertainty]\n`,
      'swingwright.yaml': workspace(),
    });
    const value = analysis.derivation!.values.get('delivery.swing_gap')!;
    assert.equal(value.kind, 'derived');
    assert.ok(Math.abs(value.value - (3 * Math.PI) / 180) < 1e-9);
  });

  it('marks only the readings that nobody is sure of', () => {
    const { findings, derivation } = analyseFiles(files('[9 deg, 3 deg ± 1 deg]'));
    assert.equal(findings.filter(({ code }) => code === 'missing-uncertainty').length, 1);
    assert.ok(Math.abs(derivation!.values.get('delivery.swing_gap')!.value - (3 * Math.PI) / 180) < 1e-9);
  });

  it('takes one with ±, by a method of known uncertainty, or whose declaration tells it', () => {
    assertNone('missing-uncertainty', files('9 deg ± 1 deg'));
    assertNone('missing-uncertainty', files('9 deg by video'));
    assertNone('missing-uncertainty', files('9 deg', ', uncertainty: 2 deg'));
  });

  it('takes predictions, windows and goals, which are no measurements', () => {
    const plan =
      'plan: [{ change: delivery.swing_gap, to: 1 deg, because: fun, predicted: { delivery.swing_gap: 1 deg } }]\n';
    assertNone('missing-uncertainty', {
      'a.swing.yaml': `swing: 1\n${plan}`,
      'swingwright.yaml': workspace(),
    });
    assertNone('missing-uncertainty', {
      'a.template.yaml': 'template: 1\ndelivery: { swing_gap: 1..2 deg }\n',
      'swingwright.yaml': workspace(),
    });
  });
});
