// One short item in the status bar for the record in front: conflicts and what is due, with the details on hover.
import * as vscode from 'vscode';
import { State, type BaseLanguageClient } from 'vscode-languageclient';
import { lessonsRequest, type LessonState, type LessonsParams, type StateItem } from '../server/protocol.ts';
import { countedWords } from './lesson-words.ts';

/** Milliseconds without a change of the findings before the state is asked for anew. */
const pause = 400;
const mostItems = 5;

export function registerStatusBar(client: BaseLanguageClient): vscode.Disposable {
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
    const lesson = await stateOf(client, uri, token);
    if (token.isCancellationRequested) return;
    if (lesson === undefined) return item.hide();
    write(item, lesson);
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

function write(item: vscode.StatusBarItem, lesson: LessonState): void {
  const { conflicts, plan, due } = lesson;
  const icon = conflicts.length > 0 ? 'warning' : due.length > 0 ? 'clock' : 'pass';
  const words = countedWords({ ...lesson, errors: 0, plan: [] }).join(', ');
  item.text = `$(${icon}) ${words === '' ? vscode.l10n.t('No conflict') : words}`;
  item.accessibilityInformation = {
    label: vscode.l10n.t('Swing record: {0}', words === '' ? vscode.l10n.t('no conflict') : words),
  };
  const text = new vscode.MarkdownString();
  section(text, vscode.l10n.t('Entries that do not fit'), conflicts);
  section(text, vscode.l10n.t('Planned'), plan);
  section(text, vscode.l10n.t('Due'), due);
  if (text.value === '') text.appendText(vscode.l10n.t('No entry is in conflict, and nothing is due.'));
  item.tooltip = text;
}

/** As plain text: nothing that a file says can become a link. */
function section(text: vscode.MarkdownString, title: string, items: readonly StateItem[]): void {
  if (items.length === 0) return;
  text.appendMarkdown(`**${title}**\n\n`);
  for (const { words } of items.slice(0, mostItems))
    text.appendMarkdown('- ').appendText(words).appendMarkdown('\n');
  if (items.length > mostItems)
    text.appendMarkdown(`- ${vscode.l10n.t('{0} more', items.length - mostItems)}\n`);
  text.appendMarkdown('\n');
}
