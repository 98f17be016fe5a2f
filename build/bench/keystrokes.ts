// Counts the keys that it takes to write a lesson of twenty values: by hand, with a general YAML language server and the project's schemas, with Swingwright.
import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { lineTableOf, positionAt } from '../../src/analysis/positions.ts';
import type { SwingRecord } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { countKeys, earlier, lessonUri as uri, ours, shortLesson, type Ask } from './count-keys.ts';
import { lesson } from './lesson.ts';

interface TheirItem {
  readonly label: string;
  readonly filterText?: string;
  readonly sortText?: string;
  readonly insertText?: string;
  readonly insertTextFormat?: number;
  readonly insertTextMode?: number;
  readonly preselect?: boolean;
  readonly textEdit?: {
    readonly newText: string;
    readonly range: { readonly start: { readonly character: number } };
  };
}

async function theirs(): Promise<{ ask: Ask; end: () => void }> {
  const main = createRequire(import.meta.url).resolve('yaml-language-server/bin/yaml-language-server');
  const child = spawn(process.execPath, [main, '--stdio'], { stdio: ['pipe', 'pipe', 'ignore'] });
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const schema = pathToFileURL(join(import.meta.dirname, '../../schemas/swing.schema.json')).href;
  const settings = {
    completion: true,
    validate: false,
    schemaStore: { enable: false },
    schemas: { [schema]: ['*.swing.yaml'] },
  };
  connection.onRequest('workspace/configuration', ({ items }: { items: { section?: string }[] }) =>
    items.map(({ section }) =>
      section === 'yaml' ? settings : section === '[yaml]' ? { 'editor.tabSize': 2 } : {},
    ),
  );
  connection.onRequest('client/registerCapability', () => null);
  connection.listen();
  const capabilities = {
    textDocument: { completion: { completionItem: { snippetSupport: true } } },
    workspace: { configuration: true },
  };
  await connection.sendRequest('initialize', { processId: null, rootUri: null, capabilities });
  await connection.sendNotification('initialized', {});
  await connection.sendNotification('workspace/didChangeConfiguration', { settings: { yaml: settings } });
  let version = 1;
  await connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'yaml', version, text: '' },
  });
  const ask: Ask = async (text) => {
    version += 1;
    await connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ text }],
    });
    const position = positionAt(lineTableOf(text), text.length);
    const found = await connection.sendRequest<{ items: TheirItem[] } | null>('textDocument/completion', {
      textDocument: { uri },
      position,
    });
    const line = text.lastIndexOf('\n') + 1;
    const indent = /^ */.exec(text.slice(line))![0];
    return (found?.items ?? [])
      .toSorted((a, b) => ((a.sortText ?? a.label) < (b.sortText ?? b.label) ? -1 : 1))
      .map((item) => {
        const words = item.textEdit?.newText ?? item.insertText ?? item.label;
        return {
          filter: item.filterText ?? item.label,
          start: line + (item.textEdit?.range.start.character ?? text.length - line),
          // As VS Code does unless the item says that it stands as it is.
          newText: item.insertTextMode === 1 ? words : words.replaceAll('\n', `\n${indent}`),
          isSnippet: item.insertTextFormat === 2,
          isChosen: item.preselect === true,
          again: false,
        };
      });
  };
  return { ask, end: () => child.kill() };
}

const values = (parseDocument('swing', lesson) as SwingRecord).entries.size;
const other = await theirs();
const generic = await countKeys(lesson, other.ask);
const generalShort = await countKeys(shortLesson, other.ask);
other.end();
const none = await countKeys(lesson, () => Promise.resolve([]));
console.log(`a record of ${values} measured values, ${lesson.length} characters`);
console.log(`${none} keys  without any proposals`);
console.log(`${generic} keys  with a general YAML language server and the project's schema`);
for (const [words, last, snippets] of [
  ['a first lesson, proposals alone', undefined, false],
  ['a later lesson, proposals alone', earlier, false],
  ['a first lesson, with forms', undefined, true],
  ['a later lesson, with forms', earlier, true],
] as const) {
  const own = await countKeys(lesson, ours(last, snippets));
  console.log(`${own} keys  with Swingwright, ${words}: ${(own / generic).toFixed(2)} of the general one`);
}
console.log(`${generalShort} keys  for the short lesson of the test with the general one`);
process.exit(0);
