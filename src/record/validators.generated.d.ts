// Generated from schemas/*.schema.json by `npx tsx build/generate.ts`: says whether a parsed file has the shape of its kind; do not edit.

/** One way in which the data leave the schema. */
export interface ShapeError {
  /** A JSON pointer to the place in the data. */
  readonly instancePath: string;
  readonly schemaPath: string;
  readonly keyword:
    | 'additionalProperties'
    | 'enum'
    | 'exclusiveMinimum'
    | 'minimum'
    | 'maximum'
    | 'pattern'
    | 'required'
    | 'type';
  /** By keyword: additionalProperty, allowedValues, comparison and limit, pattern, missingProperty, or type. */
  readonly params: Readonly<Record<string, unknown>>;
}

/** True where the data have the shape; else `errors` holds every way in which they have not, until the next call. */
export interface Validate {
  (data: unknown): boolean;
  errors?: readonly ShapeError[] | null;
}

export const validateSwing: Validate;
export const validateStudent: Validate;
export const validateTemplate: Validate;
export const validateFaults: Validate;
export const validateReview: Validate;
export const validateWorkspace: Validate;
