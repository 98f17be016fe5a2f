// The building stones of the JSON Schemas: every stone also takes an empty value, none uses oneOf or anyOf, and all keep to the part of draft 2020-12 that draft-07 shares; knows no kind of file.
import type { Quantity } from '../../../src/registry/quantity.ts';

export type Schema = { readonly [keyword: string]: unknown };

/** A reference to a definition of the same schema, wrapped so that a draft-07 reader keeps the description beside it. */
export function use(name: string, description: string): Schema {
  return { description, allOf: [{ $ref: `#/definitions/${name}` }] };
}

/** A mapping with these keys and no others. */
export function mapping(description: string, properties: Readonly<Record<string, Schema>>): Schema {
  return { description, type: ['object', 'null'], properties, additionalProperties: false };
}

/** A mapping whose keys the user names. */
export function mappingOf(description: string, item: Schema): Schema {
  return { description, type: ['object', 'null'], additionalProperties: item };
}

export function listOf(description: string, item: Schema): Schema {
  return { description, type: ['array', 'null'], items: item };
}

/** Free words; a number is taken as the words it is written with. */
export function text(description: string): Schema {
  return { description, type: ['string', 'number', 'null'] };
}

/** A name, a date or a path: a number here is a slip. */
export function word(description: string): Schema {
  return { description, type: ['string', 'null'] };
}

export function yesOrNo(description: string): Schema {
  return { description, type: ['boolean', 'null'] };
}

/** One of these words. */
export function oneWordOf(description: string, words: readonly string[]): Schema {
  return { description, enum: [...words, null] };
}

/** One of these words, or a list of them. */
export function wordsOf(description: string, words: readonly string[]): Schema {
  return {
    description,
    type: ['string', 'array', 'null'],
    pattern: `^(${words.join('|')})$`,
    items: { enum: [...words, null] },
  };
}

const longForm: Readonly<Record<string, Schema>> = {
  value: text('The number with its unit and direction, or a window A..B where one may stand.'),
  give_or_take: text('One standard uncertainty, with its unit; what ± stands for in the short form.'),
  by: word('The method of measuring.'),
  note: text('Anything worth knowing about this reading.'),
  doubtful: yesOrNo('True for a reading that is kept but not trusted.'),
  seen: text('The frame or the picture in which it was seen.'),
};

/** What may stand after a quantity's key. */
export const definitions = {
  measure: {
    description: 'A measurement in words, a bare number, the long form, or a list of several readings.',
    type: ['string', 'number', 'object', 'array', 'null'],
    properties: longForm,
    additionalProperties: false,
    items: {
      type: ['string', 'number', 'object', 'null'],
      properties: longForm,
      additionalProperties: false,
    },
  },
  target: {
    description: 'A number or a window A..B, in words or in the long form.',
    type: ['string', 'number', 'object', 'null'],
    properties: { value: longForm.value, note: text('Why this is wanted.') },
    additionalProperties: false,
  },
  window: {
    description: 'A window A..B with unit and direction, alone or in a mapping.',
    type: ['string', 'number', 'object', 'null'],
    properties: {
      window: text('The window A..B with unit and direction.'),
      strict: oneWordOf('How much it matters to leave the window.', ['gentle', 'firm']),
      source: text('Where the window comes from.'),
      note: text('Anything worth knowing about this window.'),
    },
    additionalProperties: false,
  },
} satisfies Record<string, Schema>;

/** A tree of mappings for quantities whose paths have several keys, `path` giving the keys below this mapping. */
export function quantityTree(
  quantities: readonly Quantity[],
  path: (quantity: Quantity) => string,
  definition: keyof typeof definitions,
  extra: Readonly<Record<string, Schema>> = {},
): Readonly<Record<string, Schema>> {
  const leaves = new Map<string, Schema>();
  const branches = new Map<string, Quantity[]>();
  for (const quantity of quantities) {
    const [first = '', ...rest] = path(quantity).split('.');
    if (rest.length === 0) leaves.set(first, use(definition, describe(quantity)));
    else branches.set(first, [...(branches.get(first) ?? []), quantity]);
  }
  for (const [name, below] of branches) {
    const properties = quantityTree(below, (q) => path(q).slice(name.length + 1), definition);
    leaves.set(name, mapping(branchMeanings[name] ?? `Quantities of ${name}.`, properties));
  }
  return { ...Object.fromEntries(leaves), ...extra };
}

const branchMeanings: Readonly<Record<string, string>> = {
  arc: 'The arc of the club head near the strike, as a circle in an inclined plane.',
  low_point: 'The lowest point of the arc, from the ball and from the ground.',
  divot: 'The divot: where it starts, how long and deep it is, and where it points.',
};

/** Meaning, reference points, unit and direction words of a quantity in one line. */
function describe(quantity: Quantity): string {
  const words = quantity.directions.map((direction) => direction.word);
  const unit = quantity.unit === '' ? 'A plain number' : `In ${quantity.unit}`;
  const directions = words.length === 0 ? '' : `, ${words.join(' / ')}`;
  return `${quantity.title}. ${quantity.meaning} From ${quantity.from} to ${quantity.to}. ${unit}${directions}.`;
}

/** A whole schema: version key required, everything else may still come. */
export function file(
  kind: string,
  description: string,
  properties: Readonly<Record<string, Schema>>,
  used: readonly (keyof typeof definitions)[],
  versionKey = kind,
  own: Readonly<Record<string, Schema>> = {},
): Schema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `urn:swingwright:schema:${kind}:1`,
    $comment:
      'Format version 1. Generated from schemas/quantities.yaml by `npx tsx build/generate.ts`; do not edit. Keeps to the keywords that draft-07 shares, hence `definitions`.',
    title: description,
    type: 'object',
    required: [versionKey],
    properties: {
      [versionKey]: { description: 'The version of the format: 1.', enum: [1, null] },
      ...properties,
    },
    additionalProperties: false,
    definitions: { ...Object.fromEntries(used.map((name) => [name, definitions[name]])), ...own },
  };
}
