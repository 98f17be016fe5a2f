// One short item in the status bar for the record in front: conflicts what is due and who signed it off, with the details on hover.
import * as vscode from 'vscode';
import { State, type BaseLanguageClient } from 'vscode-languageclient';
import { lessonsRequest, type LessonState, type LessonsParams, type StateItem } from '../server/protocol.ts';
import type { ReviewChanges } from './review-changes.ts';
import { countedWords } from './lesson-words.ts';
import { signedWords, signOffItem, signOffsOf, type SignOff } from './sign-offs.ts';

/** Milliseconds without a change of the findings before the state is asked for anew. */
const pause = 400;
const mostItems = 5;

export function registerStatusBar(
  client: BaseLanguageClient,
  { onChanged }: ReviewChanges,
): vscode.Disposable {
  const item = vscode.window.createStatusBarItem('swingwright.record', vscode.StatusBarAlignment.Left, 0);
  item.name = vscode.l10n.t('Swing Record');
  item.command = 'workbench.actions.view.problems';
  let asked: vscode.CancellationTokenSource | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  const show = async (): Promise<void> => {
    asked?.cancel();
    asked = new vscode.CancellationTokenSource();
    const { token } = asked;
    const uri = recordInFront();
    if (uri === undefined || client.state !== State.Running) return item.hide();
    const [lesson, signOffs] = await Promise.all([
      stateOf(client, uri, token),
      signOffsOf(client, uri, token),
    ]);
    if (token.isCancellationRequested) return;
    if (lesson === undefined && signOffs.length === 0) return item.hide();
    write(item, lesson, signOffs);
    item.show();
  };
  const later = (): void => {
    clearTimeout(waiting);
    waiting = setTimeout(() => void show(), pause);
  };
  const change = (): void => {
    clearTimeout(waiting);
    void show();
  };
  change();
  return vscode.Disposable.from(
    item,
    { dispose: () => (clearTimeout(waiting), asked?.cancel()) },
    vscode.window.onDidChangeActiveTextEditor(change),
    client.onDidChangeState(change),
    onChanged((uri) => {
      if (uri.toString() === recordInFront()?.toString()) later();
    }),
    vscode.languages.onDidChangeDiagnostics(({ uris }) => {
      const front = recordInFront()?.toString();
      if (uris.some((uri) => uri.toString() === front)) later();
    }),
  );
}

function recordInFront(): vscode.Uri | undefined {
  const uri = vscode.window.activeTextEditor?.document.uri;
  return uri?.path.endsWith('.swing.yaml') === true ? uri : undefined;
}

/** Undefined where the record names no student yet: then nothing is known of other lessons, and the findings say the rest. */
async function stateOf(
  client: BaseLanguageClient,
  uri: vscode.Uri,
  token: vscode.CancellationToken,
): Promise<LessonState | undefined> {
  const params: LessonsParams = { uri: uri.toString() };
  try {
    const lessons = await client.sendRequest<readonly LessonState[] | null>(lessonsRequest, params, token);
    // The server may spell the address another way than the editor.
    return lessons?.find((lesson) => vscode.Uri.parse(lesson.uri).toString() === uri.toString());
  } catch {
    return undefined;
  }
}

function write(
  item: vscode.StatusBarItem,
  lesson: LessonState | undefined,
  signOffs: readonly SignOff[],
): void {
  const { conflicts = [], plan = [], due = [] } = lesson ?? {};
  const counted = lesson === undefined ? [] : countedWords({ ...lesson, errors: 0, plan: [] });
  const isQuiet = lesson !== undefined && counted.length === 0;
  const icon = conflicts.length > 0 ? 'warning' : due.length > 0 ? 'clock' : 'pass';
  const signed = signOffs.length === 0 ? [] : [signedWords(signOffs)];
  const words = [...(isQuiet ? [vscode.l10n.t('No conflict')] : counted), ...signed].join(', ');
  item.text = `$(${icon}) ${withoutIcons(words)}`;
  item.accessibilityInformation = { label: vscode.l10n.t('Swing record: {0}', words) };
  const text = new vscode.MarkdownString();
  section(text, vscode.l10n.t('Entries that do not fit'), conflicts);
  section(text, vscode.l10n.t('Planned'), plan);
  section(text, vscode.l10n.t('Due'), due);
  if (text.value === '' && lesson !== undefined)
    text.appendText(vscode.l10n.t('No entry is in conflict, and nothing is due.')).appendMarkdown('\n\n');
  section(text, vscode.l10n.t('Sign-offs'), signOffs.map(signOffItem));
  item.tooltip = text;
}

/** As plain text: nothing that a file says can become a link. */
function section(
  text: vscode.MarkdownString,
  title: string,
  items: readonly Pick<StateItem, 'words'>[],
): void {
  if (items.length === 0) return;
  text.appendMarkdown(`**${title}**\n\n`);
  for (const { words } of items.slice(0, mostItems))
    text.appendMarkdown('- ').appendText(words).appendMarkdown('\n');
  if (items.length > mostItems)
    text.appendMarkdown(`- ${vscode.l10n.t('{0} more', items.length - mostItems)}\n`);
  text.appendMarkdown('\n');
}

/** A name such as `$(bug)` is shown as it is. */
function withoutIcons(words: string): string {
  return words.replaceAll('$(', '\\$(');
}
