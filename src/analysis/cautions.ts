// What a record plans or states that loads an injured part of the body, in the words that every surface shows; judges nothing itself.
import { caution } from '../checks/caution.ts';
import { cautionsOf, planLoadsInjury } from '../checks/plan-loads-injury.ts';
import { unusedSilence } from '../checks/unused-silence.ts';
import type { Fault } from '../record/document.ts';
import type { Analysis, Finding } from './result.ts';

/** Of the planned changes, each once, for whoever shows any of them. */
export function planCautions({ document, subject }: Analysis): readonly string[] {
  if (document.kind !== 'swing') return [];
  const told = document.plan.flatMap(({ change, because }) =>
    cautionsOf({ id: change?.value ?? '', because: because.map(({ value }) => value) }, subject),
  );
  return [...new Set(told.map(({ message }) => message))];
}

/** Of the stated faults, each once: their changes and drills are what helps against them. */
export function faultCautions({ document, subject }: Analysis): readonly string[] {
  if (document.kind !== 'swing') return [];
  const because = document.faults.map(({ fault }) => fault.value);
  return [...new Set(cautionsOf({ id: '', because }, subject).map(({ message }) => message))];
}

const healthCodes: readonly string[] = [caution.code, planLoadsInjury.code];

/**
 * Whether a finding tells of an injury, or that there is none: for the coach's own screen, and for no page that is handed on. A comment
 * that accepts such a finding tells it too.
 */
export function tellsOfHealth({ code, message }: Pick<Finding, 'code' | 'message'>): boolean {
  return (
    healthCodes.includes(code) ||
    (code === unusedSilence.code && healthCodes.some((accepted) => message.includes(`\`${accepted}\``)))
  );
}

/**
 * For pages that are kept, sent or printed: which parts of the body are loaded by what is planned and by what helps against the stated
 * faults, whatever anybody's file notes. It is said of everybody, so that it tells of nobody's injury.
 */
export function loadsWords(analyses: readonly Analysis[]): string | undefined {
  const parts = [...new Set(analyses.flatMap(loadedParts))];
  return parts.length === 0
    ? undefined
    : `What is planned, or helps against the stated faults, loads: ${parts.join(', ')}. Stop if it hurts. This is no medical advice; see a physician or physiotherapist.`;
}

function loadedParts({ document, subject }: Analysis): readonly string[] {
  if (document.kind !== 'swing') return [];
  const named = new Set([
    ...document.faults.map(({ fault }) => fault.value),
    ...document.plan.flatMap(({ because }) => because.map(({ value }) => value)),
  ]);
  const planned = new Set(document.plan.flatMap(({ quantity }) => quantity?.id ?? []));
  const isMeant = ({ id, changes }: Fault): boolean =>
    named.has(id.value) || changes.some(({ quantity }) => quantity !== undefined && planned.has(quantity.id));
  return [...(subject.judgement?.faults.values() ?? [])].flatMap(({ fault }) =>
    isMeant(fault) ? fault.cautions.map(({ part }) => part.value) : [],
  );
}
