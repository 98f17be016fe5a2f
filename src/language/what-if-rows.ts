// What if, as rows of a table: numbers, windows, goals and faults in words, now and then; predicts nothing.
import { isShownOtherwise } from '../analysis/as-all-say.ts';
import type { WhatIf } from '../analysis/what-if.ts';
import type { Analysis } from '../analysis/result.ts';
import { movedWords, spreadOf, standingWords } from '../checks/forecast-words.ts';
import { middlesOf, notAllTogether } from '../checks/window-words.ts';
import { standingNumber } from '../judgement/standing-number.ts';
import { lowerFirst, upperFirst } from '../measure/quote.ts';
import { showValue, showWindow } from '../measure/show.ts';

export interface WhatIfRow {
  readonly group: 'Swing and flight' | 'Windows for the goal' | 'Goals' | 'Faults';
  readonly title: string;
  /** What all entries together say, from where it moves and as the goals are held against it. */
  readonly now: string;
  /** Its own entry, where that says another number; else empty. */
  readonly entered: string;
  /** The same as now where nothing moves. */
  readonly then: string;
  /** Where 95 of 100 such values lie, or how the chance changes. */
  readonly spread: string;
  /** How far it moves; empty where it does not. */
  readonly moved: string;
}

const foremost = [
  'delivery.low_point.ahead',
  'delivery.attack',
  'delivery.path',
  'delivery.face',
  'delivery.face_to_path',
  'flight.start',
  'flight.launch_angle',
  'flight.curve',
  'flight.carry',
  'flight.finish',
];

const outOfReach = 'out of reach';

export function rowsOf(analysis: Analysis, found: WhatIf): readonly WhatIfRow[] {
  return [
    ...numberRows(analysis, found),
    ...windowRows(analysis, found),
    ...goalRows(found),
    ...faultRows(found),
  ];
}

function numberRows(
  { subject, account }: Analysis,
  { prediction, made, goals }: WhatIf,
): readonly WhatIfRow[] {
  const set = new Map(made.map((one) => [one.quantity.id, one]));
  const ids = new Set([...foremost, ...goals.map(({ now }) => now.wanted.quantity.id)]);
  return [...ids].flatMap((id): WhatIfRow[] => {
    const quantity = subject.registry.find(id);
    const [now, outlook, own] = [standingNumber(id, account!), prediction.outlooks.get(id), set.get(id)];
    if (quantity === undefined || (now === undefined && outlook === undefined)) return [];
    const before = now === undefined ? 'not measured' : showValue(quantity, now.value, now.u);
    const entry = account!.derivation.values.get(id);
    const entered =
      entry !== undefined && now !== undefined && isShownOtherwise(entry, now, quantity)
        ? showValue(quantity, entry.value, entry.u)
        : '';
    const row = { group: 'Swing and flight', title: quantity.title, now: before, entered } as const;
    if (own !== undefined)
      return [
        {
          ...row,
          then: showValue(quantity, own.to, own.u),
          spread: spreadOf(quantity, own.to, own.u),
          moved: `${movedWords(quantity, own.to - (now?.value ?? own.to), own.u)}, as set`,
        },
      ];
    if (outlook === undefined) return [{ ...row, then: before, spread: '', moved: '' }];
    const { value, u, difference, uDifference, origin } = outlook;
    const isKnown = value !== null && u !== null;
    return [
      {
        ...row,
        then: isKnown ? showValue(quantity, value, u) : 'not known',
        spread: isKnown ? spreadOf(quantity, value, u) : '',
        moved:
          difference === null
            ? 'nobody can tell how far'
            : `${movedWords(quantity, difference, uDifference)}${origin === 'belief' ? ', by belief' : ''}`,
      },
    ];
  });
}

function windowRows({ subject }: Analysis, { windows }: WhatIf): readonly WhatIfRow[] {
  const known = windows.flatMap(({ id, now, then }) => {
    const quantity = subject.registry.find(id);
    return quantity === undefined ? [] : [{ quantity, now, then }];
  });
  const row = (title: string, now: string, then: string): WhatIfRow => {
    return { group: 'Windows for the goal', title, now, entered: '', then, spread: '', moved: '' };
  };
  const rows = known.map(({ quantity, now, then }) => {
    const [before, after] = [now, then].map((window) =>
      window === undefined ? outOfReach : showWindow(quantity, window.min, window.max),
    );
    return row(quantity.title, before!, after!);
  });
  if (rows.length < 2) return rows;
  const [before, after] = (['now', 'then'] as const).map((when) => {
    const reached = known.flatMap((one) => (one[when] ? [{ ...one[when], quantity: one.quantity }] : []));
    return reached.length === 0 ? outOfReach : middlesOf(reached, ({ title }) => lowerFirst(title));
  });
  return [...rows, row(upperFirst(notAllTogether), before!, after!)];
}

function goalRows({ goals }: WhatIf): readonly WhatIfRow[] {
  return goals.map(({ now, then }): WhatIfRow => {
    const { wanted } = now;
    const { quantity, asked } = wanted;
    return {
      group: 'Goals',
      title:
        asked === undefined
          ? `${quantity.title} ${showWindow(quantity, wanted.min, wanted.max)}`
          : `${upperFirst(asked)} (${lowerFirst(quantity.title)})`,
      now: standingWords(now),
      entered: '',
      then: standingWords(then, then.value === now.value ? 'now' : 'then'),
      spread: '',
      moved: '',
    };
  });
}

function faultRows({ faults }: WhatIf): readonly WhatIfRow[] {
  return faults.map(({ now, then }): WhatIfRow => {
    const at = now.at === undefined ? '' : ` at ${now.at.replaceAll('_', ' ')}`;
    return {
      group: 'Faults',
      title: `${now.fault.title ?? now.fault.id.value}${at}`,
      now: verdictWords(now),
      entered: '',
      then: verdictWords(then),
      spread: '',
      moved: '',
    };
  });
}

function verdictWords({ verdict, probability }: WhatIf['faults'][number]['then']): string {
  if (probability === undefined) return verdict;
  const percent = Math.round(100 * probability);
  return `${verdict} (${percent === 0 ? 'under 1' : percent === 100 ? 'over 99' : percent} %)`;
}
