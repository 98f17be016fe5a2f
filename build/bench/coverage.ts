// How often the linear 95 % intervals hold the truth of generated records, by quantity; prints a report.
import { agree } from '../../src/model/agreement.ts';
import { nonlinear } from '../../src/model/drawn-interval.ts';
import { explainQuantity } from '../../src/model/explain.ts';
import { drawRecords } from './records.ts';

const count = 1000;
const rows = new Map<string, { shown: number; held: number }>();
for (const { situation, truth } of drawRecords(count, 81)) {
  const entered = new Set(situation.observations.keys());
  for (const [id, { value, u }] of agree(situation).posterior) {
    const key = entered.has(id) ? 'entered' : id;
    const isHeld = Math.abs(value - truth.get(id)!) <= 1.959964 * u;
    if (nonlinear.has(id) && !entered.has(id)) {
      const { min, max } = explainQuantity(situation, id)!.interval;
      const name = `${id} by draws`;
      const row = rows.get(name) ?? { shown: 0, held: 0 };
      const isDrawn = truth.get(id)! >= min && truth.get(id)! <= max;
      rows.set(name, { shown: row.shown + 1, held: row.held + (isDrawn ? 1 : 0) });
    }
    for (const name of [key, 'all']) {
      const row = rows.get(name) ?? { shown: 0, held: 0 };
      rows.set(name, { shown: row.shown + 1, held: row.held + (isHeld ? 1 : 0) });
    }
  }
}
console.log(
  `95 % intervals of ${count} records; wanted: 93 to 97 %, give or take what so few draws allow (two standard errors)`,
);
for (const [id, { shown, held }] of [...rows].sort((a, b) => a[0].localeCompare(b[0]))) {
  const share = held / shown;
  const slack = 2 * Math.sqrt((0.95 * 0.05) / shown);
  const isFine = share > 0.93 - slack && share < 0.97 + slack;
  console.log(
    `${id.padEnd(40)}${String(shown).padStart(6)}${(100 * share).toFixed(1).padStart(7)} %${isFine ? '' : '  outside'}`,
  );
}
