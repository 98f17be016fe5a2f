// What causes what, as the fault book has it: stated faults, those that they bring about, and the misses; believes nothing itself.
import { Graph, layout } from '@dagrejs/dagre';
import type { Analysis } from '../analysis/result.ts';
import { verdictWords, placeWords } from '../checks/verdict-words.ts';
import type { Judgement } from '../judgement/judgement.ts';
import { findMiss } from '../registry/registry.ts';
import { fixed, lineThrough, type Place } from './geometry.ts';
import { Label, Lines, linesHeight, prose } from './label.tsx';
import { widthOf, wrapped } from './lettering.ts';
import { Frame, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';
import { lowerFirst } from '../measure/quote.ts';

const name = 'causes';
const margin = 16;
const leastWidth = 520;
const textWidth = 168;

interface Box {
  readonly key: string;
  readonly kind: 'fault' | 'miss';
  readonly lines: readonly string[];
  /** Below the title, smaller. */
  readonly says: string;
  /** A fault that the numbers speak against, or a miss that nothing explains. */
  readonly isDoubtful: boolean;
}

interface Arrow {
  readonly from: string;
  readonly to: string;
  /** Through which quantity. */
  readonly words: string;
  /** From or to a fault that the numbers speak against. */
  readonly isDoubtful: boolean;
}

export function Causes({ analysis, theme }: { readonly analysis: Analysis; readonly theme: Theme }): Picture {
  const { judgement } = analysis.subject;
  const boxes = judgement === undefined ? [] : boxesOf(judgement);
  const arrows = judgement === undefined ? [] : arrowsOf(judgement);
  const without = boxes.length === 0 ? withoutWords(judgement) : undefined;
  const placed = placedIn(boxes, arrows);
  const width = Math.max(leastWidth, placed.width + 2 * margin);
  const lines = without === undefined ? [] : wrapped(without, prose * (width - 2 * margin), 11);
  const shift = { x: (width - placed.width) / 2, y: 34 };
  const bottom = shift.y + placed.height + 14;
  const titled = new Map(boxes.map((box) => [box.key, box.lines.join(' ')]));
  const words = [
    ...boxes.map((box) => `${box.kind === 'fault' ? 'Fault' : 'Miss'} ${box.lines.join(' ')}: ${box.says}.`),
    ...arrows.map(
      (arrow) =>
        `${titled.get(arrow.from)} ${arrow.isDoubtful ? 'would lead' : 'leads'} to ${titled.get(arrow.to)}${arrow.words === '' ? '' : ` through ${arrow.words}`}${arrow.isDoubtful ? ', against the numbers' : ''}.`,
    ),
    ...(without === undefined ? [] : [`${without}.`]),
  ].join(' ');
  return (
    <Frame
      name={name}
      title="What causes what"
      words={words}
      width={width}
      height={bottom + 22 + linesHeight(lines)}
      theme={theme}
    >
      {boxes.length > 0 && (
        <text x={margin} y="16" fill={theme.soft} font-size="11">
          as the fault book has it, from causes to misses
        </text>
      )}
      <g transform={`translate(${fixed(shift.x)} ${shift.y})`}>
        {placed.arrows.map(({ arrow, places }, i) => (
          <Way key={i} arrow={arrow} places={places} theme={theme} />
        ))}
        {placed.boxes.map(({ box, at, size }) => (
          <Node key={box.key} box={box} at={at} size={size} theme={theme} />
        ))}
      </g>
      {boxes.length > 0 && (
        <text x={margin} y={fixed(bottom + 10)} fill={theme.soft} font-size="11">
          dashed: the numbers speak against the fault, or no stated fault explains the miss
        </text>
      )}
      <Lines lines={lines} x={margin} y={bottom + 12} theme={theme} />
    </Frame>
  );
}

/** Why there is nothing to show. */
function withoutWords(judgement: Judgement | undefined): string {
  return judgement !== undefined && judgement.faults.size > 0
    ? 'No fault of the book and no miss is stated'
    : 'Not known: stated faults and misses with a fault book';
}

function boxesOf({ stated, misses }: Judgement): readonly Box[] {
  const faults = new Map<string, Box>();
  for (const one of stated) {
    const key = `fault ${one.fault.id.value}`;
    if (faults.has(key)) continue;
    faults.set(key, {
      key,
      kind: 'fault',
      lines: wrapped(one.fault.title ?? one.fault.id.value, textWidth, 12, 3),
      says: `${verdictWords(one)}${placeWords(one.at)}`,
      isDoubtful: one.verdict === 'contradicted',
    });
  }
  const named = new Map(
    misses.map((one): [string, Box] => [
      `miss ${one.miss}`,
      {
        key: `miss ${one.miss}`,
        kind: 'miss',
        lines: wrapped(one.miss, textWidth, 12, 2),
        says: one.by.length === 0 ? 'no stated fault explains it' : 'a miss',
        isDoubtful: one.by.length === 0,
      },
    ]),
  );
  return [...faults.values(), ...named.values()];
}

/** Between faults each way once; to a miss from the faults that tend to it at first hand. */
function arrowsOf({ links, misses, faults, contradicted }: Judgement): readonly Arrow[] {
  const ways = new Map<string, Arrow>();
  for (const { from, to, through } of links) {
    const key = `${from}\0${to}`;
    if (!ways.has(key))
      ways.set(key, {
        from: `fault ${from}`,
        to: `fault ${to}`,
        words: lowerFirst(through.title),
        isDoubtful: contradicted.has(from) || contradicted.has(to),
      });
  }
  for (const { miss, by, contradicted: against } of misses) {
    const direct = by.filter(({ way }) => way.length === 0).map(({ fault }) => fault);
    for (const fault of [...direct, ...against]) {
      const signs = findMiss(miss)?.signs ?? [];
      const through = faults
        .get(fault)
        ?.fault.tendsTo.find(({ quantity }) => signs.some(({ id }) => id === quantity?.id))?.quantity;
      ways.set(`${fault}\0miss ${miss}`, {
        from: `fault ${fault}`,
        to: `miss ${miss}`,
        words: lowerFirst(through?.title ?? ''),
        isDoubtful: against.includes(fault),
      });
    }
  }
  return [...ways.values()];
}

interface Size {
  readonly width: number;
  readonly height: number;
}

interface Laid {
  readonly width: number;
  readonly height: number;
  readonly boxes: readonly { readonly box: Box; readonly at: Place; readonly size: Size }[];
  readonly arrows: readonly { readonly arrow: Arrow; readonly places: readonly Place[] }[];
}

/** Causes above what they bring about, in layers; places are middles of boxes. */
function placedIn(boxes: readonly Box[], arrows: readonly Arrow[]): Laid {
  if (boxes.length === 0) return { width: 0, height: 0, boxes: [], arrows: [] };
  const graph = new Graph({ multigraph: true });
  graph.setGraph({ rankdir: 'LR', nodesep: 26, ranksep: 60, marginx: 2, marginy: 2 });
  const sizes = new Map(boxes.map((box) => [box.key, sizeOf(box)]));
  for (const [key, size] of sizes) graph.setNode(key, { ...size });
  for (const [i, { from, to, words }] of arrows.entries())
    graph.setEdge(
      from,
      to,
      { width: words === '' ? 0 : Math.min(118, widthOf(words, 11)), height: 26, labelpos: 'c' },
      String(i),
    );
  layout(graph);
  const { width = 0, height = 0 } = graph.graph() as { width?: number; height?: number };
  return {
    width,
    height,
    boxes: boxes.map((box) => {
      const { x, y } = graph.node(box.key) as unknown as Place;
      return { box, at: { x, y }, size: sizes.get(box.key)! };
    }),
    arrows: arrows.map((arrow, i) => {
      const edge = graph.edge(arrow.from, arrow.to, String(i)) as unknown as { points: readonly Place[] };
      return { arrow, places: edge.points };
    }),
  };
}

function sizeOf({ lines, says }: Box): Size {
  const wide = Math.max(...lines.map((line) => widthOf(line, 12)), widthOf(says, 11), 70);
  return { width: wide + 24, height: 30 + 15 * lines.length };
}

function Node({
  box: { key, kind, lines, says, isDoubtful },
  at,
  size,
  theme,
}: {
  readonly box: Box;
  readonly at: Place;
  readonly size: Size;
  readonly theme: Theme;
}): Picture {
  const colour = kind === 'fault' ? theme.entered : theme.ink;
  const top = at.y - size.height / 2;
  return (
    <g data-id={kind === 'fault' ? key.slice('fault '.length) : undefined} data-node={key}>
      <rect
        x={fixed(at.x - size.width / 2)}
        y={fixed(top)}
        width={fixed(size.width)}
        height={fixed(size.height)}
        rx={kind === 'fault' ? 6 : size.height / 2}
        fill={theme.paper}
        stroke={isDoubtful ? theme.alert : colour}
        stroke-width={isDoubtful ? 1.8 : 1.6}
        stroke-dasharray={isDoubtful ? '5 4' : 'none'}
      />
      {lines.map((line, i) => (
        <text key={i} x={fixed(at.x)} y={fixed(top + 19 + i * 15)} text-anchor="middle" fill={theme.ink}>
          {line}
        </text>
      ))}
      <text
        x={fixed(at.x)}
        y={fixed(top + size.height - 9)}
        text-anchor="middle"
        fill={isDoubtful ? theme.alert : theme.soft}
        font-size="11"
      >
        {says}
      </text>
    </g>
  );
}

function Way({
  arrow: { words, isDoubtful },
  places,
  theme,
}: {
  readonly arrow: Arrow;
  readonly places: readonly Place[];
  readonly theme: Theme;
}): Picture {
  const [last, before] = [places.at(-1)!, places.at(-2)!];
  const middle = places[Math.floor(places.length / 2)]!;
  const angle = Math.atan2(last.y - before.y, last.x - before.x);
  const barb = (turn: number): Place => ({
    x: last.x - 8 * Math.cos(angle + turn),
    y: last.y - 8 * Math.sin(angle + turn),
  });
  const told = wrapped(words, 118, 11, 2);
  return (
    <g>
      <path
        d={lineThrough(places)}
        stroke={theme.soft}
        stroke-width="1.4"
        stroke-dasharray={isDoubtful ? '5 4' : 'none'}
      />
      <path d={lineThrough([barb(0.45), last, barb(-0.45)])} stroke={theme.soft} stroke-width="1.4" />
      {words !== '' &&
        told.map((line, i) => (
          <Label
            key={i}
            at={{ x: middle.x, y: middle.y - 6 + (i - told.length + 1) * 12 }}
            text={line}
            anchor="middle"

            theme={theme}
          />
        ))}
    </g>
  );
}
