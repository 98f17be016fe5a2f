// The numbers of the version for the file: verdicts, goals, what the changes should lead to, what was measured; as rows of words.
import type { Handout } from '../../analysis/handout.ts';
import { coverage95 } from '../../checks/forecast-words.ts';
import type { Standing } from '../../judgement/goal-standing.ts';
import type { FaultVerdict } from '../../judgement/verdict.ts';
import type { Reading } from '../../record/document.ts';
import type { Speech } from './speech.ts';
import { most, shortened } from './shortened.ts';

export interface Table {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** What did not fit. */
  readonly rest: string | undefined;
}

/** Rows, so that the file's version stays two pages. */
const mostRows = { verdicts: 5, unstated: 3, goals: 6, outlooks: 9, measured: 36, next: 3 } as const;

export function sectionsForFile(handout: Handout, speech: Speech): readonly Table[] {
  return [
    verdictTable(handout, speech),
    unstatedTable(handout, speech),
    goalTable(handout, speech),
    outlookTable(handout, speech),
    measuredTable(handout, speech),
    nextTable(handout, speech),
    notesTable(handout, speech),
  ].filter(({ rows }) => rows.length > 0);
}

function table(
  title: string,
  columns: readonly string[],
  rows: Table['rows'],
  limit: number,
  { say }: Speech,
): Table {
  const left = rows.length - limit;
  const shown = rows.slice(0, limit);
  // A column that says nothing is none.
  const told = columns.map((_, i) => i === 0 || shown.some((cells) => (cells[i] ?? '') !== ''));
  return {
    title,
    columns: columns.filter((_, i) => told[i]),
    rows: shown.map((cells) => cells.filter((_, i) => told[i])),
    rest: left > 0 ? say('others', { count: String(left) }) : undefined,
  };
}

function verdictTable({ verdicts }: Handout, speech: Speech): Table {
  const { say } = speech;
  const rows = (verdicts?.stated ?? []).map((one) => [
    nameOf(one, speech),
    verdictWords(one, speech),
    evidenceWords(one, speech),
    shortened(one.stated.note ?? '', most.note),
  ]);
  const columns = [say('fault'), say('verdict'), say('evidence'), say('note')];
  return table(say('verdicts'), columns, rows, mostRows.verdicts, speech);
}

function unstatedTable({ verdicts }: Handout, speech: Speech): Table {
  const { say } = speech;
  const rows = (verdicts?.unstated ?? []).map((one) => [
    nameOf(one, speech),
    verdictWords(one, speech),
    evidenceWords(one, speech),
  ]);
  return table(
    say('unstated'),
    [say('fault'), say('verdict'), say('evidence')],
    rows,
    mostRows.unstated,
    speech,
  );
}

function nameOf({ fault, at }: FaultVerdict, { checkpoint }: Speech): string {
  const title = shortened(fault.title ?? fault.id.value, most.title);
  return at === undefined ? title : `${title} (${checkpoint(at)})`;
}

function verdictWords({ verdict, probability }: FaultVerdict, { say, percent }: Speech): string {
  const said = {
    supported: say('supported'),
    contradicted: say('contradicted'),
    'cannot tell': say('cannotTell'),
  }[verdict];
  return probability === undefined ? said : `${said} (${percent(probability)})`;
}

function evidenceWords({ lines }: FaultVerdict, { placed, value }: Speech): string {
  const numbers = lines.flatMap(({ values }) =>
    values.map((one) => `${placed(one.quantity)} ${value(one.quantity, one.value, one.u)}`),
  );
  return [...new Set(numbers)].slice(0, 3).join('; ');
}

function goalTable({ goals, changes }: Handout, speech: Speech): Table {
  const { say, title, window, word } = speech;
  const hasPlan = changes.length > 0;
  const rows = goals.map(({ now, then }) => {
    const { quantity, min, max, asked } = now.wanted;
    const name = asked === undefined ? title(quantity) : `${word('contacts', asked)} (${title(quantity)})`;
    const wanted = asked === undefined ? window(quantity, min, max) : '';
    return [name, wanted, standingWords(now, speech), ...(hasPlan ? [standingWords(then, speech)] : [])];
  });
  const columns = [say('goal'), say('window'), say('goalNow'), ...(hasPlan ? [say('goalThen')] : [])];
  return table(say('goals'), columns, rows, mostRows.goals, speech);
}

function standingWords({ wanted, value, u, chance }: Standing, speech: Speech): string {
  if (value === undefined) return speech.say('unknown');
  const told = chance === undefined ? speech.say('unknown') : speech.percent(chance);
  return `${speech.value(wanted.quantity, value, u)} (${told})`;
}

function outlookTable({ outlooks }: Handout, speech: Speech): Table {
  const { say, placed, value, window } = speech;
  const rows = outlooks.flatMap(({ outlook: { quantity, origin, value: then, u }, now }) => {
    if (then === null) return [];
    return [
      [
        placed(quantity),
        now === undefined ? say('unknown') : value(quantity, now.value, now.u),
        value(quantity, then, u),
        u === null ? '' : window(quantity, then - coverage95 * u, then + coverage95 * u),
        say(origin === 'model' ? 'byModel' : 'byBelief'),
      ],
    ];
  });
  const columns = [say('quantity'), say('before'), say('then'), say('range'), say('by')];
  return table(say('outlook'), columns, rows, mostRows.outlooks, speech);
}

/** Which entries stay where there are more than a page has room for. */
const foremostSections = ['flight', 'delivery', 'strike', 'ground', 'checkpoints'];

/** What does not fit first, then in the order of the record. */
function measuredTable({ analysis }: Handout, speech: Speech): Table {
  const { say, placed, word } = speech;
  const { document, agreement } = analysis;
  const readings =
    document.kind === 'swing'
      ? [...document.entries.values()].flatMap((entry) =>
          entry.readings.map((reading, place) => ({ entry, reading, place })),
        )
      : [];
  const told = readings.map(({ entry: { id, quantity }, reading, place }) => {
    const judged = agreement?.entries.find((one) => one.id === id && one.reading === place);
    const { method } = reading.measure;
    const isOff = judged?.verdict === 'conflict';
    const section = foremostSections.indexOf(quantity.section);
    return {
      isOff,
      rank: isOff ? -1 : section < 0 ? foremostSections.length : section,
      cells: [
        placed(quantity),
        readingWords(reading, judged?.u, quantity, speech),
        method === undefined ? '' : shortened(word('methods', method), most.word),
        judged === undefined ? '' : say(judged.verdict),
      ],
    };
  });
  const kept = new Set(told.toSorted((a, b) => a.rank - b.rank).slice(0, mostRows.measured));
  const [shown, left] = [told.filter((one) => kept.has(one)), told.filter((one) => !kept.has(one))];
  const rows = [...shown.toSorted((a, b) => Number(b.isOff) - Number(a.isOff)), ...left].map(
    ({ cells }) => cells,
  );
  const columns = [say('quantity'), say('value'), say('method'), say('agrees')];
  return table(say('measured'), columns, rows, mostRows.measured, speech);
}

function readingWords(
  { measure }: Reading,
  u: number | undefined,
  quantity: Parameters<Speech['value']>[0],
  { value }: Speech,
): string {
  return `${measure.estimate ? '~' : ''}${value(quantity, measure.value, u)}`;
}

function nextTable({ next }: Handout, speech: Speech): Table {
  const { say, placed, title, word } = speech;
  const rows = next.map(({ quantity, method, narrowings }) => [
    placed(quantity),
    method === undefined ? '' : shortened(word('methods', method), most.word),
    narrowings
      .slice(0, 3)
      .map((one) => title(one.quantity))
      .join(', '),
  ]);
  return table(
    say('worthwhile'),
    [say('quantity'), say('method'), say('narrows')],
    rows,
    mostRows.next,
    speech,
  );
}

/** The coach's own words on the student, which no version for the student has. */
function notesTable({ notes }: Handout, speech: Speech): Table {
  const { say } = speech;
  const rows = notes === undefined ? [] : [[say('gap.student'), shortened(notes, most.notes)]];
  return table(say('notes'), [say('notesFrom'), say('note')], rows, 1, speech);
}
