// What is proposed behind a number: units, directions and methods of its quantity, those of the last lesson at once.
import assert from 'node:assert/strict';
import { earlier, head, labels, record, taken } from './proposals.ts';

describe('what follows a number', () => {
  const at = (words: string): string => `${head}checkpoints:\n  address:\n    ball_position: ${words}\n`;

  it('is a unit of the quantity, the usual one and direction first', () => {
    assert.deepEqual(labels(record, at('9 $0')).slice(0, 3), ['cm behind', 'cm ahead', 'cm']);
    assert.ok(!labels(record, at('9 $0')).includes('deg'));
  });

  it('is unit, direction and method at once where the last lesson had them', () => {
    assert.equal(labels(record, at('9 $0'), { earlier })[0], 'cm behind by tape');
    assert.match(
      taken(record, at('9 $0'), 'cm behind by tape', { earlier }),
      /ball_position: 9 cm behind by tape\n$/,
    );
  });

  it('brings its space where none was typed', () => {
    assert.match(taken(record, at('9$0'), 'cm behind'), /: 9 cm behind\n$/);
  });

  it('is a direction word of the quantity behind the unit', () => {
    assert.deepEqual(labels(record, at('9 cm $0')).slice(0, 2), ['behind', 'ahead']);
    assert.match(taken(record, at('9 cm be$0'), 'behind'), /: 9 cm behind\n$/);
  });

  it('is `by` with a method, or `±`, behind the direction', () => {
    const found = labels(record, at('9 cm behind $0'));
    assert.ok(found.includes('by tape') && found.includes('by') && found.includes('±'));
    assert.ok(!found.includes('ahead'));
  });

  it('is a method behind `by`, those of the workspace included', () => {
    const found = labels(record, at('9 cm behind by $0'));
    assert.ok(found.includes('tape') && found.includes('motion capture'));
    assert.match(taken(record, at('9 cm behind by pressure m$0'), 'pressure mat'), /by pressure mat\n$/);
    const own = labels('swingwright.yaml', 'swingwright: 1\nshots: { by: $0 }');
    assert.ok(own.includes('radar'));
  });

  it('is a unit behind an uncertainty, too', () => {
    assert.equal(labels(record, at('9 cm behind ± 2 $0'))[0], 'cm');
  });

  it('is nothing before the number and nothing behind a bare `±`', () => {
    assert.deepEqual(labels(record, at('9 cm behind ± $0')), []);
    assert.deepEqual(labels(record, at('$0')), ['the long form']);
  });

  it('is neither method nor `±` in a window', () => {
    const found = labels(
      'templates/a.template.yaml',
      'template: 1\ndelivery:\n  attack: { window: 2..5 $0 }',
    );
    assert.deepEqual(found.slice(0, 2), ['deg down', 'deg up']);
    assert.ok(!found.some((label) => label.startsWith('by') || label === '±'));
  });

  it('stays within brackets and quotes', () => {
    assert.match(
      taken(record, `${head}strike: { across: 4 mm to$0, height: 1 mm low }\n`, 'toward toe'),
      /across: 4 mm toward toe, height/,
    );
    assert.match(taken(record, `${head}strike: { across: "4 $0" }\n`, 'mm'), /across: "4 mm" \}/);
  });

  it('for a planned change is about the quantity named beside', () => {
    assert.equal(
      labels(record, `${head}plan:\n  - change: checkpoints.address.stance_width\n    to: 40 $0`)[0],
      'cm',
    );
  });
});
