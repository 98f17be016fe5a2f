// Inlay hints: what the reader cannot see on the line, one switch a family; computes nothing.
import { computedFlightOf } from '../analysis/flight-path.ts';
import { lineTableOf, positionAt, type LineTable } from '../analysis/positions.ts';
import type { Analysis } from '../analysis/result.ts';
import { handOf } from '../checks/handed.ts';
import { directionPlace, presumedDirection } from '../measure/bare-direction.ts';
import { verdictWords } from '../checks/verdict-words.ts';
import { showValue } from '../measure/show.ts';
import type { Value } from '../model/value.ts';
import type { Entry, SwingwrightDocument } from '../record/document.ts';
import type { Registry } from '../registry/registry.ts';
import { entriesOf } from './entries.ts';
import { statedLines } from './hover-fault.ts';
import { lineText, touches } from './places.ts';
import type { InlayHint, TextRange } from './shapes.ts';
import { shotLines, shotsInShort } from './shots.ts';
import { windowHints } from './windows.ts';
import { assumptionsOf, originOf, short } from './words.ts';

/** One switch a family. */
export interface HintSwitches {
  /** The unit, and the direction, that a bare number takes. */
  readonly units: boolean;
  /** Face-to-path, behind the face. */
  readonly faceToPath: boolean;
  /** The low point that the other entries lead to expect, behind the attack. */
  readonly lowPoint: boolean;
  /** The carry and finish that the other entries lead to expect, behind `flight`. */
  readonly flight: boolean;
  /** How many shots there are and what they say together, behind `shots`. */
  readonly shots: boolean;
  /** The face-to-path that the flight allows, behind the face, and what a goal asks for, behind the goal. */
  readonly windows: boolean;
  /** Whether the numbers support or contradict a stated fault, behind it. */
  readonly faults: boolean;
}

export function findHints(analysis: Analysis, range: TextRange, switches: HintSwitches): InlayHint[] {
  const table = lineTableOf(analysis.document.text);
  const hints = [
    ...(switches.units ? unitHints(analysis.document, table) : []),
    ...(switches.faceToPath ? faceToPathHints(analysis, table) : []),
    ...(switches.lowPoint ? lowPointHints(analysis, table) : []),
    ...(switches.flight ? flightHints(analysis, table, range) : []),
    ...(switches.shots ? shotHints(analysis, table) : []),
    ...(switches.windows ? windowHints(analysis, table) : []),
    ...(switches.faults ? faultHints(analysis, table) : []),
  ];
  return hints.filter(({ position }) => touches(range, { start: position, end: position }));
}

/** The unit of a bare number, and the direction of one that has neither a word for it nor a sign. */
function unitHints(document: SwingwrightDocument, table: LineTable): InlayHint[] {
  return entriesOf(document).flatMap(({ quantity, readings }) =>
    readings.flatMap(({ measure, form }) => {
      const unit = measure.unit === undefined && quantity.unit !== '' ? quantity.unit : undefined;
      const direction = presumedDirection(measure, quantity, document.text)?.word;
      const words = [unit, direction].filter((word) => word !== undefined);
      if (words.length === 0) return [];
      const label = words.join(' ');
      const place = unit === undefined ? directionPlace(measure, document.text) : measure.spans.number.end;
      const position = positionAt(table, place);
      const tooltip = [
        ...(unit === undefined ? [] : [`A number without a unit is read in ${unit} here.`]),
        ...(direction === undefined ? [] : [`Without a direction it is read as ${direction}.`]),
        ...(form === 'short' ? ['Double-click writes it out.'] : []),
      ].join(' ');
      return [
        {
          position,
          label,
          tooltip: markdown(tooltip),
          paddingLeft: true,
          ...(form === 'short'
            ? { textEdits: [{ range: { start: position, end: position }, newText: ` ${label}` }] }
            : {}),
        },
      ];
    }),
  );
}

function faceToPathHints(analysis: Analysis, table: LineTable): InlayHint[] {
  const value = analysis.derivation?.values.get('delivery.face_to_path');
  const anchor = entryAt(analysis.document, ['delivery.face', 'delivery.path']);
  if (value === undefined || value.kind === 'entered' || anchor === undefined) return [];
  return behind(
    anchor,
    table,
    `face-to-path ${value.kind === 'expected' ? 'expected ' : ''}${short(value, analysis.subject.registry)}${faceWord(value, analysis)}`,
    [value],
    analysis.subject.registry,
  );
}

/** A face to the right of the path is open for a right-handed player and closed for a left-handed one. */
function faceWord({ id, value, u }: Value, { subject }: Analysis): string {
  const hand = handOf(subject);
  const quantity = subject.registry.find(id);
  const isSquare = quantity !== undefined && !/[1-9]/.test(showValue(quantity, value, u).split('±')[0]!);
  if (hand === undefined || isSquare) return '';
  return value > 0 === (hand === 'right') ? ' (open)' : ' (closed)';
}

function lowPointHints(analysis: Analysis, table: LineTable): InlayHint[] {
  const value = analysis.derivation?.expected.get('delivery.low_point.ahead');
  const anchor = entryAt(analysis.document, ['delivery.attack', 'delivery.low_point.ahead']);
  if (value === undefined || anchor === undefined) return [];
  return behind(
    anchor,
    table,
    `low point expected ${short(value, analysis.subject.registry)}`,
    [value],
    analysis.subject.registry,
  );
}

/** Carry and finish from one computation, as the picture has them: what the others say of an entered carry, else what nobody entered. */
function flightHints(analysis: Analysis, table: LineTable, range: TextRange): InlayHint[] {
  const key = analysis.document.outline.find(({ name }) => name === 'flight');
  if (key === undefined) return [];
  const { line } = positionAt(table, key.nameSpan.start);
  // What the others say takes a fit of its own: none for a line that nobody sees.
  if (line < range.start.line || line > range.end.line) return [];
  const { by, carry, finish } = computedFlightOf(analysis);
  const known = [carry, finish].flatMap((value) => (value && value.kind !== 'entered' ? [value] : []));
  if (known.length === 0) return [];
  const { registry } = analysis.subject;
  const numbers = known.map((value) => `${value === carry ? 'carry' : 'finish'} ${short(value, registry)}`);
  const label = `${by === 'others' ? 'the others say' : 'expected'} ${numbers.join(', ')}`;
  const without = by === 'others' ? ['Without the carry, curve and finish that were entered.'] : [];
  return hintAtEnd(line, table, label, known, registry, without);
}

function shotHints(analysis: Analysis, table: LineTable): InlayHint[] {
  const label = shotsInShort(analysis);
  const key = analysis.document.outline.find(({ name }) => name === 'shots');
  if (label === undefined || key === undefined) return [];
  const { line } = positionAt(table, key.nameSpan.start);
  const position = { line, character: lineText(table, line).trimEnd().length };
  return [{ position, label, tooltip: markdown(shotLines(analysis).join('\n\n')), paddingLeft: true }];
}

function faultHints({ subject }: Analysis, table: LineTable): InlayHint[] {
  return (subject.judgement?.stated ?? [])
    .filter(({ isSeenHere }) => isSeenHere)
    .map((one) => {
      const { line } = positionAt(table, one.stated.fault.span.end);
      const position = { line, character: lineText(table, line).trimEnd().length };
      const tooltip = markdown(statedLines(one).join('\n\n'));
      return { position, label: verdictWords(one), tooltip, paddingLeft: true };
    });
}

function entryAt(document: SwingwrightDocument, ids: readonly string[]): Entry | undefined {
  if (document.kind !== 'swing') return undefined;
  return ids
    .map((id) => document.entries.get(id))
    .find((entry) => entry !== undefined && entry.readings.length > 0);
}

function behind(
  entry: Entry,
  table: LineTable,
  label: string,
  values: readonly Value[],
  registry: Registry,
): InlayHint[] {
  return hintAtEnd(positionAt(table, entry.valueSpan.end).line, table, label, values, registry);
}

function hintAtEnd(
  line: number,
  table: LineTable,
  label: string,
  values: readonly Value[],
  registry: Registry,
  before: readonly string[] = [],
): InlayHint[] {
  const paragraphs = values.map((value) => {
    const quantity = registry.find(value.id);
    const origin =
      value.from.length > 0 ? `From ${originOf(value, registry)}.` : 'From no entry of this record.';
    const assumed = assumptionsOf(value);
    const title =
      quantity === undefined ? '' : `**${quantity.title}** ${showValue(quantity, value.value, value.u)}. `;
    return `${title}${origin}${assumed === '' ? '' : ` Assumes ${assumed}.`}`;
  });
  const position = { line, character: lineText(table, line).trimEnd().length };
  return [{ position, label, tooltip: markdown([...before, ...paragraphs].join('\n\n')), paddingLeft: true }];
}

function markdown(value: string): { readonly kind: 'markdown'; readonly value: string } {
  return { kind: 'markdown', value };
}
