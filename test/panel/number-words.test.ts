// A number on a slider is written as everywhere else in the project.
import assert from 'node:assert/strict';
import { showValue } from '../../src/measure/show.ts';
import { findUnit, toSI } from '../../src/measure/units.ts';
import { numberWords } from '../../src/panel/number-words.ts';
import { builtIn } from '../../src/registry/registry.ts';

describe('the words of a slider', () => {
  it('are those of a value without its spread, on both sides of zero', () => {
    for (const id of [
      'delivery.path',
      'delivery.attack',
      'checkpoints.impact.lead_pressure',
      'flight.carry',
    ]) {
      const quantity = builtIn.find(id)!;
      const side = (sign: 1 | -1): string =>
        quantity.directions.find((word) => word.sign === sign)?.word ?? '';
      const unit = findUnit(quantity.unit)!.name;
      const lever = { unit, decimals: quantity.decimals, sides: [side(1), side(-1)] as const };
      for (const value of [-12, -1.5, 0, 2.5, 30])
        assert.equal(numberWords(lever, value), showValue(quantity, toSI(value, unit)), `${id} ${value}`);
    }
  });
});
