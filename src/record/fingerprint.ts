// What a signature says of a record: a hash of its values, which comments, spaces, order and units leave alone; knows no review.
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { lineOfValue, valuesIn, type ValueLine } from './value-lines.ts';

/** SHA-256 (FIPS 180-4) in hexadecimal. */
export function hashOf(text: string): string {
  // Half a surrogate pair has no bytes of its own; it stands for an unknown sign as it does in every file.
  return bytesToHex(sha256(utf8ToBytes(text.replace(/\p{Cs}/gu, '\u{fffd}'))));
}

/**
 * `sha256:…` of what the record says, one value a line. It hangs on the record's own text alone: neither on the settings of its
 * folder nor on the files that it names.
 */
export function fingerprintOf(record: string): string {
  const lines = signedLines(record)?.map(lineOfValue);
  return `sha256:${hashOf((lines ?? record.split(/\r?\n/)).join('\n'))}`;
}

/** What a signature stands under, a value each; a key without one says nothing. Undefined where YAML cannot read the record. */
export function signedLines(record: string): readonly ValueLine[] | undefined {
  return valuesIn('swing', record)?.filter(({ value }) => value !== '');
}
