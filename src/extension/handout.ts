// The commands that show a handout beside its record, and that write one as HTML or PDF; gathers and sets nothing itself.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import {
  handoutRequest,
  type HandoutAnswer,
  type HandoutAudience,
  type HandoutFormat,
  type HandoutParams,
} from '../server/handout-protocol.ts';
import type { Pages } from './pages.ts';

/** What other code may say beforehand, so that nobody is asked. */
interface Asked {
  readonly audience?: HandoutAudience;
  readonly format?: HandoutFormat;
  readonly health?: 'named' | 'left out';
  readonly to?: vscode.Uri;
}

/** @param formats those that can be written where the extension runs, the most usual first */
export function registerHandouts(
  client: BaseLanguageClient,
  pages: Pages,
  formats: readonly HandoutFormat[],
): vscode.Disposable {
  return vscode.Disposable.from(
    vscode.commands.registerCommand('swingwright.showHandout', (given: unknown, asked?: Asked) =>
      withRecord(given, (uri) => show(pages, uri, asked ?? {})),
    ),
    vscode.commands.registerCommand('swingwright.writeHandout', (given: unknown, asked?: Asked) =>
      withRecord(given, (uri) => write(client, uri, formats, asked ?? {})),
    ),
  );
}

async function withRecord(given: unknown, act: (uri: vscode.Uri) => Promise<void>): Promise<void> {
  const uri = given instanceof vscode.Uri ? given : vscode.window.activeTextEditor?.document.uri;
  if (uri?.path.endsWith('.swing.yaml') === true) return act(uri);
  void vscode.window.showInformationMessage(vscode.l10n.t('Open a record that ends in .swing.yaml first.'));
}

async function show(pages: Pages, uri: vscode.Uri, asked: Asked): Promise<void> {
  const audience = asked.audience ?? (await pickAudience());
  if (audience === undefined) return;
  const params: HandoutParams = {
    uri: uri.toString(),
    audience,
    format: 'html',
    health: asked.health ?? 'left out',
  };
  await pages.show(
    { request: handoutRequest, params },
    {
      waiting: setting(),
      titled: (title) => vscode.l10n.t('Handout of {0}', title),
      at: { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true },
    },
  );
}

async function write(
  client: BaseLanguageClient,
  uri: vscode.Uri,
  formats: readonly HandoutFormat[],
  asked: Asked,
): Promise<void> {
  const audience = asked.audience ?? (await pickAudience());
  if (audience === undefined) return;
  const format = asked.format ?? (await pickFormat(formats));
  if (format === undefined) return;
  const health = asked.health ?? (asked.to === undefined ? await pickHealth() : 'left out');
  if (health === undefined) return;
  const answer = await ask(client, { uri: uri.toString(), audience, format, health });
  if (answer === undefined) return;
  const to = asked.to ?? (await pickPlace(uri, answer.fileName, format));
  if (to === undefined) return;
  try {
    await vscode.workspace.fs.writeFile(to, bytesOf(answer));
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    void vscode.window.showErrorMessage(vscode.l10n.t('The handout could not be written: {0}', reason));
    return;
  }
  if (answer.kind === 'pdf' && !answer.isWhole)
    void vscode.window.showWarningMessage(
      vscode.l10n.t('The PDF has Latin, Greek and Cyrillic letters only; the HTML has all of them.'),
    );
  const open = vscode.l10n.t('Open');
  // Not awaited: the message may stay for as long as it likes.
  void vscode.window
    .showInformationMessage(vscode.l10n.t('Wrote {0}', vscode.workspace.asRelativePath(to)), open)
    .then((chosen) => (chosen === open ? vscode.env.openExternal(to) : undefined));
}

const setting = (): string => vscode.l10n.t('Setting the handout…');

type Written = Exclude<HandoutAnswer, { readonly kind: 'refused' }>;

async function ask(client: BaseLanguageClient, params: HandoutParams): Promise<Written | undefined> {
  const location = { location: vscode.ProgressLocation.Window, title: setting() };
  const answer = await vscode.window.withProgress(location, () =>
    client.sendRequest<HandoutAnswer>(handoutRequest, params),
  );
  if (answer.kind !== 'refused') return answer;
  void vscode.window.showWarningMessage(answer.words);
  return undefined;
}

function bytesOf(answer: Written): Uint8Array {
  if (answer.kind === 'page') return new TextEncoder().encode(answer.html);
  return Uint8Array.from(atob(answer.base64), (letter) => letter.charCodeAt(0));
}

async function pickAudience(): Promise<HandoutAudience | undefined> {
  const items = [
    {
      label: vscode.l10n.t('For the student'),
      detail: vscode.l10n.t('One page: what was seen, why, what to change, how it feels'),
      audience: 'student' as const,
    },
    {
      label: vscode.l10n.t('For the file'),
      detail: vscode.l10n.t('Two pages, with verdicts, numbers and notes'),
      audience: 'file' as const,
    },
  ];
  const placeHolder = vscode.l10n.t('Who is the handout for?');
  return (await vscode.window.showQuickPick(items, { placeHolder }))?.audience;
}

async function pickFormat(formats: readonly HandoutFormat[]): Promise<HandoutFormat | undefined> {
  if (formats.length === 1) return formats[0];
  const items = formats.map((format) => ({ label: format.toUpperCase(), format }));
  return (await vscode.window.showQuickPick(items, { placeHolder: vscode.l10n.t('As which kind of file?') }))
    ?.format;
}

async function pickHealth(): Promise<'named' | 'left out' | undefined> {
  const items = [
    { label: vscode.l10n.t('Leave notes on injuries out'), health: 'left out' as const },
    { label: vscode.l10n.t('Name the injuries that the changes load'), health: 'named' as const },
  ];
  const placeHolder = vscode.l10n.t('May the handout tell of injuries?');
  return (await vscode.window.showQuickPick(items, { placeHolder }))?.health;
}

function pickPlace(
  record: vscode.Uri,
  name: string,
  format: HandoutFormat,
): Thenable<vscode.Uri | undefined> {
  return vscode.window.showSaveDialog({
    defaultUri: vscode.Uri.joinPath(record, '..', name),
    filters: { [format.toUpperCase()]: [format] },
  });
}
