// What the other entries make of one: the same number wherever it is shown; judges nothing.
import type { Derivation } from './value.ts';

type Implied<N extends number | null> = Readonly<Record<'implied' | 'uImplied', N>>;

/**
 * SI. Of an entry that was read once what `expected` has of it, which is plain arithmetic where that says all that there is to say;
 * of one of several readings what the fit makes of it, the other readings among what speaks.
 */
export function othersSay<N extends number | null>(
  { id, implied, uImplied }: Implied<N> & { readonly id: string },
  readings: number,
  derivation: Pick<Derivation, 'expected'> | undefined,
): { readonly implied: N | number; readonly uImplied: number | null } {
  const plain = readings === 1 ? derivation?.expected.get(id) : undefined;
  return plain === undefined ? { implied, uImplied } : { implied: plain.value, uImplied: plain.u };
}
