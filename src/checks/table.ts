// All checks, in the order in which they run and are listed; the checks about silences come last. Holds no check itself.
import type { Check } from './check.ts';

export const checks: readonly Check[] = [];

const byCode: ReadonlyMap<string, Check> = new Map(checks.map((check) => [check.code, check]));

/** The check with this code, or undefined. */
export function findCheck(code: string): Check | undefined {
  return byCode.get(code);
}

export const codes: readonly string[] = checks.map((check) => check.code);
