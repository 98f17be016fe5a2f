// Every edit that is offered, at every place of every sample and of texts made wrong on purpose: it touches nothing else, and mends what it says.
import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { URI } from 'vscode-uri';
import { Lexer } from 'yaml';
import { analyse } from '../../src/analysis/analyse.ts';
import { createCache } from '../../src/analysis/cache.ts';
import { lineTableOf, positionAt } from '../../src/analysis/positions.ts';
import type { Analysis, FileState, Finding } from '../../src/analysis/result.ts';
import { findActions } from '../../src/language/actions.ts';
import { offsetAt } from '../../src/language/places.ts';
import type { CodeAction, Edit } from '../../src/language/shapes.ts';
import { kindOf } from '../../src/record/kind.ts';

const samples = resolve(import.meta.dirname, '../../samples');
const uris = readdirSync(samples, { recursive: true, encoding: 'utf8' })
  .map((name) => URI.file(join(samples, name)).toString())
  .filter((uri) => kindOf(uri) !== undefined)
  .sort();

const cache = createCache();

/** The sample with this text in its place, beside the other samples as they are. */
function analysed(uri: string, text: string): Analysis {
  const file = (asked: string): FileState => {
    if (asked === uri) return { kind: 'text', text };
    const path = URI.parse(asked).fsPath;
    if (!existsSync(path) || !statSync(path).isFile()) return { kind: 'missing' };
    return { kind: 'text', text: readFileSync(path, 'utf8') };
  };
  return analyse(uri, { file }, cache);
}

function textOf(uri: string): string {
  return readFileSync(URI.parse(uri).fsPath, 'utf8');
}

function actionsAt(analysis: Analysis, offset: number): readonly CodeAction[] {
  const position = positionAt(lineTableOf(analysis.document.text), offset);
  return findActions(analysis, {
    range: { start: position, end: position },
    version: 1,
    edits: 'plain',
    explanation: () => undefined,
    textOf,
  });
}

interface Placed {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** The edits of the document itself, each within the text and none over another. */
function ownEdits({ uri, document: { text } }: Analysis, action: CodeAction): readonly Placed[] {
  const table = lineTableOf(text);
  const edits = action.edit.documentChanges
    .filter(({ textDocument }) => textDocument.uri === uri)
    .flatMap(({ edits: own }) => own as readonly Edit[])
    .map(({ range, newText }) => ({
      start: offsetAt(table, range.start),
      end: offsetAt(table, range.end),
      text: newText,
    }))
    .sort((a, b) => a.start - b.start);
  for (const [at, { start, end }] of edits.entries()) {
    assert.ok(start <= end && end <= text.length, action.title);
    assert.ok(end <= (edits[at + 1]?.start ?? text.length), `${action.title} has edits over each other`);
  }
  return edits;
}

function made(text: string, edits: readonly Placed[]): string {
  return edits
    .toReversed()
    .reduce((done, { start, end, text: put }) => done.slice(0, start) + put + done.slice(end), text);
}

function commentsOf(text: string): readonly string[] {
  return [...new Lexer().lex(text)].filter((token) => token.startsWith('#')).map((token) => token.trimEnd());
}

/** Errors by what they say, so that one that was there before is not taken for a new one. */
function errorsOf({ findings }: Analysis): readonly string[] {
  return findings
    .filter(({ severity }) => severity === 'error')
    .map(({ code, message }) => `${code}: ${message}`);
}

/** Where the place stands once the edits before it are made. */
function movedBy(edits: readonly Placed[], offset: number): number {
  return edits
    .filter(({ start, end }) => end <= offset && start < Math.max(offset, 1))
    .reduce((moved, { start, end, text }) => moved + text.length - (end - start), offset);
}

function isLeft(finding: Finding, before: Analysis, after: Analysis, edits: readonly Placed[]): boolean {
  const offset = offsetAt(lineTableOf(before.document.text), finding.range.start);
  const places = [offset, movedBy(edits, offset)];
  const table = lineTableOf(after.document.text);
  return after.findings.some(
    ({ code, range }) => code === finding.code && places.includes(offsetAt(table, range.start)),
  );
}

/** Rewrites keep every comment; what accepts a finding adds one, and what removes an accepting comment takes one away. */
function assertCommentsKept(before: string, after: string, action: CodeAction): void {
  if (action.title.startsWith('Accept ') || action.title.startsWith('Remove ')) return;
  if (action.kind === 'source.fixAll.swingwright') return;
  assert.deepEqual([...commentsOf(after)].sort(), [...commentsOf(before)].sort(), action.title);
}

describe('every edit that is offered', () => {
  const seen = new Map<string, { analysis: Analysis; action: CodeAction }>();

  it('is found at every offset of every sample', function () {
    this.timeout(120_000);
    for (const uri of uris) {
      const analysis = analysed(uri, textOf(uri));
      for (let offset = 0; offset <= analysis.document.text.length; offset++)
        for (const action of actionsAt(analysis, offset))
          seen.set(JSON.stringify([uri, action.title, action.edit]), { analysis, action });
    }
    const kinds = [...seen.values()].map(({ action }) => action.kind);
    assert.ok(kinds.filter((kind) => kind === 'refactor.rewrite').length > 300, `${kinds.length} actions`);
    assert.ok(kinds.includes('quickfix') && kinds.includes('source.fixAll.swingwright'));
  });

  it('leaves a text without a new error, with every comment, and without the finding that it mends', function () {
    this.timeout(240_000);
    let count = 0;
    for (const { analysis, action } of seen.values()) {
      const edits = ownEdits(analysis, action);
      if (edits.length === 0) continue;
      const { text } = analysis.document;
      const after = made(text, edits);
      assertCommentsKept(text, after, action);
      // The reader itself checks each rewrite when it is offered; a part of them is analysed here as a whole.
      count += 1;
      if (action.kind === 'refactor.rewrite' && count % 8 !== 0) continue;
      const again = analysed(analysis.uri, after);
      const old = errorsOf(analysis).map((error) => error.slice(0, error.indexOf(':')));
      const fresh = errorsOf(again).filter((error) => !old.includes(error.slice(0, error.indexOf(':'))));
      assert.deepEqual(fresh, [], `${action.title} in ${analysis.uri}`);
      if (action.kind !== 'quickfix') continue;
      const [mended] = action.diagnostics;
      const finding = analysis.findings.find(
        ({ code, message, range }) =>
          code === mended?.code && message === mended.message && range.start.line === mended.range.start.line,
      );
      assert.ok(finding);
      assert.ok(!isLeft(finding, analysis, again, edits), `${action.title} leaves ${finding.code}`);
    }
  });

  it('neither throws nor corrupts where a text breaks off', function () {
    this.timeout(120_000);
    const place = fc
      .constantFrom(...uris)
      .chain((uri) => fc.tuple(fc.constant(uri), fc.nat({ max: textOf(uri).length }), fc.nat({ max: 60 })));
    fc.assert(
      fc.property(place, ([uri, length, back]) => {
        const analysis = analysed(uri, textOf(uri).slice(0, length));
        for (const action of actionsAt(analysis, Math.max(0, length - back))) {
          const edits = ownEdits(analysis, action);
          const after = made(analysis.document.text, edits);
          assertCommentsKept(analysis.document.text, after, action);
          assert.ok(analysed(uri, after).document.text === after);
        }
      }),
      { numRuns: 60 },
    );
  });
});

type Breakage = readonly [name: string, pattern: RegExp, broken: (match: string, at: number) => string];

function misspelt(word: string, at: number): string {
  const place = 1 + (at % Math.max(1, word.length - 1));
  if (at % 3 === 0) return word.slice(0, place) + word.slice(place + 1);
  if (at % 3 === 1) return `${word.slice(0, place)}x${word.slice(place)}`;
  return word.slice(0, place - 1) + word.charAt(place) + word.charAt(place - 1) + word.slice(place + 1);
}

const breakages: readonly Breakage[] = [
  ['a misspelt key', /(?<=^ *|[{,] *)[a-z_]{4,}(?=:)/gm, misspelt],
  ['a misspelt unit', /(?<=\d )(?:deg|yd|mm|rpm|kg|m\/s)\b/g, misspelt],
  ['a misspelt method', /(?<= by )[a-z]{4,}/g, misspelt],
  ['a misspelt word', /(?<=\d [a-z/]+ )(?:right|left|behind|ahead|forward|closed|down|up)\b/g, misspelt],
  ['a dropped unit', /(?<=\d) (?:deg|cm|mm|m|yd|m\/s)(?= |,|$)/gm, () => ''],
  ['a sign too many', /(?<=: )(?=\d[\d.]* \S+ (?:right|left|behind|ahead))/g, () => '-'],
  ['a decimal comma', /(?<=: \d+)\.(?=\d )/g, () => ','],
  ['a colon without its space', /(?<=^ +[a-z_]+:) (?=\d)/gm, () => ''],
  ['an open quote', /(?<=: )(?=[A-Z][a-z ]+$)/gm, () => '"'],
  ['a lost version', /^(?:swing|student|template|faults): 1\n/gm, () => ''],
  ['a date with strokes', /(?<=^date: \d{4})-(?=\d\d-)/gm, () => '/'],
];

describe('what mends a text made wrong', () => {
  for (const [name, pattern, broken] of breakages) {
    it(`mends ${name}, and touches nothing else`, function () {
      this.timeout(120_000);
      const places = uris.flatMap((uri) =>
        [...textOf(uri).matchAll(pattern)].map((match) => ({ uri, match })),
      );
      assert.ok(places.length > 0, 'no place to break');
      let mends = 0;
      fc.assert(
        fc.property(fc.constantFrom(...places), fc.nat({ max: 30 }), ({ uri, match }, at) => {
          const whole = textOf(uri);
          const text =
            whole.slice(0, match.index) + broken(match[0], at) + whole.slice(match.index + match[0].length);
          const before = analysed(uri, text);
          const known = new Set([...errorsOf(before), ...errorsOf(analysed(uri, whole))]);
          // What the breaking brought: the place itself and a little on both sides.
          const near = before.findings.filter(({ range }) => {
            const start = offsetAt(lineTableOf(text), range.start);
            return Math.abs(start - match.index) < 40;
          });
          for (const finding of near) {
            for (const fix of finding.fixes) {
              if (fix.edits.some((edit) => edit.uri !== uri)) continue;
              const edits = fix.edits
                .map(({ span, text: put }) => ({ ...span, text: put }))
                .sort((a, b) => a.start - b.start);
              const after = analysed(uri, made(text, edits));
              const story = `${finding.code}: ${fix.title}\n${text.slice(match.index - 40, match.index + 60)}`;
              assert.deepEqual(
                errorsOf(after).filter((error) => !known.has(error)),
                [],
                story,
              );
              assert.ok(!isLeft(finding, before, after, edits), story);
              mends += 1;
            }
          }
        }),
        { numRuns: 12 },
      );
      assert.ok(mends > 0, 'nothing was mended');
    });
  }
});
