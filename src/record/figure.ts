// Reads one standard uncertainty with its unit, as a workspace file gives it; knows no key.
import { parseLongForm } from '../measure/long-form.ts';
import type { Dimension, Problem, Span } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import { siUnits } from '../measure/unit-table.ts';
import type { Reader } from './entry.ts';
import type { ScalarTree } from './tree.ts';

/** One standard uncertainty in SI; a difference where the dimension is temperature. */
export function readFigure(scalar: ScalarTree, dimension: Dimension, reader: Reader): number | undefined {
  const { source, span } = scalar;
  if (dimension !== 'ratio' && typeof scalar.plain === 'number') {
    reader.problems.push(withoutUnit(source, span, dimension));
    return undefined;
  }
  const notation = { dimension, unit: siUnits[dimension], directions: [], decimals: 2 };
  const form = {
    value: { text: '0', offset: 0 },
    giveOrTake: { text: source, offset: scalar.offset ?? 0 },
    by: undefined,
  };
  const { value, problems } = parseLongForm(form, notation, reader.registry.methodNames);
  for (const problem of problems)
    reader.problems.push(scalar.offset === undefined ? { ...problem, span } : problem);
  return value?.kind === 'measure' ? value.stated : undefined;
}

function withoutUnit(source: string, span: Span, dimension: Dimension): Problem {
  return {
    code: 'unreadable-measure',
    span,
    found: `${quote(source)} without a unit`,
    expected: `a number and a unit of ${dimension}`,
  };
}
