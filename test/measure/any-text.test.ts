// What holds of every text, however wrong: it is read without an exception, and its problems lie inside it.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { parseLongForm } from '../../src/measure/long-form.ts';
import type { Parsed, Span } from '../../src/measure/measure.ts';
import { parseMeasure } from '../../src/measure/parse.ts';
import { either, methods, notations, single, windowOnly } from './notations.ts';

const options = fc.constantFrom(single, either, windowOnly);
const notation = fc.constantFrom(...notations);

/** Words of the notation in any order, which reach further into the reader than random letters do. */
const scraps = fc
  .array(
    fc.constantFrom(
      '~',
      '7',
      '-2.5',
      '1e400',
      '3,5',
      '±',
      '+-',
      '..',
      'cm',
      'deg',
      '°',
      '%',
      'kg m²',
      'in',
      'ahead',
      'from left',
      'toward',
      'by',
      'eye',
      'pressure mat',
      'NaN',
      ' ',
      '\n',
      '−',
      '.',
    ),
    { maxLength: 12 },
  )
  .map((words) => words.join(''));
const texts = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.string(),
  scraps,
  scraps.map((text) => text.split('').join(' ')),
);

const valid = [
  '~6.5 cm behind ± 2 cm by pressure mat',
  '1 deg left..2 deg right',
  '3 m/s from ahead left',
  '4500 g cm² ± 1e2 g cm² by eye',
  '58 ± 3 % by pressure mat',
  '−2 .. 5.5°',
];

function checkSound(parsed: Parsed, start: number, end: number): void {
  const inside = (span: Span): void =>
    assert.ok(start <= span.start && span.start <= span.end && span.end <= end, JSON.stringify(span));
  for (const problem of parsed.problems) {
    inside(problem.span);
    assert.ok(problem.span.start < problem.span.end && problem.found !== '' && problem.expected !== '');
    assert.doesNotMatch((problem.found + problem.expected).replace(/`[^`]*`/g, ''), /undefined|NaN/);
  }
  const { value } = parsed;
  if (value === undefined) return;
  for (const span of Object.values(value.spans) as Span[]) inside(span);
  if (value.kind === 'window')
    return assert.ok(Number.isFinite(value.from) && value.from <= value.to && Number.isFinite(value.to));
  assert.ok(Number.isFinite(value.value) && !Object.is(value.value, -0));
  assert.ok(value.stated === undefined || (value.stated > 0 && Number.isFinite(value.stated)));
}

describe('any text', () => {
  it('is read without an exception, with its problems inside it and only finite numbers', () => {
    fc.assert(
      fc.property(texts, notation, options, (text, meaning, option) =>
        checkSound(parseMeasure(text, meaning, option), 0, text.length),
      ),
      { numRuns: 3000 },
    );
  });

  it('gives a value or a problem unless it is empty', () => {
    fc.assert(
      fc.property(texts, notation, options, (text, meaning, option) => {
        const { value, problems } = parseMeasure(text, meaning, option);
        assert.ok(value !== undefined || problems.length > 0 || !/[^\s\u0085]/.test(text));
      }),
    );
  });

  it('is safe as a long form, with its problems inside the texts of the keys', () => {
    fc.assert(
      fc.property(texts, texts, texts, notation, (value, giveOrTake, by, meaning) => {
        const form = {
          value: { text: value, offset: 100 },
          giveOrTake: { text: giveOrTake, offset: 200 },
          by: { text: by, offset: 300 },
        };
        checkSound(parseLongForm(form, meaning, methods), 100, 300 + by.length);
      }),
    );
  });
});

describe('every beginning of a measurement', () => {
  for (const text of valid) {
    it(`is safe: ${text}`, () => {
      for (let end = 0; end <= text.length; end++) {
        for (const meaning of notations) {
          for (const option of [single, either, windowOnly])
            checkSound(parseMeasure(text.slice(0, end), meaning, option), 0, end);
        }
      }
    });
  }
});
