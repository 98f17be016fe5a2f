// The shots of a record as `derive` prints them, in rows of text or as JSON.
import pc from 'picocolors';
import type { Subject } from '../checks/subject.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import { showValue } from '../measure/show.ts';
import type { Ellipse, ShotSummary } from '../model/shots.ts';
import type { Registry } from '../registry/registry.ts';

export interface ShotsJson {
  readonly count: number;
  /** Those that do not lie far out, on which all figures rest. */
  readonly used: number;
  readonly quantities: Readonly<
    Record<
      string,
      {
        readonly count: number;
        readonly mean: number;
        readonly sd: number | null;
        readonly u: number | null;
        readonly unit: string;
      }
    >
  >;
  /** Covariance of each pair of quantities that shots say both of, in the product of the units shown. */
  readonly covariance: readonly { readonly of: readonly [string, string]; readonly value: number }[];
  /** Lengths in m, the direction in deg right of the target line. */
  readonly ellipse: {
    readonly ahead: number;
    readonly right: number;
    readonly semiAxes: readonly [number, number];
    readonly semiAxes95: readonly [number, number];
    readonly direction: number;
  } | null;
  /** Rows of the file below its first line, or places in the list, from 1. */
  readonly outliers: readonly number[];
  readonly typical: number | null;
}

export function shotsJson({ shots: of, registry }: Subject): ShotsJson | undefined {
  const summary = of?.summary;
  if (of === undefined || summary === undefined) return undefined;
  const row = (place: number): number => of.shots[place]?.row ?? place + 1;
  return {
    count: summary.count,
    used: summary.used,
    quantities: Object.fromEntries(
      statisticsOf(summary, registry).map(({ quantity: { id, unit }, statistic: { count, mean, sd, u } }) => [
        id,
        {
          count,
          mean: tidy(fromSI(mean, unit)),
          sd: sd === undefined ? null : tidy(differenceFromSI(sd, unit)),
          u: u === undefined ? null : tidy(differenceFromSI(u, unit)),
          unit,
        },
      ]),
    ),
    covariance: covariancesOf(summary, registry),
    ellipse: summary.ellipse === undefined ? null : ellipseJson(summary.ellipse),
    outliers: summary.outliers.map(row),
    typical: summary.typical === undefined ? null : row(summary.typical),
  };
}

function covariancesOf(summary: ShotSummary, registry: Registry): ShotsJson['covariance'] {
  const known = statisticsOf(summary, registry).map(({ quantity }) => quantity);
  return known.flatMap((a, i) =>
    known.slice(i + 1).flatMap((b) => {
      const value = summary.covariance(a.id, b.id);
      if (value === undefined) return [];
      const scale = differenceFromSI(1, a.unit) * differenceFromSI(1, b.unit);
      return [{ of: [a.id, b.id] as const, value: tidy(value * scale) }];
    }),
  );
}

/** One row for each quantity, then where they come down, then what was left out. */
export function shotRows({ shots: of, registry }: Subject): readonly string[] {
  const summary = of?.summary;
  if (of === undefined || summary === undefined) return [];
  const rows = statisticsOf(summary, registry).map(({ quantity, statistic: { mean, sd, count } }) => ({
    id: quantity.id,
    shown: showValue(quantity, mean, sd),
    count,
  }));
  const wide = Math.max(0, ...rows.map(({ id }) => id.length));
  const shownWide = Math.max(0, ...rows.map(({ shown }) => shown.length));
  const { ellipse, outliers, typical } = summary;
  const row = (place: number): number => of.shots[place]?.row ?? place + 1;
  return [
    ...rows.map(
      ({ id, shown, count }) =>
        `  ${id.padEnd(wide)}  ${shown.padEnd(shownWide)}  ${pc.dim(`mean and spread of ${count}`)}`,
    ),
    ...(ellipse === undefined ? [] : [`  ${ellipseWords(ellipse)}`]),
    ...(outliers.length === 0 ? [] : [`  far from the others and left out: ${outliers.map(row).join(', ')}`]),
    ...(typical === undefined ? [] : [`  typical: shot ${row(typical)}`]),
  ];
}

function ellipseWords({ long, short, direction, factor95 }: Ellipse): string {
  const metres = (length: number): string => `${length.toFixed(1)} m`;
  const degrees = (direction * 180) / Math.PI;
  const turned = `${Math.abs(degrees).toFixed(0)} deg ${degrees < 0 ? 'left' : 'right'} of the target line`;
  return (
    `ellipse of the landings: half axes ${metres(long)} and ${metres(short)} (1 sigma), ` +
    `${metres(long * factor95)} and ${metres(short * factor95)} (95 %), the long one ${turned}`
  );
}

function ellipseJson({ ahead, right, long, short, direction, factor95 }: Ellipse): ShotsJson['ellipse'] {
  return {
    ahead: tidy(ahead),
    right: tidy(right),
    semiAxes: [tidy(long), tidy(short)],
    semiAxes95: [tidy(long * factor95), tidy(short * factor95)],
    direction: tidy((direction * 180) / Math.PI),
  };
}

function statisticsOf({ statistics }: ShotSummary, registry: Registry) {
  return [...statistics.values()].flatMap((statistic) => {
    const quantity = registry.find(statistic.id);
    return quantity === undefined ? [] : [{ quantity, statistic }];
  });
}

/** Twelve significant digits: all that is meant, without the dust of binary fractions. */
export function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
