// The graph of what a fault book believes: from faults to faults and to misses, and its loops.
import assert from 'node:assert/strict';
import { explainMiss, linksBetween, loopsOf } from '../../src/judgement/causes.ts';
import type { Fault } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { builtIn, findMiss } from '../../src/registry/registry.ts';

function faultsIn(book: string): readonly Fault[] {
  const document = parseDocument('faults', `faults: 1\nbook:\n${book}`);
  assert.ok(document.kind === 'faults');
  return [...document.faults.values()];
}

function linksIn(book: string): readonly string[] {
  return linksBetween(faultsIn(book), builtIn).map(
    ({ from, to, through }) => `${from} > ${to} by ${through.id}`,
  );
}

const effect = (quantity: string, direction: string): string =>
  `tends_to: [{ effect: ${quantity}, direction: ${direction} }]`;

const house = `  weight-back:
    ${effect('checkpoints.impact.shaft_lean', 'backward')}
  handle-trails:
    evidence: checkpoints.impact.shaft_lean < 0 deg
    ${effect('delivery.delivered_loft', 'more')}
  handle-ahead:
    evidence: checkpoints.impact.shaft_lean > 14 deg
    ${effect('delivery.delivered_loft', 'less')}
`;

describe('causes', () => {
  it('link a fault to another one whose evidence its effect brings nearer', () => {
    assert.deepEqual(linksIn(house), ['weight-back > handle-trails by checkpoints.impact.shaft_lean']);
  });

  it('see through conditions that are not linear', () => {
    const book = (evidence: string): string =>
      `  a:\n    ${effect('flight.curve', 'right')}\n  b:\n    evidence: "${evidence}"\n`;
    assert.equal(linksIn(book('flight.curve > 2 m and flight.carry > 100 m')).length, 1);
    assert.equal(linksIn(book('flight.curve < 2 m and flight.carry > 100 m')).length, 0);
    assert.equal(linksIn(book('not (flight.curve < 2 m)')).length, 1);
    // Either way may bring it about.
    assert.equal(linksIn(book('abs(flight.curve) > 2 m')).length, 0);
  });

  it('do not link a fault to itself, nor where no direction is told', () => {
    assert.deepEqual(
      linksIn(`  a:\n    evidence: flight.curve > 2 m\n    ${effect('flight.curve', 'right')}\n`),
      [],
    );
    assert.deepEqual(
      linksIn('  a:\n    tends_to: [{ effect: flight.curve }]\n  b: { evidence: flight.curve > 2 m }\n'),
      [],
    );
  });

  it('find each loop once', () => {
    const ring = ['carry', 'total', 'apex']
      .map(
        (key, i, keys) =>
          `  ${key}:\n    evidence: flight.${key} > 20 m\n    ${effect(`flight.${keys[(i + 1) % 3]}`, 'more')}\n`,
      )
      .join('');
    const loops = loopsOf(linksBetween(faultsIn(ring), builtIn));
    assert.deepEqual(
      loops.map((loop) => loop.map(({ from }) => from)),
      [['carry', 'total', 'apex']],
    );
    assert.deepEqual(loopsOf(linksBetween(faultsIn(house), builtIn)), []);
  });

  it('are cut off in a book of which nobody could follow them all', () => {
    const crowd = Array.from(
      { length: 600 },
      (_, i) => `  f${i}: { evidence: flight.curve > ${i} m, ${effect('flight.curve', 'right')} }\n`,
    ).join('');
    const links = linksBetween(faultsIn(crowd), builtIn);
    assert.ok(links.length > 0 && links.length <= 2000);
    assert.ok(loopsOf(links).length <= 50);
  });

  it('explain a miss at first hand and through other faults, the nearest first', () => {
    const faults = faultsIn(house);
    const { by } = explainMiss(findMiss('high')!, faults, linksBetween(faults, builtIn), 'right');
    assert.deepEqual(by, [
      { fault: 'handle-trails', way: [] },
      { fault: 'weight-back', way: ['handle-trails'] },
    ]);
  });

  it('mean the same miss for both hands, but for words that name a side of the target line', () => {
    const faults = faultsIn(
      `  a:\n    tends_to:\n      - { effect: flight.curve, direction: right }\n      - { effect: flight.finish, direction: right }\n`,
    );
    const explained = (miss: string, hand: 'left' | 'right' | undefined): number =>
      explainMiss(findMiss(miss)!, faults, [], hand).by.length;
    assert.deepEqual(
      [explained('slice', 'right'), explained('slice', 'left'), explained('hook', 'left')],
      [1, 1, 0],
    );
    assert.deepEqual(
      [explained('right', 'right'), explained('right', 'left'), explained('left', 'left')],
      [1, 0, 1],
    );
    assert.equal(explained('right', undefined), 0);
  });
});
