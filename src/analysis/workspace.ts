// Finds the workspace file that a file belongs to: the nearest `swingwright.yaml` in its folder or above. Reads none itself.
import type { Followed } from '../checks/subject.ts';
import { compileOwn, type Own } from '../judgement/own.ts';
import type { Problem } from '../measure/measure.ts';
import type { WorkspaceFile } from '../record/document.ts';
import { isUnsaved } from '../record/kind.ts';
import { resolveReference } from '../record/reference.ts';
import { builtIn } from '../registry/registry.ts';
import { parsedDocument } from './cache.ts';
import type { AnalysisCache } from './cache.ts';
import type { Lookout } from './lookout.ts';
import type { FileState } from './result.ts';

const workspaceFileName = 'swingwright.yaml';
/** No file system in use nests deeper in practice; without a bound an odd scheme could have us climb for ever. */
const mostFolders = 64;

export interface NearestWorkspace {
  /** What the workspace adds: its registry, the built-in one with its own in it, steps, relations and checks. */
  readonly own: Own;
  readonly workspace: Followed<WorkspaceFile> | undefined;
  /** Says so where the nearest one is there but cannot be read: the findings would differ without a word otherwise. */
  readonly problems: readonly Problem[];
}

/**
 * Climbs from the file's folder to the root of its URI and stops at the first workspace file. One that is not yet
 * known is passed by like a missing one, so that all those above are asked for in the same round.
 */
export function findWorkspace(
  uri: string,
  lookout: Lookout,
  cache: AnalysisCache | undefined,
): NearestWorkspace {
  if (isUnsaved(uri)) return none;
  for (const candidate of workspaceCandidates(uri)) {
    const state = lookout.file(candidate);
    if (state === undefined || state.kind === 'missing') continue;
    if (state.kind === 'unreadable') return { ...none, problems: [unreadable(state.reason)] };
    const document = parsedDocument(cache, candidate, 'workspace', state.text, builtIn);
    return document.kind === 'workspace'
      ? { workspace: { uri: candidate, document }, own: ownOf(document), problems: [] }
      : none;
  }
  return none;
}

export const nothingOwn: Own = {
  registry: builtIn,
  model: undefined,
  derived: new Map(),
  checks: [],
  problems: [],
};
const none: NearestWorkspace = { workspace: undefined, own: nothingOwn, problems: [] };

/** By document, so that most keystrokes need not look at what the workspace adds. */
const kept = new WeakMap<WorkspaceFile, Own>();

function ownOf(document: WorkspaceFile): Own {
  const own = kept.get(document) ?? compileOwn(document);
  kept.set(document, own);
  return own;
}

/** The places where a workspace file would be found, nearest first. */
export function workspaceCandidates(uri: string): readonly string[] {
  const candidates: string[] = [];
  let path = workspaceFileName;
  while (candidates.length < mostFolders) {
    const candidate = resolveReference(uri, path);
    if (candidate === undefined || candidate === candidates.at(-1)) return candidates;
    candidates.push(candidate);
    path = `../${path}`;
  }
  return candidates;
}

function unreadable(reason: string): Problem {
  return {
    code: 'unreadable-reference',
    span: { start: 0, end: 0 },
    found: `the \`${workspaceFileName}\` of this workspace, which cannot be read (${reason})`,
    expected: 'a file that can be read',
  };
}

/** The nearest workspace file at or above the folder; where there is none, the one that would lie in the folder. */
export async function nearestWorkspace(
  folder: string,
  files: { readonly get: (uri: string) => FileState | undefined },
  load: (uri: string) => Promise<FileState>,
): Promise<{ readonly uri: string; readonly text: string | undefined }> {
  const candidates = workspaceCandidates(`${folder}/any`);
  for (const uri of candidates) {
    const state = files.get(uri) ?? (await load(uri));
    if (state.kind === 'text') return { uri, text: state.text };
  }
  return { uri: candidates[0] ?? `${folder}/swingwright.yaml`, text: undefined };
}
