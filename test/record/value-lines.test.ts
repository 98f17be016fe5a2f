// What a file says, one value a line: looks make no difference, values do.
import assert from 'node:assert/strict';
import { valueLines } from '../../src/record/value-lines.ts';
import { kindOf } from '../../src/record/kind.ts';
import { yamlSamples } from '../samples.ts';

const lesson = `swing: 1
# a comment
date: 2026-05-14
conditions: { wind: 3 m/s from left }
checkpoints:
  impact: { lead_pressure: 66 % by pressure mat }
  address: { stance_width: 47 cm by tape }
delivery:
  attack: { value: 3.5 deg down, note: late }
  path: 5 deg right by presure mat
faults: [{ fault: hangs-back, at: impact }]
`;

describe('the values of a file', () => {
  it('stand one a line, in the order of the format', () => {
    assert.deepEqual(valueLines('swing', lesson), [
      'swing: 1',
      'date: 2026-05-14',
      'conditions.wind: 3 m/s from left',
      'checkpoints.address.stance_width: 47 cm by tape',
      'checkpoints.impact.lead_pressure: 66 % by pressure mat',
      'delivery.attack: 3.5 deg down (late)',
      'delivery.path: 5 deg right by presure mat',
      'faults.hangs-back.at: impact',
      'faults.hangs-back.fault: hangs-back',
    ]);
  });

  it('are the same in another form, order and unit', () => {
    const other = `swing: 1
date: "2026-05-14"
delivery: { path: 5 deg right by presure mat, attack: { note: late, value: -3.5 deg } }
checkpoints:
  address:
    stance_width: 470 mm by tape # measured twice
  impact:
    lead_pressure: { value: 66 %, by: pressure mat }
conditions:
  wind: 3 m/s from left
faults:
  - at: impact
    fault: hangs-back
`;
    assert.deepEqual(valueLines('swing', other), valueLines('swing', lesson));
  });

  it('differ in one line where one value does', () => {
    const other = valueLines('swing', lesson.replace('47 cm', '46 cm'));
    const changed = valueLines('swing', lesson).filter((line) => !other.includes(line));
    assert.deepEqual(changed, ['checkpoints.address.stance_width: 47 cm by tape']);
  });

  it('are the text itself where YAML cannot be read', () => {
    assert.deepEqual(valueLines('swing', 'swing: 1\nclub: "a'), ['swing: 1', 'club: "a']);
  });

  it('are told of every sample, none twice', () => {
    for (const [path, text] of yamlSamples) {
      const lines = valueLines(kindOf(path)!, text);
      assert.equal(new Set(lines).size, lines.length, path);
      assert.ok(lines.length > 5, path);
    }
  });
});
