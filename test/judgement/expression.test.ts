// Expressions are read with units, refused at their characters, checked for dimensions and evaluated in three values.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { compileExpression, type Expression } from '../../src/judgement/expression.ts';
import { functionNames } from '../../src/judgement/functions.ts';

/** The text with brackets around what the first problem points at, and its code. */
function problemIn(text: string): string {
  const [problem] = compileExpression(text).problems;
  if (problem === undefined) return 'none';
  const { start, end } = problem.span;
  return `${problem.code}: ${text.slice(0, start)}⟦${text.slice(start, end)}⟧${text.slice(end)}`;
}

function compiled(text: string): Expression {
  const { expression, problems } = compileExpression(text);
  assert.ok(expression, `${text}: ${problems.map(({ found, expected }) => `${found}; ${expected}`).join()}`);
  return expression;
}

/** Of a text over the attack and the carry, in this order. */
function truth(text: string, values: Readonly<Record<string, number>> = {}): number {
  const expression = compiled(text);
  return expression.holds(expression.quantities.map(({ id }) => values[id] ?? NaN));
}

const deg = Math.PI / 180;
const attack = 'delivery.attack';

describe('an expression', () => {
  it('compares a quantity with a number in any unit of its dimension', () => {
    assert.equal(truth('flight.carry > 150 yd', { 'flight.carry': 138 }), 1);
    assert.equal(truth('flight.carry > 150 m', { 'flight.carry': 138 }), 0);
    assert.equal(truth('delivery.club_speed < 90 mph', { 'delivery.club_speed': 40 }), 1);
    assert.equal(truth('delivery.attack < 2°', { [attack]: 1.9 * deg }), 1);
    assert.equal(truth('flight.spin > 3000 rpm', { 'flight.spin': 330 }), 1);
    assert.equal(truth('conditions.temperature < 10 °C', { 'conditions.temperature': 283 }), 1);
  });

  it('reads % behind a number as per cent, with or without a space', () => {
    const pressure = { 'checkpoints.impact.lead_pressure': 0.7 };
    assert.equal(truth('checkpoints.impact.lead_pressure < 75 %', pressure), 1);
    assert.equal(truth('60% < checkpoints.impact.lead_pressure', pressure), 1);
    assert.equal(truth('checkpoints.impact.lead_pressure * 100 > 60 % * 100', pressure), 1);
  });

  it('takes the signs that word processors write', () => {
    assert.equal(truth('delivery.attack ≤ −2 deg', { [attack]: -3 * deg }), 1);
    assert.equal(truth('flight.carry × 2 ≥ 300 m', { 'flight.carry': 150 }), 1);
  });

  it('has the order of operations of mathjs', () => {
    assert.equal(truth('1 + 2 * 3 ^ 2 > 18.9 and -2 ^ 2 < 0'), 1);
    assert.equal(truth('not (1 > 2) and 2 > 1 or 1 > 5'), 1);
    assert.equal(truth('2 ^ 3 < 8.5 ? 1 < 2 : 2 < 1'), 1);
  });

  it('computes with functions over SI numbers', () => {
    const values = { [attack]: 30 * deg, 'delivery.path': 5 * deg, 'flight.carry': 3, 'flight.total': 4 };
    const holding = [
      'abs(-delivery.attack) > 29 deg',
      'abs(sin(delivery.attack) - 0.5) < 0.001',
      'abs(cos(delivery.attack) - 0.8660) < 0.001',
      'tan(delivery.attack) > 0.57',
      'abs(asin(0.5) - 30 deg) < 0.001 deg',
      'abs(acos(0.5) - 60 deg) < 0.001 deg',
      'abs(atan(1) - 45 deg) < 0.001 deg',
      'abs(atan2(1 m, 1 m) - 45 deg) < 0.001 deg',
      'abs(hypot(flight.carry, flight.total) - 5 m) < 1 mm',
      'abs(sqrt(flight.carry ^ 2) - 3 m) < 1 mm',
      'abs(cbrt(cube(flight.carry)) - 3 m) < 1 mm',
      'square(flight.carry) > 8.9 m * 1 m',
      'min(flight.carry, flight.total) < 3.1 m and max(flight.carry, flight.total) > 3.9 m',
      'abs(mean(flight.carry, flight.total) - 3.5 m) < 1 mm',
      'abs(median(1 m, flight.total, flight.carry) - 3 m) < 1 mm',
      'sum(flight.carry, flight.total) > 6.9 m',
      'sign(delivery.attack) > 0',
      'round(2.4) < 2.1 and floor(2.9) < 2.1 and ceil(2.1) > 2.9',
      'abs(log(exp(2)) - 2) < 0.001',
    ];
    for (const text of holding) assert.equal(truth(text, values), 1, text);
    const called = new Set(
      holding.flatMap((text) => [...text.matchAll(/[a-z]\w*(?=\()/g)].map(([name]) => name)),
    );
    assert.deepEqual(
      [...functionNames].filter((name) => !called.has(name)),
      [],
    );
  });

  it('cannot tell while a value is missing, unless the rest decides', () => {
    const carry = { 'flight.carry': 150 };
    assert.equal(truth('delivery.attack > 2 deg', carry), NaN);
    assert.equal(truth('not (delivery.attack > 2 deg)', carry), NaN);
    assert.equal(truth('flight.carry > 200 m and delivery.attack > 2 deg', carry), 0);
    assert.equal(truth('delivery.attack > 2 deg and flight.carry > 200 m', carry), 0);
    assert.equal(truth('delivery.attack > 2 deg or flight.carry > 100 m', carry), 1);
    assert.equal(truth('flight.carry > 100 m and delivery.attack > 2 deg', carry), NaN);
    assert.equal(truth('(delivery.attack > 2 deg ? flight.carry : flight.carry) > 100 m', carry), 1);
    assert.equal(truth('max(delivery.attack, 3 deg) > 2 deg'), NaN);
    assert.equal(truth('median(delivery.attack, 3 deg, 4 deg) > 2 deg'), NaN);
  });

  it('cannot tell where a number leaves what can be computed', () => {
    assert.equal(truth('sqrt(flight.carry - 200 m) > sqrt(1 m)', { 'flight.carry': 100 }), NaN);
    assert.equal(
      truth('flight.carry / (flight.carry - flight.carry) > flight.carry / (flight.carry - flight.carry)', {
        'flight.carry': 1,
      }),
      0,
    );
  });

  it('lists each quantity once, in the order in which it comes', () => {
    const { quantities } = compiled('flight.carry > 2 * delivery.club_speed * 1 s and flight.carry < 300 m');
    assert.deepEqual(
      quantities.map(({ id }) => id),
      ['flight.carry', 'delivery.club_speed'],
    );
  });

  it('knows which comparisons are linear', () => {
    for (const text of ['flight.carry > 2 m', 'not (2 * flight.carry / 3 - flight.total < 5 m)'])
      assert.ok(compiled(text).margin, text);
    for (const text of [
      'abs(flight.carry) > 2 m',
      'flight.carry > 1 m and flight.carry < 3 m',
      'flight.carry * flight.carry > 1 m * 1 m',
    ])
      assert.equal(compiled(text).margin, undefined, text);
    const { margin } = compiled('not (flight.carry < 5 m)');
    assert.equal(margin!([7]), 2);
  });
});

describe('dimensions in an expression', () => {
  const cases: Readonly<Record<string, string>> = {
    'strike.height + delivery.attack > 5 mm':
      'dimensions-do-not-match: ⟦strike.height + delivery.attack⟧ > 5 mm',
    'strike.height > 2 deg': 'dimensions-do-not-match: ⟦strike.height > 2 deg⟧',
    'strike.height > 5': 'dimensions-do-not-match: strike.height > ⟦5⟧',
    'strike.height > -5': 'dimensions-do-not-match: strike.height > -⟦5⟧',
    'checkpoints.impact.lead_pressure < 0.6':
      'dimensions-do-not-match: checkpoints.impact.lead_pressure < ⟦0.6⟧',
    'sin(strike.height) > 0.2': 'dimensions-do-not-match: sin(⟦strike.height⟧) > 0.2',
    'max(strike.height, delivery.attack) > 1 mm':
      'dimensions-do-not-match: max(strike.height, ⟦delivery.attack⟧) > 1 mm',
    'strike.height * strike.across > 5 mm': 'dimensions-do-not-match: ⟦strike.height * strike.across > 5 mm⟧',
    'exp(strike.height) > 2': 'dimensions-do-not-match: exp(⟦strike.height⟧) > 2',
    'conditions.temperature - 10 °C > 5 K': 'dimensions-do-not-match: ⟦conditions.temperature - 10 °C⟧ > 5 K',
    '(flight.carry > 1 m) > 2 m': 'dimensions-do-not-match: (⟦flight.carry > 1 m⟧) > 2 m',
    'flight.carry and delivery.attack > 1 deg':
      'dimensions-do-not-match: ⟦flight.carry⟧ and delivery.attack > 1 deg',
    '(flight.carry > 1 m ? 1 m : 1 deg) > 2 m':
      'dimensions-do-not-match: (⟦flight.carry > 1 m ? 1 m : 1 deg⟧) > 2 m',
  };
  for (const [text, expected] of Object.entries(cases))
    it(`do not match in ${text}`, () => assert.equal(problemIn(text), expected));

  it('are those of products, quotients, powers and roots', () => {
    for (const text of [
      'flight.carry / flight.time > 20 m/s',
      'delivery.club_speed * 2 s > 10 m',
      'sqrt(strike.height ^ 2 + strike.across ^ 2) < 9 mm',
      'checkpoints.impact.lead_pressure * checkpoints.address.stance_width > 10 cm',
      'checkpoints.impact.lead_pressure / checkpoints.address.lead_pressure > 1.2',
      'flight.spin * flight.time > 3600 deg',
      'flight.ball_speed / delivery.club_speed > flight.speed_ratio - 0.1',
    ])
      compiled(text);
  });

  it('of a bare number propose the unit of what stands beside it', () => {
    const [problem] = compileExpression(
      'checkpoints.impact.forward_bend < checkpoints.address.forward_bend - 8',
    ).problems;
    assert.equal(problem?.nearest, '8 deg');
  });
});

describe('what is wrong in an expression', () => {
  const cases: Readonly<Record<string, string>> = {
    'delivery.atack > 2 deg': 'unknown-quantity: ⟦delivery.atack⟧ > 2 deg',
    'attack > 2 deg': 'unknown-quantity: ⟦attack⟧ > 2 deg',
    'abz(delivery.attack) > 2 deg': 'unknown-function: ⟦abz⟧(delivery.attack) > 2 deg',
    'abs(delivery.attack, 2 deg) > 2 deg': 'unknown-function: ⟦abs⟧(delivery.attack, 2 deg) > 2 deg',
    'min() > 2 deg': 'unknown-function: ⟦min⟧() > 2 deg',
    'flight.carry > 5 cmm': 'unknown-unit: flight.carry > 5 ⟦cmm⟧',
    'flight.carry > 1e300 m': 'number-out-of-range: flight.carry > ⟦1e300⟧ m',
    'flight.carry >': 'unreadable-expression: flight.carry ⟦>⟧',
    '(flight.carry > 2 m': 'unreadable-expression: (flight.carry > ⟦2 m⟧',
    'flight.carry > 2 m)': 'unreadable-expression: flight.carry > 2 m⟦)⟧',
    'flight.carry flight.total > 2 m': 'unreadable-expression: ⟦flight.carry flight.total⟧ > 2 m',
    'flight.carry': 'unreadable-expression: ⟦flight.carry⟧',
    'not flight.carry > 2 m': 'dimensions-do-not-match: not ⟦flight.carry⟧ > 2 m',
    and: 'expression-not-allowed: ⟦and⟧',
    '': 'unreadable-expression: ⟦⟧',
    'flight.carry == 2 m': 'expression-not-allowed: ⟦flight.carry == 2 m⟧',
    'flight.carry > 2 m && flight.total > 3 m':
      'expression-not-allowed: flight.carry > 2 m ⟦&&⟧ flight.total > 3 m',
    'flight.carry % 3 > 1 m': 'expression-not-allowed: flight.carry ⟦%⟧ 3 > 1 m',
    'flight.carry ^ 9 > 1 m': 'expression-not-allowed: flight.carry ^ ⟦9⟧ > 1 m',
    'flight.carry ^ flight.speed_ratio > 1 m':
      'expression-not-allowed: flight.carry ^ ⟦flight.speed_ratio⟧ > 1 m',
  };
  for (const [text, expected] of Object.entries(cases))
    it(`is pointed at in "${text}"`, () => assert.equal(problemIn(text), expected));

  it('says that sides are signs, and writes the sign', () => {
    const [right] = compileExpression('delivery.face > 3 deg right').problems;
    assert.match(right!.expected, /a sign in the place of a direction; right, ahead and up are positive/);
    assert.deepEqual([right!.found, right!.nearest], ['`3 deg right`', '3 deg']);
    assert.equal(
      problemIn('delivery.face < 3 deg left'),
      'unreadable-expression: delivery.face < ⟦3 deg left⟧',
    );
    assert.equal(compileExpression('delivery.face < 3 deg left').problems[0]?.nearest, '-3 deg');
    assert.equal(compileExpression('delivery.face < -3 deg left').problems[0]?.nearest, undefined);
    assert.match(compileExpression('delivery.face delivery.path').problems[0]!.found, /two values/);
  });

  it('comes with the nearest word that is known', () => {
    const nearest = (text: string): string | undefined => compileExpression(text).problems[0]?.nearest;
    assert.equal(nearest('delivery.atack > 2 deg'), 'delivery.attack');
    assert.equal(nearest('attack > 2 deg'), 'delivery.attack');
    assert.equal(nearest('abz(delivery.attack) > 2 deg'), 'abs');
    assert.equal(nearest('flight.carry > 5 cmm'), 'cm');
    assert.equal(nearest('flight.carry > 2 m && flight.total > 3 m'), 'and');
  });

  it('is found in any text without an error, and points into it', () => {
    const words = [
      'flight.carry',
      'delivery.attack',
      '2',
      'm',
      'deg',
      '%',
      '(',
      ')',
      '<',
      '>',
      '+',
      '-',
      '^',
      '?',
      ':',
      'and',
      'not',
      'abs',
      ',',
      '.',
      '"',
      '[',
      '=',
      'constructor',
      ' ',
    ];
    const texts = fc.oneof(
      fc.string(),
      fc.array(fc.constantFrom(...words), { maxLength: 40 }).map((parts) => parts.join('')),
      fc.array(fc.constantFrom(...words), { maxLength: 40 }).map((parts) => parts.join(' ')),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const { expression, problems } = compileExpression(text);
        assert.equal(expression === undefined, problems.length > 0);
        for (const { span } of problems)
          assert.ok(0 <= span.start && span.start <= span.end && span.end <= text.length);
        if (expression !== undefined) {
          const known = expression.holds(expression.quantities.map(() => 0.1));
          assert.ok([0, 1].includes(known) || Number.isNaN(known));
          expression.holds([]);
        }
      }),
      { numRuns: 500 },
    );
  });
});
