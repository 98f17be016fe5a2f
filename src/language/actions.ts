// All that can be done at a place: the mends that findings bring with them, accepting a finding with a reason, and rewrites; makes up no edit of its own.
import { mendsOf } from '../analysis/mends.ts';
import type { NextEntry } from '../analysis/next-entries.ts';
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import type { Analysis, Finding } from '../analysis/result.ts';
import type { Fix } from '../checks/check.ts';
import { findAcceptance } from './acceptance.ts';
import { toDiagnostic, type ExplanationAddress } from './diagnostics.ts';
import { nameRecordAnew } from './lost-record.ts';
import { addKeysToMeasureNext } from './measure-next.ts';
import { touches } from './places.ts';
import type { Rewrite } from './rewrite.ts';
import { rewritesAt } from './rewrites.ts';
import type { CodeAction, Edit, SnippetEdit, TextRange } from './shapes.ts';

export interface ActionRequest {
  readonly range: TextRange;
  /** The document's version, so that an editor can refuse an edit that comes too late; null where it is not known. */
  readonly version: number | null;
  /** Whether the editor can put the cursor on a part of an edit for the reader to type over. */
  readonly edits: 'plain' | 'snippet';
  readonly explanation: ExplanationAddress;
  /** The text of another file, for mends that reach into it; undefined where it is not at hand. */
  readonly textOf: (uri: string) => string | undefined;
  /** What the record still has to measure, where somebody asked. */
  readonly next?: readonly NextEntry[];
  /** Of a review whose record was renamed: the record that it fits, where somebody looked for it. */
  readonly renamed?: string | undefined;
}

export function findActions(analysis: Analysis, request: ActionRequest): CodeAction[] {
  const here = analysis.findings.filter((finding) => touches(finding.range, request.range));
  const mends = here.flatMap((finding) =>
    [...finding.fixes, ...nameRecordAnew(analysis, finding, request.renamed)].flatMap((fix) =>
      fixAction(analysis, finding, fix, request),
    ),
  );
  // A mend of a finding may be the very rewrite that is offered anywhere.
  const rewrites = rewritesAt(analysis, request.range).filter(({ title }) =>
    mends.every((mend) => mend.title !== title),
  );
  return [
    ...mends,
    ...here.flatMap((finding) => acceptAction(analysis, finding, request)),
    ...rewrites.map((rewrite) => rewriteAction(analysis, rewrite, request)),
    ...addKeysToMeasureNext(analysis, request.next ?? [], request.range).map((rewrite) =>
      rewriteAction(analysis, rewrite, request),
    ),
    ...mendAllAction(analysis, request),
  ];
}

/** What the command line's `fix` does in its first round; an editor can run it whenever a file is saved. */
function mendAllAction(analysis: Analysis, { version }: ActionRequest): CodeAction[] {
  const mends = mendsOf(analysis, () => true);
  if (mends.length === 0) return [];
  const table = lineTableOf(analysis.document.text);
  const edits = mends
    .flatMap(({ fix }) => fix.edits)
    .map(({ span, text }): Edit => ({ range: rangeOf(table, span), newText: text }));
  return [
    {
      title: `Make every obvious mend in this file: ${mends.length}`,
      kind: 'source.fixAll.swingwright',
      isPreferred: false,
      diagnostics: [],
      edit: { documentChanges: [{ textDocument: { uri: analysis.uri, version }, edits }] },
    },
  ];
}

function rewriteAction(analysis: Analysis, { title, edits }: Rewrite, request: ActionRequest): CodeAction {
  const table = lineTableOf(analysis.document.text);
  const made = edits.map(({ span, text, placeholder }): Edit | SnippetEdit => {
    const range = rangeOf(table, span);
    if (request.edits === 'plain' || placeholder === undefined) return { range, newText: text };
    const at = text.indexOf(placeholder);
    return snippetEdit(range, text.slice(0, at), placeholder, text.slice(at + placeholder.length));
  });
  return {
    title,
    kind: 'refactor.rewrite',
    isPreferred: false,
    diagnostics: [],
    edit: {
      documentChanges: [{ textDocument: { uri: analysis.uri, version: request.version }, edits: made }],
    },
  };
}

function snippetEdit(range: TextRange, before: string, typedOver: string, after: string): SnippetEdit {
  const value = `${escapeSnippet(before)}\${1:${escapeSnippet(typedOver)}}${escapeSnippet(after)}`;
  return { range, snippet: { kind: 'snippet', value } };
}

function fixAction(analysis: Analysis, finding: Finding, fix: Fix, request: ActionRequest): CodeAction[] {
  const changes = new Map<string, Edit[]>();
  for (const { uri, span, text } of fix.edits) {
    const target = uri === analysis.uri ? analysis.document.text : request.textOf(uri);
    if (target === undefined) return [];
    const edit = { range: rangeOf(lineTableOf(target), span), newText: text };
    changes.set(uri, [...(changes.get(uri) ?? []), edit]);
  }
  return [action(analysis, finding, fix.title, { isPreferred: fix.preferred, changes, request })];
}

function acceptAction(analysis: Analysis, finding: Finding, request: ActionRequest): CodeAction[] {
  const acceptance = findAcceptance(analysis, finding);
  if (acceptance === undefined) return [];
  const { range, before, reason, after, count } = acceptance;
  const edit: Edit | SnippetEdit =
    request.edits === 'plain'
      ? { range, newText: before + reason + after }
      : snippetEdit(range, before, reason, after);
  const changes = new Map([[analysis.uri, [edit]]]);
  const what = count > 1 ? `all ${count} ${finding.code} on this line` : `${finding.code} here`;
  const title = `Accept ${what} with a reason`;
  return [action(analysis, finding, title, { isPreferred: false, changes, request })];
}

interface ActionParts {
  readonly isPreferred: boolean;
  readonly changes: ReadonlyMap<string, readonly (Edit | SnippetEdit)[]>;
  readonly request: ActionRequest;
}

function action(
  { uri: own }: Analysis,
  finding: Finding,
  title: string,
  { isPreferred, changes, request }: ActionParts,
): CodeAction {
  return {
    title,
    kind: 'quickfix',
    isPreferred,
    diagnostics: [toDiagnostic(finding, request.explanation)],
    edit: {
      documentChanges: [...changes].map(([uri, edits]) => ({
        textDocument: { uri, version: uri === own ? request.version : null },
        edits,
      })),
    },
  };
}

function escapeSnippet(text: string): string {
  return text.replace(/[\\$}]/g, '\\$&');
}
