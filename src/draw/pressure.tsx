// The pressure under the lead foot from checkpoint to checkpoint: entered, computed, and what is taught; draws what is known and says what is not.
import { scaleLinear, scalePoint } from 'd3-scale';
import type { Analysis } from '../analysis/result.ts';
import { standingsOf } from '../judgement/template.ts';
import { showValue, showWindow } from '../measure/show.ts';
import type { Value } from '../model/value.ts';
import { checkpoints, type Checkpoint } from '../registry/quantity.ts';
import { fixed, lineThrough } from './geometry.ts';
import { expectedOf, kindOf, valueOf, wordsOf } from './known.ts';
import { Label, Lines, linesHeight, notKnown } from './label.tsx';
import { wrapped } from './lettering.ts';
import { EdgeArrow, offScale } from './off-scale.tsx';
import { areaStyle, Frame, lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const name = 'pressure';
const width = 548;
const field = { left: 44, right: 532, top: 30, bottom: 250 } as const;
const idOf = (checkpoint: Checkpoint): string => `checkpoints.${checkpoint}.lead_pressure`;

/** At a checkpoint: what stands there, and what the other entries make of it where something was entered. */
interface Stop {
  readonly checkpoint: Checkpoint;
  readonly value: Value | undefined;
  readonly implied: Value | undefined;
  readonly taught: { readonly from: number; readonly to: number } | undefined;
}

export function Pressure({
  analysis,
  theme,
}: {
  readonly analysis: Analysis;
  readonly theme: Theme;
}): Picture {
  const { registry, template, student } = analysis.subject;
  const windows =
    template === undefined || analysis.derivation === undefined
      ? []
      : standingsOf(template.document, analysis.derivation, student?.document.hand?.value);
  const stops = checkpoints.map((checkpoint): Stop => {
    const value = valueOf(analysis, idOf(checkpoint));
    return {
      checkpoint,
      value,
      implied: value?.kind === 'entered' ? expectedOf(analysis, idOf(checkpoint)) : undefined,
      taught: windows.find(({ id }) => id === idOf(checkpoint))?.edges,
    };
  });
  const x = scalePoint(checkpoints, [field.left, field.right]).padding(0.5);
  const y = scaleLinear([0, 1], [field.bottom, field.top]).clamp(true);
  const known = stops.filter(({ value }) => value !== undefined);
  const missing = known.length === 0 ? ['pressure at any checkpoint'] : [];
  const sayings = stops.flatMap(({ checkpoint, value, implied, taught }) => {
    const quantity = registry.find(idOf(checkpoint));
    if (quantity === undefined) return [];
    const said = [
      ...(value === undefined
        ? []
        : [`${showValue(quantity, value.value, value.u)}${value.kind === 'entered' ? '' : ' (computed)'}`]),
      ...(implied === undefined
        ? []
        : [`the other entries say ${showValue(quantity, implied.value, implied.u)}`]),
      ...(taught === undefined ? [] : [`taught ${showWindow(quantity, taught.from, taught.to)}`]),
    ];
    return said.length === 0 ? [] : [{ name: planName(checkpoint), number: said.join(', ') }];
  });
  const lines = notKnown(missing, width - 40);
  const key = field.bottom + 74;
  const height = key + 22 + linesHeight(lines);
  const at = ({ checkpoint, value }: Stop) => ({ x: x(checkpoint)!, y: y(value!.value) });
  return (
    <Frame
      name={name}
      title="Pressure under the lead foot"
      words={wordsOf(sayings, missing)}
      width={width}
      height={height}
      theme={theme}
    >
      {[0, 0.25, 0.5, 0.75, 1].map((share) => (
        <g key={share}>
          <path
            d={lineThrough([
              { x: field.left, y: y(share) },
              { x: field.right, y: y(share) },
            ])}
            stroke={share === 0.5 ? theme.soft : theme.faint}
            stroke-width={share === 0.5 ? 1.1 : 0.8}
          />
          <text x={field.left - 8} y={fixed(y(share) + 4)} text-anchor="end" fill={theme.soft} font-size="11">
            {`${100 * share} %`}
          </text>
        </g>
      ))}
      {stops.flatMap(({ checkpoint, taught }) =>
        taught === undefined
          ? []
          : [
              <rect
                key={checkpoint}
                x={fixed(x(checkpoint)! - 20)}
                y={fixed(y(taught.to))}
                width="40"
                height={fixed(Math.max(2, y(taught.from) - y(taught.to)))}
                {...areaStyle('taught', name, theme)}
                data-window={checkpoint}
              />,
            ],
      )}
      {known.slice(1).map((stop, i) => {
        const before = known[i]!;
        const isSure = [before, stop].every(({ value }) => value!.kind === 'entered');
        return (
          <path
            key={stop.checkpoint}
            d={lineThrough([at(before), at(stop)])}
            {...lineStyle(isSure ? 'entered' : 'expected', theme)}
            stroke-width="1.2"
          />
        );
      })}
      {stops.map((stop) => (
        <g key={stop.checkpoint}>
          {stop.implied && (
            <Dot value={stop.implied} x={x(stop.checkpoint)! + 11} y={y} kind="expected" theme={theme} />
          )}
          {stop.value && (
            <g data-id={idOf(stop.checkpoint)}>
              <Dot value={stop.value} x={x(stop.checkpoint)!} y={y} kind={kindOf(stop.value)} theme={theme} />
            </g>
          )}
          {wrapped(planName(stop.checkpoint), 54, 11, 4).map((line, i) => (
            <text
              key={i}
              x={fixed(x(stop.checkpoint)!)}
              y={field.bottom + 18 + i * 13}
              text-anchor="middle"
              fill={stop.value === undefined ? theme.soft : theme.ink}
              font-size="11"
            >
              {line}
            </text>
          ))}
        </g>
      ))}
      {known
        .filter(({ value }) => isOff(value!.value))
        .map((stop) => (
          <Label
            key={stop.checkpoint}
            at={{ x: x(stop.checkpoint)! + 9, y: y(stop.value!.value) - 8 }}
            text={`${Math.round(100 * Math.max(-99, Math.min(99, stop.value!.value)))} %, ${offScale}`}
            tone="alert"
            theme={theme}
          />
        ))}
      <Key
        y={key}
        hasImplied={stops.some(({ value, implied }) => implied !== undefined || value?.kind === 'expected')}
        hasTaught={stops.some(({ taught }) => taught !== undefined)}
        theme={theme}
      />
      <Lines lines={lines} x={field.left} y={key + 24} theme={theme} />
    </Frame>
  );
}

function isOff(share: number): boolean {
  return share < 0 || share > 1;
}

/** Round for what was written down, a diamond for what was computed, with the interval of 95 %. */
function Dot({
  value: { value, u },
  x,
  y,
  kind,
  theme,
}: {
  readonly value: Value;
  readonly x: number;
  readonly y: (share: number) => number;
  readonly kind: 'entered' | 'expected';
  readonly theme: Theme;
}): Picture {
  const spread = 1.96 * (u ?? 0);
  const colour = theme[kind];
  if (isOff(value))
    return <EdgeArrow at={{ x, y: y(value) }} way={value > 1 ? 'up' : 'down'} colour={colour} />;
  return (
    <g data-part={kind} data-share={fixed(100 * value)}>
      {spread > 0 && (
        <path
          d={lineThrough([
            { x, y: y(value - spread) },
            { x, y: y(value + spread) },
          ])}
          {...lineStyle(kind, theme)}
          stroke-width="1.6"
        />
      )}
      {kind === 'entered' ? (
        <circle cx={fixed(x)} cy={fixed(y(value))} r="4.5" fill={colour} />
      ) : (
        <path
          d={`M ${fixed(x)} ${fixed(y(value) - 5.5)} l 5.5 5.5 l -5.5 5.5 l -5.5 -5.5 Z`}
          fill={theme.paper}
          stroke={colour}
          stroke-width="1.6"
        />
      )}
    </g>
  );
}

function Key({
  y,
  hasImplied,
  hasTaught,
  theme,
}: {
  readonly y: number;
  readonly hasImplied: boolean;
  readonly hasTaught: boolean;
  readonly theme: Theme;
}): Picture {
  return (
    <g>
      <circle cx={field.left + 6} cy={y} r="4.5" fill={theme.entered} />
      <Label at={{ x: field.left + 16, y: y + 4 }} text="entered" theme={theme} />
      {hasImplied && (
        <>
          <path
            d={`M ${field.left + 90} ${y - 5.5} l 5.5 5.5 l -5.5 5.5 l -5.5 -5.5 Z`}
            fill={theme.paper}
            stroke={theme.expected}
            stroke-width="1.6"
          />
          <Label at={{ x: field.left + 102, y: y + 4 }} text="what the other entries say" theme={theme} />
        </>
      )}
      {hasTaught && (
        <>
          <rect
            x={field.left + (hasImplied ? 270 : 90)}
            y={y - 6}
            width="22"
            height="12"
            {...areaStyle('taught', name, theme)}
          />
          <Label at={{ x: field.left + (hasImplied ? 300 : 120), y: y + 4 }} text="taught" theme={theme} />
        </>
      )}
      <Label at={{ x: field.right, y: y + 4 }} text="lines: 95 %" anchor="end" theme={theme} />
    </g>
  );
}

function planName(checkpoint: Checkpoint): string {
  return checkpoint.replaceAll('_', ' ');
}
