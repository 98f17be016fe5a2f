// The view of students, their lessons, and how each stands; what there is and how it stands comes from the server, for what is seen.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import {
  lessonsRequest,
  studentsRequest,
  type LessonState,
  type LessonsParams,
  type ListedStudent,
  type StateItem,
} from '../server/protocol.ts';
import { countedWords } from './lesson-words.ts';

export const lessonsView = 'swingwright.lessons';
/** Set where the open folders hold a student or a lesson; the view is hidden elsewhere. */
const contextKey = 'swingwright.hasLessons';
/** Milliseconds without a change before what is seen is asked for anew. */
const pause = 500;

type Node =
  | { readonly kind: 'student'; readonly student: ListedStudent }
  | { readonly kind: 'lesson'; readonly student: ListedStudent; readonly lesson: LessonState }
  | { readonly kind: 'state'; readonly icon: string; readonly words: string; readonly item: StateItem }
  | { readonly kind: 'nothing'; readonly words: string };

export function registerLessons(
  client: BaseLanguageClient,
  watchers: readonly vscode.FileSystemWatcher[],
): vscode.Disposable {
  const changed = new vscode.EventEmitter<Node | undefined>();
  const view = vscode.window.createTreeView(lessonsView, {
    treeDataProvider: {
      onDidChangeTreeData: changed.event,
      getTreeItem: itemOf,
      getChildren: (node) => childrenOf(client, node),
    },
    showCollapseAll: true,
  });
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const refresh = (): void => {
    clearTimeout(waiting);
    waiting = setTimeout(() => changed.fire(undefined), pause);
  };
  const ifOurs = ({ uris }: vscode.DiagnosticChangeEvent): void => {
    if (view.visible && uris.some(({ path }) => path.endsWith('.yaml'))) refresh();
  };
  const look = (): void => {
    void showView();
    refresh();
  };
  void showView();
  return vscode.Disposable.from(
    view,
    changed,
    { dispose: () => clearTimeout(waiting) },
    ...watchers.flatMap((watcher) => [
      watcher.onDidCreate(look),
      watcher.onDidDelete(look),
      watcher.onDidChange(refresh),
    ]),
    vscode.workspace.onDidChangeWorkspaceFolders(look),
    // What stands in an editor counts before it is saved.
    vscode.languages.onDidChangeDiagnostics(ifOurs),
    client.onDidChangeState(refresh),
    vscode.commands.registerCommand('swingwright.lessons.refresh', () => changed.fire(undefined)),
    vscode.commands.registerCommand('swingwright.lessons.open', (node: unknown) =>
      open(node, vscode.ViewColumn.Active),
    ),
    vscode.commands.registerCommand('swingwright.lessons.openToSide', (node: unknown) =>
      open(node, vscode.ViewColumn.Beside),
    ),
  );
}

async function showView(): Promise<void> {
  const [one] = await vscode.workspace.findFiles('**/*.{student,swing}.yaml', '**/{node_modules,.git}/**', 1);
  await vscode.commands.executeCommand('setContext', contextKey, one !== undefined);
}

async function childrenOf(client: BaseLanguageClient, node: Node | undefined): Promise<Node[]> {
  if (node === undefined) {
    const students = await client.sendRequest<readonly ListedStudent[]>(studentsRequest, {});
    return students.map((student) => ({ kind: 'student', student }));
  }
  if (node.kind === 'student') return lessonsOf(client, node.student);
  if (node.kind !== 'lesson') return [];
  const { conflicts, plan, due } = node.lesson;
  const of = (icon: string, items: readonly StateItem[], words: (one: string) => string): Node[] =>
    items.map((item) => ({ kind: 'state', icon, words: words(item.words), item }));
  return [
    ...of('warning', conflicts, (words) => words),
    ...of('checklist', plan, (words) => vscode.l10n.t('Planned: {0}', words)),
    ...of('clock', due, (words) => vscode.l10n.t('Due: {0}', words)),
  ];
}

async function lessonsOf(client: BaseLanguageClient, student: ListedStudent): Promise<Node[]> {
  const params: LessonsParams = { uri: student.uri };
  const lessons = await client.sendRequest<readonly LessonState[] | null>(lessonsRequest, params);
  if (lessons === null || lessons.length === 0)
    return [{ kind: 'nothing', words: vscode.l10n.t('No lessons yet') }];
  return [...lessons].reverse().map((lesson) => ({ kind: 'lesson', student, lesson }));
}

function itemOf(node: Node): vscode.TreeItem {
  switch (node.kind) {
    case 'student':
      return studentItem(node.student);
    case 'lesson':
      return lessonItem(node.student, node.lesson);
    case 'state': {
      const item = new vscode.TreeItem(node.words);
      item.tooltip = node.words;
      item.iconPath = icon(node.icon);
      item.contextValue = 'state';
      item.command = opening(node);
      return item;
    }
    case 'nothing':
      return new vscode.TreeItem(node.words);
  }
}

function studentItem({ uri, name }: ListedStudent): vscode.TreeItem {
  const item = new vscode.TreeItem(name, vscode.TreeItemCollapsibleState.Collapsed);
  item.id = uri;
  item.iconPath = icon('person');
  item.tooltip = vscode.workspace.asRelativePath(vscode.Uri.parse(uri));
  item.accessibilityInformation = { label: vscode.l10n.t('Student {0}', name) };
  item.contextValue = 'student';
  return item;
}

function lessonItem(student: ListedStudent, lesson: LessonState): vscode.TreeItem {
  const { uri, date, club, conflicts, plan, due } = lesson;
  const file = vscode.workspace.asRelativePath(vscode.Uri.parse(uri));
  const title = [date, club].filter((word) => word !== undefined && word !== '').join(' ') || file;
  const states = countedWords(lesson);
  const isLeaf = conflicts.length + plan.length + due.length === 0;
  const { Collapsed, None } = vscode.TreeItemCollapsibleState;
  const item = new vscode.TreeItem(title, isLeaf ? None : Collapsed);
  item.id = `${student.uri} ${uri}`;
  item.description = states.join(', ');
  item.tooltip = [file, ...states].join('\n');
  item.iconPath = lessonIcon(lesson);
  item.accessibilityInformation = {
    label: vscode.l10n.t('Lesson {0}, {1}', title, states.join(', ') || vscode.l10n.t('nothing open')),
  };
  item.contextValue = 'lesson';
  item.command = opening({ kind: 'lesson', student, lesson });
  return item;
}

function lessonIcon({ errors, conflicts, plan, due }: LessonState): vscode.ThemeIcon {
  if (errors > 0) return icon('error', 'list.errorForeground');
  if (conflicts.length > 0) return icon('warning', 'list.warningForeground');
  if (due.length > 0) return icon('clock');
  return icon(plan.length > 0 ? 'checklist' : 'note');
}

function icon(name: string, color?: string): vscode.ThemeIcon {
  return new vscode.ThemeIcon(name, color === undefined ? undefined : new vscode.ThemeColor(color));
}

function opening(node: Node): vscode.Command {
  return { command: 'swingwright.lessons.open', title: vscode.l10n.t('Open'), arguments: [node] };
}

/** Of whatever a menu or a click hands over. */
async function open(given: unknown, viewColumn: vscode.ViewColumn): Promise<void> {
  const node = given as Partial<Node> | undefined;
  const place =
    node?.kind === 'student'
      ? { uri: node.student?.uri, range: undefined }
      : node?.kind === 'lesson'
        ? { uri: node.lesson?.uri, range: undefined }
        : node?.kind === 'state'
          ? node.item
          : undefined;
  if (place?.uri === undefined) return;
  const { range } = place;
  await vscode.window.showTextDocument(vscode.Uri.parse(place.uri), {
    viewColumn,
    preview: true,
    ...(range && {
      selection: new vscode.Range(
        range.start.line,
        range.start.character,
        range.end.line,
        range.end.character,
      ),
    }),
  });
}
