// What a workspace adds to the model: steps that give its own derived quantities, and relations that join the fit; knows no expression.
import type { Rule } from './rule.ts';
import type { Situation, Value } from './value.ts';
import { isOutside } from '../registry/registry.ts';

/** left − right is 0 with the standard uncertainty u: one more measurement of a number that one more step gives. */
export interface Relation {
  readonly name: string;
  /** `relation:` and the name: the id under which the fit judges it. */
  readonly id: string;
  /** Gives left − right under that id. */
  readonly rule: Rule;
  /** SI, > 0. */
  readonly u: number;
}

export interface OwnModel {
  /** The text that all of it follows from: of the same key, the same model. */
  readonly key: string;
  readonly rules: readonly Rule[];
  readonly relations: readonly Relation[];
  /** The key, so that a text that a fit is kept by says which model it is good for. */
  readonly toJSON: () => string;
}

const prefix = 'relation:';

export function relationId(name: string): string {
  return `${prefix}${name}`;
}

/** The name of the relation with this id; undefined for the id of anything else. */
export function relationNamed(id: string): string | undefined {
  return id.startsWith(prefix) ? id.slice(prefix.length) : undefined;
}

/**
 * False of a derived quantity of the workspace's own that lies beyond its bounds: what is not possible is not so, and says most often
 * that something near zero was divided by. Such a number is not told.
 */
export function isPossible({ id, value }: Value, { own, registry }: Situation): boolean {
  const isOwn = own?.rules.some(({ outputs }) => outputs.includes(id)) === true;
  const bounds = isOwn ? registry?.find(id)?.bounds : undefined;
  return bounds === undefined || !isOutside(value, bounds);
}
