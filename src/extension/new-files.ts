// The commands that make a practice folder, a student and the next record: ask what is needed, write no file that is there, open the new one.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import {
  checkAnswerRequest,
  clubsRequest,
  newPracticeRequest,
  newRecordRequest,
  newStudentRequest,
  proposedClubsRequest,
  type CheckAnswerParams,
  type ClubsParams,
  type ClubsResult,
  type NewFilesResult,
  type NewFileText,
  type NewPracticeParams,
  type NewRecordParams,
  type NewStudentParams,
} from '../server/protocol.ts';

/** Answers that a key binding or a task may give beforehand; nobody is asked for those. */
interface Given {
  readonly folder?: string | vscode.Uri;
  readonly name?: string;
  readonly hand?: 'left' | 'right';
  readonly stature?: string;
  readonly born?: string;
  readonly clubs?: readonly string[];
  readonly injuries?: readonly string[];
  readonly student?: string | vscode.Uri;
  readonly club?: string;
  readonly date?: string;
}

export function registerNewFiles(client: BaseLanguageClient): vscode.Disposable {
  return vscode.Disposable.from(
    vscode.commands.registerCommand('swingwright.newPractice', (given: unknown) =>
      newPractice(client, givenBy(given)),
    ),
    vscode.commands.registerCommand('swingwright.newStudent', (given: unknown) =>
      newStudent(client, givenBy(given)),
    ),
    vscode.commands.registerCommand('swingwright.newRecord', (given: unknown) =>
      newRecord(client, given instanceof vscode.Uri ? { student: given } : givenBy(given)),
    ),
  );
}

function givenBy(given: unknown): Given {
  if (given instanceof vscode.Uri) return { folder: given };
  return typeof given === 'object' && given !== null ? given : {};
}

async function newPractice(client: BaseLanguageClient, given: Given): Promise<void> {
  const folder = (given.folder ?? (await chooseFolder()))?.toString();
  if (folder === undefined) return;
  const name = given.name ?? folder.slice(folder.lastIndexOf('/') + 1);
  const params: NewPracticeParams = { folder, name: decodeURIComponent(name) };
  const { files } = await client.sendRequest<NewFilesResult>(newPracticeRequest, params);
  const written = await writeNew(files);
  if (written.length === 0) {
    void vscode.window.showInformationMessage(vscode.l10n.t('All files of a practice are there already.'));
    return;
  }
  await open(written[0]!);
  if (given.folder !== undefined) return;
  const add = vscode.l10n.t('Add a Student');
  const said = vscode.l10n.t('Made {0} files. What was there already is as it was.', written.length);
  if ((await vscode.window.showInformationMessage(said, add)) === add) await newStudent(client, { folder });
}

async function newStudent(client: BaseLanguageClient, given: Given): Promise<void> {
  const folder = (given.folder ?? (await choosePractice()))?.toString();
  if (folder === undefined) return;
  const params = await askForStudent(client, given, folder);
  if (params === undefined) return;
  const { files } = await client.sendRequest<NewFilesResult>(newStudentRequest, params);
  const [written] = await writeNew(files);
  if (written !== undefined) await open(written);
}

async function askForStudent(
  client: BaseLanguageClient,
  given: Given,
  folder: string,
): Promise<NewStudentParams | undefined> {
  const name = given.name ?? (await ask(vscode.l10n.t('What is the student called?'), { isNeeded: true }));
  if (name === undefined) return undefined;
  const hand = given.hand ?? (await askForHand());
  if (hand === undefined) return undefined;
  const isAnswered = given.name !== undefined;
  const more = async (
    known: string | undefined,
    prompt: string,
    options: Asked,
  ): Promise<string | undefined> => known ?? (isAnswered ? '' : ask(prompt, options));
  const stature = await more(given.stature, vscode.l10n.t('How tall? Leave empty to measure later.'), {
    example: '171 cm',
    check: checked(client, 'stature'),
  });
  if (stature === undefined) return undefined;
  const born = await more(
    given.born,
    vscode.l10n.t(
      'Date of birth, or only the year? Records of minors bring a reminder. Leave empty to keep it out.',
    ),
    { example: '1998-05-14', check: checked(client, 'born') },
  );
  if (born === undefined) return undefined;
  const proposed = await client.sendRequest<readonly string[]>(proposedClubsRequest);
  const clubs =
    given.clubs?.join(', ') ??
    (await more(undefined, vscode.l10n.t('Which clubs? Separate them with commas.'), {
      value: proposed.join(', '),
    }));
  if (clubs === undefined) return undefined;
  const injuries =
    given.injuries?.join(', ') ??
    (await more(
      undefined,
      vscode.l10n.t(
        'Parts of the body to be careful with, in plain words and separated by commas. Write no diagnosis and no medication, and nothing that the student has not agreed to. Leave empty if there are none.',
      ),
      { example: vscode.l10n.t('lower back, lead knee') },
    ));
  if (injuries === undefined) return undefined;
  const words = clubs === '' && isAnswered && given.clubs === undefined ? [...proposed] : listed(clubs);
  return {
    folder,
    name,
    hand,
    stature: stature === '' ? null : stature,
    born: born === '' ? null : born,
    clubs: words,
    injuries: listed(injuries),
  };
}

async function newRecord(client: BaseLanguageClient, given: Given): Promise<void> {
  const uri = given.student?.toString() ?? (await chooseStudent());
  if (uri === undefined) return;
  const found = await client.sendRequest<ClubsResult | null>(clubsRequest, { uri } satisfies ClubsParams);
  if (found === null) {
    void vscode.window.showWarningMessage(
      vscode.l10n.t(
        'Found no student there; expected a file that ends in `.student.yaml`, or a record of one.',
      ),
    );
    return;
  }
  const isAsked = given.student === undefined && found.clubs.length > 1;
  const club = given.club ?? (isAsked ? await chooseClub(found) : found.usual);
  if (club === undefined) return;
  const params: NewRecordParams = { student: found.student, date: given.date ?? today(), club };
  const made = await client.sendRequest<NewFilesResult | null>(newRecordRequest, params);
  const [written] = made === null ? [] : await writeNew(made.files);
  if (written !== undefined) await open(written);
}

interface Asked {
  readonly isNeeded?: true;
  readonly example?: string;
  readonly value?: string;
  readonly check?: (text: string) => Promise<string | undefined>;
}

/** Undefined where the question was left; empty where it was answered with nothing. */
async function ask(prompt: string, { isNeeded, example, value, check }: Asked): Promise<string | undefined> {
  const answer = await vscode.window.showInputBox({
    prompt,
    ignoreFocusOut: true,
    ...(example !== undefined && { placeHolder: example }),
    ...(value !== undefined && { value }),
    validateInput: async (text) => {
      if (text.trim() === '') return isNeeded ? vscode.l10n.t('Expected a name.') : undefined;
      return check?.(text.trim());
    },
  });
  return answer?.trim();
}

function checked(client: BaseLanguageClient, question: CheckAnswerParams['question']) {
  return async (text: string): Promise<string | undefined> => {
    const params: CheckAnswerParams = { question, text };
    return (await client.sendRequest<string | null>(checkAnswerRequest, params)) ?? undefined;
  };
}

async function askForHand(): Promise<'left' | 'right' | undefined> {
  const hands = [
    { label: vscode.l10n.t('Right-handed'), hand: 'right' as const },
    { label: vscode.l10n.t('Left-handed'), hand: 'left' as const },
  ];
  const placeHolder = vscode.l10n.t('Which hand does the student play with?');
  return (await vscode.window.showQuickPick(hands, { placeHolder, ignoreFocusOut: true }))?.hand;
}

async function chooseClub({ clubs, usual }: ClubsResult): Promise<string | undefined> {
  const first = clubs.filter((club) => club === usual);
  const others = clubs.filter((club) => club !== usual);
  return vscode.window.showQuickPick([...first, ...others], {
    placeHolder: vscode.l10n.t('With which club?'),
  });
}

/** That of the file in front, if it leads to one; else one of the workspace's. */
async function chooseStudent(): Promise<string | undefined> {
  const front = vscode.window.activeTextEditor?.document.uri;
  if (front !== undefined && /\.(?:swing|student)\.yaml$/.test(front.path)) return front.toString();
  const found = await vscode.workspace.findFiles('**/*.student.yaml', '**/{node_modules,.git}/**');
  const items = found
    .map((uri) => ({
      label: uri.path.slice(uri.path.lastIndexOf('/') + 1).replace(/\.student\.yaml$/, ''),
      description: vscode.workspace.asRelativePath(uri),
      uri,
    }))
    .sort((a, b) => (a.description < b.description ? -1 : 1));
  if (items.length === 0) {
    void vscode.window.showInformationMessage(vscode.l10n.t('Make a student first.'));
    return undefined;
  }
  const placeHolder = vscode.l10n.t('Whose lesson is it?');
  return (
    await vscode.window.showQuickPick(items, { placeHolder, matchOnDescription: true })
  )?.uri.toString();
}

/** The folder of the one workspace file; where there are several, the one chosen; where there is none, the workspace's folder. */
async function choosePractice(): Promise<vscode.Uri | undefined> {
  const found = await vscode.workspace.findFiles('**/swingwright.yaml', '**/{node_modules,.git}/**', 50);
  const items = found.map((uri) => ({
    label: vscode.workspace.asRelativePath(uri),
    uri: vscode.Uri.joinPath(uri, '..'),
  }));
  if (items.length === 0) return chooseFolder();
  if (items.length === 1) return items[0]!.uri;
  const placeHolder = vscode.l10n.t('To which practice does the student come?');
  return (await vscode.window.showQuickPick(items, { placeHolder }))?.uri;
}

async function chooseFolder(): Promise<vscode.Uri | undefined> {
  const folders = vscode.workspace.workspaceFolders ?? [];
  if (folders.length === 1) return folders[0]!.uri;
  if (folders.length > 1) return (await vscode.window.showWorkspaceFolderPick())?.uri;
  const options = { canSelectFiles: false, canSelectFolders: true, canSelectMany: false };
  return (await vscode.window.showOpenDialog(options))?.[0];
}

/** Those that were not there before. */
async function writeNew(files: readonly NewFileText[]): Promise<readonly NewFileText[]> {
  const written: NewFileText[] = [];
  for (const file of files) {
    const uri = vscode.Uri.parse(file.uri, true);
    if (await isThere(uri)) continue;
    await vscode.workspace.fs.createDirectory(vscode.Uri.joinPath(uri, '..'));
    await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(file.text));
    written.push(file);
  }
  return written;
}

async function isThere(uri: vscode.Uri): Promise<boolean> {
  return vscode.workspace.fs.stat(uri).then(
    () => true,
    () => false,
  );
}

async function open({ uri, cursor }: NewFileText): Promise<void> {
  const document = await vscode.workspace.openTextDocument(vscode.Uri.parse(uri, true));
  const at = document.positionAt(cursor);
  await vscode.window.showTextDocument(document, { selection: new vscode.Range(at, at) });
}

function listed(words: string): readonly string[] {
  return words
    .split(/[,;、，]/)
    .map((word) => word.trim())
    .filter((word) => word !== '');
}

/** Of this machine's calendar. */
function today(): string {
  const now = new Date();
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
