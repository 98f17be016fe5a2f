// The switches that the server knows are the ones that the package offers, with the same defaults.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  defaultHints,
  defaultHovers,
  hintsSection,
  hoversSection,
  readHints,
  readHovers,
} from '../../src/server/settings.ts';

interface Manifest {
  contributes: { configuration: { properties: Record<string, { default: unknown; description: string }> } };
}

describe('settings', () => {
  const manifest = JSON.parse(
    readFileSync(join(import.meta.dirname, '../../package.json'), 'utf8'),
  ) as Manifest;
  const { properties } = manifest.contributes.configuration;

  it('have the defaults that package.json tells', () => {
    for (const [section, defaults] of [
      [hintsSection, defaultHints],
      [hoversSection, defaultHovers],
    ] as const) {
      const told = Object.entries(properties).filter(([name]) => name.startsWith(`${section}.`));
      const values = told.map(([name, { default: value }]) => [name.slice(section.length + 1), value]);
      assert.deepEqual(Object.fromEntries(values), defaults);
    }
  });

  it('take anything that is not a switch as not said', () => {
    for (const sent of [undefined, null, 3, 'on', [], { units: 'no', pictures: 'no' }]) {
      assert.deepEqual(readHints(sent), defaultHints);
      assert.deepEqual(readHovers(sent), defaultHovers);
    }
    assert.deepEqual(readHovers({ pictures: false }), { pictures: false });
    assert.deepEqual(readHints({ units: false }), { ...defaultHints, units: false });
  });
});
