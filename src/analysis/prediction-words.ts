// How good predictions have been in words, the same on a page and on the command line; judges nothing.
import {
  fewestLessons,
  fewestTested,
  promised,
  type QuantityTally,
  type Tally,
} from '../judgement/predictions.ts';
import { showValue } from '../measure/show.ts';
import type { FolderPredictions } from './predictions.ts';
import { differenceWords } from './outcome-words.ts';

/** "17 of 20 inside (85 %, with 95 % between 64 and 95 %)". */
export function tallyWords({ tested, inside, interval }: Tally): string {
  if (interval === undefined) return 'none tested yet';
  const share = `${percentOf(inside / tested)} %`;
  return `${inside} of ${tested} inside (${share}; the true share lies between ${percentOf(interval.min)} and ${percentOf(interval.max)} % in 95 of 100 cases)`;
}

/** "17 of 20 inside (64 to 95 %)". */
export function tallyInShort({ tested, inside, interval }: Tally): string {
  if (interval === undefined) return 'none tested yet';
  return `${inside} of ${tested} inside (${percentOf(interval.min)} to ${percentOf(interval.max)} %)`;
}

/** What that says of the coach's ±, in a sentence. */
export function trustWords({ trust, tested, lessons }: Tally): string {
  const goal = `${percentOf(promised)} of 100 should be inside`;
  if (trust === 'too sure') return `${goal}: the intervals are too narrow, and a wider ± would be honest.`;
  if (trust === 'too careful') return `${goal}: the intervals are wider than they need be.`;
  if (trust === 'as good as said') return `${goal}, and nothing speaks against it.`;
  if (tested < fewestTested || lessons < fewestLessons)
    return `It cannot be told yet how good they are: that takes at least ${fewestTested} predictions of ${fewestLessons} lessons, and there are ${tested} of ${lessons}.`;
  return 'It cannot be told yet how good they are: so few fit a good record and a bad one alike.';
}

/** "misses are 1.4 times as large as the ± says". */
export function spreadWords({ spread }: Tally): string {
  if (spread === undefined) return '';
  return `Misses are ${spread.toFixed(1)} times as large as their ± says (root mean square; 1 is right).`;
}

/** "measured 4 m less than predicted on average, ± 2 m: predicted too high". */
export function leanWords({ quantity, miss, u, lean, isMirrored }: QuantityTally): string {
  const mirrored = isMirrored ? ', left-handers mirrored' : '';
  const plain = { ...quantity, directions: [] };
  const sure = u === undefined || !(u > 0) ? '' : ` ± ${showValue(plain, u).replace(/ ± .*$/, '')}`;
  const mean = `mean miss ${differenceWords(quantity, miss, u)}${sure}${mirrored}`;
  if (lean === 'cannot tell') return `${mean}; too few to say whether they lean`;
  if (lean === 'none seen') return `${mean}; no lean is seen`;
  const way = quantity.directions.find(
    ({ sign, bearing }) => bearing === undefined && sign === Math.sign(-miss),
  )?.word;
  return `${mean}; predicted too ${way === undefined ? (lean === 'too high' ? 'high' : 'low') : `far ${way}`}`;
}

/** "Not counted: 3 without a later lesson, 1 not measured." */
export function untestedWords({ untested }: FolderPredictions): string {
  const words = {
    'no later lesson': 'without a later lesson',
    'not measured': 'not measured',
    'not tested': 'not tested, since a change was not made',
    'no interval': 'without ±',
  };
  const said = [...untested].map(([why, count]) => `${count} ${words[why]}`);
  return said.length === 0 ? '' : `Not counted: ${said.join(', ')}.`;
}

export const togetherWords =
  'Predictions of one lesson go together, so that the true share is less sure than its interval says.';

function percentOf(share: number): string {
  return String(Math.round(100 * share));
}
