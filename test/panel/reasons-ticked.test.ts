// Before a plan is written the only reason is ticked, but none that what is moved leads away from; what the coach ticks stays.
import assert from 'node:assert/strict';
import { reasonsTicked } from '../../src/panel/reasons-ticked.ts';

const start = { name: 'start', away: [] };
const led = { name: 'start', away: ['start direction 1 deg left..1 deg right: now …, then …'] };
const curve = { name: 'curve', away: [] };

describe('the reasons that are ticked', () => {
  it('are the only one there is, while the coach has said nothing', () => {
    assert.deepEqual(reasonsTicked([start], undefined), ['start']);
    assert.deepEqual(reasonsTicked([start, curve], undefined), []);
    assert.deepEqual(reasonsTicked([], undefined), []);
  });

  it('are none that what is moved leads away from, unless the coach says so', () => {
    assert.deepEqual(reasonsTicked([led], undefined), []);
    assert.deepEqual(reasonsTicked([led], ['start']), ['start']);
  });

  it('are what the coach said, as far as it is a reason still', () => {
    assert.deepEqual(reasonsTicked([start], []), []);
    assert.deepEqual(reasonsTicked([start, curve], ['curve', 'gone']), ['curve']);
  });
});
