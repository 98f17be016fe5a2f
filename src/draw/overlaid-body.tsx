// Two bodies over one another told apart by their lines: one solid, one a dashed outline round the whole; knows no record.
import type { View } from '../physics/pose-anchors.ts';
import type { Stand } from './figure-pose.ts';
import { shapesOf, type Camera } from './figure-shape.ts';
import { lineThrough } from './geometry.ts';
import { sideColour } from './overlaid.tsx';
import { lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

/** Each part with paper over what lies behind it; bold and tinted where an entry holds it, a dotted ghost where nothing does. */
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
        const anchor = isHeld ? 'held' : 'guessed';
        const ghost = isHeld ? {} : { ...lineStyle('guessed', theme), stroke };
        if (part === 'club')
          return (
            <path
              key={part}
              d={lineThrough([gripEnd, clubHead].map((at) => camera.see(at)))}
              stroke={stroke}
              stroke-width="2.8"
              {...ghost}
              data-part="shaft"
              data-anchor={anchor}
            />
          );
        const d = outlines.join(' ');
        return (
          <g key={part} data-part={part} data-anchor={anchor}>
            <path
              d={d}
              stroke={stroke}
              stroke-width="3.4"
              {...ghost}
              {...(isHeld ? {} : { 'stroke-width': 2.4 })}
              fill={theme.paper}
            />
            <path d={d} fill={theme.paper} />
            {isHeld && <path d={d} fill={stroke} fill-opacity="0.2" />}
          </g>
        );
      })}
    </g>
  );
}

/** Thin, with dashes, round the whole body, so that the other one shows through; paler dots round what no entry holds; the club as a line. */
export function DashedBody({
  name,
  stand: { pose, stature },
  view,
  camera,
  theme,
}: {
  readonly name: string;
  readonly stand: Stand;
  readonly view: View;
  readonly camera: Camera;
  readonly theme: Theme;
}): Picture {
  const anchors = pose.anchors[view];
  const shapes = shapesOf(pose.skeleton, stature, camera).filter(({ part }) => part !== 'club');
  const outlineOf = (which: typeof shapes): string => which.flatMap(({ outlines }) => outlines).join(' ');
  const held = shapes.filter(({ part }) => anchors[part] !== 'guessed');
  const guessed = shapes.filter(({ part }) => anchors[part] === 'guessed');
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
        <path d={outlineOf(shapes)} fill="black" />
      </mask>
      <g mask={`url(#${name}-outside)`}>
        {guessed.length > 0 && (
          <path
            d={outlineOf(guessed)}
            {...lineStyle('guessed', theme)}
            stroke-width="2.4"
            data-part="outline"
            data-anchor="guessed"
          />
        )}
        {held.length > 0 && (
          <path d={outlineOf(held)} {...style} stroke-width="3" data-part="outline" data-anchor="held" />
        )}
      </g>
      <path
        d={lineThrough([gripEnd, clubHead].map((at) => camera.see(at)))}
        {...(anchors.club === 'guessed' ? lineStyle('guessed', theme) : style)}
        data-part="shaft"
        data-anchor={anchors.club === 'guessed' ? 'guessed' : 'held'}
      />
    </g>
  );
}
