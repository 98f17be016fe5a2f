// The hover on keys of the workspace file: calibration, columns of shots; and on every quantity that is named in it.
import { readerOf } from '../checks/reach.ts';
import { homeOf, mentionAt, mentionsIn } from '../analysis/mentions.ts';
import type { Analysis } from '../analysis/result.ts';
import type { ShotColumn, WorkspaceFile, WrittenCalibration } from '../record/document.ts';
import { describe, practice, titleOf } from './hover-entry.ts';
import type { Remark } from './hover.ts';
import { code } from './markdown.ts';
import { holds } from './places.ts';
import { list } from './words.ts';

export function hoverOnWorkspace(analysis: Analysis, offset: number): Remark | undefined {
  const { document } = analysis;
  if (document.kind !== 'workspace') return undefined;
  const named = hoverOnQuantity(analysis, document, offset);
  if (named !== undefined) return named;
  const at = document.outline.find(({ nameSpan }) => holds(nameSpan, offset));
  if (at?.name === 'calibration') return { span: at.nameSpan, lines: calibrationLines(document.calibration) };
  if (at?.name === 'shots') return { span: at.nameSpan, lines: shotLines(document) };
  return undefined;
}

/** On a quantity's own entry and wherever its id stands: what it is, and what gives it. */
function hoverOnQuantity(analysis: Analysis, document: WorkspaceFile, offset: number): Remark | undefined {
  const {
    uri,
    subject: { registry },
  } = analysis;
  const mention = mentionAt(mentionsIn(uri, document, homeOf(analysis)), offset);
  const quantity = mention?.thing.kind === 'quantity' ? registry.find(mention.thing.name) : undefined;
  if (mention === undefined || quantity === undefined) return undefined;
  const derived = document.own.derived.find((one) => one.quantity.id === quantity.id);
  const lines = [
    titleOf(quantity),
    code(quantity.id),
    ...describe(quantity),
    ...(derived === undefined ? [] : [`Computed as ${code(derived.is.value)}.`]),
    practice(quantity, readerOf(analysis.subject, undefined)),
  ];
  return { span: mention.span, lines: lines.filter((line) => line !== '') };
}

function calibrationLines(calibration: WrittenCalibration | undefined): string[] {
  const title = '**Calibration of the flight**';
  if (calibration === undefined)
    return [title, 'Not used: it takes a factor for drag, such as `1.04 ± 0.02`.'];
  const { drag, lift, shots, ballSpeed } = calibration;
  const factor = (name: string, { value, u }: WrittenCalibration['drag']): string =>
    `${name}: published coefficients × ${value.toFixed(3)} ± ${u.toFixed(3)}.`;
  return [
    title,
    factor('Drag', drag),
    lift === undefined ? 'Lift: as published, since it could not be told from drag.' : factor('Lift', lift),
    ...(shots === undefined ? [] : [`Fitted to ${shots} shots.`]),
    ...(ballSpeed === undefined
      ? []
      : [
          `Holds for ball speeds of ${ballSpeed.from.toFixed(0)} to ${ballSpeed.to.toFixed(0)} m/s; beyond, the spread of the published coefficients is added again.`,
        ]),
    'Every computed flight of this folder uses it, with these uncertainties in place of that spread.',
  ];
}

function shotLines({ shotColumns: { by, named } }: WorkspaceFile): string[] {
  const words = (kind: ShotColumn['kind']): string[] =>
    [...named].flatMap(([name, column]) => {
      if (column.kind !== kind) return [];
      return [column.kind === 'ignored' ? code(name) : `${code(name)} is ${code(column.quantity.id)}`];
    });
  const [read, ignored] = [words('quantity'), words('ignored')];
  return [
    '**Files of shots**',
    'How the columns of CSV files of shots are read in this folder.',
    ...(by === undefined ? [] : [`Measured by ${code(by)} where nothing else is said.`]),
    ...(read.length === 0 ? [] : [`${list(read, 12)}.`]),
    ...(ignored.length === 0 ? [] : [`Not read: ${list(ignored, 12)}.`]),
  ];
}
