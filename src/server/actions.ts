// Answers which code actions there are at a place; what each of them edits is not known here.
import type { Connection } from 'vscode-languageserver';
import { findReviewed } from '../analysis/review-files.ts';
import { findActions, hasLostRecord, isAtPart } from '../language/index.ts';
import { mutable } from './mutable.ts';
import { nextNow } from './next.ts';
import { proposeAction } from './propose.ts';
import type { OutcomeOptions } from './outcome.ts';

export const actionKinds = ['quickfix', 'refactor.rewrite', 'source.fixAll.swingwright'] as const;

export interface ActionOptions extends OutcomeOptions {
  readonly normal: (uri: string) => string;
  /** The address of the page on a finding code, where the client has one. */
  readonly explanation: (code: string) => string | undefined;
}

export function serveActions({
  connection,
  files,
  desk,
  client,
  answer,
  signalOf,
  normal,
  explanation,
}: ActionOptions): void {
  const find: Parameters<Connection['onCodeAction']>[0] = async ({ textDocument, range, context }, token) => {
    const { only } = context;
    const isWanted = (kind: string): boolean =>
      only === undefined || only.some((wanted) => wanted === '' || `${kind}.`.startsWith(`${wanted}.`));
    if (!actionKinds.some(isWanted)) return [];
    const isAsked =
      isWanted('refactor.rewrite') &&
      (await answer(textDocument.uri, token, ({ analysis }) => isAtPart(analysis, range)));
    const next = isAsked ? await nextNow(desk, normal(textDocument.uri), signalOf(token)) : [];
    const renamed = isWanted('quickfix')
      ? await answer(textDocument.uri, token, ({ analysis: { uri, document, ...analysis } }) =>
          document.kind === 'review' && hasLostRecord({ uri, document, ...analysis }, range)
            ? findReviewed({ uri, document }, { load: files.load, list: files.list, signal: signalOf(token) })
            : undefined,
        )
      : undefined;
    const proposed = isWanted('refactor.rewrite')
      ? await answer(textDocument.uri, token, (result) =>
          proposeAction(result, textDocument.uri, range, client(), signalOf(token)),
        )
      : [];
    const found = await answer(textDocument.uri, token, ({ analysis, version }) =>
      mutable(
        findActions(analysis, {
          next,
          renamed: renamed?.uri,
          range,
          version,
          edits: client().snippets ? 'snippet' : 'plain',
          explanation,
          textOf: (uri) => {
            const state = files.get(uri);
            return state?.kind === 'text' ? state.text : undefined;
          },
        }).filter(({ kind }) => isWanted(kind)),
      ),
    );
    return found === null ? null : [...found, ...(proposed ?? [])];
  };
  connection.onCodeAction(find);
}
