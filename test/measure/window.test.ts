// What a written window is read as, and where its problems are.
import assert from 'node:assert/strict';
import { parseMeasure } from '../../src/measure/parse.ts';
import { patternOf } from '../../src/measure/pattern.ts';
import { toSI } from '../../src/measure/units.ts';
import { angle, either, readProblems, readWindow, share, side, windowOnly } from './notations.ts';

const deg = (degrees: number): number => toSI(degrees, 'deg');

describe('a window', () => {
  it('runs from the smaller to the larger value after the sign', () => {
    const left = readWindow('2..5 deg left', angle);
    assert.deepEqual([left.from, left.to], [deg(-5), deg(-2)]);
    const right = readWindow('2..5 deg right', angle);
    assert.deepEqual([right.from, right.to], [deg(2), deg(5)]);
  });

  it('may begin at zero, which is never minus zero', () => {
    const { from, to } = readWindow('0..5 yd left', side);
    assert.equal(from, -toSI(5, 'yd'));
    assert.ok(Object.is(to, 0));
  });

  it('may reach across zero, with signs or with a direction on each side', () => {
    for (const text of [
      '-1..2 deg',
      '−1 .. 2°',
      '1 deg left..2 deg right',
      '1 left..2 right',
      '2 deg right..1 deg left',
    ]) {
      const { from, to, direction } = readWindow(text, angle);
      assert.deepEqual([from, to, direction], [deg(-1), deg(2), undefined], text);
    }
  });

  it('may end at zero without a side of it', () => {
    for (const [text, from, to, direction] of [
      ['2 deg left..0 deg', -2, 0, 'left'],
      ['4 deg right..0 deg', 0, 4, 'right'],
      ['4 deg right..0', 0, 4, 'right'],
      ['2 left..-0.0', -2, 0, 'left'],
    ] as const) {
      const window = readWindow(text, angle);
      assert.ok(Math.abs(window.from - deg(from)) < 1e-12 && Math.abs(window.to - deg(to)) < 1e-12, text);
      assert.equal(window.direction, direction, text);
      assert.match(text, new RegExp(patternOf(angle, [], 'window')));
    }
    for (const text of ['2 deg left..1 deg', '-2 deg left..0 deg', '4..0 deg right'])
      assert.notDeepEqual(readProblems(text, angle, windowOnly), []);
  });

  it('may run either way where each bound names its side', () => {
    for (const text of ['2 deg left..5 deg left', '5 deg left..2 deg left', '5 left..2 left']) {
      const { from, to, direction, spans } = readWindow(text, angle);
      assert.deepEqual([from, to, direction], [deg(-5), deg(-2), 'left'], text);
      assert.equal(text.slice(spans.from.start, spans.from.end), '5', text);
      assert.match(text, new RegExp(patternOf(angle, [], 'window')));
    }
  });

  it('takes the own unit of the quantity where none is written', () => {
    const { from, to, unit } = readWindow('45..60', share);
    assert.deepEqual([from, to, unit], [0.45, 0.6, undefined]);
  });

  it('says where the number stands that gives each bound', () => {
    const { spans } = readWindow('2..5 deg left', angle);
    assert.deepEqual(spans, {
      from: { start: 3, end: 4 },
      to: { start: 0, end: 1 },
      unit: { start: 5, end: 8 },
      direction: { start: 9, end: 13 },
    });
  });

  it('may stand beside a measurement where both are allowed', () => {
    assert.equal(parseMeasure('2 deg left', angle, either).value?.kind, 'measure');
    assert.equal(parseMeasure('2..5 deg left', angle, either).value?.kind, 'window');
  });
});

describe('the problems of a window', () => {
  const cases: readonly (readonly [fact: string, text: string, problems: readonly string[]])[] = [
    ['the larger number first', '5..2 deg', ['window-reversed at `5..2`, near 2..5']],
    ['the larger number first with a direction', '5..2 deg left', ['window-reversed at `5..2`, near 2..5']],
    ['a sign and a direction', '-2..5 deg left', ['direction-with-sign at `-2`']],
    ['a direction on the first side only', '2 left..5', ['missing-direction at `5`']],
    ['no second number', '2..', ['unreadable-measure at `..`']],
    ['a word for the second number', '2..x', ['unreadable-measure at `x`']],
    ['three dots', '2...5 deg', ['unreadable-measure at `...`, near ..']],
    ['an estimate sign', '~2..5 deg', ['unreadable-measure at `~`']],
    ['a method', '2..5 deg by eye', ['unreadable-measure at `by eye`']],
    ['an uncertainty', '2..5 deg ± 1', ['unreadable-measure at `± 1`']],
    ['an unknown direction', '2..5 deg lft', ['unknown-direction at `lft`, near left']],
    ['a unit of another dimension', '2..5 kg', ['wrong-dimension at `kg`']],
    ['a number too large', '2..1e400 deg', ['number-out-of-range at `1e400`']],
    ['a measurement', '3 deg', ['measure-not-allowed at `3 deg`']],
  ];
  for (const [fact, text, problems] of cases) {
    it(`are found at the exact characters and leave no window: ${fact}`, () => {
      assert.deepEqual(readProblems(text, angle, windowOnly), problems);
      assert.equal(parseMeasure(text, angle, windowOnly).value, undefined);
    });
  }
});
