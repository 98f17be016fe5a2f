// Findings as diagnostics: severity, address of the explanation, related places.
import assert from 'node:assert/strict';
import { findDiagnostics } from '../../src/language/index.ts';
import { analysed } from './analysed.ts';

const address = (code: string): string => `page:${code}`;

describe('diagnostics', () => {
  it('carry the code and the address of its explanation', () => {
    const [found] = findDiagnostics(analysed('swing: 1\nflight:\n  carry: 171 kg\n'), address).filter(
      ({ code }) => code === 'wrong-dimension',
    );
    assert.equal(found?.severity, 1);
    assert.deepEqual(found.codeDescription, { href: 'page:wrong-dimension' });
  });

  it('leave the address out where an editor has no place for explanations', () => {
    const found = findDiagnostics(analysed('swing: 1\nflight:\n  carry: 171 kg\n'), () => undefined);
    assert.ok(found.length > 0);
    assert.ok(found.every((each) => !('codeDescription' in each)));
  });

  it('point at the other place that a finding is about', () => {
    const found = findDiagnostics(analysed('swing: 1\ndate: 2026-05-14\ndate: 2026-05-15\n'), address);
    const twice = found.find(({ code }) => code === 'duplicate-key');
    assert.deepEqual(
      twice?.relatedInformation?.map(({ location }) => [location.uri, location.range.start.line]),
      [['file:///lessons/a.swing.yaml', 1]],
    );
  });
});
