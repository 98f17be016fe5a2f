// Low point and divot as a small picture for a hover, seen from the front and to scale; draws what is known of them.
import { showValue } from '../measure/show.ts';
import type { Value } from '../model/value.ts';
import { BallOnGround } from './ball-on-ground.tsx';
import { lineThrough, type Place } from './geometry.ts';
import { card, HoverCard } from './hover-card.tsx';
import { othersOf, othersSaying, type HoverDrawn } from './hover-strike.tsx';
import { sayingOf, wordsOf } from './known.ts';
import { Label } from './label.tsx';
import { widthOf } from './lettering.ts';
import { lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';
import { knownOf, type CutProps } from './strike-front-rows.ts';
import { ArcLine, Cut, LowPoint, reach, type At } from './strike-front-shapes.tsx';

const name = 'hover-low-point';
/** Units of the picture for a metre, both ways. */
const scale = 440;
/** Where the ground below the ball is. */
const origin: Place = { x: card.width / 2, y: 46 };

export function HoverLowPoint({ analysis, id, theme }: HoverDrawn): Picture | undefined {
  const { registry, student } = analysis.subject;
  const known = knownOf(analysis);
  const { ahead, radius, inclination, attack } = known;
  const depth = within(known.depth);
  const [divot, expectedDivot] = [shownCut(known.divot), shownCut(known.expectedDivot)];
  const isDivot = id.startsWith('ground.');
  const main = isDivot ? divot.starts : ahead;
  if (main === undefined || Math.abs(main.value) > reach) return undefined;
  const target = student?.document.hand?.value === 'left' ? -1 : 1;
  const at: At = (x, up) => ({ x: origin.x + target * x * scale, y: origin.y - up * scale });
  const others = othersOf(analysis, main.id);
  const shown = (value: Value): string => {
    const quantity = registry.find(value.id);
    return quantity ? showValue(quantity, value.value) : '';
  };
  const sayings = [ahead, depth, divot.starts, divot.length, divot.depth].flatMap((value) =>
    value ? [sayingOf(value, registry)] : [],
  );
  const text = `${isDivot ? 'divot starts' : 'low point'} ${shown(main)}`;
  const half = widthOf(text, 11) / 2;
  const [left, right] = [8, card.width - 8];
  return (
    <HoverCard
      name={name}
      title={isDivot ? 'The divot from the front' : 'The low point from the front'}
      words={wordsOf([...sayings, ...othersSaying(analysis, others)], [])}
      theme={theme}
    >
      <path
        d={lineThrough([at(-reach, 0), at(reach, 0)])}
        stroke={theme.ink}
        stroke-width="1.2"
        data-part="ground"
      />
      {isDivot && others && <Cut {...expectedDivot} at={at} theme={theme} />}
      {divot.starts && <Cut {...divot} at={at} theme={theme} />}
      {ahead && radius && inclination && (
        <ArcLine {...{ ahead, depth, radius, inclination, attack, at, theme }} />
      )}
      {others && !isDivot && Math.abs(others.value) <= reach && (
        <path
          d={lineThrough([at(others.value, 0), { x: at(others.value, 0).x, y: origin.y + 34 }])}
          {...lineStyle('expected', theme)}
          data-part="others"
        />
      )}
      {ahead && !isDivot && <LowPoint {...{ ahead, depth, at, theme }} text={undefined} />}
      <Label
        at={{ x: Math.max(half + 6, Math.min(card.width - half - 6, at(main.value, 0).x)), y: origin.y + 45 }}
        text={text}
        anchor="middle"
        tone="ink"
        theme={theme}
      />
      <BallOnGround at={origin} scale={scale} theme={theme} />
      <Label
        at={{ x: target === 1 ? right : left, y: 16 }}
        text={target === 1 ? 'target →' : '← target'}
        anchor={target === 1 ? 'end' : 'start'}
        theme={theme}
      />
      <Scale x={target === 1 ? right : left} anchor={target === 1 ? 'end' : 'start'} theme={theme} />
      {others && (
        <Label
          at={{ x: target === 1 ? left : right, y: card.height - 7 }}
          text={`others ${shown(others)}`}
          anchor={target === 1 ? 'start' : 'end'}
          tone="expected"
          theme={theme}
        />
      )}
    </HoverCard>
  );
}

/** A bar of 10 cm in the corner, with its words toward the middle. */
function Scale({
  x,
  anchor,
  theme,
}: {
  readonly x: number;
  readonly anchor: 'start' | 'end';
  readonly theme: Theme;
}): Picture {
  const [inward, y] = [anchor === 'end' ? -1 : 1, card.height - 10];
  const end = x + inward * 0.1 * scale;
  return (
    <g>
      <path
        d={lineThrough([
          { x, y: y - 4 },
          { x, y },
          { x: end, y },
          { x: end, y: y - 4 },
        ])}
        stroke={theme.soft}
        data-part="scale"
      />
      <Label at={{ x: end + inward * 6, y: y + 3 }} text="10 cm" anchor={anchor} theme={theme} />
    </g>
  );
}

/** Without a length or a depth that no divot has, since it would leave the picture. */
function shownCut({ starts, length, depth }: CutProps): CutProps {
  return { starts: within(starts), length: within(length), depth: within(depth) };
}

function within(value: Value | undefined): Value | undefined {
  return value && Math.abs(value.value) <= 2 * reach ? value : undefined;
}
