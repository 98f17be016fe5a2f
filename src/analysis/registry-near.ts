// Finds the registry that a file is read with, for those who look through many files: that of the nearest workspace file. Judges nothing.
import { parseDocument } from '../record/parse.ts';
import { registryOf } from '../record/workspace.ts';
import { builtIn, type Registry } from '../registry/registry.ts';
import type { FileState } from './result.ts';
import { workspaceCandidates } from './workspace.ts';

/** By the URI of the workspace file; undefined where there is none. Good for one look through the files. */
export type RegistriesSeen = Map<string, Promise<Registry | undefined>>;

/** The built-in one where no workspace file is found, or where the nearest one cannot be read. */
export async function registryNear(
  uri: string,
  stateOf: (uri: string) => Promise<FileState | undefined>,
  seen: RegistriesSeen,
): Promise<Registry> {
  for (const candidate of workspaceCandidates(uri)) {
    const known = seen.get(candidate) ?? stateOf(candidate).then(registryIn);
    seen.set(candidate, known);
    const registry = await known;
    if (registry !== undefined) return registry;
  }
  return builtIn;
}

function registryIn(state: FileState | undefined): Registry | undefined {
  if (state === undefined || state.kind === 'missing') return undefined;
  if (state.kind === 'unreadable') return builtIn;
  const document = parseDocument('workspace', state.text);
  return document.kind === 'workspace' ? registryOf(document) : builtIn;
}
