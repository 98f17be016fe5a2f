// The `schema` command: writes the JSON Schemas of a folder's files, the workspace's own quantities included.
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import faults from '../../schemas/faults.schema.json' with { type: 'json' };
import review from '../../schemas/review.schema.json' with { type: 'json' };
import student from '../../schemas/student.schema.json' with { type: 'json' };
import swing from '../../schemas/swing.schema.json' with { type: 'json' };
import template from '../../schemas/template.schema.json' with { type: 'json' };
import workspace from '../../schemas/workspace.schema.json' with { type: 'json' };
import { workspaceCandidates } from '../analysis/workspace.ts';
import { loadFile, toPath, toUri } from '../disk/files.ts';
import { makeFolder } from '../disk/make-folder.ts';
import type { FileKind } from '../record/document.ts';
import type { JsonSchema } from '../record/notation-schema.ts';
import { schemaWith } from '../record/own-schema.ts';
import { parseDocument } from '../record/parse.ts';
import { registryOf } from '../record/workspace.ts';
import { builtIn, type Registry } from '../registry/registry.ts';
import { printable } from './formats/text.ts';

const schemas: Readonly<Record<FileKind, JsonSchema>> = {
  swing,
  student,
  template,
  faults,
  review,
  workspace,
};

/** 0 where all were written; 2 where the workspace file or the folder to write to could not be used. */
export async function schemaCommand(folder: string, out: string, signal: AbortSignal): Promise<number> {
  const registry = await registryFor(folder, signal);
  if (typeof registry === 'string') return refuse(registry);
  try {
    await makeFolder(out);
    for (const kind of Object.keys(schemas) as FileKind[]) {
      const path = join(out, `${kind}.schema.json`);
      const schema = schemaWith(kind, schemas[kind], registry);
      await writeFile(path, `${JSON.stringify(schema, null, 2)}\n`);
      process.stdout.write(`${printable(path)}  ${String(schema.$id)}\n`);
    }
  } catch (error) {
    return refuse(error instanceof Error ? error.message : String(error));
  }
  return 0;
}

/** Of the nearest workspace file at or above the folder; in words why it cannot be read. */
async function registryFor(folder: string, signal: AbortSignal): Promise<Registry | string> {
  for (const uri of workspaceCandidates(`${toUri(folder)}/lesson.swing.yaml`)) {
    signal.throwIfAborted();
    const state = await loadFile(uri);
    if (state.kind === 'missing') continue;
    if (state.kind === 'unreadable') return `cannot read \`${toPath(uri)}\`: ${state.reason}`;
    const document = parseDocument('workspace', state.text);
    return document.kind === 'workspace' ? registryOf(document) : builtIn;
  }
  return builtIn;
}

function refuse(reason: string): number {
  process.stderr.write(`swingwright: ${printable(reason)}\n`);
  return 2;
}
