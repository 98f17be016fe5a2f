// Holds the editor and the command line together: same text, same codes, severities, sentences and ranges, to the letter.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { swingwright, withFolder } from './cli/program.ts';
import type { FindingJson } from '../src/cli/report.ts';
import { folder, startSession } from './server/session.ts';

const samples = resolve(import.meta.dirname, '../samples');

function practice(): Record<string, string> {
  const names = readdirSync(samples, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(yaml|csv)$/.test(entry.name))
    .map((entry) => relative(samples, join(entry.parentPath, entry.name)).split(sep).join('/'));
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(samples, name), 'utf8')]));
}

const severities = [undefined, 'error', 'warning', 'information', 'hint'];

async function inEditor(files: Record<string, string>): Promise<unknown[]> {
  const session = await startSession(files);
  const found: unknown[] = [];
  const records = Object.entries(files).filter(([name]) => name.endsWith('.yaml'));
  for (const [name, text] of records.sort(([a], [b]) => (a < b ? -1 : 1))) {
    await session.open(name, text);
    const { diagnostics } = await session.diagnostics(name);
    for (const { code, severity, message, range, relatedInformation = [] } of diagnostics) {
      const related = relatedInformation.map(({ location, message: words }) => ({
        file: location.uri.slice(folder.length),
        range: location.range,
        message: words,
      }));
      found.push({ file: name, code, severity: severities[severity ?? 0], message, range, related });
    }
  }
  await session.end();
  return found;
}

function onCommandLine(files: Record<string, string>): unknown[] {
  return withFolder(
    files,
    (at) => JSON.parse(swingwright(['check', '--format', 'json'], at).out) as FindingJson[],
  );
}

async function assertSame(files: Record<string, string>): Promise<void> {
  const ours = onCommandLine(files);
  assert.ok(ours.length > 0);
  assert.deepEqual(await inEditor(files), ours);
}

describe('editor and command line', () => {
  it('find the same in the samples', async () => {
    await assertSame(practice());
  });

  it('find the same with Windows line breaks', async () => {
    const files = Object.entries(practice()).map(([name, text]) => [name, text.replaceAll('\n', '\r\n')]);
    await assertSame(Object.fromEntries(files) as Record<string, string>);
  });

  it('find the same in files cut off in the middle', async () => {
    const files = Object.entries(practice()).map(([name, text]) => [name, text.slice(0, text.length * 0.6)]);
    await assertSame(Object.fromEntries(files) as Record<string, string>);
  });

  it('find the same in a file of shots with mistakes', async () => {
    const name = 'tove/shots/2026-04-18-seven-iron.csv';
    const files = practice();
    const text = files[name]!.replace('start [deg]', 'strat [deg]')
      .replace('43.3', '43,3')
      .replaceAll('left', 'lft');
    await assertSame({ ...files, [name]: text });
  });

  it('find the same where references lead nowhere', async () => {
    const gone = ['bram/bram.student.yaml', 'house.faults.yaml'];
    const left = Object.entries(practice()).filter(([name]) => !gone.includes(name));
    await assertSame(Object.fromEntries(left));
  });
});
