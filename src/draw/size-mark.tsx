// A difference in standard uncertainties as a small mark on a scale, beside what measuring twice explains; the words stand in the cell next to it.
import { wide95 } from '../judgement/changed.ts';
import type { Difference } from '../analysis/comparison.ts';
import { fixed } from './geometry.ts';
import { EdgeArrow } from './off-scale.tsx';
import type { Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

const [width, height] = [132, 20];
/** What lies further is drawn at the end, with an arrow. */
const farthest = 8;

export function SizeMark({
  difference: { value, u, size },
  theme,
}: {
  readonly difference: Difference;
  readonly theme: Theme;
}): Picture | null {
  if (value === undefined || u === undefined) return null;
  const [middle, y] = [width / 2, height / 2];
  const unit = (width / 2 - 8) / farthest;
  const times = value / u;
  const x = middle + unit * Math.max(-farthest, Math.min(farthest, times));
  const colour = size === 'larger' ? theme.entered : theme.soft;
  const isBeyond = Math.abs(times) > farthest;
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      fill="none"
      aria-hidden="true"
      data-times={fixed(times)}
    >
      <rect
        x={fixed(middle - wide95 * unit)}
        y="3"
        width={fixed(2 * wide95 * unit)}
        height={height - 6}
        fill={theme.faint}
        fill-opacity="0.55"
        data-part="band"
      />
      <path d={`M 4 ${y} H ${width - 4}`} stroke={theme.faint} />
      <path d={`M ${middle} 2 V ${height - 2}`} stroke={theme.soft} />
      <path d={`M ${middle} ${y} H ${fixed(x)}`} stroke={colour} stroke-width={size === 'larger' ? 3 : 1.6} />
      {isBeyond ? (
        <EdgeArrow at={{ x, y }} way={times > 0 ? 'right' : 'left'} colour={colour} />
      ) : (
        <circle
          cx={fixed(x)}
          cy={y}
          r="4"
          fill={size === 'larger' ? colour : theme.paper}
          stroke={colour}
          stroke-width="1.6"
          data-part="mark"
        />
      )}
    </svg>
  );
}
