// Writes shots as a plain table: quantities only, so that no remark, time or name of a file comes along.
import Papa from 'papaparse';
import { printMeasure } from '../measure/print.ts';
import type { Registry } from '../registry/registry.ts';
import type { FileShot } from './shots-file.ts';

/**
 * One line a shot that could be read, each number with unit, uncertainty and method, so that no setting is needed to read it.
 * The columns are named by quantity. `named` spells ids, and the methods and directions of numbers.
 */
export function printShots(
  shots: readonly FileShot[],
  registry: Registry,
  named: (id: string) => string,
): string {
  const ids = [...new Set(shots.flatMap(({ measures }) => [...measures.keys()]))];
  const rows = shots.map(({ measures }) =>
    ids.map((id) => {
      const [quantity, measure] = [registry.find(id), measures.get(id)];
      return quantity === undefined || measure === undefined ? '' : named(printMeasure(measure, quantity));
    }),
  );
  return `${Papa.unparse([ids.map(named), ...rows], { newline: '\n' })}\n`;
}
