// Compares what two records say beside numbers: findings, stated faults and their verdicts, misses, goals, plans; knows no words of its own.
import { standingOf, wantedOf, type Standing } from '../judgement/goal-standing.ts';
import { proofAsks } from '../judgement/proof.ts';
import { proofText } from '../checks/proof-words.ts';
import { beliefAsItStands } from '../judgement/standing-number.ts';
import { collapseSpaces } from '../measure/quote.ts';
import { showValue, showWindow } from '../measure/show.ts';
import type { OutlineNode, PlannedChange } from '../record/document.ts';
import type {
  ChangeState,
  FaultChange,
  FindingChange,
  GoalChange,
  Judged,
  MissChange,
  PlanChange,
} from './comparison.ts';
import type { RecordAnalysis } from './compare.ts';
import { verdictOn } from './judge.ts';
import { goalsOf } from './plan.ts';
import type { Finding } from './result.ts';

/**
 * A finding is the same where it has the same code on the same key, whatever its numbers and wherever the key stands. Of several on
 * one key those with the same words are paired first.
 */
export function compareFindings(first: RecordAnalysis, second: RecordAnalysis): readonly FindingChange[] {
  const [a, b] = [placedFindings(first), placedFindings(second)];
  const changes: FindingChange[] = [];
  for (const key of new Set([...a.keys(), ...b.keys()])) {
    const [before, after] = [a.get(key) ?? [], b.get(key) ?? []];
    const [gone, come] = [withoutOf(before, after), withoutOf(after, before)];
    const moved = Math.min(gone.length, come.length);
    changes.push(
      ...gone.slice(moved).map((finding) => ({ state: 'gone' as const, finding })),
      ...come.slice(moved).map((finding) => ({ state: 'new' as const, finding })),
    );
  }
  return changes;
}

/** Those of the first whose words are not among the others; each of the others is used up once. */
function withoutOf(findings: readonly Finding[], others: readonly Finding[]): readonly Finding[] {
  const left = others.map(({ message }) => message);
  return findings.filter(({ message }) => {
    const at = left.indexOf(message);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

/** By code and key, in an order that hangs on neither. */
function placedFindings({ document, findings }: RecordAnalysis): ReadonlyMap<string, readonly Finding[]> {
  const starts = lineStarts(document.text);
  const found = new Map<string, Finding[]>();
  for (const finding of findings) {
    const { line, character } = finding.range.start;
    const key = `${finding.code} ${keyAt(document.outline, (starts[line] ?? 0) + character)}`;
    found.set(key, [...(found.get(key) ?? []), finding]);
  }
  return new Map([...found].sort(([a], [b]) => (a < b ? -1 : 1)));
}

function lineStarts(text: string): readonly number[] {
  return [0, ...[...text.matchAll(/\r\n|\r|\n/g)].map(({ index, 0: end }) => index + end.length)];
}

/** The keys that lead to a place; the number of an item in a list is left out, for items can be moved. */
function keyAt(nodes: readonly OutlineNode[], at: number): string {
  const node = nodes.find(({ span }) => at >= span.start && at <= span.end);
  if (node === undefined) return '';
  const name = /^\d+$/.test(node.name) ? '' : node.name;
  return `${name}.${keyAt(node.children, at)}`;
}

export function compareFaults(first: RecordAnalysis, second: RecordAnalysis): readonly FaultChange[] {
  const [a, b] = [statedFaults(first), statedFaults(second)];
  return keysOf(a, b).flatMap((key): FaultChange[] => {
    const { fault, at } = (b.get(key) ?? a.get(key))!;
    const [before, after] = [judgedOn(fault, at, first), judgedOn(fault, at, second)];
    const state = stateOf(a.get(key), b.get(key));
    if (state === 'changed' && before?.verdict === after?.verdict) return [];
    const known = second.subject.judgement?.faults.get(fault) ?? first.subject.judgement?.faults.get(fault);
    return [{ fault, title: known?.fault.title ?? fault, at, state, before, after }];
  });
}

interface Stated {
  readonly fault: string;
  readonly at: string | undefined;
}

function statedFaults({ document }: RecordAnalysis): ReadonlyMap<string, Stated> {
  return new Map(
    document.faults.map(({ fault, at }) => [
      `${fault.value} ${at?.value ?? ''}`,
      { fault: fault.value, at: at?.value },
    ]),
  );
}

function judgedOn(
  fault: string,
  at: string | undefined,
  { subject, account }: RecordAnalysis,
): Judged | undefined {
  const found = account && verdictOn(fault, at, subject, account);
  return found && { verdict: found.verdict, probability: found.probability };
}

export function compareMisses(first: RecordAnalysis, second: RecordAnalysis): readonly MissChange[] {
  const of = ({ document }: RecordAnalysis): Map<string, string> =>
    new Map(document.misses.map(({ miss }) => [miss.value, miss.value]));
  const [a, b] = [of(first), of(second)];
  return keysOf(a, b).flatMap((miss): MissChange[] => {
    const state = stateOf(a.get(miss), b.get(miss));
    return state === 'changed' ? [] : [{ miss, state }];
  });
}

export function compareGoals(first: RecordAnalysis, second: RecordAnalysis): readonly GoalChange[] {
  const [a, b] = [standings(first), standings(second)];
  return keysOf(a, b).map((name): GoalChange => {
    const [before, after] = [a.get(name), b.get(name)];
    const { key, quantity } = (after ?? before)!.wanted;
    const state = stateOf(before, after);
    const isSame =
      before !== undefined &&
      after !== undefined &&
      isClose(before.wanted.min, after.wanted.min) &&
      isClose(before.wanted.max, after.wanted.max);
    return { key, quantity, state: isSame ? 'same' : state, before, after };
  });
}

function standings({ subject, account }: RecordAnalysis): ReadonlyMap<string, Standing> {
  if (account === undefined) return new Map();
  const belief = beliefAsItStands(account, subject.student?.document.hand?.value);
  const wanted = goalsOf(subject).flatMap(({ goal }) =>
    wantedOf(goal, belief, account.situation, subject.registry),
  );
  const seen = new Map<string, number>();
  return new Map(
    wanted.map((one) => {
      const name = `${one.key} ${one.quantity.id}`;
      const times = (seen.get(name) ?? 0) + 1;
      seen.set(name, times);
      return [`${name} ${times}`, standingOf(one, belief, account.situation)];
    }),
  );
}

export function comparePlans(first: RecordAnalysis, second: RecordAnalysis): readonly PlanChange[] {
  const [a, b] = [planned(first), planned(second)];
  return keysOf(a, b).flatMap((change): PlanChange[] => {
    const [before, after] = [a.get(change), b.get(change)];
    return before === after ? [] : [{ change, state: stateOf(before, after), before, after }];
  });
}

/** Each planned change in one line, by what it changes; several of one quantity stand together. */
function planned({ document, subject }: RecordAnalysis): ReadonlyMap<string, string> {
  const lines = new Map<string, string>();
  for (const one of document.plan) {
    const change = one.change?.value ?? '…';
    const line = plannedInShort(one, subject.registry);
    const known = lines.get(change);
    lines.set(change, known === undefined ? line : [known, line].sort().join('; '));
  }
  return lines;
}

function plannedInShort(
  { change, to, because, proof, note }: PlannedChange,
  registry: RecordAnalysis['subject']['registry'],
): string {
  const quantity = change && registry.find(change.value);
  const target =
    to === undefined || quantity === undefined
      ? undefined
      : to.target.kind === 'window'
        ? showWindow(quantity, to.target.from, to.target.to)
        : showValue(quantity, to.target.value, to.target.stated);
  return [
    ...(target === undefined ? [] : [`to ${target}`]),
    ...(because.length === 0
      ? []
      : [
          `because ${because
            .map(({ value }) => value)
            .sort()
            .join(', ')}`,
        ]),
    ...(proof === undefined ? [] : [`proof ${proofText(proofAsks(proof.value, registry))}`]),
    ...(note === undefined ? [] : [collapseSpaces(note)]),
  ].join(', ');
}

/** Sorted, so that moving an item changes nothing. */
function keysOf(a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): readonly string[] {
  return [...new Set([...a.keys(), ...b.keys()])].sort();
}

function stateOf(before: unknown, after: unknown): ChangeState {
  return before === undefined ? 'new' : after === undefined ? 'gone' : 'changed';
}

function isClose(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
}
