// What a miss is in plain words, with left and right as the player of that hand sees them; knows no record.
import type { Miss } from './quantity.ts';

const side = /\b(left|right)\b/g;

/** Words are written as for a right-handed player; where no hand is known, what changes with it is said. */
export function meaningOfMiss({ meaning, absolute }: Miss, hand: 'left' | 'right' | undefined): string {
  const named = meaning.match(side);
  if (absolute || named === null || hand === 'right') return meaning;
  if (hand === 'left') return meaning.replace(side, opposite);
  const sides = [...new Set(named)].map(opposite).join(', ');
  return `${meaning} (for a left-handed player, ${sides})`;
}

function opposite(word: string): string {
  return word === 'left' ? 'right' : 'left';
}
