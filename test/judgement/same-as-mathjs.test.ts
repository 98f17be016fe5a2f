// What an expression of plain numbers gives is what mathjs itself gives for the same text.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { compileExpression } from '../../src/judgement/expression.ts';

const leaf = fc.integer({ min: 0, max: 40 }).map((n) => String(n / 4));
const { number } = fc.letrec<{ number: string }>((tie) => ({
  number: fc.oneof(
    { maxDepth: 4, depthIdentifier: 'depth' },
    leaf,
    fc
      .tuple(tie('number'), fc.constantFrom('+', '-', '*', '/'), tie('number'))
      .map((parts) => parts.join(' ')),
    tie('number').map((inner) => `(${inner})`),
    tie('number').map((inner) => `-${inner}`),
    fc.tuple(leaf, fc.constantFrom('0', '2', '3', '-1')).map(([base, exponent]) => `${base} ^ ${exponent}`),
    fc
      .tuple(fc.constantFrom('abs', 'sign', 'cbrt', 'square', 'cube', 'floor', 'ceil'), tie('number'))
      .map(([name, inner]) => `${name}(${inner})`),
    fc
      .tuple(fc.constantFrom('min', 'max', 'mean', 'median', 'sum', 'hypot'), tie('number'), tie('number'))
      .map(([name, a, b]) => `${name}(${a}, ${b})`),
  ),
}));
const comparison = fc
  .tuple(number, fc.constantFrom('<', '<=', '>', '>='), number)
  .map((parts) => parts.join(' '));
const condition = fc.oneof(
  comparison,
  fc.tuple(comparison, fc.constantFrom('<', '>'), leaf).map((parts) => parts.join(' ')),
  fc.tuple(comparison, fc.constantFrom('and', 'or'), comparison).map((parts) => parts.join(' ')),
  comparison.map((inner) => `not (${inner})`),
  fc.tuple(comparison, comparison, comparison).map(([a, b, c]) => `${a} ? ${b} : ${c}`),
);

describe('an expression of plain numbers', () => {
  it('holds where mathjs says so', () => {
    fc.assert(
      fc.property(condition, (text) => {
        const { expression } = compileExpression(text);
        if (text.length > 500) return;
        assert.ok(expression, text);
        const ours = expression.holds([]);
        // A number that is none cannot be told here, and is false or throws there.
        if (Number.isNaN(ours)) return;
        const theirs: unknown = evaluate(text);
        assert.equal(ours === 1, theirs, text);
      }),
      { numRuns: 400 },
    );
  });
});
