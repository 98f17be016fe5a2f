// What a client says of itself when it introduces itself, with what holds where it says nothing.
import type { ClientCapabilities, InitializeParams } from 'vscode-languageserver';
import { themeNamed, type ThemeName } from '../language/index.ts';
import type { InitializationOptions } from './protocol.ts';

/** What is known of the client once it has introduced itself. */
export interface Client {
  readonly reads: boolean;
  readonly lists: boolean;
  readonly configuration: boolean;
  readonly registersConfiguration: boolean;
  /** Not where it watches by itself, as it says. */
  readonly registersWatchers: boolean;
  readonly refreshesHints: boolean;
  readonly snippets: boolean;
  readonly proposesSnippets: boolean;
  readonly asksAgain: boolean;
  readonly sheets: boolean;
  /** The colours of the pictures in hovers; undefined where it shows none. */
  readonly hoverPictures: ThemeName | undefined;
  readonly explanations: string | undefined;
  readonly quantities: string | undefined;
  readonly pages: string | undefined;
  readonly opener: string | undefined;
  readonly proposer: string | undefined;
  readonly refreshesLenses: boolean;
  readonly capabilities: ClientCapabilities;
}

export function introduced({
  capabilities,
  initializationOptions,
}: Pick<InitializeParams, 'capabilities' | 'initializationOptions'>): Client {
  const said = (initializationOptions ?? {}) as InitializationOptions;
  const { workspace, textDocument } = capabilities;
  return {
    reads: said.reads === true,
    lists: said.lists === true,
    configuration: workspace?.configuration === true,
    registersConfiguration: workspace?.didChangeConfiguration?.dynamicRegistration === true,
    registersWatchers:
      said.watches !== true && workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    refreshesHints: workspace?.inlayHint?.refreshSupport === true,
    snippets: workspace?.workspaceEdit?.snippetEditSupport === true,
    proposesSnippets: textDocument?.completion?.completionItem?.snippetSupport === true,
    asksAgain: said.asksAgain === true,
    sheets: said.sheets === true,
    hoverPictures: themeNamed(said.hoverPictures),
    explanations: typeof said.explanations === 'string' ? said.explanations : undefined,
    quantities: typeof said.quantities === 'string' ? said.quantities : undefined,
    pages: typeof said.pages === 'string' ? said.pages : undefined,
    opener: typeof said.opener === 'string' ? said.opener : undefined,
    proposer: typeof said.proposer === 'string' ? said.proposer : undefined,
    refreshesLenses: workspace?.codeLens?.refreshSupport === true,
    capabilities,
  };
}
