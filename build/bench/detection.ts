// How often a planted error is found and named, and how often a clean record raises a warning; prints a report by quantity.
import { agree } from '../../src/model/agreement.ts';
import { normalBelow } from '../../src/model/quantiles.ts';
import { drawRecords, generatorOf, withError } from './records.ts';

const count = 500;
const leastRedundancy = 0.5;

const clean = drawRecords(count, 20261125).map((drawn) => ({ drawn, agreement: agree(drawn.situation) }));
const warned = clean.filter(({ agreement }) => agreement.conflicts.length > 0);

interface Row {
  planted: number;
  named: number;
  warned: number;
  beside: number;
  ceiling: number;
}

const targets = drawRecords(count, 52).flatMap(({ situation }) => {
  const agreement = agree(situation);
  const open = agreement.entries.filter(({ redundancy }) => redundancy >= leastRedundancy);
  return open.length > 0 ? [{ situation, open, threshold: agreement.threshold }] : [];
});

/** By quantity, the sum of all under "all". */
function plant(size: number): ReadonlyMap<string, Row> {
  const random = generatorOf(4711);
  const rows = new Map<string, Row>();
  for (const { situation, open, threshold } of targets) {
    const target = open[Math.floor(random.uniform() * open.length)]!;
    const { conflicts } = agree(withError(situation, target.id, random.uniform() < 0.5 ? size : -size));
    const isNamed = conflicts.some(({ id }) => id === target.id);
    for (const key of ['all', target.id]) {
      const row = rows.get(key) ?? { planted: 0, named: 0, warned: 0, beside: 0, ceiling: 0 };
      row.planted += 1;
      row.named += isNamed ? 1 : 0;
      row.warned += conflicts.length > 0 ? 1 : 0;
      row.beside += isNamed && conflicts.length > 1 ? 1 : 0;
      // With r the redundancy the normalised residual is normal about size · √r; whoever is above the threshold is named.
      row.ceiling += normalBelow(size * Math.sqrt(target.redundancy) - threshold);
      rows.set(key, row);
    }
  }
  return rows;
}

const percent = (part: number, whole: number): string =>
  `${((100 * part) / Math.max(1, whole)).toFixed(1)} %`;
const below = (p: number): string => percent(clean.filter(({ agreement }) => agreement.p < p).length, count);
const lines = [
  `${count} clean records: ${warned.length} raise a warning (${percent(warned.length, count)}); wanted: at most 1 %`,
  `p of the clean records: below 0.05 ${below(0.05)}, below 0.5 ${below(0.5)}`,
  '',
  `One error in an entry of redundancy ${leastRedundancy} or more; wanted: named in 90 % at 5 standard uncertainties.`,
  'The ceiling is what any test of one entry can reach at this rate of false alarms: P(N(size · √r, 1) > threshold).',
];
for (const size of [4, 5, 6, 7, 8, 10]) {
  const { planted, named, warned: seen, beside, ceiling } = plant(size).get('all')!;
  const figures = `named ${percent(named, planted)} (ceiling ${percent(ceiling, planted)}), warned at all ${percent(seen, planted)}`;
  lines.push(
    `${String(size).padStart(3)} u in ${planted} records: ${figures}, others named beside it ${percent(beside, planted)}`,
  );
}
lines.push('', `${'at 5 u'.padEnd(38)}planted   named  warned ceiling`);
for (const [id, row] of [...plant(5)].sort((a, b) => a[0].localeCompare(b[0]))) {
  const cells = [row.named, row.warned, row.ceiling].map((part) => percent(part, row.planted).padStart(9));
  lines.push(`${id.padEnd(38)}${String(row.planted).padStart(7)}${cells.join('')}`);
}
console.log(lines.join('\n'));
