// The switches that the server knows are the ones that the package offers, with the same defaults.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { defaultHints, hintsSection, readHints } from '../../src/server/settings.ts';

interface Manifest {
  contributes: { configuration: { properties: Record<string, { default: unknown; description: string }> } };
}

describe('settings', () => {
  const manifest = JSON.parse(
    readFileSync(join(import.meta.dirname, '../../package.json'), 'utf8'),
  ) as Manifest;
  const { properties } = manifest.contributes.configuration;

  it('have the defaults that package.json tells', () => {
    const told = Object.entries(properties).filter(([name]) => name.startsWith(`${hintsSection}.`));
    assert.deepEqual(
      Object.fromEntries(
        told.map(([name, { default: value }]) => [name.slice(hintsSection.length + 1), value]),
      ),
      defaultHints,
    );
  });

  it('take anything that is not a switch as not said', () => {
    for (const sent of [undefined, null, 3, 'on', [], { units: 'no' }])
      assert.deepEqual(readHints(sent), defaultHints);
    assert.deepEqual(readHints({ units: false }), { ...defaultHints, units: false });
  });
});
