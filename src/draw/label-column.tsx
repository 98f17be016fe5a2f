// Labels in a column beside a picture, each joined to its place by a fine line, none over another; knows no quantity.
import { fixed, type Place } from './geometry.ts';
import { fitted } from './lettering.ts';
import type { Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export interface Label {
  readonly name: string;
  readonly number: string;
  /** The quantity's id, for whoever wants to go to its entry. */
  readonly id?: string | undefined;
  readonly kind: 'entered' | 'expected';
  /** What is taught of it, and whether that is left. */
  /** Where it stands in what is taught: "inside 48..58 %". */
  readonly taught?: string | undefined;
  /** What it stands at on the picture; without one there is no line. */
  readonly at: Place | undefined;
}

const lineHeight = 16;
const gap = 5;

function heightOf({ taught }: Label): number {
  return (taught ? 3 : 2) * lineHeight - 4;
}

/** Room for the longest of usual numbers. */
export const labelsWidth = 212;

/** Height that the labels take from the top, were they set close. */
export function labelsHeight(labels: readonly Label[]): number {
  return labels.reduce((sum, label) => sum + heightOf(label) + gap, 0);
}

/** Top of each label: as near to its place as the others allow, in the order of the places; between `top` and `bottom`. */
export function placedLabels(
  labels: readonly Label[],
  top: number,
  bottom: number,
): readonly { readonly label: Label; readonly y: number }[] {
  const sorted = [...labels].sort((a, b) => (a.at?.y ?? Infinity) - (b.at?.y ?? Infinity));
  const placed: { label: Label; y: number }[] = [];
  let free = top;
  for (const label of sorted) {
    const wanted = label.at === undefined ? free : label.at.y - heightOf(label) / 2;
    const y = Math.max(free, Math.min(wanted, bottom - heightOf(label)));
    placed.push({ label, y });
    free = y + heightOf(label) + gap;
  }
  // From the bottom up again, where the last ones did not find room.
  let lowest = bottom;
  for (const one of placed.toReversed()) {
    one.y = Math.min(one.y, lowest - heightOf(one.label));
    lowest = one.y - gap;
  }
  return placed;
}

export function LabelColumn({
  labels,
  x,
  top,
  bottom,
  theme,
}: {
  readonly labels: readonly Label[];
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly theme: Theme;
}): Picture {
  return (
    <g data-part="labels">
      {placedLabels(labels, top, Math.max(bottom, top + labelsHeight(labels))).map(({ label, y }, i) => (
        <g key={i} data-id={label.id} data-label={label.name}>
          {label.at && (
            <path
              d={`M ${fixed(label.at.x)} ${fixed(label.at.y)} L ${x - 34} ${fixed(label.at.y)} L ${x - 8} ${fixed(y + 12)}`}
              stroke={theme.faint}
              stroke-width="0.9"
            />
          )}
          <text x={x} y={fixed(y + 10)} fill={theme.soft} font-size="12">
            {fitted(label.name, labelsWidth, 12)}
          </text>
          <text x={x} y={fixed(y + 10 + lineHeight)} fill={theme.ink} font-size="13">
            {fitted(label.number, labelsWidth, 13)}
          </text>
          {label.taught && (
            <text x={x} y={fixed(y + 10 + 2 * lineHeight)} fill={theme.taught} font-size="12">
              {label.taught}
            </text>
          )}
        </g>
      ))}
    </g>
  );
}
