// When two lessons were given with the same club; knows no plan and reads no file.
import type { BagClub } from '../record/document.ts';
import type { Lesson } from './lessons.ts';

/** A club as a record names it, and what the bag says of it; undefined where nothing does. */
export interface NamedClub {
  readonly name: string | undefined;
  readonly inBag: BagClub | undefined;
}

export function clubOf({ club, analysis }: Lesson): NamedClub {
  return { name: club, inBag: analysis.subject.club };
}

/** The same name, or another name for the same club: a bag may keep the old one beside the new one. Two lessons without a club match. */
export function isSameClub(one: NamedClub, other: NamedClub): boolean {
  if (folded(one.name) === folded(other.name)) return true;
  return one.inBag !== undefined && other.inBag !== undefined && isSameMake(one.inBag, other.inBag);
}

function folded(name: string | undefined): string | undefined {
  return name?.trim().replace(/\s+/g, ' ').toLowerCase();
}

function isSameMake(a: BagClub, b: BagClub): boolean {
  if (a.entries.size === 0 || a.kind?.value !== b.kind?.value || a.entries.size !== b.entries.size)
    return false;
  return [...a.entries].every(([id, { readings }]) => {
    const others = b.entries.get(id)?.readings;
    return (
      others?.length === readings.length &&
      readings.every(({ measure }, place) => measure.value === others[place]!.measure.value)
    );
  });
}
