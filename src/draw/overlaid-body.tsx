// Two bodies over one another told apart by their lines: one solid, one a dashed outline round the whole; knows no record.
import type { View } from '../physics/pose-anchors.ts';
import type { Stand } from './figure-pose.ts';
import { shapesOf, type Camera } from './figure-shape.ts';
import { lineThrough } from './geometry.ts';
import { sideColour } from './overlaid.tsx';
import type { Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

/** Each part with paper over what lies behind it; bold and tinted where an entry holds it. */
export function SolidBody({
  stand: { pose, stature },
  view,
  camera,
  theme,
}: {
  readonly stand: Stand;
  readonly view: View;
  readonly camera: Camera;
  readonly theme: Theme;
}): Picture {
  const { gripEnd, clubHead } = pose.skeleton.joints;
  const stroke = sideColour('B', theme);
  return (
    <g data-side="B">
      {shapesOf(pose.skeleton, stature, camera).map(({ part, outlines }) => {
        const isHeld = pose.anchors[view][part] !== 'guessed';
        if (part === 'club')
          return (
            <path
              key={part}
              d={lineThrough([gripEnd, clubHead].map((at) => camera.see(at)))}
              stroke={stroke}
              stroke-width={isHeld ? 2.8 : 1.4}
              data-part="shaft"
            />
          );
        const d = outlines.join(' ');
        return (
          <g key={part} data-part={part}>
            <path
              d={d}
              stroke={stroke}
              stroke-width={isHeld ? 3.4 : 2}
              fill={theme.paper}
              paint-order="stroke"
            />
            <path d={d} fill={stroke} fill-opacity={isHeld ? 0.2 : 0.05} />
          </g>
        );
      })}
    </g>
  );
}

/** Thin, with dashes, round the whole body, so that the other one shows through; the club as a line. */
export function DashedBody({
  name,
  stand: { pose, stature },
  camera,
  theme,
}: {
  readonly name: string;
  readonly stand: Stand;
  readonly camera: Camera;
  readonly theme: Theme;
}): Picture {
  const d = shapesOf(pose.skeleton, stature, camera)
    .flatMap(({ part, outlines }) => (part === 'club' ? [] : outlines))
    .join(' ');
  const { gripEnd, clubHead } = pose.skeleton.joints;
  const style = {
    stroke: theme.ink,
    'stroke-width': 1.5,
    'stroke-dasharray': '5 4',
    'stroke-linecap': 'butt',
  } as const;
  return (
    <g data-side="A">
      <mask id={`${name}-outside`} maskUnits="userSpaceOnUse">
        <rect x="-200" y="-200" width="1000" height="1000" fill="white" />
        <path d={d} fill="black" />
      </mask>
      <path d={d} {...style} stroke-width="3" mask={`url(#${name}-outside)`} data-part="outline" />
      <path d={lineThrough([gripEnd, clubHead].map((at) => camera.see(at)))} {...style} data-part="shaft" />
    </g>
  );
}
