// The shapes of a remark with its replies and of a signature, as a review holds them; knows no record.
import type { Span } from '../measure/measure.ts';
import type { Located } from './document.ts';

export const remarkStates = ['open', 'answered', 'settled'] as const;
export type RemarkState = (typeof remarkStates)[number];

/** A reply, or the settling or opening again of a remark, which need no text. */
export interface Reply {
  readonly author: string | undefined;
  /** As written. */
  readonly time: string | undefined;
  readonly text: string | undefined;
  readonly suggests: string | undefined;
  readonly state: RemarkState | undefined;
  readonly span: Span;
}

export interface Remark extends Omit<Reply, 'state'> {
  readonly id: Located<string> | undefined;
  readonly about: Located<string> | undefined;
  /** What stood there when the remark was made. */
  readonly value: Located<string> | undefined;
  /** As written at the remark itself. */
  readonly stated: Located<RemarkState> | undefined;
  /** As written, two people's replies one behind the other after a merge. */
  readonly replies: readonly Reply[];
}

export interface Signature {
  readonly by: Located<string> | undefined;
  readonly time: string | undefined;
  readonly hash: Located<string> | undefined;
  readonly span: Span;
}

/** The replies in the order of time; those of one time, and those without one, in the order written. */
export function repliesInOrder({ replies }: Pick<Remark, 'replies'>): readonly Reply[] {
  return replies
    .map((reply, at) => ({ reply, at, time: timeOf(reply) }))
    .sort((a, b) => (a.time === b.time ? a.at - b.at : a.time < b.time ? -1 : 1))
    .map(({ reply }) => reply);
}

/**
 * How far a remark has come: what its last reply in time says. One that says nothing leaves it open where the remark's author
 * speaks, and answered where somebody else does. So what comes after a remark was settled brings it up again.
 */
export function stateOf(remark: Remark): RemarkState {
  const last = repliesInOrder(remark).at(-1);
  if (last === undefined) return remark.stated?.value ?? 'open';
  return last.state ?? (isSame(last.author, remark.author) ? 'open' : 'answered');
}

/** Of each person the last signature; earlier ones are of the past. */
export function lastSignatures(signatures: readonly Signature[]): readonly Signature[] {
  const last = new Map<string, Signature>();
  for (const signature of signatures) {
    const by = (signature.by?.value ?? '').trim();
    const known = last.get(by);
    if (known === undefined || !(timeOf(signature) < timeOf(known))) last.set(by, signature);
  }
  return [...last.values()];
}

/** Comparable; what is no time counts as older than all. */
function timeOf({ time }: { readonly time: string | undefined }): number {
  const parsed = time === undefined ? NaN : Date.parse(time);
  return Number.isNaN(parsed) ? -Infinity : parsed;
}

function isSame(a: string | undefined, b: string | undefined): boolean {
  return (a ?? '').trim() === (b ?? '').trim();
}
