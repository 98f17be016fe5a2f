// Path, face and attack as small pictures for a hover: what is known of the strike's angles, and what the other entries expect.
import type { Analysis } from '../analysis/result.ts';
import { showValue } from '../measure/show.ts';
import type { Value } from '../model/value.ts';
import { HoverAngles, type AngleLine } from './hover-angles.tsx';
import { expectedOf, kindOf, sayingOf, valueOf, wordsOf, type Saying } from './known.ts';
import type { Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export interface HoverDrawn {
  readonly analysis: Analysis;
  /** The quantity that the hover is about. */
  readonly id: string;
  readonly theme: Theme;
}

/** From above, the target on the right: right of it is toward the lower edge. */
export function HoverDirections({ analysis, id, theme }: HoverDrawn): Picture | undefined {
  const [path, face, between] = ['delivery.path', 'delivery.face', 'delivery.face_to_path'].map((one) =>
    valueOf(analysis, one),
  );
  const isBetween = id === 'delivery.face_to_path';
  const own = isBetween ? between : valueOf(analysis, id);
  if (own === undefined) return undefined;
  const others = othersOf(analysis, id);
  const pair = isBetween && path && face ? { path, face } : undefined;
  if (isBetween && pair === undefined) return undefined;
  const lines: readonly AngleLine[] = [
    ...(path ? [lineOf(analysis, path, 'path', 'arrow', id)] : []),
    ...(face ? [lineOf(analysis, face, 'face', 'bar', id)] : []),
    ...(others && !isBetween ? [expectedLine(analysis, others)] : []),
  ];
  return HoverAngles({
    name: 'hover-directions',
    title: 'Path and face from above',
    words: wordsOf(
      [path, face, between]
        .flatMap((value) => (value ? [sayingOf(value, analysis.subject.registry)] : []))
        .concat(othersSaying(analysis, others)),
      [],
    ),
    lines,
    between: pair && {
      id,
      from: pair.path.value,
      to: pair.face.value,
      text: 'face to path',
      kind: kindOf(own),
    },
    target: 1,
    seen: 'from above',
    theme,
  });
}

/** From the front, as a camera facing the player sees it. */
export function HoverAttack({ analysis, id, theme }: HoverDrawn): Picture | undefined {
  const attack = valueOf(analysis, id);
  if (attack === undefined) return undefined;
  const others = othersOf(analysis, id);
  const hand = analysis.subject.student?.document.hand?.value;
  return HoverAngles({
    name: 'hover-attack',
    title: 'Attack angle from the front',
    words: wordsOf([sayingOf(attack, analysis.subject.registry), ...othersSaying(analysis, others)], []),
    // Up is toward the upper edge.
    lines: [
      upward(lineOf(analysis, attack, 'attack', 'arrow', id)),
      ...(others ? [upward(expectedLine(analysis, others))] : []),
    ],
    between: undefined,
    target: hand === 'left' ? -1 : 1,
    seen: 'from the front',
    theme,
  });
}

function upward(line: AngleLine): AngleLine {
  return { ...line, angle: -line.angle };
}

function lineOf(
  { subject }: Analysis,
  value: Value,
  name: string,
  shape: AngleLine['shape'],
  own: string,
): AngleLine {
  const quantity = subject.registry.find(value.id);
  const number = quantity ? showValue(quantity, value.value) : '';
  const role = value.id === own ? 'own' : 'beside';
  return {
    id: value.id,
    angle: value.value,
    u: value.u,
    kind: kindOf(value),
    text: `${name} ${number}`,
    shape,
    role,
  };
}

export function othersOf(analysis: Analysis, id: string): Value | undefined {
  return valueOf(analysis, id)?.kind === 'entered' ? expectedOf(analysis, id) : undefined;
}

/** What the picture says of an expectation to who cannot see it. */
export function othersSaying({ subject }: Analysis, others: Value | undefined): readonly Saying[] {
  if (others === undefined) return [];
  const { name, number } = sayingOf(others, subject.registry);
  return [{ name: `${name}, by the other entries`, number }];
}

function expectedLine({ subject }: Analysis, value: Value): AngleLine {
  const quantity = subject.registry.find(value.id);
  const number = quantity ? showValue(quantity, value.value) : '';
  return {
    id: value.id,
    angle: value.value,
    u: null,
    kind: 'expected',
    text: `others ${number}`,
    shape: 'arrow',
    role: 'expectation',
  };
}
