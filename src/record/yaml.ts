// Runs the yaml package over a text, bounded in depth and in number of errors; knows nothing of swings or of repairs.
import { Composer, Lexer, Parser, Schema, type Document, type ParsedNode } from 'yaml';
import type { Span } from '../measure/measure.ts';

/** Deeper nesting than this is not read: nothing that we know nests more than eight deep. */
export const deepestNesting = 48;
/** A longer text than this (in UTF-16 units) is not read: a hundred times a long lesson, and quick to refuse. */
export const longestText = 250_000;
const mostStreamErrors = 40;

export interface YamlError {
  /** The yaml package's own code for what is wrong. */
  readonly code: string;
  readonly span: Span;
  readonly message: string;
}

export interface YamlReading {
  readonly root: ParsedNode | undefined;
  readonly errors: readonly YamlError[];
  /** Comments by offset, the number sign included. */
  readonly comments: ReadonlyMap<number, string>;
  /** Where the nesting first goes deeper than is read; the text from there on was not read. */
  readonly tooDeepAt: number | undefined;
  /** Where a second document starts, which is not read. */
  readonly secondDocumentAt: number | undefined;
}

const schema = new Schema({ schema: 'core', merge: false, resolveKnownTags: false });
const scalarFollows = '\u001f';

export function readYaml(text: string): YamlReading {
  const parser = new Parser();
  const composer = new Composer({ schema, uniqueKeys: false, prettyErrors: false, logLevel: 'silent' });
  const documents: Document.Parsed[] = [];
  const comments = new Map<number, string>();
  let tooDeepAt: number | undefined;
  let streamErrors = 0;
  let isScalar = false;

  reading: for (const lexeme of new Lexer().lex(text)) {
    if (!isScalar && lexeme.startsWith('#')) comments.set(parser.offset, lexeme);
    isScalar = lexeme === scalarFollows;
    for (const token of parser.next(lexeme)) {
      if (token.type === 'error' && ++streamErrors > mostStreamErrors) break reading;
      for (const document of composer.next(token)) documents.push(document);
    }
    if (parser.stack.length > deepestNesting) {
      tooDeepAt = parser.offset;
      break;
    }
    // One document is all that we read.
    if (documents.length > 0) break;
  }
  for (const token of parser.end()) for (const document of composer.next(token)) documents.push(document);
  for (const document of composer.end(true, text.length)) documents.push(document);
  const [first, second] = documents;
  return {
    root: first?.contents ?? undefined,
    errors: (first?.errors ?? []).map(({ code, pos, message }) => ({
      code,
      span: { start: pos[0], end: pos[1] },
      message,
    })),
    comments,
    tooDeepAt,
    secondDocumentAt: second?.range[0],
  };
}
