// The commands that compare two records, or one with a revision of it, and that show a student's progress, each as a page in a panel.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import {
  auditPageRequest,
  comparePageRequest,
  progressPageRequest,
  readRevisionRequest,
  type AuditPageParams,
  type ComparePageParams,
  type PageSide,
  type ProgressPageParams,
  type ReadRevisionParams,
} from '../server/page-protocol.ts';
import { lessonsRequest, type LessonsParams, type LessonState } from '../server/protocol.ts';
import { inGroups } from './compare-order.ts';
import type { Pages } from './pages.ts';
import { pickRevision, readAtRevision } from './git-revisions.ts';

const comparable = '**/*.{swing,template}.yaml';

export function registerBesidePages(client: BaseLanguageClient, pages: Pages): vscode.Disposable {
  client.onRequest(readRevisionRequest, ({ uri, revision }: ReadRevisionParams) =>
    readAtRevision(vscode.Uri.parse(uri, true), revision),
  );
  return vscode.Disposable.from(
    vscode.commands.registerCommand(
      'swingwright.compareRecords',
      async (given: unknown, selected: unknown) => {
        const [one, other] = Array.isArray(selected) ? (selected as unknown[]) : [given];
        const first = one instanceof vscode.Uri ? one : (recordInFront() ?? (await pick(client, undefined)));
        const second = first && (other instanceof vscode.Uri ? other : await pick(client, first));
        if (first !== undefined && second !== undefined)
          await showComparison(pages, sideOf(first), sideOf(second));
      },
    ),
    vscode.commands.registerCommand(
      'swingwright.compareWithRevision',
      async (given: unknown, asked: unknown) => {
        const uri = given instanceof vscode.Uri ? given : recordInFront();
        if (uri === undefined) {
          void vscode.window.showInformationMessage(
            vscode.l10n.t('Open a record that ends in .swing.yaml first.'),
          );
          return;
        }
        const revision = typeof asked === 'string' ? asked : await pickRevision(uri);
        if (revision === undefined || revision === '') return;
        const then = { uri: uri.toString(), revision, name: `${revision}:${nameOf(uri)}` };
        await showComparison(pages, then, sideOf(uri));
      },
    ),
    vscode.commands.registerCommand('swingwright.auditRecord', async (given: unknown) => {
      const uri = given instanceof vscode.Uri ? given : recordInFront();
      if (uri === undefined) {
        void vscode.window.showInformationMessage(
          vscode.l10n.t('Open a record that ends in .swing.yaml first.'),
        );
        return;
      }
      const params: AuditPageParams = { uri: uri.toString() };
      const titled = (title: string): string => vscode.l10n.t('Audit of {0}', title);
      await pages.show({ request: auditPageRequest, params }, { titled });
    }),
    vscode.commands.registerCommand('swingwright.showProgress', async (given: unknown) => {
      const uri = uriIn(given) ?? vscode.window.activeTextEditor?.document.uri ?? undefined;
      if (uri === undefined || !/\.(student|swing)\.yaml$/.test(uri.path)) {
        void vscode.window.showInformationMessage(
          vscode.l10n.t("Open a student's file or one of the records first."),
        );
        return;
      }
      const params: ProgressPageParams = { uri: uri.toString() };
      const titled = (title: string): string => vscode.l10n.t('Progress of {0}', title);
      await pages.show({ request: progressPageRequest, params }, { titled });
    }),
  );
}

export function showComparison(pages: Pages, first: PageSide, second: PageSide): Promise<void> {
  const params: ComparePageParams = { first, second };
  return pages.show({ request: comparePageRequest, params }, { titled: (title) => title });
}

interface Choice extends vscode.QuickPickItem {
  readonly uri?: vscode.Uri;
}

async function pick(
  client: BaseLanguageClient,
  except: vscode.Uri | undefined,
): Promise<vscode.Uri | undefined> {
  const picked = await vscode.window.showQuickPick(choicesFor(client, except), {
    placeHolder:
      except === undefined
        ? vscode.l10n.t('Choose a record')
        : vscode.l10n.t('Compare {0} with', nameOf(except)),
    matchOnDescription: true,
  });
  return picked?.uri;
}

async function choicesFor(
  client: BaseLanguageClient,
  except: vscode.Uri | undefined,
): Promise<readonly Choice[]> {
  const found = await vscode.workspace.findFiles(comparable, '**/{node_modules,.git}/**');
  const uris = found
    .filter(
      (uri) =>
        uri.toString() !== except?.toString() && (except !== undefined || uri.path.endsWith('.swing.yaml')),
    )
    .sort((a, b) => (a.path < b.path ? -1 : 1));
  if (except === undefined) return uris.map((uri) => ({ label: nameOf(uri), uri }));
  const own = except.toString();
  const params: LessonsParams = { uri: own };
  const lessons = await client
    .sendRequest<readonly LessonState[] | null>(lessonsRequest, params)
    .catch(() => null);
  const words = {
    'same club': vscode.l10n.t('Same student, same club'),
    'same student': vscode.l10n.t('Same student'),
    others: vscode.l10n.t('Others'),
  };
  const spelled = (lessons ?? []).map((one) => ({ ...one, uri: vscode.Uri.parse(one.uri).toString() }));
  return inGroups(uris, String, own, spelled).flatMap(({ of, files }): Choice[] => [
    { label: words[of], kind: vscode.QuickPickItemKind.Separator },
    ...files.map(({ file, lesson }) => ({
      label: nameOf(file),
      description: [lesson?.date, lesson?.club].filter(Boolean).join(', '),
      uri: file,
    })),
  ]);
}

function recordInFront(): vscode.Uri | undefined {
  const uri = vscode.window.activeTextEditor?.document.uri;
  return uri?.path.endsWith('.swing.yaml') === true ? uri : undefined;
}

function sideOf(uri: vscode.Uri): PageSide {
  return { uri: uri.toString(), name: nameOf(uri) };
}

function nameOf(uri: vscode.Uri): string {
  return vscode.workspace.asRelativePath(uri);
}

/** Of a file, or of a student or a lesson in the view of lessons. */
function uriIn(given: unknown): vscode.Uri | undefined {
  if (given instanceof vscode.Uri) return given;
  const node = given as { student?: { uri?: unknown } } | undefined;
  return typeof node?.student?.uri === 'string' ? vscode.Uri.parse(node.student.uri) : undefined;
}
