// What the other entries make of one: the same number wherever it is shown; judges nothing.
import type { JudgedReading } from './agreement-result.ts';
import type { Derivation } from './value.ts';

type Implied = Pick<JudgedReading, 'implied' | 'uImplied'>;

/**
 * SI. Of an entry that was read once what `expected` has of it, which is plain arithmetic where that says all that there is to say;
 * of one of several readings what the fit makes of it, the other readings among what speaks.
 */
export function othersSay(
  { id, implied, uImplied }: Implied & { readonly id: string },
  readings: number,
  derivation: Pick<Derivation, 'expected'> | undefined,
): Implied {
  const plain = readings === 1 ? derivation?.expected.get(id) : undefined;
  return plain === undefined ? { implied, uImplied } : { implied: plain.value, uImplied: plain.u };
}
