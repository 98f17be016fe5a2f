// Holds measures in a JSON Schema to their notation: units that fit, direction words of that quantity, ±, methods; knows no file.
import type { Notation } from '../measure/measure.ts';
import { patternOf, patternOfEither, patternOfMethod, patternOfSpread } from '../measure/pattern.ts';
import type { Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import type { FileKind } from './document.ts';

export type JsonSchema = { readonly [keyword: string]: unknown };
type Mutable = Record<string, unknown>;
type Known = Pick<Registry, 'quantities' | 'methodNames'>;

/**
 * The same schema, with a narrower definition in the place of the general one at each quantity. Quantities that are written alike
 * share it. Schemas that were held to a notation before are held to this one.
 */
export function heldToNotation(kind: FileKind, schema: JsonSchema, known: Known): JsonSchema {
  if (kind !== 'swing' && kind !== 'template' && kind !== 'student') return schema;
  const copy = structuredClone<Mutable>(schema);
  const general = Object.entries(copy.definitions as Mutable).filter(([name]) => !name.startsWith(prefix));
  const definitions: Mutable = Object.fromEntries(general);
  copy.definitions = definitions;
  for (const quantity of known.quantities)
    for (const path of pathsOf(kind, quantity)) {
      const place = placeAt(copy, path);
      const form = formOf(place);
      if (place === undefined || form === undefined) continue;
      const name = nameOf(form, quantity);
      definitions[name] ??= forms[form](quantity, known, definitions);
      place.allOf = [refTo(name)];
    }
  if (kind === 'swing') {
    Object.assign(placeAt(copy, ['date'])!, { pattern: day });
    const ids = known.quantities.map(({ id }) => id);
    Object.assign(placeAt(copy, ['plan', '[]', 'change'])!, { enum: [...ids, null] });
  }
  return copy;
}

const prefix = 'written-';

/** A day of the calendar (ISO 8601), but for the years that have no 29 February. */
const day =
  '^[0-9]{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12][0-9]|3[01])|(?:0[469]|11)-(?:0[1-9]|[12][0-9]|30)|02-(?:0[1-9]|[12][0-9]))$';

/** As the general definitions say already; validators that are strict want it beside each keyword. */
const oneReading = ['string', 'number', 'object', 'null'];
const readings = ['string', 'number', 'object', 'array', 'null'];
type Form = 'measure' | 'target' | 'window';

/** Where a quantity may stand in a file of this kind; places that the schema does not have are passed by. */
function pathsOf(kind: FileKind, { id, section }: Quantity): readonly (readonly string[])[] {
  const parts = id.split('.');
  const [, ...below] = parts;
  if (section === 'student') return [below];
  if (section === 'club') return [['bag', '*', ...below]];
  const inGoals = section === 'flight' ? [['goals', '[]', ...below]] : [];
  if (kind === 'student') return inGoals;
  return [parts, ...inGoals, ['shots', '[]', below.join('.')], ['shots', '[]', id]];
}

function placeAt(root: Mutable, path: readonly string[]): Mutable | undefined {
  let at: Mutable | undefined = root;
  for (const part of path) {
    const inside: unknown =
      part === '[]'
        ? at?.items
        : part === '*'
          ? at?.additionalProperties
          : (at?.properties as Mutable | undefined)?.[part];
    at = typeof inside === 'object' && inside !== null ? (inside as Mutable) : undefined;
  }
  return at;
}

/** Which general definition stands there. */
function formOf(place: Mutable | undefined): Form | undefined {
  const [first] = (place?.allOf ?? []) as readonly { readonly $ref?: string }[];
  const name = first?.$ref?.split('/').at(-1);
  return (Object.keys(forms) as Form[]).find(
    (form) => name === form || name?.startsWith(`${prefix}${form}-`) === true,
  );
}

function refTo(name: string): { readonly $ref: string } {
  return { $ref: `#/definitions/${name}` };
}

function nameOf(form: string, { dimension, directions }: Notation): string {
  const words = directions.map(({ word }) =>
    word.replaceAll(' ', '_').replace(/[^\p{L}\p{N}_]/gu, (sign) => `u${sign.codePointAt(0)!.toString(16)}`),
  );
  return [`${prefix}${form}`, dimension, ...words].join('-');
}

const forms: Readonly<Record<Form, (quantity: Quantity, known: Known, definitions: Mutable) => Mutable>> = {
  measure: (quantity, { methodNames }, definitions) => {
    const text = nameOf('number', quantity);
    const [spread, method] = [`${prefix}spread-${quantity.dimension}`, `${prefix}method`];
    definitions[text] ??= { type: readings, pattern: patternOf(quantity, methodNames, 'number') };
    definitions[spread] ??= { type: readings, pattern: patternOfSpread(quantity) };
    definitions[method] ??= { type: readings, pattern: patternOfMethod(methodNames) };
    const properties = {
      value: part('The number with its unit and direction.', text),
      give_or_take: part('One standard uncertainty, with its unit.', spread),
      by: part('The method of measuring.', method),
    };
    const one = { type: oneReading, allOf: [refTo(text)], properties, additionalProperties: true };
    return { ...one, type: readings, allOf: [refTo('measure'), refTo(text)], items: one };
  },
  target: (quantity, { methodNames }, definitions) => {
    const text = nameOf('either', quantity);
    definitions[text] ??= { type: readings, pattern: patternOfEither(quantity, methodNames) };
    const properties = { value: part('The number or the window, with unit and direction.', text) };
    return {
      type: oneReading,
      allOf: [refTo('target'), refTo(text)],
      properties,
      additionalProperties: true,
    };
  },
  window: (quantity, _, definitions) => {
    const text = nameOf('range', quantity);
    definitions[text] ??= { type: readings, pattern: patternOf(quantity, [], 'window') };
    const properties = { window: part('The window A..B with unit and direction.', text) };
    return {
      type: oneReading,
      allOf: [refTo('window'), refTo(text)],
      properties,
      additionalProperties: true,
    };
  },
};

function part(description: string, name: string): Mutable {
  return { description, allOf: [refTo(name)] };
}
