// Keeps parsed documents, what the model made of them and whole results as long as the texts that they came from stay the same; knows no clock.
import { accountOf, type Account } from '../model/account.ts';
import type { Situation } from '../model/value.ts';
import type { FileKind, SwingwrightDocument } from '../record/document.ts';
import { parseDocument } from '../record/parse.ts';
import type { SubjectShots } from '../checks/subject.ts';
import type { ShotColumns } from '../record/document.ts';
import type { Registry } from '../registry/registry.ts';
import type { ShotsText } from './references.ts';
import { shotsInFile } from './shots.ts';
import { isSameSituation } from './situation.ts';
import type { Analysis, FileState, Snapshot } from './result.ts';

interface ParsedFile {
  readonly text: string;
  readonly registry: string;
  readonly document: SwingwrightDocument;
}

interface Analysed {
  readonly analysis: Analysis;
  readonly states: readonly (FileState | undefined)[];
}

interface ReadShots {
  readonly text: string;
  readonly columns: ShotColumns;
  readonly registry: string;
  readonly shots: SubjectShots;
}

/** One entry a URI in each map, so that it never grows beyond the files of the workspace. */
export interface AnalysisCache {
  readonly parsed: Map<string, ParsedFile>;
  readonly accounts: Map<string, Account>;
  readonly shots: Map<string, ReadShots>;
  readonly analysed: Map<string, Analysed>;
}

export function createCache(): AnalysisCache {
  return { parsed: new Map(), accounts: new Map(), shots: new Map(), analysed: new Map() };
}

/** Lets go of all that is kept of a file that is no longer there. */
export function forget(cache: AnalysisCache, uri: string): void {
  cache.parsed.delete(uri);
  cache.accounts.delete(uri);
  cache.shots.delete(uri);
  cache.analysed.delete(uri);
}

/** The document for this text, parsed anew only when its text or what can be measured has changed. */
export function parsedDocument(
  cache: AnalysisCache | undefined,
  uri: string,
  kind: FileKind,
  text: string,
  registry: Registry,
): SwingwrightDocument {
  const kept = cache?.parsed.get(uri);
  if (kept !== undefined && kept.text === text && kept.registry === registry.key) return kept.document;
  const document = parseDocument(kind, text, registry);
  cache?.parsed.set(uri, { text, registry: registry.key, document });
  return document;
}

/** What a file of shots says, read anew only when its text, the columns or what can be measured has changed. */
export function shotsOf(
  cache: AnalysisCache | undefined,
  { uri, text }: ShotsText,
  columns: ShotColumns,
  registry: Registry,
): SubjectShots {
  const kept = cache?.shots.get(uri);
  if (kept !== undefined && kept.text === text && kept.columns === columns && kept.registry === registry.key)
    return kept.shots;
  const shots = shotsInFile(uri, text, columns, registry);
  cache?.shots.set(uri, { text, columns, registry: registry.key, shots });
  return shots;
}

/** What the model makes of this file, anew only when a number has changed: words and comments change nothing. */
export function keptAccount(cache: AnalysisCache | undefined, uri: string, situation: Situation): Account {
  const kept = cache?.accounts.get(uri);
  if (kept !== undefined && isSameSituation(kept.situation, situation)) return kept;
  const account = accountOf(situation);
  cache?.accounts.set(uri, account);
  return account;
}

/** The last result for this file, if every file that it depends on still has the same content. */
export function unchangedAnalysis(
  cache: AnalysisCache | undefined,
  uri: string,
  snapshot: Snapshot,
): Analysis | undefined {
  const kept = cache?.analysed.get(uri);
  if (kept === undefined) return undefined;
  const same = kept.analysis.used.every((used, index) => sameState(kept.states[index], snapshot.file(used)));
  return same ? kept.analysis : undefined;
}

export function keepAnalysis(cache: AnalysisCache | undefined, analysis: Analysis, snapshot: Snapshot): void {
  cache?.analysed.set(analysis.uri, { analysis, states: analysis.used.map((used) => snapshot.file(used)) });
}

function sameState(a: FileState | undefined, b: FileState | undefined): boolean {
  if (a === b) return true;
  if (a === undefined || b === undefined) return false;
  if (a.kind === 'text') return b.kind === 'text' && a.text === b.text;
  if (a.kind === 'unreadable') return b.kind === 'unreadable' && a.reason === b.reason;
  return b.kind === 'missing';
}
