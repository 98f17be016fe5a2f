// The shots of a record in words: the hover on them, and the few words behind their key; computes nothing.
import type { Analysis } from '../analysis/result.ts';
import type { ShotSummary } from '../model/shots.ts';
import { showValue } from '../measure/show.ts';
import type { Registry } from '../registry/registry.ts';
import type { Remark } from './hover.ts';
import { holds } from './places.ts';
import { list, short } from './words.ts';

const inHint = ['flight.carry', 'flight.finish'];
const inHover = ['flight.carry', 'flight.start', 'flight.finish', 'flight.ball_speed', 'flight.spin'];

/** "12 shots (1 far out): carry 168 m ± 6 m, finish 3 m right ± 9 m"; the spread is that of one shot, those far out left aside. */
export function shotsInShort({ subject }: Analysis): string | undefined {
  const summary = subject.shots?.summary;
  if (summary === undefined) return undefined;
  const said = inHint.flatMap((id) => {
    const statistic = summary.statistics.get(id);
    if (statistic === undefined) return [];
    const name = id.slice('flight.'.length);
    return [`${name} ${short({ id, value: statistic.mean, u: statistic.sd ?? null }, subject.registry)}`];
  });
  const out = summary.outliers.length === 0 ? '' : ` (${summary.outliers.length} far out)`;
  return `${countOf(summary.count)}${out}${said.length === 0 ? '' : `: ${said.join(', ')}`}`;
}

export function hoverOnShots(analysis: Analysis, offset: number): Remark | undefined {
  const { document } = analysis;
  if (document.kind !== 'swing' || analysis.subject.shots === undefined) return undefined;
  const key = document.outline.find(({ name }) => name === 'shots')?.nameSpan;
  const span = [key, document.shotsFile?.span].find((place) => place !== undefined && holds(place, offset));
  return span === undefined ? undefined : { span, lines: shotLines(analysis) };
}

/** How many, mean and spread of each, where they come down, which lie far out. */
export function shotLines({ subject }: Analysis): readonly string[] {
  const { summary, shots = [] } = subject.shots ?? {};
  if (summary === undefined) return ['No shot can be read.'];
  const statistics = inHover.flatMap((id) => {
    const [quantity, statistic] = [subject.registry.find(id), summary.statistics.get(id)];
    if (quantity === undefined || statistic === undefined) return [];
    return [`${quantity.title}: ${showValue(quantity, statistic.mean, statistic.sd)}`];
  });
  const typical = summary.typical === undefined ? undefined : shots[summary.typical];
  return [
    `**${countOf(summary.count)}**${summary.used < 2 ? '' : ', each with the standard deviation of one shot'}`,
    ...statistics,
    ...landing(summary, subject.registry),
    ...outliers(summary, shots),
    ...(typical === undefined ? [] : [`Typical: shot ${typical.row}.`]),
  ];
}

/** "19 in 20 come down within 31 m × 12 m (half axes), the long one 5 deg right." */
function landing({ ellipse }: ShotSummary, registry: Registry): string[] {
  const [carry, start] = [registry.find('flight.carry'), registry.find('flight.start')];
  if (ellipse === undefined || carry === undefined || start === undefined) return [];
  const { long, short: across, factor95, direction } = ellipse;
  const axes = [long, across].map((axis) => showValue(carry, axis * factor95));
  const turned = showValue({ ...start, decimals: 0 }, direction);
  return [
    `19 in 20 such shots come down in an ellipse of half axes ${axes.join(' and ')}, the long one pointing ${turned} of the target line.`,
  ];
}

function outliers({ outliers: places }: ShotSummary, shots: readonly { readonly row: number }[]): string[] {
  if (places.length === 0) return [];
  const rows = places.map((place) => String(shots[place]?.row ?? place + 1));
  return [`Far from the others and left out: shot${places.length === 1 ? '' : 's'} ${list(rows, 8)}.`];
}

function countOf(count: number): string {
  return `${count} shot${count === 1 ? '' : 's'}`;
}
