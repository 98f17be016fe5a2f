// Finds the workspace file that a file belongs to: the nearest `swingwright.yaml` in its folder or above. Reads none itself.
import type { Followed } from '../checks/subject.ts';
import type { Problem } from '../measure/measure.ts';
import type { WorkspaceFile } from '../record/document.ts';
import { resolveReference } from '../record/reference.ts';
import { registryOf } from '../record/workspace.ts';
import { builtIn, type Registry } from '../registry/registry.ts';
import { parsedDocument } from './cache.ts';
import type { AnalysisCache } from './cache.ts';
import type { Lookout } from './lookout.ts';

const workspaceFileName = 'swingwright.yaml';
/** No file system in use nests deeper in practice; without a bound an odd scheme could have us climb for ever. */
const mostFolders = 64;

export interface NearestWorkspace {
  /** What can be measured here: the built-in registry with the workspace's own. */
  readonly registry: Registry;
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
  for (const candidate of workspaceCandidates(uri)) {
    const state = lookout.file(candidate);
    if (state === undefined || state.kind === 'missing') continue;
    if (state.kind === 'unreadable') return { ...none, problems: [unreadable(state.reason)] };
    const document = parsedDocument(cache, candidate, 'workspace', state.text, builtIn);
    return document.kind === 'workspace'
      ? { workspace: { uri: candidate, document }, registry: registryIn(document), problems: [] }
      : none;
  }
  return none;
}

const none: NearestWorkspace = { workspace: undefined, registry: builtIn, problems: [] };

/** By document, so that most keystrokes need not look at what the workspace adds. */
const registries = new WeakMap<WorkspaceFile, Registry>();

export function registryIn(document: WorkspaceFile): Registry {
  const registry = registries.get(document) ?? registryOf(document);
  registries.set(document, registry);
  return registry;
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
