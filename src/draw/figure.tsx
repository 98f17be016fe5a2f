// Draws a body from its shapes, each part as sure as what holds it; knows no view and no checkpoint.
import { holderOf, type Anchor, type Part, type View } from '../physics/pose-anchors.ts';
import type { Stand } from './figure-pose.ts';
import { shapesOf, type Camera, type Shape } from './figure-shape.ts';
import { fixed, lineThrough } from './geometry.ts';
import { lineStyle, type Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export interface FigureProps {
  readonly stand: Stand;
  readonly view: View;
  readonly camera: Camera;
  readonly theme: Theme;
}

export function Figure({ stand, view, camera, theme }: FigureProps): Picture {
  const { pose, stature, values } = stand;
  const anchors = pose.anchors[view];
  const misfits = new Set(pose.misfits.map(({ key }) => key));
  const keys = [...values.keys()].filter((key) => !misfits.has(key));
  const idOf = (part: Part): string | undefined => {
    const key = holderOf(part, view, keys);
    return key && values.get(key)?.id;
  };
  return (
    <g data-part="figure">
      {shapesOf(pose.skeleton, stature, camera).map((shape) =>
        shape.part === 'club' ? (
          <Club
            key="club"
            {...{ stand, camera, theme }}
            anchor={anchors.club}
            id={idOf('club')}
            view={view}
          />
        ) : (
          <Body key={shape.part} {...{ shape, theme }} anchor={anchors[shape.part]} id={idOf(shape.part)} />
        ),
      )}
    </g>
  );
}

const tints: Readonly<Record<Anchor, number>> = { entered: 0.16, expected: 0.1, guessed: 0.06 };

function colourOf(anchor: Anchor, theme: Theme): string {
  return anchor === 'guessed' ? theme.soft : theme[anchor];
}

/**
 * Outlines first and paper over them, so that only the rim round all pieces of a part is left; then the tint, as one sheet.
 */
function Body({
  shape: { part, outlines, hints },
  anchor,
  id,
  theme,
}: {
  readonly shape: Shape;
  readonly anchor: Anchor;
  readonly id: string | undefined;
  readonly theme: Theme;
}): Picture {
  const style = lineStyle(anchor, theme);
  const d = outlines.join(' ');
  return (
    <g data-part={part} data-anchor={anchor} data-id={id}>
      <path d={d} {...style} stroke-width={anchor === 'entered' ? 3 : 2.4} fill={theme.paper} />
      <path d={d} fill={theme.paper} />
      <path d={d} fill={colourOf(anchor, theme)} fill-opacity={tints[anchor]} />
      {hints.map((hint, i) => (
        <path key={i} d={hint} {...style} stroke-width="0.9" stroke-opacity="0.55" />
      ))}
    </g>
  );
}

/** A line from the end of the grip to the head, the head a short bar toward its toe. */
function Club({
  stand,
  camera,
  anchor,
  id,
  view,
  theme,
}: {
  readonly stand: Stand;
  readonly camera: Camera;
  readonly anchor: Anchor;
  readonly id: string | undefined;
  readonly view: View;
  readonly theme: Theme;
}): Picture {
  const { joints, clubToe } = stand.pose.skeleton;
  const [end, grip, head] = [joints.gripEnd, joints.grip, joints.clubHead].map((at) => camera.see(at));
  const toe = camera.turn(clubToe);
  const style = lineStyle(anchor, theme);
  const angle =
    view === 'face_on'
      ? Math.atan2(grip!.x - head!.x, head!.y - grip!.y)
      : Math.atan2(head!.y - grip!.y, head!.x - grip!.x);
  return (
    <g data-part="club" data-anchor={anchor} data-id={id}>
      <path
        d={lineThrough([end!, head!])}
        {...style}
        data-part="shaft"
        data-angle={fixed((angle * 180) / Math.PI)}
      />
      <path
        d={lineThrough([
          { x: head!.x - 0.035 * toe.x, y: head!.y - 0.035 * toe.y },
          { x: head!.x + 0.035 * toe.x, y: head!.y + 0.035 * toe.y },
        ])}
        stroke={colourOf(anchor, theme)}
        stroke-width="5.5"
        data-part="club-head"
      />
    </g>
  );
}
