// What the keys of the long form are read as together.
import assert from 'node:assert/strict';
import { parseLongForm, type LongForm } from '../../src/measure/long-form.ts';
import type { Notation } from '../../src/measure/measure.ts';
import { methods, offset, share, temperature } from './notations.ts';

const place = (text: string | undefined, at: number): LongForm['value'] =>
  text === undefined ? undefined : { text, offset: at };

function read(notation: Notation, value?: string, giveOrTake?: string, by?: string) {
  return parseLongForm(
    { value: place(value, 100), giveOrTake: place(giveOrTake, 200), by: place(by, 300) },
    notation,
    methods,
  );
}

function readValue(notation: Notation, value?: string, giveOrTake?: string, by?: string) {
  const { value: measure, problems } = read(notation, value, giveOrTake, by);
  assert.deepEqual(problems, []);
  assert.ok(measure?.kind === 'measure');
  return measure;
}

function readProblems(
  notation: Notation,
  value?: string,
  giveOrTake?: string,
  by?: string,
): readonly string[] {
  return read(notation, value, giveOrTake, by).problems.map(
    ({ code, span }) => `${code} ${span.start}..${span.end}`,
  );
}

describe('the long form of a measurement', () => {
  it('gives what the short form gives', () => {
    const { value, stated, method, direction } = readValue(offset, '9 cm ahead', '2 cm', 'video');
    assert.deepEqual([value, stated, method, direction], [0.09, 0.02, 'video', 'ahead']);
  });

  it('takes the unit of the value for an uncertainty without one', () => {
    assert.equal(readValue(offset, '90 mm ahead', '20').stated, 0.02);
    assert.equal(readValue(offset, '9 ahead', '2').stated, 0.02);
    assert.equal(readValue(temperature, '14 °C', '± 2').stated, 2);
  });

  it('may have the uncertainty and the method in the value', () => {
    const { stated, method } = readValue(share, '66 % ± 3 % by pressure mat');
    assert.deepEqual([stated, method], [0.03, 'pressure mat']);
  });

  it('says where each part stands, whichever key it came from', () => {
    const { spans } = readValue(share, '66 %', '3 %', 'pressure mat');
    assert.deepEqual(spans, {
      number: { start: 100, end: 102 },
      unit: { start: 103, end: 104 },
      stated: { start: 200, end: 203 },
      method: { start: 300, end: 312 },
    });
  });

  it('has no value where the value is missing or empty', () => {
    assert.deepEqual(read(share, undefined, '3', 'eye'), { value: undefined, problems: [] });
    assert.deepEqual(read(share, '', '', ''), { value: undefined, problems: [] });
  });

  it('has its problems at the characters of their keys', () => {
    assert.deepEqual(readProblems(share, '66 %', '3 kg'), ['wrong-dimension 202..204']);
    assert.deepEqual(readProblems(share, '66 %', '0'), ['uncertainty-not-positive 200..201']);
    assert.deepEqual(readProblems(share, '66 %', 'some'), ['unreadable-measure 200..204']);
    assert.deepEqual(readProblems(share, '66 %', '3 % by eye'), ['unreadable-measure 204..210']);
    assert.deepEqual(readProblems(offset, '6 cm', '2 cm ahead'), ['unreadable-measure 205..210']);
    assert.deepEqual(readProblems(share, '66 %', undefined, 'pressure met'), ['unknown-method 300..312']);
    assert.deepEqual(readProblems(share, '66 kg', '3'), ['wrong-dimension 103..105']);
    assert.deepEqual(readProblems(share, '45..60 %'), ['window-not-allowed 100..108']);
  });

  it('believes neither of two uncertainties or methods', () => {
    const { value, problems } = read(share, '66 ± 2 % by eye', '3', 'pressure mat');
    assert.deepEqual(
      problems.map((problem) => problem.span.start),
      [200, 300],
    );
    assert.ok(value?.kind === 'measure');
    assert.deepEqual([value.value, value.stated, value.method], [0.66, undefined, undefined]);
    assert.deepEqual(Object.keys(value.spans), ['number', 'unit']);
  });
});
