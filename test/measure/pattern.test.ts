// The notation as a regular expression against the parser: nothing that is right is refused, and little that is wrong gets by.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { lacksNumber } from '../../src/measure/lacks-number.ts';
import type { MeasureCode, Notation } from '../../src/measure/measure.ts';
import { parseMeasure } from '../../src/measure/parse.ts';
import { patternOf, patternOfEither } from '../../src/measure/pattern.ts';
import { printMeasure, printWindow } from '../../src/measure/print.ts';
import { unitsOf } from '../../src/measure/units.ts';
import { builtIn } from '../../src/registry/registry.ts';

const methods = builtIn.methodNames;
/** One of each way of writing: dimension and direction words. */
const notations: readonly Notation[] = [
  ...new Map(
    builtIn.quantities.map((quantity) => [
      JSON.stringify([quantity.dimension, quantity.directions.map(({ word }) => word)]),
      quantity,
    ]),
  ).values(),
];
const compiled = new Map<
  Notation,
  { readonly number: RegExp; readonly window: RegExp; readonly either: RegExp }
>(
  notations.map((notation) => [
    notation,
    {
      number: new RegExp(patternOf(notation, methods, 'number')),
      window: new RegExp(patternOf(notation, methods, 'window')),
      either: new RegExp(patternOfEither(notation, methods)),
    },
  ]),
);

/** What may stand at a place, for the pattern and for the parser. */
const places = [
  { place: 'number', window: 'no' },
  { place: 'window', window: 'only' },
  { place: 'either', window: 'also' },
] as const;

/** What an expression of this kind cannot see. */
const unseen: ReadonlySet<MeasureCode> = new Set([
  'number-out-of-range',
  'uncertainty-not-positive',
  'window-reversed',
  'direction-with-sign',
  'unreadable-measure',
  'missing-direction',
]);

describe('the notation as a pattern', () => {
  it('takes everything that is printed, of every way of writing', () => {
    const wanted = fc.record({
      notation: fc.constantFrom(...notations),
      value: fc.double({ min: -80, max: 80, noNaN: true }),
      stated: fc.option(fc.double({ min: 0.01, max: 5, noNaN: true })),
      estimate: fc.boolean(),
      method: fc.option(fc.constantFrom(...methods)),
      width: fc.double({ min: 0, max: 10, noNaN: true }),
      unit: fc.nat(),
    });
    fc.assert(
      fc.property(wanted, ({ notation, value, stated, estimate, method, width, unit }) => {
        const units = unitsOf(notation.dimension).map(({ name }) => name);
        const shared = {
          unit: units[unit % units.length],
          direction: undefined,
          bearing: undefined,
        };
        const spans = { number: { start: 0, end: 0 } };
        const measure = printMeasure(
          {
            kind: 'measure',
            value,
            stated: stated ?? undefined,
            estimate,
            method: method ?? undefined,
            ...shared,
            spans,
          },
          notation,
        );
        const place = { start: 0, end: 0 };
        const window = printWindow(
          { kind: 'window', from: value, to: value + width, ...shared, spans: { from: place, to: place } },
          notation,
        );
        const { number, window: range, either } = compiled.get(notation)!;
        assert.match(measure, number);
        assert.match(window, range);
        assert.match(measure, either);
        assert.match(window, either);
      }),
      { numRuns: 2000 },
    );
  });

  it('refuses only what the parser refuses, and takes little beyond', () => {
    const pieces = [
      '3',
      '0.5',
      '-',
      '+',
      '~',
      '..',
      ' ',
      '  ',
      '±',
      '+-',
      'by',
      'BY',
      'radar',
      'motion capture',
      'motion-capture',
      'e',
      'x',
      '.',
      '1e2',
      '1.',
      '−',
      '+/-',
      '\t',
      '\u00a0',
      ',5',
      '"',
    ];
    let [taken, refused] = [0, 0];
    const text = fc.constantFrom(...notations).chain((notation) => {
      const own = [
        ...unitsOf(notation.dimension).flatMap(({ name, aliases }) => [name, ...aliases]),
        ...notation.directions.flatMap(({ word }) => [word, word.toUpperCase()]),
        'deg',
        'cm',
        'right',
      ];
      const piece = fc.oneof(fc.constantFrom(...pieces), fc.constantFrom(...own), fc.constant(' '));
      return fc.tuple(fc.constant(notation), fc.array(piece, { minLength: 1, maxLength: 9 }));
    });
    fc.assert(
      fc.property(text, fc.constantFrom(...places), ([notation, parts], { place, window }) => {
        // Mostly as people write: a number first.
        const written = `3${parts.join('')}`;
        const { value, problems } = parseMeasure(written, notation, { window, methods });
        const isRight = value !== undefined && problems.length === 0;
        const isTaken = compiled.get(notation)![place].test(written);
        if (isRight) assert.ok(isTaken, `refused: ${written} of ${notation.dimension}`);
        // Nor does it see where a word ends and `by` begins.
        if (isTaken && !isRight && !/\p{L}by/iu.test(written)) {
          const others = problems.filter(({ code }) => !unseen.has(code));
          assert.deepEqual(others, [], `taken: ${written} of ${notation.dimension}`);
        }
        if (isTaken) taken += 1;
        else refused += 1;
      }),
      { numRuns: 6000 },
    );
    assert.ok(taken > 200 && refused > 1000, `${taken} taken, ${refused} refused`);
  });

  it('takes what waits for its number', () => {
    const wanted = fc.constantFrom(...notations).chain((notation) => {
      const any = (words: readonly string[]) => fc.constantFrom('', ...words);
      const unit = any(unitsOf(notation.dimension).map(({ name }) => name));
      const direction = any(notation.directions.map(({ word }) => word));
      const parts = fc.tuple(
        any(['~']),
        unit,
        direction,
        any(['± 2', '+- 0.5']),
        any(['by radar', 'BY eye']),
      );
      return fc.tuple(fc.constant(notation), parts);
    });
    let waiting = 0;
    fc.assert(
      fc.property(wanted, ([notation, parts]) => {
        const written = parts.join(' ');
        if (!lacksNumber(written, notation, methods)) return;
        waiting += 1;
        const { number, either } = compiled.get(notation)!;
        assert.match(written, number, notation.dimension);
        assert.match(written, either, notation.dimension);
      }),
      { numRuns: 1000 },
    );
    assert.ok(waiting > 200, String(waiting));
    for (const notation of notations)
      for (const words of ['', ...notation.directions.map(({ word }) => word)])
        assert.match(`${notation.unit} ${words}`, compiled.get(notation)!.window);
  });

  it('finds a unit that is misspelt or of another dimension, a direction of another quantity and a method that nobody knows', () => {
    const face = builtIn.find('delivery.face')!;
    const pattern = new RegExp(patternOf(face, methods, 'number'));
    for (const wrong of [
      '5 dgr right',
      '5 cm right',
      '5 deg ahead',
      '5 deg right by presure mat',
      '5 deg right right',
      'five',
      '1..2 deg',
    ])
      assert.doesNotMatch(wrong, pattern);
    for (const right of [
      '5 deg right',
      '5°right',
      '~5 deg right ± 1 deg by radar',
      '-5',
      '5',
      '',
      '.5 deg left +- 0.2',
      'deg right by radar',
      '± 1 deg',
    ])
      assert.match(right, pattern);
  });

  it('answers at once whatever it is given', () => {
    const much = (text: string): string => text.repeat(10_000 / text.length);
    const spaces = much(' ');
    const openings = [
      '',
      '3',
      '~',
      '3 deg',
      '3 deg right',
      '3 ±',
      '3 ± 1 deg',
      '3 ± 1 ± 1',
      '3 by',
      '3 by radar',
      '3 .. 4',
    ];
    const hostile = [
      ...openings.map((opening) => `${opening}${spaces}x`),
      ...openings.map((opening) => `${opening} ${much('1')}x`),
      `${much('1')}.${much('1')}x`,
      `${much('1')}..${much('1')}x`,
      `1e${much('1')}x`,
      `3${spaces}..${spaces}x`,
      ...['-', '- ', ' '].flatMap((space) => [
        `3 by motion${much(space)}x`,
        `3 by video${much(space)}x`,
        `3 by -${much(space)}x`,
      ]),
      `3 deg ${much('± 1 ')}`,
      much('1 '),
      much('-'),
    ];
    const start = performance.now();
    for (const { number, window, either } of compiled.values())
      for (const text of hostile) for (const pattern of [number, window, either]) pattern.test(text);
    // Where a space may belong to either of two parts, one of these alone takes longer.
    assert.ok(performance.now() - start < 2000);
  });
});
