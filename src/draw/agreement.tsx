// How the entries of a record agree: each with what the others say of it, by how far they are apart; the most telling ones first.
import { scaleLinear } from 'd3-scale';
import type { Analysis } from '../analysis/result.ts';
import { titleWithin } from '../checks/agreement.ts';
import { counted } from '../measure/counted.ts';
import { upperFirst } from '../measure/quote.ts';
import { showValue } from '../measure/show.ts';
import type { JudgedReading } from '../model/agreement-result.ts';
import { othersSay } from '../model/others-say.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import { fixed, lineThrough } from './geometry.ts';
import { EdgeArrow } from './off-scale.tsx';
import { Lines, linesHeight, prose } from './label.tsx';
import { fitted, wrapped } from './lettering.ts';
import { Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const name = 'agreement';
const width = 540;
const column = { title: 14, scale: 304, end: 520 } as const;
const rowHeight = 54;
const head = 54;
/** As many as can be taken in at once. */
const mostRows = 20;
/** What lies further stands at the end, with an arrow. */
const farthest = 6;

/** Such an entry stood out before the ones beside it were taken out too, and putting them back brings misfits back. */
const insideWords = 'a cross inside the shade: taken out since the entries did not fit together with it';

interface Row {
  readonly entry: JudgedReading;
  readonly quantity: Quantity;
  readonly title: string;
}

export function Agreement({
  analysis,
  theme,
}: {
  readonly analysis: Analysis;
  readonly theme: Theme;
}): Picture {
  const { agreement, subject } = analysis;
  const entries = agreement?.entries ?? [];
  const rows = entries.flatMap((entry) => {
    const readings = entries.filter(({ id }) => id === entry.id).length;
    return rowsOf({ ...entry, ...othersSay(entry, readings, analysis.derivation) }, subject.registry);
  });
  const checked = rows
    .filter(({ entry }) => entry.verdict !== 'unchecked' && entry.w !== null)
    .sort((a, b) => Math.abs(b.entry.w!) - Math.abs(a.entry.w!));
  const unchecked = uncheckedWords(
    rows.filter((row) => !checked.includes(row)),
    analysis,
  );
  const shown = checked.slice(0, mostRows);
  const left = checked.length - shown.length;
  const threshold = Math.min(farthest, agreement?.threshold ?? farthest);
  const isInside = shown.some(({ entry }) => entry.verdict === 'conflict' && Math.abs(entry.w!) < threshold);
  const x = scaleLinear([-farthest, farthest], [column.scale, column.end]).clamp(true);
  const remarks = [
    ...(rows.length === 0 ? ['Not known: any entry that the model has to do with'] : []),
    ...(shown.length === 0 ? [] : ['shaded: as far apart as honest entries come to be']),
    ...(isInside ? [insideWords] : []),
    ...(left === 0 ? [] : [`and ${left} more that are nearer`]),
    ...(unchecked === undefined
      ? []
      : [`${unchecked}; the others say too little to call that right or wrong`]),
  ].flatMap((words) => wrapped(words, prose * (width - 28), 11, 3));
  const bottom = head + shown.length * rowHeight;
  const words = [
    ...checked.map(
      ({ title, entry, quantity }) =>
        `${title}: entered ${showValue(quantity, entry.value, entry.u)}, the others say ${impliedWords(entry, quantity)}; ${apartWords(entry)}${entry.verdict === 'conflict' ? ', does not fit' : ''}.`,
    ),
    ...(isInside ? [`${upperFirst(insideWords)}.`] : []),
    ...(unchecked === undefined ? [] : [`${unchecked}.`]),
    ...(rows.length === 0 ? ['No entry that the model has to do with.'] : []),
  ].join(' ');
  return (
    <Frame
      name={name}
      title="How the entries agree"
      words={words}
      width={width}
      height={bottom + 18 + linesHeight(remarks)}
      theme={theme}
    >
      {shown.length > 0 && (
        <>
          <text x={column.title} y="18" fill={theme.soft} font-size="11">
            entry, as entered and as the others say
          </text>
          <text
            x={fixed((column.scale + column.end) / 2)}
            y="18"
            text-anchor="middle"
            fill={theme.soft}
            font-size="11"
          >
            apart, in standard uncertainties
          </text>
          <rect
            x={fixed(x(-threshold))}
            y={head - 6}
            width={fixed(x(threshold) - x(-threshold))}
            height={bottom - head + 6}
            fill={theme.faint}
            fill-opacity="0.35"
            data-part="threshold"
          />
          {[-6, -4, -2, 0, 2, 4, 6].map((tick) => (
            <g key={tick}>
              <path
                d={lineThrough([
                  { x: x(tick), y: head - 10 },
                  { x: x(tick), y: bottom },
                ])}
                stroke={tick === 0 ? theme.soft : theme.faint}
                stroke-width={tick === 0 ? 1.1 : 0.8}
              />
              <text x={fixed(x(tick))} y={head - 16} text-anchor="middle" fill={theme.soft} font-size="11">
                {Math.abs(tick)}
              </text>
            </g>
          ))}
        </>
      )}
      {shown.map((row, i) => (
        <EntryRow key={i} row={row} y={head + i * rowHeight} x={x} theme={theme} />
      ))}
      <Lines lines={remarks} x={column.title} y={bottom + 16} theme={theme} />
    </Frame>
  );
}

/** "Unchecked: 1 entry and 6 numbers of the student's file"; undefined where there is none. */
function uncheckedWords(rows: readonly Row[], { document }: Analysis): string | undefined {
  const own = rows.filter(({ entry }) => document.kind === 'swing' && document.entries.has(entry.id)).length;
  const others = rows.length - own;
  const told = [
    ...(own === 0 ? [] : [counted(own, 'entry', 'entries')]),
    ...(others === 0 ? [] : [`${counted(others, 'number')} of the student's file`]),
  ];
  return told.length === 0 ? undefined : `Unchecked: ${told.join(' and ')}`;
}

function EntryRow({
  row: { entry, quantity, title },
  y,
  x,
  theme,
}: {
  readonly row: Row;
  readonly y: number;
  readonly x: (value: number) => number;
  readonly theme: Theme;
}): Picture {
  const w = entry.w!;
  const [middle, at] = [y + rowHeight / 2, x(w)];
  const isOff = entry.verdict === 'conflict';
  const colour = isOff ? theme.alert : theme.entered;
  const isBeyond = Math.abs(w) > farthest;
  return (
    <g data-id={quantity.id}>
      <text
        x={column.title}
        y={fixed(middle - 12)}
        fill={isOff ? theme.alert : theme.ink}
        font-weight={isOff ? 600 : 400}
      >
        {fitted(title, column.scale - column.title - 14, 12.6)}
      </text>
      <text x={column.title} y={fixed(middle + 3)} fill={theme.ink} font-size="11">
        {fitted(`${showValue(quantity, entry.value, entry.u)}${isOff ? ', does not fit' : ''}`, 270, 11)}
      </text>
      <text x={column.title} y={fixed(middle + 18)} fill={theme.soft} font-size="11">
        {fitted(impliedWords(entry, quantity), 270, 11)}
      </text>
      <path
        d={lineThrough([
          { x: x(0), y: middle },
          { x: at, y: middle },
        ])}
        stroke={colour}
        stroke-width={isOff ? 3 : 1.8}
        data-apart={fixed(w)}
      />
      {isBeyond ? (
        <EdgeArrow at={{ x: at, y: middle }} way={w > 0 ? 'right' : 'left'} colour={colour} />
      ) : isOff ? (
        <path
          d={`M ${fixed(at - 5)} ${fixed(middle - 5)} l 10 10 M ${fixed(at - 5)} ${fixed(middle + 5)} l 10 -10`}
          stroke={colour}
          stroke-width="2.4"
        />
      ) : (
        <circle cx={fixed(at)} cy={fixed(middle)} r="4.5" fill={colour} />
      )}
    </g>
  );
}

function rowsOf(entry: JudgedReading, registry: Registry): readonly Row[] {
  const quantity = registry.find(entry.id);
  if (quantity === undefined) return [];
  const words = titleWithin(entry.id, registry);
  const title = upperFirst(words);
  return [{ entry, quantity, title: entry.reading === 0 ? title : `${title}, reading ${entry.reading + 1}` }];
}

function impliedWords({ implied, uImplied }: JudgedReading, quantity: Quantity): string {
  return implied === null ? 'nothing' : showValue(quantity, implied, uImplied);
}

function apartWords({ w }: JudgedReading): string {
  return `${Math.abs(w ?? 0).toFixed(1)} standard uncertainties apart`;
}
