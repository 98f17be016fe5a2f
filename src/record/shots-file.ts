// Reads a file of shots, one a line with names in the first line; what the shots say together is not known here.
import Papa from 'papaparse';
import type { Measure, Problem, Span } from '../measure/measure.ts';
import { parseMeasure } from '../measure/parse.ts';
import { quote } from '../measure/quote.ts';
import { showWindow } from '../measure/show.ts';
import type { Registry } from '../registry/registry.ts';
import type { ShotColumns } from './document.ts';
import { readHeader, type HeaderCell, type ReadColumn } from './shots-header.ts';

export interface FileShot {
  /** Which row below the first line it is, from 1, empty lines left out. */
  readonly row: number;
  /** By id; spans in the file. */
  readonly measures: ReadonlyMap<string, Measure>;
  /** The whole row in the file. */
  readonly span: Span;
}

export interface ShotsFile {
  readonly text: string;
  readonly shots: readonly FileShot[];
  /** What is wrong in the first line, by column. */
  readonly columnProblems: readonly Problem[];
  /** What is wrong below it, one a row, the first ones only. */
  readonly rowProblems: readonly Problem[];
  /** How many rows were left out. */
  readonly unreadRows: number;
}

/** A practice of years has fewer, and an editor should answer at once. */
export const mostRows = 10_000;

/** Nobody reads more of them. */
const mostProblems = 20;

/** What people write for no value. */
const noValue = /^(?:|[-–—]+|n\/?a|nan)$/i;

/**
 * Reads the text of a file of shots. Cells are parted by tabs if the first line has one, else by semicolons if it has one,
 * else by commas; where it is not commas, a comma in a number is its decimal point. Any text gives a result.
 */
export function readShotsFile(text: string, known: ShotColumns, registry: Registry): ShotsFile {
  const begin = text.startsWith('\ufeff') ? 1 : 0;
  const delimiter = delimiterOf(text.slice(begin));
  const shots: FileShot[] = [];
  const rowProblems: Problem[] = [];
  let columnProblems: readonly Problem[] = [];
  let columns: readonly ReadColumn[] | undefined;
  let width = 0;
  let row = 0;
  let unreadRows = 0;
  let start = begin;
  const refuse = (problem: Problem): void => {
    unreadRows += 1;
    if (rowProblems.length < mostProblems) rowProblems.push(problem);
  };
  Papa.parse(text.slice(begin), {
    delimiter,
    skipEmptyLines: false,
    step: ({ data, errors, meta }, parser) => {
      const span = { start, end: begin + meta.cursor };
      start = span.end;
      if (data.every((cell) => cell.trim() === '')) return;
      const raw: RawRow = { text, span: trimmed(text, span), delimiter, cells: data };
      if (columns === undefined) {
        width = data.length;
        const header = readHeader(headerCells(raw), known, registry);
        columnProblems = header.problems;
        columns = header.columns;
        return;
      }
      row += 1;
      if (row > mostRows) {
        refuse(tooMany(raw));
        parser.abort();
        return;
      }
      const problem = rowProblem(raw, errors.length > 0, width);
      const shot = problem ?? readRow(raw, row, columns, registry.methodNames);
      if ('code' in shot) refuse(shot);
      else if (shot.measures.size > 0) shots.push(shot);
    },
  });
  if (columns === undefined) {
    const span = { start: begin, end: begin };
    columnProblems = [{ code: 'unknown-column', span, found: 'no first line', expected: 'names of columns' }];
  }
  return { text, shots, columnProblems, rowProblems, unreadRows };
}

interface RawRow {
  readonly text: string;
  readonly span: Span;
  readonly delimiter: string;
  readonly cells: readonly string[];
}

function delimiterOf(text: string): string {
  const first = /^\s*([^\r\n]*)/.exec(text)?.[1] ?? '';
  const plain = first.replace(/"[^"]*"/g, '');
  return ['\t', ';'].find((sign) => plain.includes(sign)) ?? ',';
}

function headerCells(raw: RawRow): readonly HeaderCell[] {
  const spans = cellSpans(raw);
  return raw.cells.map((cell, index) => ({ text: cell.trim(), span: spans[index] ?? raw.span }));
}

function readRow(
  raw: RawRow,
  row: number,
  columns: readonly ReadColumn[],
  methods: readonly string[],
): FileShot | Problem {
  const measures = new Map<string, Measure>();
  for (const column of columns) {
    const cell = (raw.cells[column.index] ?? '').trim();
    if (noValue.test(cell)) continue;
    const read = readCell(cell, column, raw, methods);
    if ('code' in read) return read;
    measures.set(column.quantity.id, read);
  }
  return { row, measures, span: raw.span };
}

function readCell(
  cell: string,
  { index, quantity, notation, by }: ReadColumn,
  raw: RawRow,
  methods: readonly string[],
): Measure | Problem {
  // Where commas part the cells, one in a number is for the reader of numbers to refuse.
  const written = raw.delimiter === ',' ? cell : withPoint(cell);
  const { value, problems } = parseMeasure(written, notation, { window: 'no', methods });
  const [problem] = problems;
  const within = (): Span => cellSpans(raw)[index] ?? raw.span;
  if (value?.kind !== 'measure' || problem !== undefined) {
    const { found, expected } = problem ?? { found: quote(cell), expected: 'a number' };
    const { start } = within();
    const inner = problem?.span ?? { start: 0, end: cell.length };
    return rowFault(
      { start: start + inner.start, end: start + inner.end },
      `${found} for ${quote(quantity.id)}`,
      expected,
    );
  }
  const { min, max } = quantity.bounds;
  if (value.value < min || value.value > max)
    return rowFault(within(), `${quote(cell)} for ${quote(quantity.id)}`, showWindow(quantity, min, max));
  const unit = value.unit ?? (notation.unit === '' ? undefined : notation.unit);
  return { ...value, unit, method: value.method ?? by };
}

/** "168,5" as it is meant where commas do not part the cells; a number with points too stays as it is. */
function withPoint(cell: string): string {
  return cell.includes('.') ? cell : cell.replace(/(\d),(?=\d)/g, '$1.');
}

function rowProblem(raw: RawRow, isDamaged: boolean, width: number): Problem | undefined {
  if (isDamaged)
    return rowFault(raw.span, 'a quotation mark that is not closed', 'one at each end of a cell');
  const beyond = raw.cells.slice(width).findIndex((cell) => cell.trim() !== '');
  if (beyond < 0) return undefined;
  const commas = raw.delimiter === ',' ? ' (a decimal comma parts a cell in two)' : '';
  return rowFault(
    cellSpans(raw)[width + beyond] ?? raw.span,
    `${raw.cells.length} cells${commas}`,
    `${width} as in the first line`,
  );
}

function tooMany({ span }: RawRow): Problem {
  return rowFault(span, 'this row and all below it, which are not read', `at most ${mostRows} rows`);
}

function rowFault(span: Span, found: string, expected: string): Problem {
  return { code: 'unreadable-row', span, found, expected };
}

/** Where the words of each cell stand, quotation marks and white space around them left out. */
function cellSpans({ text, span, delimiter }: RawRow): readonly Span[] {
  const spans: Span[] = [];
  let start = span.start;
  let isQuoted = false;
  for (let at = span.start; at <= span.end; at++) {
    const sign = text[at];
    if (sign === '"' && (isQuoted || text.slice(start, at).trim() === '')) isQuoted = !isQuoted;
    if (at < span.end && (isQuoted || sign !== delimiter)) continue;
    spans.push(unquoted(text, trimmed(text, { start, end: at })));
    start = at + 1;
  }
  return spans;
}

function unquoted(text: string, { start, end }: Span): Span {
  return end - start > 1 && text[start] === '"' && text[end - 1] === '"'
    ? trimmed(text, { start: start + 1, end: end - 1 })
    : { start, end };
}

function trimmed(text: string, { start, end }: Span): Span {
  let [from, to] = [start, end];
  while (to > from && /[^\S\t]/.test(text.charAt(to - 1))) to -= 1;
  while (from < to && /[^\S\t]/.test(text.charAt(from))) from += 1;
  return { start: from, end: to };
}
