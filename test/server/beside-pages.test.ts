// Pages that lay records beside one another are answered from what stands in the editor, and from git through the client.
import assert from 'node:assert/strict';
import {
  auditPageRequest,
  comparePageRequest,
  progressPageRequest,
  readRevisionRequest,
  type PageResult,
  type PageSide,
  type ReadRevisionParams,
} from '../../src/server/page-protocol.ts';
import type { FileState } from '../../src/server/protocol.ts';
import { folder, startSession, type Session } from './session.ts';

const record = (date: string, path: number): string =>
  `swing: 1\nstudent: ines.student.yaml\ndate: ${date}\nclub: hybrid\ndelivery: { path: ${path} deg right ± 1 deg }\n`;
const files = {
  'swingwright.yaml': 'swingwright: 1\n',
  'ines.student.yaml': 'student: 1\nname: Ines\nhand: right\nbag: { hybrid: { kind: hybrid } }\n',
  'a.swing.yaml': record('2026-05-14', 5),
  'b.swing.yaml': record('2026-06-02', 1),
  'torn.swing.yaml':
    '<<<<<<< ours\nswing: 1\ndelivery: { path: 1 deg right }\n=======\nswing: 1\n>>>>>>> theirs\n',
  'iron.template.yaml': 'template: 1\ntitle: House\ndelivery: { path: 0..2 deg right }\n',
};

describe('the server on pages beside one another', () => {
  let session: Session;
  beforeEach(async () => {
    session = await startSession(files);
  });
  afterEach(() => session.end());

  const side = (name: string, revision?: string): PageSide => ({
    uri: folder + name,
    name,
    ...(revision === undefined ? {} : { revision }),
  });
  const compare = (first: PageSide, second: PageSide): Promise<PageResult> =>
    session.connection.sendRequest(comparePageRequest, { first, second });
  const htmlOf = (result: PageResult): string => {
    assert.equal(result.kind, 'page', JSON.stringify(result));
    return result.kind === 'page' ? result.html : '';
  };

  it('compares two records, the earlier one first, with what is typed but not saved', async () => {
    const html = htmlOf(await compare(side('b.swing.yaml'), side('a.swing.yaml')));
    assert.match(html, /5\.0\sdeg right ±\s1\.0\sdeg<\/td><td class="number">1\.0\sdeg right/);
    await session.open('b.swing.yaml', record('2026-06-02', 3));
    assert.match(
      htmlOf(await compare(side('a.swing.yaml'), side('b.swing.yaml'))),
      /<td class="number">3\.0\sdeg right/,
    );
  });

  it('says of each entry of a record how sound it is, and refuses what is none', async () => {
    const audit = (name: string): Promise<PageResult> =>
      session.connection.sendRequest(auditPageRequest, { uri: folder + name });
    assert.match(htmlOf(await audit('a.swing.yaml')), /<tr data-id="delivery\.path">/);
    assert.equal((await audit('ines.student.yaml')).kind, 'refused');
    assert.equal((await audit('gone.swing.yaml')).kind, 'refused');
    // As the command line says it: half of a record would look like all of it.
    const torn = await audit('torn.swing.yaml');
    assert.match(
      torn.kind === 'refused' ? torn.words : '',
      /^Cannot audit `torn\.swing\.yaml`: line 1: Found /,
    );
  });

  it('holds a record against a template, and refuses other kinds', async () => {
    assert.match(
      htmlOf(await compare(side('iron.template.yaml'), side('a.swing.yaml'))),
      /Against the template/,
    );
    assert.deepEqual(await compare(side('ines.student.yaml'), side('a.swing.yaml')), {
      kind: 'refused',
      words: 'Found files of other kinds; expected two records, or a record and a template.',
    });
    assert.deepEqual(await compare(side('c.swing.yaml'), side('a.swing.yaml')), {
      kind: 'refused',
      words: '`c.swing.yaml` is not there.',
    });
  });

  it('reads a revision, and what it refers to, through the client', async () => {
    const asked: string[] = [];
    session.connection.onRequest(readRevisionRequest, ({ uri, revision }: ReadRevisionParams) => {
      const name = uri.slice(folder.length);
      asked.push(`${revision} ${name}`);
      const then =
        name === 'a.swing.yaml'
          ? record('2026-05-14', 8)
          : name === 'ines.student.yaml'
            ? files[name]
            : undefined;
      return Promise.resolve<FileState>(
        then === undefined ? { kind: 'missing' } : { kind: 'text', text: then },
      );
    });
    const html = htmlOf(await compare(side('a.swing.yaml', 'HEAD~1'), side('a.swing.yaml')));
    assert.match(html, /8\.0\sdeg right ±\s1\.0\sdeg<\/td><td class="number">5\.0\sdeg right/);
    assert.ok(
      asked.includes('HEAD~1 a.swing.yaml') && asked.includes('HEAD~1 ines.student.yaml'),
      asked.join(),
    );
  });

  it('shows the progress of a student, from the file of the student or a record', async () => {
    for (const name of ['ines.student.yaml', 'a.swing.yaml']) {
      const result: PageResult = await session.connection.sendRequest(progressPageRequest, {
        uri: folder + name,
      });
      assert.match(htmlOf(result), /<h1>Progress of Ines<\/h1>.*2 lessons from 2026-05-14 to 2026-06-02/s);
    }
    const none: PageResult = await session.connection.sendRequest(progressPageRequest, {
      uri: `${folder}iron.template.yaml`,
    });
    assert.equal(none.kind, 'refused');
  });
});
