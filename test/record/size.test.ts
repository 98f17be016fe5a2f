// Tests of sizes of believed effects and of steps of changes: what they are in SI, and what is said at which characters.
import assert from 'node:assert/strict';
import type { BelievedEffect, FaultChange, FaultFile } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { assertMarked } from './marked.ts';

const deg = Math.PI / 180;

function bookWith(lines: string): FaultFile {
  const document = parseDocument('faults', `faults: 1\nbook:\n  folds:\n${lines}`);
  assert.ok(document.kind === 'faults');
  return document;
}

function effectOf(effect: string, size: string): BelievedEffect {
  const book = bookWith(`    tends_to: [{ effect: ${effect}, direction: more, size: ${size} }]\n`);
  assert.deepEqual(book.problems, []);
  return book.faults.get('folds')!.tendsTo[0]!;
}

function changeOf(change: string, words: string): FaultChange {
  const book = bookWith(`    changes: [{ change: ${change}, ${words} }]\n`);
  assert.deepEqual(book.problems, []);
  return book.faults.get('folds')!.changes[0]!;
}

function near(actual: number | undefined, expected: number): void {
  assert.ok(actual !== undefined && Math.abs(actual - expected) < 1e-12, `${actual}, not ${expected}`);
}

describe('the size of a believed effect', () => {
  it('is an amount in SI, with its words kept', () => {
    const { size, sizeWords } = effectOf('delivery.low_point.ahead', '1 cm');
    near(size?.amount, 0.01);
    assert.equal(size?.stated, undefined);
    assert.equal(size?.per, undefined);
    assert.equal(sizeWords, '1 cm');
  });

  it('may have an uncertainty', () => {
    const { size } = effectOf('delivery.low_point.ahead', '1 cm ± 0.5 cm');
    near(size?.amount, 0.01);
    near(size?.stated, 0.005);
  });

  it('may be for so much of the cause', () => {
    const { size } = effectOf('checkpoints.impact.shaft_lean', '1 deg per 5 %');
    near(size?.amount, deg);
    near(size?.per?.amount, 0.05);
    assert.equal(size?.per?.dimension, 'fraction');
  });

  it('takes one of the cause where no number stands', () => {
    const { size } = effectOf('flight.curve', '5 m per deg');
    near(size?.per?.amount, deg);
  });

  it('has its uncertainty before or behind the cause', () => {
    for (const words of ['0.5 m/s per 5 deg ± 0.2 m/s', '0.5 m/s ± 0.2 m/s per 5 deg']) {
      const { size } = effectOf('delivery.club_speed', words);
      near(size?.amount, 0.5);
      near(size?.stated, 0.2);
      near(size?.per?.amount, 5 * deg);
    }
  });

  it('takes `per cent` for the unit that it is', () => {
    const { size } = effectOf('checkpoints.impact.lead_pressure', '5 per cent per 2 deg');
    near(size?.amount, 0.05);
    near(size?.per?.amount, 2 * deg);
  });

  it('is said to be wrong at its characters', () => {
    assertMarked(
      'faults',
      `faults: 1
book:
  folds:
    tends_to:
      - { effect: strike.height, size: 2 deg }
                                         ^^^ wrong-dimension
      - { effect: strike.height, size: 2 mn per 5 % }
                                         ^^ unknown-unit
      - { effect: strike.height, size: "2 mm per 5 fathoms" }
                                                   ^^^^^^^ unknown-unit
      - { effect: strike.height, size: 2 mm per 5 deg ± 2 deg }
                                                          ^^^ wrong-dimension
      - { effect: strike.height, size: 2 mm per }
                                            ^^^ unreadable-measure
      - { effect: strike.height, size: 2 mm per 0 deg }
                                            ^^^^^^^^^ unreadable-measure
      - { effect: strike.height, size: -2 mm }
                                       ^^ unreadable-measure
      - { effect: strike.height, size: some }
                                       ^^^^ unreadable-measure
      - { effect: strike.height, size: 2 mm low }
                                            ^^^ unknown-direction
      - { effect: strike.height, size: 2 }
                                       ^ bare-number
`,
    );
  });
});

describe('the step of a change', () => {
  const steps: readonly [string, string, number][] = [
    ['checkpoints.address.stance_width', '5 cm narrower', -0.05],
    ['checkpoints.address.stance_width', '2 in wider', 0.0508],
    ['checkpoints.address.lead_foot_flare', '10 deg out', 10 * deg],
    ['checkpoints.impact.hands', '4 cm ahead', 0.04],
    ['checkpoints.impact.hands', '4 cm back', -0.04],
    ['checkpoints.top.lead_wrist_bow', '8 deg more bowed', 8 * deg],
    ['checkpoints.top.lead_wrist_bow', '8 deg less bowed', -8 * deg],
    ['checkpoints.impact.lead_elbow_bend', '20 deg less', -20 * deg],
    ['delivery.attack', '2 deg steeper', -2 * deg],
    ['delivery.club_speed', '+1.5 m/s', 1.5],
    ['conditions.temperature', '5 °C more', 5],
  ];

  it('is a signed difference in SI', () => {
    for (const [quantity, words, expected] of steps) {
      const { by, byWords } = changeOf(quantity, `by: ${words}`);
      near(by?.difference, expected);
      assert.equal(byWords, words);
    }
  });

  it('needs a word that is of the quantity', () => {
    const { problems } = assertMarked(
      'faults',
      `faults: 1
book:
  folds:
    changes:
      - { change: checkpoints.address.stance_width, by: 5 cm }
                                                        ^^^^ missing-direction
      - { change: checkpoints.address.stance_width, by: 5 cm ahead }
                                                             ^^^^^ unknown-direction
      - { change: checkpoints.address.stance_width, by: 5 cm narower }
                                                             ^^^^^^^ unknown-direction
      - { change: checkpoints.address.stance_width, by: 5 deg narrower }
                                                          ^^^ wrong-dimension
      - { change: checkpoints.impact.hands, by: "-4 cm ahead" }
                                                 ^^ direction-with-sign
`,
    );
    assert.match(problems[1]!.expected, /`wider`, `narrower`, `more` or `less`/);
    assert.equal(problems[2]!.nearest, 'narrower');
  });
});

describe('the goal of a change', () => {
  it('is a measure or a window', () => {
    const one = changeOf('checkpoints.address.stance_width', 'to: 38 cm');
    assert.equal(one.to?.target.kind, 'measure');
    assert.equal(one.toWords, '38 cm');
    const window = changeOf('checkpoints.address.stance_width', 'to: 36..40 cm').to?.target;
    assert.ok(window?.kind === 'window');
    near(window.from, 0.36);
  });

  it('is said to be wrong at its characters', () => {
    assertMarked(
      'faults',
      `faults: 1
book:
  folds:
    changes:
      - { change: checkpoints.address.stance_width, to: 38 deg }
                                                           ^^^ wrong-dimension
      - { change: checkpoints.address.stance_width, to: 40..36 cm }
                                                        ^^^^^^ window-reversed
`,
    );
  });
});
