// What a written measurement is read as, and where its problems are.
import assert from 'node:assert/strict';
import type { Span } from '../../src/measure/measure.ts';
import { toSI } from '../../src/measure/units.ts';
import { parseMeasure } from '../../src/measure/parse.ts';
import {
  angle,
  inertia,
  mass,
  methods,
  offset,
  ratio,
  readMeasure,
  readProblems,
  share,
  side,
  single,
  speed,
  spin,
  strike,
  temperature,
  width,
  wind,
} from './notations.ts';

describe('a measurement', () => {
  it('has its direction as the sign', () => {
    assert.equal(readMeasure('6 cm ahead', offset).value, 0.06);
    assert.equal(readMeasure('6 cm behind', offset).value, -0.06);
    assert.equal(readMeasure('5 deg left', angle).value, -toSI(5, 'deg'));
  });

  it('is positive by convention without a direction, and may be negative', () => {
    const bare = readMeasure('6 cm', offset);
    assert.equal(bare.value, 0.06);
    assert.equal(bare.direction, undefined);
    assert.equal(readMeasure('-6 cm', offset).value, -0.06);
    assert.equal(readMeasure('−6 cm', offset).value, -0.06);
  });

  it('takes the own unit of the quantity where none is written', () => {
    const bare = readMeasure('47', width);
    assert.equal(bare.value, 0.47);
    assert.equal(bare.unit, undefined);
    assert.equal(readMeasure('6 behind', offset).value, -0.06);
  });

  it('may be in any unit of the dimension', () => {
    assert.equal(readMeasure('10 in', width).value, 0.254);
    assert.equal(readMeasure('92 mph', speed).value, toSI(92, 'mph'));
    assert.equal(readMeasure('7.1 oz', mass).value, toSI(7.1, 'oz'));
    assert.equal(readMeasure('145 pounds', mass).value, toSI(145, 'lb'));
    assert.equal(readMeasure('66 %', share).value, 0.66);
    assert.equal(readMeasure('14 °C', temperature).value, 287.15);
    assert.equal(readMeasure('1.45', ratio).value, 1.45);
    assert.equal(readMeasure('4500 g cm²', inertia).value, 4500e-7);
  });

  it('has the names of the unit table and of the directions, however they are written', () => {
    const { unit, direction, method } = readMeasure('4 millimetres Toward  Heel by Pressure_Mat', strike);
    assert.deepEqual([unit, direction, method], ['mm', 'toward heel', 'pressure mat']);
  });

  it('needs no spaces', () => {
    const { value, stated, estimate, method } = readMeasure('~6cm behind±2cm by video', offset);
    assert.deepEqual([value, stated, estimate, method], [-0.06, 0.02, true, 'video']);
    assert.equal(readMeasure('7°right', angle).value, toSI(7, 'deg'));
    assert.equal(readMeasure('58%by pressure mat', share).method, 'pressure mat');
  });

  it('has the same uncertainty before and after the unit, by any of its signs', () => {
    for (const text of [
      '7 ± 2 cm ahead',
      '7 +- 2 cm ahead',
      '7+/-2cm ahead',
      '7 cm ahead ± 2 cm',
      '7 cm ahead ± 2',
      '7 cm ± 2 ahead',
      '7 cm ahead ± 20 mm',
    ]) {
      const { value, stated } = readMeasure(text, offset);
      assert.deepEqual([value, stated], [0.07, 0.02], text);
    }
  });

  it('has an uncertainty in the own unit of the quantity where neither number has a unit', () => {
    assert.equal(readMeasure('7 ± 2 ahead', offset).stated, 0.02);
  });

  it('takes the uncertainty of a temperature as a difference', () => {
    assert.equal(readMeasure('14 ± 2 °C', temperature).stated, 2);
    assert.ok(Math.abs(readMeasure('50 °F ± 9 °F', temperature).stated! - 5) < 1e-14);
  });

  it('may name the method before the uncertainty', () => {
    const { stated, method } = readMeasure('7 cm by tape ± 1 cm', width);
    assert.deepEqual([stated, method], [0.01, 'tape']);
  });

  it('has a bearing where its direction is one', () => {
    const { value, bearing } = readMeasure('3 m/s from ahead left', wind);
    assert.deepEqual([value, bearing], [3, Math.PI / 4]);
  });

  it('says where each of its parts stands', () => {
    const text = '  ~6.5 cm behind ± 2 cm by pressure mat ';
    const { spans } = readMeasure(text, offset);
    const written = Object.fromEntries(
      Object.entries<Span>({ ...spans }).map(([part, span]) => [part, text.slice(span.start, span.end)]),
    );
    assert.deepEqual(written, {
      number: '6.5',
      unit: 'cm',
      direction: 'behind',
      stated: '2 cm',
      method: 'pressure mat',
    });
  });

  it('says where the shared unit of a leading uncertainty stands', () => {
    const text = '7 ± 2 cm';
    const { spans } = readMeasure(text, width);
    assert.deepEqual(spans.unit, { start: 6, end: 8 });
    assert.deepEqual(spans.stated, { start: 4, end: 5 });
  });

  it('is never minus zero', () => {
    for (const text of ['-0 cm', '0 cm behind']) assert.ok(Object.is(readMeasure(text, offset).value, 0));
  });

  it('may be written with a point at either end and with an exponent', () => {
    for (const [text, value] of [
      ['.5 m', 0.5],
      ['5. m', 5],
      ['+5 m', 5],
      ['1e-2 m', 0.01],
      ['1E+1 m', 10],
    ] as const) {
      assert.equal(readMeasure(text, width).value, value);
    }
  });

  it('is nothing, without a problem, where nothing is written', () => {
    for (const text of ['', '   '])
      assert.deepEqual(parseMeasure(text, width, single), { value: undefined, problems: [] });
  });
});

describe('the problems of a measurement', () => {
  const cases: readonly (readonly [
    fact: string,
    text: string,
    notation: typeof offset,
    problems: readonly string[],
  ])[] = [
    ['letters of a unit, with its short name', '7 cntm ahead', offset, ['unknown-unit at `cntm`, near cm']],
    ['an unknown unit, with the nearest', '7 cn ahead', offset, ['unknown-unit at `cn`, near cm']],
    ['an unknown unit, with nothing near', '7 parsecs', width, ['unknown-unit at `parsecs`']],
    ['a unit of another dimension', '7 kg', width, ['wrong-dimension at `kg`']],
    ['a unit where the number stands alone', '1.45 %', ratio, ['wrong-dimension at `%`']],
    ['a mass where a moment of inertia is wanted', '4500 g', inertia, ['wrong-dimension at `g`']],
    ['an unknown direction after the unit', '7 cm ahed', offset, ['unknown-direction at `ahed`, near ahead']],
    ['an unknown direction without a unit', '7 behnd', offset, ['unknown-direction at `behnd`, near behind']],
    ['a word nearer to a direction than to a unit', '7 lft', side, ['unknown-direction at `lft`, near left']],
    ['a word nearer to a unit than to a direction', '7 yadrs', side, ['unknown-unit at `yadrs`, near yards']],
    [
      'a direction by half of its words',
      '4 mm heel',
      strike,
      ['unknown-direction at `heel`, near toward heel'],
    ],
    ['a direction where there is none', '47 cm ahead', width, ['unknown-direction at `ahead`']],
    ['a sign and a direction', '-5 deg left', angle, ['direction-with-sign at `-5`']],
    ['a wind from nowhere', '3 m/s', wind, ['missing-direction at `3 m/s`']],
    ['a decimal comma', '3,5 deg', angle, ['unreadable-measure at `3,5`, near 3.5']],
    ['a comma that may stand between thousands', '2,500 rpm', spin, ['unreadable-measure at `2,500`']],
    ['two decimal points', '1.2.3 cm', width, ['unreadable-measure at `1.2.3`']],
    ['two numbers', '5 6 cm', width, ['unreadable-measure at `6`']],
    ['no number', 'about 5 cm', width, ['unreadable-measure at `about`']],
    ['nothing but an estimate sign', '~', width, ['unreadable-measure at `~`']],
    ['not a number', 'NaN', width, ['unreadable-measure at `NaN`']],
    ['infinity', '.inf', width, ['number-out-of-range at `.inf`']],
    ['a number too large to write down', '1e400 cm', width, ['number-out-of-range at `1e400`']],
    [
      'a number too large in SI',
      '1e308 hPa',
      { ...width, dimension: 'pressure', unit: 'hPa' },
      ['number-out-of-range at `1e308`'],
    ],
    ['an uncertainty of zero', '7 cm ± 0 cm', width, ['uncertainty-not-positive at `0 cm`']],
    ['a negative uncertainty', '7 cm ± -2', width, ['uncertainty-not-positive at `-2`']],
    ['an uncertainty of another dimension', '7 cm ± 2 kg', width, ['wrong-dimension at `kg`']],
    ['nothing after the uncertainty sign', '7 cm ±', width, ['unreadable-measure at `±`']],
    ['two uncertainties', '7 ± 1 cm ± 2 cm', width, ['unreadable-measure at `± 2 cm`']],
    ['two directions', '7 cm ahead ± 2 behind', offset, ['unreadable-measure at `behind`']],
    ['an unknown method', '7 cm by vidoe', width, ['unknown-method at `vidoe`, near video']],
    ['no method', '7 cm by', width, ['unknown-method at `by`']],
    ['a window', '2..5 cm', width, ['window-not-allowed at `2..5 cm`']],
  ];
  for (const [fact, text, notation, problems] of cases) {
    it(`are found at the exact characters: ${fact}`, () =>
      assert.deepEqual(readProblems(text, notation), problems));
  }

  it('say what was found and what would be right', () => {
    const [problem] = parseMeasure('7 kg', width, single).problems;
    assert.equal(problem?.found, '`kg`, a unit of mass');
    assert.equal(problem?.expected, 'a unit of length (mm, cm, m, in, ft, yd)');
  });

  it('are quoted on one line and cut when long', () => {
    const [problem] = parseMeasure(`7 cm by ${'a`b\n'.repeat(100)}`, width, single).problems;
    assert.match(problem!.found, /^`[^`\n]{1,40}`$/);
  });

  it('leave the value where only the method or the uncertainty is wrong', () => {
    for (const text of [
      '7 cm by vidoe',
      '7 cm by',
      '7 cm ± 0',
      '7 cm ± 2 kg',
      '7 cm ±',
      '7 cm ± x by tape',
    ]) {
      const { value, problems } = parseMeasure(text, width, { window: 'no', methods });
      assert.ok(value?.kind === 'measure' && value.value === 0.07 && value.stated === undefined, text);
      assert.equal(problems.length, 1, text);
    }
  });

  it('leave no value where size or sign is uncertain', () => {
    for (const text of [
      '7 cn',
      '7 kg',
      '7 cm ahed',
      '-7 cm ahead',
      '7 ± 2 kg',
      '7 cm ± 2 ahed',
      '7 cm ahead ± 2 behind',
    ]) {
      assert.equal(parseMeasure(text, offset, single).value, undefined, text);
    }
    assert.equal(parseMeasure('3 m/s', wind, single).value, undefined);
  });

  it('do not ask for the direction of no wind', () => {
    assert.equal(readMeasure('0 m/s', wind).value, 0);
  });
});
