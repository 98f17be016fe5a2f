// The shape that schemas/quantities.yaml must have, as types and as a JSON Schema; knows nothing of what is built from it.
import type { Dimension } from '../../src/measure/measure.ts';
import { checkpoints, type Checkpoint } from '../../src/registry/quantity.ts';

export type Edges = readonly [number, number];

export type EdgesByClub = Readonly<Record<string, Edges>>;

export interface SourceRange {
  readonly window: Edges;
  readonly source: string;
}

export interface SourceEntry {
  readonly at?: 'all' | readonly Checkpoint[];
  readonly title: string;
  readonly meaning: string;
  readonly from: string;
  readonly to: string;
  readonly dimension: Dimension;
  readonly unit: string;
  readonly decimals: number;
  /** The name of a set of direction words, or "none". */
  readonly directions: string;
  readonly lateral?: boolean;
  /** One window, or one for each kind of club, or one for each checkpoint. */
  readonly practice: {
    readonly source: string;
    readonly window?: Edges;
    readonly by_club?: EdgesByClub | Partial<Record<Checkpoint, EdgesByClub>>;
  } & Partial<Record<Checkpoint, Edges>>;
  readonly bounds: SourceRange & { readonly at?: Partial<Record<Checkpoint, SourceRange>> };
  readonly uncertainty: {
    readonly otherwise: number;
    readonly by: Readonly<Record<string, number>>;
    readonly source?: string;
  };
}

type Sign = -1 | 0 | 1;

export interface SourceFile {
  readonly version: 1;
  readonly checkpoints: Readonly<Record<string, { readonly title: string; readonly meaning: string }>>;
  readonly club_kinds: Readonly<Record<string, string>>;
  readonly shapes: Readonly<
    Record<string, { readonly start?: Sign; readonly curve?: Sign; readonly large?: boolean }>
  >;
  readonly misses: Readonly<
    Record<
      string,
      {
        readonly meaning: string;
        /** A direction word by quantity. */
        readonly is: Readonly<Record<string, string>>;
        readonly absolute?: boolean;
      }
    >
  >;
  readonly contacts: Readonly<
    Record<
      string,
      {
        readonly meaning: string;
        readonly also?: readonly string[];
        /** By quantity, in its unit. */
        readonly means: Readonly<Record<string, { readonly from?: number; readonly to?: number }>>;
      }
    >
  >;
  readonly body_parts: Readonly<
    Record<string, { readonly within?: string; readonly sides?: boolean; readonly also?: readonly string[] }>
  >;
  readonly directions: Readonly<
    Record<
      string,
      {
        readonly positive?: readonly string[];
        readonly negative?: readonly string[];
        readonly bearings?: Readonly<Record<string, number>>;
      }
    >
  >;
  readonly comparatives: readonly {
    readonly more: readonly string[];
    readonly less: readonly string[];
    readonly of: readonly string[];
  }[];
  readonly methods: Readonly<
    Record<
      string,
      {
        readonly meaning: string;
        readonly uncertainty: Readonly<
          Record<string, { readonly u: number; readonly unit: string; readonly source: string }>
        >;
      }
    >
  >;
  readonly quantities: { readonly checkpoints: Readonly<Record<string, SourceEntry>> } & Readonly<
    Record<string, Readonly<Record<string, SourceEntry>>>
  >;
}

const sections = ['checkpoints', 'delivery', 'ground', 'strike', 'flight', 'conditions', 'student', 'club'];
const dimensions = [
  ...['length', 'angle', 'speed', 'rotation', 'time', 'mass', 'inertia', 'temperature', 'pressure'],
  ...['fraction', 'ratio'],
];

const text = { type: 'string', minLength: 1 };
const positive = { type: 'number', exclusiveMinimum: 0 };
const words = { type: 'array', items: text, minItems: 1 };
const sign = { enum: [-1, 0, 1] };
const edges = { type: 'array', items: { type: 'number' }, minItems: 2, maxItems: 2 };

function closed(properties: Record<string, object>, optional: readonly string[] = []): object {
  const required = Object.keys(properties).filter((key) => !optional.includes(key));
  return { type: 'object', properties, required, additionalProperties: false };
}

function mapOf(schema: object): object {
  return { type: 'object', additionalProperties: schema };
}

function byCheckpoint(schema: object): Record<string, object> {
  return Object.fromEntries(checkpoints.map((checkpoint) => [checkpoint, schema]));
}

/** By kind of club, or by checkpoint and there by kind of club. */
const byClub = mapOf({ ...edges, type: ['array', 'object'], additionalProperties: edges });

const range = closed({ window: edges, source: text });

const entry = closed(
  {
    at: { type: ['string', 'array'], pattern: '^all$', items: { enum: checkpoints } },
    title: text,
    meaning: { type: 'string', pattern: '^[A-Z].*\\.$' },
    from: text,
    to: text,
    dimension: { enum: dimensions },
    unit: { type: 'string' },
    decimals: { type: 'integer', minimum: 0, maximum: 4 },
    directions: text,
    lateral: { type: 'boolean' },
    practice: closed({ source: text, window: edges, by_club: byClub, ...byCheckpoint(edges) }, [
      'window',
      'by_club',
      ...checkpoints,
    ]),
    bounds: closed({ window: edges, source: text, at: closed(byCheckpoint(range), checkpoints) }, ['at']),
    uncertainty: closed({ otherwise: positive, by: mapOf(positive), source: text }, ['source']),
  },
  ['at', 'lateral'],
);

export const sourceSchema: object = closed({
  version: { const: 1 },
  checkpoints: mapOf(closed({ title: text, meaning: text })),
  club_kinds: mapOf(text),
  shapes: mapOf(
    closed({ start: sign, curve: sign, large: { type: 'boolean' } }, ['start', 'curve', 'large']),
  ),
  misses: mapOf(
    closed({ meaning: text, is: { ...mapOf(text), minProperties: 1 }, absolute: { type: 'boolean' } }, [
      'absolute',
    ]),
  ),
  contacts: mapOf(
    closed(
      {
        meaning: text,
        also: words,
        means: {
          ...mapOf({
            ...closed({ from: { type: 'number' }, to: { type: 'number' } }, ['from', 'to']),
            minProperties: 1,
          }),
          minProperties: 1,
        },
      },
      ['also'],
    ),
  ),
  body_parts: mapOf(
    closed({ within: text, sides: { type: 'boolean' }, also: words }, ['within', 'sides', 'also']),
  ),
  directions: mapOf(
    closed({ positive: words, negative: words, bearings: mapOf({ type: 'number' }) }, [
      'positive',
      'negative',
      'bearings',
    ]),
  ),
  comparatives: { type: 'array', items: closed({ more: words, less: words, of: words }) },
  methods: mapOf(
    closed({
      meaning: text,
      uncertainty: {
        type: 'object',
        propertyNames: { enum: dimensions },
        additionalProperties: closed({ u: positive, unit: { type: 'string' }, source: text }),
      },
    }),
  ),
  quantities: closed(Object.fromEntries(sections.map((section) => [section, mapOf(entry)]))),
});
