// The little of papaparse that is used here; its published types would bring Node's and a browser's into the core.
declare module 'papaparse' {
  export interface StepResult {
    readonly data: readonly string[];
    readonly errors: readonly { readonly type: string; readonly code: string }[];
    /** `cursor` is the offset just past the row. */
    readonly meta: { readonly cursor: number };
  }
  export interface Parser {
    abort(): void;
  }
  export interface Options {
    readonly delimiter: string;
    readonly skipEmptyLines: boolean;
    readonly step: (result: StepResult, parser: Parser) => void;
  }
  const papaparse: {
    parse(text: string, options: Options): void;
    unparse(
      rows: readonly (readonly string[])[],
      options: { readonly newline: string; readonly escapeFormulae?: RegExp },
    ): string;
  };
  export default papaparse;
}
