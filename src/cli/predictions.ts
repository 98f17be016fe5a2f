// The `predictions` command: how good the predictions of a folder have been, in all, by quantity and by origin, as text or JSON.
import { jsonText } from './formats/json-text.ts';
import pc from 'picocolors';
import {
  leanWords,
  spreadWords,
  tallyInShort,
  tallyWords,
  togetherWords,
  trustWords,
  untestedWords,
} from '../analysis/prediction-words.ts';
import { predictionsIn, type FolderPredictions } from '../analysis/predictions.ts';
import type { QuantityTally, Tally } from '../judgement/predictions.ts';
import { differenceFromSI } from '../measure/units.ts';
import { toUri } from '../disk/files.ts';
import { practiceAt } from './practice.ts';
import { tidy } from './shots.ts';

/** Prints how good the predictions at or below `path` have been; 2 where something there cannot be read. */
export async function predictions(
  path: string,
  format: 'text' | 'json',
  signal: AbortSignal,
): Promise<number> {
  const practice = await practiceAt(path, signal);
  if (practice === undefined) return 2;
  const found = await predictionsIn(toUri(path), practice);
  process.stdout.write(format === 'json' ? json(found) : text(found));
  return 0;
}

function text(found: FolderPredictions): string {
  const { all, byQuantity, byOrigin, byFollowed } = found.record;
  const rows = [
    pc.bold(`Predictions: ${tallyWords(all)}`),
    trustWords(all),
    ...(all.tested === 0 ? [] : [spreadWords(all), togetherWords]),
    ...[untestedWords(found)].filter((words) => words !== ''),
    ...block(
      'By origin',
      [...byOrigin].map(([origin, tally]) => `${origin}: ${tallyInShort(tally)}`),
    ),
    ...block(
      'By how far the changes were made',
      [...byFollowed].map(([followed, tally]) => `${followed}: ${tallyInShort(tally)}`),
    ),
    ...block(
      'By quantity',
      byQuantity.map((tally) => `${tally.quantity.id}: ${tallyInShort(tally)}; ${leanWords(tally)}`),
    ),
  ];
  return `${rows.join('\n')}\n`;
}

function block(title: string, rows: readonly string[]): readonly string[] {
  return rows.length === 0 ? [] : ['', pc.bold(title), ...rows.map((row) => `  ${row}`)];
}

function json(found: FolderPredictions): string {
  const { all, byQuantity, byOrigin, byFollowed } = found.record;
  const shown = {
    format: 1,
    lessons: found.lessons,
    all: tallyJson(all),
    byOrigin: Object.fromEntries([...byOrigin].map(([origin, tally]) => [origin, tallyJson(tally)])),
    byFollowed: Object.fromEntries([...byFollowed].map(([followed, tally]) => [followed, tallyJson(tally)])),
    byQuantity: Object.fromEntries(byQuantity.map((tally) => [tally.quantity.id, quantityJson(tally)])),
    notCounted: Object.fromEntries(found.untested),
  };
  return jsonText(shown);
}

function tallyJson({ tested, inside, lessons, interval, spread, trust }: Tally) {
  return {
    tested,
    inside,
    lessons,
    share: tested === 0 ? null : tidy(inside / tested),
    interval: interval === undefined ? null : { min: tidy(interval.min), max: tidy(interval.max) },
    spread: spread === undefined ? null : tidy(spread),
    trust,
  };
}

function quantityJson(tally: QuantityTally) {
  const { quantity, miss, u, lean, isMirrored } = tally;
  return {
    ...tallyJson(tally),
    unit: quantity.unit,
    meanMiss: tidy(differenceFromSI(miss, quantity.unit)),
    u: u === undefined ? null : tidy(differenceFromSI(u, quantity.unit)),
    lean,
    isMirrored,
  };
}
