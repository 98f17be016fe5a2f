// A small arrow with the word for it: where the target is in one of a handout's small pictures, which a left-handed player sees the other way round.
import type { Analysis } from '../../analysis/result.ts';
import type { Quantity } from '../../registry/quantity.ts';
import { fixed, type Place } from '../geometry.ts';
import type { Picture } from '../picture.tsx';
import type { Theme } from '../theme.ts';
import { viewOf } from './figure-change.tsx';
import type { Shape } from './shape-of.ts';

type Way = 'up' | 'left' | 'right';

/** From above and from behind the target is up; from the front it is where the player's lead side is. */
export function wayToTarget(shape: Shape, { key }: Quantity, { subject }: Analysis): Way {
  if (shape === 'above' || (shape === 'figure' && viewOf(key) === 'down_the_line')) return 'up';
  return subject.student?.document.hand?.value === 'left' ? 'left' : 'right';
}

const length = 13;
const barb = 4;

/** Begins at its place where the target is up or on the left, and ends there where it is on the right. */
export function TargetMark({
  way,
  at,
  word,
  theme,
}: {
  readonly way: Way;
  readonly at: Place;
  readonly word: string;
  readonly theme: Theme;
}): Picture {
  const out = way === 'right' ? -1 : 1;
  const [x, y] = [fixed(at.x), fixed(at.y)];
  const arrow =
    way === 'up'
      ? `M ${fixed(at.x + barb)} ${y} v ${-length} m ${-barb} ${barb} l ${barb} ${-barb} l ${barb} ${barb}`
      : `M ${x} ${fixed(at.y - barb)} h ${out * length} M ${fixed(at.x + out * barb)} ${fixed(at.y - 2 * barb)} l ${-out * barb} ${barb} l ${out * barb} ${barb}`;
  const beside = way === 'up' ? 2 * barb + 4 : length + 4;
  return (
    <g data-part="target" data-way={way}>
      <path d={arrow} stroke={theme.soft} stroke-width="1.4" />
      <text
        x={fixed(at.x + out * beside)}
        y={y}
        text-anchor={out === 1 ? 'start' : 'end'}
        font-size="11"
        fill={theme.soft}
      >
        {word}
      </text>
    </g>
  );
}
