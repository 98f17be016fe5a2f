// What a measure is printed as, and that reading it gives the same.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { Measure, Notation, Window } from '../../src/measure/measure.ts';
import { printMeasure, printWindow } from '../../src/measure/print.ts';
import { differenceToSI, toSI, unitsOf } from '../../src/measure/units.ts';
import {
  angle,
  isClose,
  methods,
  notations,
  offset,
  readMeasure,
  readWindow,
  share,
  side,
  width,
  wind,
} from './notations.ts';

const spans = { number: { start: 0, end: 0 } };

function measure(parts: Partial<Measure>): Measure {
  const none = {
    stated: undefined,
    estimate: false,
    method: undefined,
    unit: undefined,
    direction: undefined,
    bearing: undefined,
  };
  return { kind: 'measure', value: 0, ...none, spans, ...parts };
}

const decimal = fc
  .tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 4 }))
  .map(([digits, places]) => digits / 10 ** places);

/** A measure as it would be read: a decimal number in some unit, with a sign from its direction. */
function measuresOf(notation: Notation): fc.Arbitrary<Measure> {
  return fc
    .record({
      number: decimal,
      uncertainty: fc.option(
        decimal.filter((u) => u > 0),
        { nil: undefined },
      ),
      unit: fc.constantFrom(...unitsOf(notation.dimension).map((unit) => unit.name)),
      direction: fc.constantFrom(undefined, ...notation.directions),
      method: fc.constantFrom(undefined, ...methods),
      estimate: fc.boolean(),
    })
    .filter(({ direction }) => notation.directions.length === 0 || direction !== undefined)
    .map(({ number, uncertainty, unit, direction, method, estimate }) =>
      measure({
        value: toSI((direction?.sign ?? 1) * number, unit) + 0,
        stated: uncertainty === undefined ? undefined : differenceToSI(uncertainty, unit),
        unit,
        direction: direction?.word,
        bearing: direction?.bearing,
        method,
        estimate,
      }),
    );
}

function meaning({ value, stated, estimate, method, direction, bearing }: Measure) {
  return { value, stated, estimate, method, direction, bearing };
}

describe('a printed measure', () => {
  it('is in canonical form however it was written', () => {
    assert.equal(
      printMeasure(readMeasure('~6.0centimetres BEHIND +-2 by Video', offset), offset),
      '~6 cm behind ± 2 cm by video',
    );
    assert.equal(
      printMeasure(readMeasure('66 percent by pressure_mat', share), share),
      '66 % by pressure mat',
    );
    assert.equal(printMeasure(readMeasure('3 from ahead left', wind), wind), '3 m/s from ahead left');
  });

  it('has the own unit of the quantity where none was written', () => {
    assert.equal(printMeasure(readMeasure('47', width), width), '47 cm');
  });

  it('has a direction word in place of a sign', () => {
    assert.equal(printMeasure(readMeasure('-6 cm', offset), offset), '6 cm behind');
    assert.equal(printMeasure(measure({ value: -toSI(2.5, 'deg') }), angle), '2.5 deg left');
    assert.equal(printMeasure(measure({ value: -0.05 }), width), '-5 cm');
  });

  it('does not keep a direction word that the value contradicts', () => {
    assert.equal(printMeasure(measure({ value: 0.05, direction: 'behind' }), offset), '5 cm ahead');
  });

  for (const notation of notations) {
    const name = `${notation.dimension}${notation.directions.length > 0 ? ` ${notation.directions[0]!.word}` : ''}`;
    it(`reads back the same to the last bit: ${name}`, () => {
      fc.assert(
        fc.property(measuresOf(notation), (original) => {
          const read = readMeasure(printMeasure(original, notation), notation);
          assert.deepEqual(meaning(read), meaning(original));
        }),
      );
    });

    it(`reads back any computed value to full precision: ${name}`, () => {
      const value = fc.double({ min: -1e4, max: 1e4, noNaN: true }).map((v) => v + 0);
      fc.assert(
        fc.property(value, (si) => {
          // The words of a bearing do not tell a negative speed.
          const original = measure({
            value: notation.directions[0]?.bearing === undefined ? si : Math.abs(si),
            direction: notation.directions[0]?.word,
          });
          const printed = printMeasure(original, notation);
          const read = readMeasure(printed, notation).value;
          const zero = Math.abs(toSI(0, notation.unit));
          assert.ok(
            isClose(read, original.value) || Math.abs(read - original.value) <= 4 * Number.EPSILON * zero,
            printed,
          );
        }),
      );
    });
  }
});

describe('a printed window', () => {
  it('has its direction once and the smaller number first', () => {
    assert.equal(printWindow(readWindow('2 .. 5° left', angle), angle), '2..5 deg left');
    assert.equal(printWindow(readWindow('0..5 left', side), side), '0..5 yd left');
    assert.equal(printWindow(readWindow('45..60', share), share), '45..60 %');
  });

  it('has signs where it reaches across zero', () => {
    assert.equal(printWindow(readWindow('1 deg left..2 deg right', angle), angle), '-1..2 deg');
  });

  it('reads back the same', () => {
    const cases = fc.record({
      notation: fc.constantFrom(...notations),
      a: decimal,
      b: decimal,
      turned: fc.boolean(),
      across: fc.boolean(),
    });
    fc.assert(
      fc.property(cases, ({ notation, a, b, turned, across }) => {
        const sign =
          turned && !across && notation.directions.some((direction) => direction.sign === -1) ? -1 : 1;
        const bounds = [toSI(sign * (across ? -a : a), notation.unit) + 0, toSI(sign * b, notation.unit) + 0];
        const window: Window = {
          kind: 'window',
          from: Math.min(...bounds),
          to: Math.max(...bounds),
          unit: undefined,
          direction: undefined,
          spans: { from: spans.number, to: spans.number },
        };
        const read = readWindow(printWindow(window, notation), notation);
        assert.deepEqual([read.from, read.to], [window.from, window.to]);
      }),
    );
  });
});
