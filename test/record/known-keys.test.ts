import assert from 'node:assert/strict';
import { headersOf, keysAt } from '../../src/record/known-keys.ts';
import { quantities } from '../../src/registry/generated.ts';

describe('known keys', () => {
  it('have a place for every quantity of a record', () => {
    for (const { id, section } of quantities) {
      if (section === 'student' || section === 'club') continue;
      const parts = id.split('.');
      assert.ok(keysAt('swing', parts.slice(0, -1))?.includes(parts.at(-1)!), id);
    }
  });

  it('have a place for every quantity of the student and the clubs', () => {
    for (const { id, key, section } of quantities) {
      if (section === 'student') assert.ok(keysAt('student', [])?.includes(key), id);
      if (section === 'club') assert.ok(keysAt('student', ['bag', 'any name'])?.includes(key), id);
    }
  });

  it('are the long form below an entry, in a list or not', () => {
    assert.ok(keysAt('swing', ['flight', 'carry'])?.includes('give_or_take'));
    assert.ok(keysAt('swing', ['flight', 'carry', 0])?.includes('give_or_take'));
  });

  it('are none where there is no such place, and not said where the user names them', () => {
    assert.deepEqual(keysAt('swing', ['flight', 'constructor']), []);
    assert.equal(keysAt('student', ['bag']), undefined);
  });

  it('that hold others come sections first', () => {
    const headers = headersOf('swing');
    assert.ok(headers.indexOf('low_point') < headers.indexOf('head'));
    assert.ok(headers.includes('lead_arm_parallel_down') && !headers.includes('club'));
  });
});
