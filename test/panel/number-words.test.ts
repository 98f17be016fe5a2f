// A number on a slider is written as everywhere else in the project.
import assert from 'node:assert/strict';
import { showValue } from '../../src/measure/show.ts';
import { findUnit, toSI } from '../../src/measure/units.ts';
import { bandWords, numberWords, spokenWords } from '../../src/panel/number-words.ts';
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

  it('say how the number lies to each window, its edges in it', () => {
    const template = { of: 'template', words: '1..5 deg left', min: -5, max: -1 } as const;
    const goal = { of: 'goal', words: '2 deg left..2 deg right', min: -2, max: 2.0000001 } as const;
    const plan = { of: 'plan', words: '2.0 deg right', min: 2, max: 2 } as const;
    const bands = [template, goal, plan];
    const lever = { unit: 'deg', decimals: 1, step: 0.5, sides: ['right', 'left'] as const, bands };
    assert.equal(
      spokenWords(lever, 2),
      "2.0 deg right, outside the template's window, inside the goal's window, as planned",
    );
    assert.equal(
      spokenWords(lever, -1),
      "1.0 deg left, inside the template's window, inside the goal's window",
    );
    assert.equal(bandWords(lever, template, -5.5), 'Template 1..5 deg left: outside');
    assert.equal(bandWords(lever, plan, 1.5), 'Plan 2.0 deg right');
    assert.equal(bandWords(lever, plan, 2), 'Plan 2.0 deg right: as planned');
  });
});
