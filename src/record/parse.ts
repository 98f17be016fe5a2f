// The one way from a file's text to its typed document; never throws, and opens no other file.
import type { Problem } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import { builtIn, type Registry } from '../registry/registry.ts';
import type { FileKind, SwingwrightDocument } from './document.ts';
import type { Reader } from './entry.ts';
import { readFaults } from './faults.ts';
import { versionKeys } from './kind.ts';
import { headersOf } from './known-keys.ts';
import { lineOf, lineStartsOf } from './lines.ts';
import { findEmpty } from './no-value.ts';
import { outlineOf } from './outline.ts';
import { readTree } from './read-tree.ts';
import { readReview } from './review.ts';
import { checkShape } from './shape.ts';
import { silencesOf } from './silence.ts';
import { readStudent } from './student.ts';
import { readSwing } from './swing.ts';
import { readTemplate } from './template.ts';
import type { ScalarTree, Tree } from './tree.ts';
import { readWorkspace } from './workspace.ts';
import { longestText } from './yaml.ts';

/** Reads a file of this kind. `registry` holds what the workspace adds to the built-in one. */
export function parseDocument(
  kind: FileKind,
  text: string,
  registry: Registry = builtIn,
): SwingwrightDocument {
  const read = readTree(text, headersOf(kind));
  const reader: Reader = { problems: [], registry };
  const tree = read.tree ?? nothing;
  const isTooLong = text.length > longestText;
  const parts = readKind(kind, tree, reader);
  const versionKey = versionKeys[kind];
  const shape = isTooLong ? [] : checkRoot(kind, tree, text, registry);
  const hints = read.isDamaged ? [] : missingHints(kind, tree);
  const lineStarts = isTooLong ? [0] : lineStartsOf(text);
  return {
    ...parts,
    text,
    problems: sift([read.problems, reader.problems, shape, hints].flat(), read.isDamaged, lineStarts),
    silences: silencesOf(text, read.comments, lineStarts),
    outline: outlineOf(tree, text, versionKey),
  };
}

const nothing: ScalarTree = {
  kind: 'scalar',
  span: { start: 0, end: 0 },
  plain: null,
  source: '',
  offset: undefined,
  size: 1,
};

function readKind(kind: FileKind, tree: Tree, reader: Reader) {
  switch (kind) {
    case 'swing':
      return readSwing(tree, reader);
    case 'student':
      return readStudent(tree, reader);
    case 'template':
      return readTemplate(tree, reader);
    case 'faults':
      return readFaults(tree, reader);
    case 'review':
      return readReview(tree);
    case 'workspace':
      return readWorkspace(tree, reader);
  }
}

function checkRoot(kind: FileKind, tree: Tree, text: string, registry: Registry): readonly Problem[] {
  const first = quote(`${versionKeys[kind]}: 1`);
  if (tree.kind === 'map') {
    const problems: Problem[] = [...checkShape(kind, tree, registry)];
    findEmpty(tree, problems);
    return problems;
  }
  if (tree.kind === 'scalar' && tree.plain === null) {
    const span = { start: 0, end: 0 };
    return [{ code: 'missing-key', span, found: 'an empty file', expected: `${first} in the first line` }];
  }
  const end = text.indexOf('\n', tree.span.start);
  const span = { start: tree.span.start, end: end === -1 ? tree.span.end : Math.min(end, tree.span.end) };
  const found = tree.kind === 'list' ? 'a list' : quote(tree.source);
  return [{ code: 'wrong-shape', span, found, expected: `keys with values, first of all ${first}` }];
}

/** What a record needs before anything is computed from it, and what may still come in the middle of a lesson. */
function missingHints(kind: FileKind, tree: Tree): readonly Problem[] {
  if (kind !== 'swing' || tree.kind !== 'map') return [];
  const version = tree.pairs.get('swing');
  if (version === undefined) return [];
  const missing = ['student', 'date', 'club'].filter((key) => !tree.pairs.has(key));
  if (missing.length === 0) return [];
  const keys = missing.map(quote).join(', ');
  return [
    {
      code: 'no-value-yet',
      span: version.keySpan,
      found: `no ${keys} yet`,
      expected: 'the record to name them when they are known',
    },
  ];
}

/** Of one code; nobody reads more, and an editor would choke on them. One code never hides another. */
const mostProblems = 1001;

/** One problem for one cause, in the order of the text: what YAML could not read says nothing of shape or golf. */
function sift(
  problems: readonly Problem[],
  isDamaged: boolean,
  lineStarts: readonly number[],
): readonly Problem[] {
  const kept: Problem[] = [];
  const seen = new Set<string>();
  const counts = new Map<string, number>();
  const syntaxLines = new Set<number>();
  for (const problem of problems) {
    const isSyntax = problem.code === 'yaml-syntax';
    const place = `${problem.code} ${problem.span.start} ${problem.span.end}`;
    if (seen.has(place) || (isDamaged && problem.code === 'missing-key')) continue;
    seen.add(place);
    // The problems of YAML come first.
    const line = isDamaged ? lineOf(lineStarts, problem.span.start) : -1;
    if (syntaxLines.has(line)) continue;
    if (isSyntax) syntaxLines.add(line);
    const count = counts.get(problem.code) ?? 0;
    if (count === mostProblems) continue;
    counts.set(problem.code, count + 1);
    kept.push(problem);
  }
  return kept.sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
}
