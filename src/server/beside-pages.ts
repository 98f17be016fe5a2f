// Answers the pages that lay records beside one another; a side at a git revision is read, with all that it refers to, through the client.
import type { CancellationToken, Connection } from 'vscode-languageserver';
import { createCache } from '../analysis/cache.ts';
import { studentOf } from '../analysis/lessons.ts';
import type { Analysis, FileState } from '../analysis/result.ts';
import { settle } from '../analysis/settle.ts';
import { changeSummary, comparePage, recordAudit, studentPage } from '../language/index.ts';
import { lastNameIn } from '../record/reference.ts';
import type { Desk } from './desk.ts';
import type { Files } from './files.ts';
import {
  auditPageRequest,
  changeSummaryRequest,
  comparePageRequest,
  progressPageRequest,
  readRevisionRequest,
  type AuditPageParams,
  type ChangeSummaryParams,
  type ComparePageParams,
  type PageResult,
  type PageSide,
  type ProgressPageParams,
  type ReadRevisionParams,
} from './page-protocol.ts';

export interface BesideOptions {
  readonly connection: Connection;
  readonly files: Files;
  readonly desk: Desk;
  readonly signalOf: (token: CancellationToken) => AbortSignal;
  readonly normal: (uri: string) => string;
}

export function serveBesidePages({ connection, files, desk, signalOf, normal }: BesideOptions): void {
  const cache = createCache();

  const analysisOf = async (side: PageSide, signal: AbortSignal): Promise<Analysis | string> => {
    const uri = normal(side.uri);
    const { revision } = side;
    const then = new Map<string, FileState>();
    const load =
      revision === undefined
        ? files.load
        : (at: string) =>
            connection.sendRequest<FileState>(readRevisionRequest, {
              uri: at,
              revision,
            } satisfies ReadRevisionParams);
    const analysis = await settle(
      uri,
      revision === undefined ? files : then,
      load,
      signal,
      revision === undefined ? cache : createCache(),
    );
    const own = revision === undefined ? files.get(uri) : then.get(uri);
    if (own?.kind === 'unreadable') return `\`${side.name}\` cannot be read: ${own.reason}.`;
    return own?.kind === 'text' ? analysis : `\`${side.name}\` is not there.`;
  };

  connection.onRequest(
    comparePageRequest,
    async ({ first, second }: ComparePageParams, token: CancellationToken): Promise<PageResult> => {
      const signal = signalOf(token);
      const [a, b] = [await analysisOf(first, signal), await analysisOf(second, signal)];
      if (typeof a === 'string') return { kind: 'refused', words: a };
      if (typeof b === 'string') return { kind: 'refused', words: b };
      const html = comparePage({ name: first.name, analysis: a }, { name: second.name, analysis: b });
      if (html !== undefined) return { kind: 'page', title: `${first.name} ↔ ${second.name}`, html };
      return {
        kind: 'refused',
        words: 'Found files of other kinds; expected two records, or a record and a template.',
      };
    },
  );

  connection.onRequest(
    changeSummaryRequest,
    async ({ first, second }: ChangeSummaryParams, token: CancellationToken): Promise<string | null> => {
      const signal = signalOf(token);
      const [a, b] = [await analysisOf(first, signal), await analysisOf(second, signal)];
      return typeof a === 'string' || typeof b === 'string' ? null : (changeSummary(a, b) ?? null);
    },
  );

  connection.onRequest(
    progressPageRequest,
    async ({ uri }: ProgressPageParams, token: CancellationToken): Promise<PageResult> => {
      const signal = signalOf(token);
      const [lessons, own] = [
        await desk.lessons(normal(uri), signal),
        await settle(normal(uri), files, files.load, signal, cache),
      ];
      const student = studentOf(own);
      if (lessons === undefined) return { kind: 'refused', words: 'The file changed meanwhile; ask again.' };
      if (student === undefined)
        return {
          kind: 'refused',
          words: 'Found no student in this file; expected `student:` in the record.',
        };
      const { document, subject } = own;
      const name = (document.kind === 'student' ? document : subject.student?.document)?.name?.value;
      const words = name ?? lastNameIn(student);
      return { kind: 'page', title: words, html: studentPage(words, lessons) };
    },
  );

  connection.onRequest(
    auditPageRequest,
    async ({ uri }: AuditPageParams, token: CancellationToken): Promise<PageResult> => {
      const name = lastNameIn(uri);
      const analysis = await analysisOf({ uri, name }, signalOf(token));
      if (typeof analysis === 'string') return { kind: 'refused', words: analysis };
      const audit = recordAudit(name, analysis) ?? {
        reason: `Found \`${name}\`; expected a record that ends in .swing.yaml.`,
      };
      return 'reason' in audit
        ? { kind: 'refused', words: audit.reason }
        : { kind: 'page', title: name, html: audit.html };
    },
  );
}
