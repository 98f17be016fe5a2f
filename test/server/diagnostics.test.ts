// Findings reach the editor for the version that they were computed from, and for no other.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { startSession, type Session } from './session.ts';

const record = (lines: string): string => `swing: 1\n${lines}`;
const wrongUnit = record('flight:\n  carry: 171 kg\n');
const right = record('flight:\n  carry: 171 m\n');
const textOfMessage = (message: string | { value: string }): string =>
  typeof message === 'string' ? message : message.value;
const codes = (params: { diagnostics: { code?: unknown }[] }): unknown[] =>
  params.diagnostics.map(({ code }) => code);

describe('the server', () => {
  let session: Session;
  afterEach(() => session.end());

  it('publishes a finding with its code, its explanation and the version', async () => {
    session = await startSession();
    await session.open('a.swing.yaml', wrongUnit, 7);
    const { version, diagnostics } = await session.diagnostics('a.swing.yaml');
    assert.equal(version, 7);
    const found = diagnostics.find(({ code }) => code === 'wrong-dimension');
    assert.equal(found?.source, 'swingwright');
    assert.equal(found.severity, 1);
    assert.deepEqual(found.codeDescription, { href: 'explanation:wrong-dimension' });
    assert.equal(wrongUnit.split('\n')[found.range.start.line], '  carry: 171 kg');
  });

  it('takes findings back when they are mended and when the file is closed', async () => {
    session = await startSession();
    await session.open('a.swing.yaml', wrongUnit);
    await session.diagnostics('a.swing.yaml', (params) => codes(params).includes('wrong-dimension'));
    await session.change('a.swing.yaml', right, 2);
    const mended = await session.diagnostics('a.swing.yaml', ({ version }) => version === 2);
    assert.ok(!codes(mended).includes('wrong-dimension'));
    await session.close('a.swing.yaml');
    const closed = await session.diagnostics('a.swing.yaml', ({ version }) => version === undefined);
    assert.deepEqual(closed.diagnostics, []);
  });

  it('asks the client for the files that a record names, once each', async () => {
    session = await startSession({ 'mira.student.yaml': 'student: 1\nname: Mira\nhand: left\n' });
    await session.open('a.swing.yaml', record('student: mira.student.yaml\n'));
    await session.diagnostics('a.swing.yaml');
    await session.change('a.swing.yaml', record('student: mira.student.yaml\ndate: 2026-05-14\n'), 2);
    await session.diagnostics('a.swing.yaml', ({ version }) => version === 2);
    assert.equal(session.read.filter((uri) => uri.endsWith('/mira.student.yaml')).length, 1);
  });

  it('looks again at a record when a file that it names appears, changes or goes', async () => {
    session = await startSession();
    await session.open('a.swing.yaml', record('student: mira.student.yaml\n'));
    const isMissing = (params: Parameters<typeof codes>[0]): boolean =>
      codes(params).includes('missing-reference');
    await session.diagnostics('a.swing.yaml', isMissing);

    session.files.set('file:///lessons/mira.student.yaml', 'student: 1\nname: Mira\nhand: left\n');
    const before = session.published.length;
    await session.touch('mira.student.yaml');
    await session.diagnostics(
      'a.swing.yaml',
      (params) => session.published.indexOf(params) >= before && !isMissing(params),
    );

    session.files.delete('file:///lessons/mira.student.yaml');
    const present = session.published.length;
    await session.touch('mira.student.yaml');
    await session.diagnostics(
      'a.swing.yaml',
      (params) => session.published.indexOf(params) >= present && isMissing(params),
    );
    await session.hintsRefreshed(2);
  });

  it('holds the text of an open file over what is on disk', async () => {
    session = await startSession();
    await session.open('a.swing.yaml', record('student: mira.student.yaml\n'));
    await session.diagnostics('a.swing.yaml', (params) => codes(params).includes('missing-reference'));
    await session.open('mira.student.yaml', 'student: 1\nname: Mira\nhand: left\n');
    await session.diagnostics('a.swing.yaml', (params) => !codes(params).includes('missing-reference'));
  });

  it('drops what it found in a version that is gone when a file was slow to come', async () => {
    session = await startSession({ 'slow.student.yaml': 'student: 1\nname: Mira\nhand: left\n' });
    let release = (): void => {};
    const held = new Promise<void>((resolve) => (release = resolve));
    let asked = (): void => {};
    const isAsked = new Promise<void>((resolve) => (asked = resolve));
    session.slow(() => {
      asked();
      return held;
    });
    await session.open('a.swing.yaml', `${wrongUnit}student: slow.student.yaml\n`, 1);
    await isAsked;
    await session.change('a.swing.yaml', `${right}student: slow.student.yaml\n`, 2);
    release();
    await session.diagnostics('a.swing.yaml', ({ version }) => version === 2);
    assert.deepEqual(
      session.published.filter(({ uri }) => uri.endsWith('a.swing.yaml')).map(({ version }) => version),
      [2],
    );
  });

  it('never publishes for an outdated version, however fast the edits come', async () => {
    session = await startSession({ 'mira.student.yaml': 'student: 1\nname: Mira\nhand: left\n' });
    // Each version has a key of its own that no record knows, so that a finding tells which text it was found in.
    const textOf = (version: number): string => record(`student: mira.student.yaml\nkey_${version}x: 1\n`);
    session.slow(() => new Promise((resolve) => setTimeout(resolve, 3)));
    let file = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.record({ gap: fc.constantFrom(0, 0, 1, 5, 70), touch: fc.boolean() }), {
          minLength: 1,
          maxLength: 12,
        }),
        async (edits) => {
          file += 1;
          const name = `rapid-${file}.swing.yaml`;
          await session.open(name, textOf(1), 1);
          for (const [at, { gap, touch }] of edits.entries()) {
            const version = at + 2;
            await session.change(name, textOf(version), version);
            if (touch) await session.touch('mira.student.yaml');
            if (gap > 0) await new Promise((resolve) => setTimeout(resolve, gap));
          }
          const last = edits.length + 1;
          await session.diagnostics(name, ({ version }) => version === last);
          const own = session.published.filter(({ uri }) => uri.endsWith(`/${name}`));
          const versions = own.map(({ version }) => version!);
          assert.deepEqual(
            versions,
            [...versions].sort((a, b) => a - b),
          );
          for (const { version, diagnostics } of own) {
            const named = diagnostics.flatMap(
              ({ message }) => /key_(\d+)x/.exec(textOfMessage(message))?.[1] ?? [],
            );
            assert.ok(
              named.length > 0 && named.every((found) => Number(found) === version),
              `${version}: ${named.join()}`,
            );
          }
          await session.close(name);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('says nothing of files that are none of its own', async () => {
    session = await startSession();
    await session.open('notes.yaml', 'a: [\n');
    const { diagnostics } = await session.diagnostics('notes.yaml');
    assert.deepEqual(diagnostics, []);
  });
});
