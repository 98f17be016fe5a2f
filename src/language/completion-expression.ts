// What may stand next in an expression over quantities: ids, functions, operators, units; parses nothing.
import { functionNames } from '../judgement/functions.ts';
import { unitsOf } from '../measure/units.ts';
import type { Quantity } from '../registry/quantity.ts';
import { isInNumber } from './completion-measure.ts';
import type { Proposal } from './completion-item.ts';

export interface ExpressionContinuation {
  readonly start: number;
  readonly end: number;
  readonly proposals: readonly Proposal[];
}

/** What an expression says: a condition or a number, or that two numbers are alike, `left ≈ right ± u`. */
export type Saying = 'expression' | 'relation';

/** `quantities` in the order in which they are proposed. */
export function continueExpression(
  value: string,
  at: number,
  quantities: readonly Quantity[],
  saying: Saying = 'expression',
): ExpressionContinuation {
  const find = (id: string): Quantity | undefined => quantities.find((one) => one.id === id);
  const before = value.slice(0, at);
  const name = /[A-Za-z_%°][\w./%°]*$/.exec(before)?.[0] ?? '';
  const start = at - name.length;
  const end = at + (/^[\w.]*/.exec(value.slice(at))?.[0].length ?? 0);
  const previous = before.slice(0, start).trimEnd();
  const operators = (lead: string): Proposal[] => signsAfter(before, value.slice(at), saying, lead);
  if (/(?:^|[^\w.])[\d.]+$/.test(previous)) {
    // Between its digits, and before its unit, a number takes nothing more.
    const rest = value.slice(at);
    const next = rest.trimStart();
    const isUnit = /^[A-Za-z%°]/.test(next) && !/^(?:and|or|not)\b/.test(next);
    if (isInNumber(value, at) || (name === '' && isUnit && next !== rest))
      return { start, end, proposals: [] };
    const lead = start === previous.length ? ' ' : '';
    const last = (before.match(/[a-z_]+(?:\.[a-z_]+)+/g) ?? []).findLast((id) => find(id) !== undefined);
    const dimension = last === undefined ? undefined : find(last)!;
    const names =
      dimension === undefined
        ? ['deg', 'cm', '%', 'm/s', 'm']
        : [dimension.unit, ...unitsOf(dimension.dimension).map((unit) => unit.name)];
    const units = names
      .filter((unit) => unit !== '')
      .map((unit): Proposal => ({ label: unit, text: lead + unit, kind: 'unit' }));
    return { start, end, proposals: [...units, ...operators(lead)] };
  }
  if (/[\w)%°²]$/.test(previous) && !/(?:^|\s)(?:and|or|not)$/.test(previous))
    return { start, end, proposals: operators(start === previous.length && name === '' ? ' ' : '') };
  return {
    start,
    end,
    proposals: [
      ...quantities.map(({ id, title, meaning }): Proposal => ({
        label: id,
        text: id,
        kind: 'quantity',
        detail: title,
        words: meaning,
      })),
      ...functionNames.map((word): Proposal => ({
        label: word,
        text: `${word}(`,
        kind: 'function',
        detail: 'function',
      })),
      ...(saying === 'relation' ? [] : [{ label: 'not', text: 'not (', kind: 'operator' as const }]),
    ],
  };
}

const arithmetic = ['+', '-', '*', '/'];

/** A relation compares its two sides once, and says once how far they may be apart. */
function signsAfter(before: string, after: string, saying: Saying, lead: string): Proposal[] {
  const isThere = (sign: RegExp): boolean => sign.test(before) || sign.test(after);
  const isHalved = isThere(/≈|=/);
  const next = isHalved ? (isThere(/±|\+-/) ? [] : ['±']) : ['≈'];
  const signs =
    saying === 'relation' ? [...next, ...arithmetic] : ['<', '>', '<=', '>=', ...arithmetic, 'and', 'or'];
  return signs.map((sign) => ({
    label: sign,
    text: `${lead}${sign} `,
    kind: 'operator',
    ...(filters[sign] === undefined ? {} : { filter: filters[sign] }),
  }));
}

/** What keyboards have in their place. */
const filters: Readonly<Record<string, string>> = { '≈': '≈ ~=', '±': '± +-' };
