// What a record plans or states that loads an injured part of the body, in the words that every surface shows; judges nothing itself.
import { cautionsOf } from '../checks/plan-loads-injury.ts';
import type { Analysis } from './result.ts';

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
