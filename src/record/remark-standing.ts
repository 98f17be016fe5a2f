// How a remark stands to the record today: where it is fastened, what stood there and what stands there now; opens no file.
import { harmless, quote } from '../measure/quote.ts';
import type { Registry } from '../registry/registry.ts';
import { anchorsOf, isUnchanged, valueWords, type Anchor } from './anchor.ts';
import type { ReviewFile, SwingRecord } from './document.ts';
import { fingerprintOf } from './fingerprint.ts';
import { lastSignatures, stateOf, type Remark, type RemarkState, type Signature } from './remark.ts';

export interface RemarkStanding {
  readonly remark: Remark;
  readonly state: RemarkState;
  /** Undefined of a remark on the record as a whole, and where the record has nothing of that name any more. */
  readonly anchor: Anchor | undefined;
  /** What stood there when it was made, with its unit; undefined where the remark does not say. */
  readonly then: string | undefined;
  readonly now: string | undefined;
  readonly isChanged: boolean;
  /** The last value that somebody suggests, as written. */
  readonly suggestion: string | undefined;
  /** Whether that stands in the record now. */
  readonly isTaken: boolean;
}

export function remarkStandings(
  { remarks }: ReviewFile,
  record: SwingRecord,
  registry: Registry,
): readonly RemarkStanding[] {
  const anchors = anchorsOf(record);
  return remarks.map((remark) => {
    const about = remark.about?.value ?? '';
    const anchor = anchors.get(about);
    const words = (value: string | undefined): string | undefined =>
      value === undefined ? undefined : harmless(valueWords(record, about, value, registry));
    const [value, suggestion] = [remark.value?.value, suggestionOf(remark)];
    const says = (said: string | undefined): boolean =>
      anchor !== undefined && said !== undefined && isUnchanged(record, about, said, registry);
    return {
      remark,
      state: stateOf(remark),
      anchor,
      then: words(value),
      now: words(anchor?.value),
      isChanged: anchor !== undefined && value !== undefined && !says(value),
      suggestion,
      isTaken: says(suggestion),
    };
  });
}

/** The latest of what was suggested. */
function suggestionOf({ suggests, replies }: Remark): string | undefined {
  return replies.findLast((reply) => reply.suggests !== undefined)?.suggests ?? suggests;
}

export interface SignatureStanding {
  readonly signature: Signature;
  /** True where the record says something else than when it was signed. */
  readonly isVoid: boolean;
}

/** The last signature of each person. */
export function signatureStandings(
  { signatures }: ReviewFile,
  record: SwingRecord,
): readonly SignatureStanding[] {
  if (signatures.length === 0) return [];
  const hash = hashes.get(record) ?? fingerprintOf(record.text);
  hashes.set(record, hash);
  return lastSignatures(signatures).map((signature) => ({
    signature,
    isVoid: signature.hash?.value.trim().toLowerCase() !== hash,
  }));
}

const hashes = new WeakMap<SwingRecord, string>();

/** A name in a message: in backticks, on one line, cut when long. */
export function nameWords(name: string | undefined): string {
  return name === undefined || name.trim() === '' ? 'somebody' : quote(harmless(name));
}
