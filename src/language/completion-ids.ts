// The words that are proposed in many places: ids of quantities, the likeliest first, and names of methods; knows no place.
import type { Quantity } from '../registry/quantity.ts';
import { wantedIds } from './completion-habits.ts';
import type { Desire } from './completion.ts';

export interface Word {
  readonly word: string;
  readonly detail?: string | undefined;
}

/** Quantities, those that somebody asks for and those that the record has first. */
export function ids({ analysis, earlier }: Desire): readonly Quantity[] {
  const asked = new Set(wantedIds(analysis, earlier));
  const { document, subject } = analysis;
  const own = document.kind === 'swing' ? document.entries : new Map<string, unknown>();
  const rank = ({ id, section }: Quantity): number =>
    asked.has(id) ? 0 : own.has(id) ? 1 : section === 'checkpoints' || section === 'delivery' ? 2 : 3;
  return subject.registry.quantities.toSorted((a, b) => rank(a) - rank(b));
}

export function methodWords({ analysis }: Desire): readonly Word[] {
  return analysis.subject.registry.methods
    .filter(({ isRefused }) => isRefused !== true)
    .map(({ name, meaning }) => ({ word: name, detail: meaning }));
}
