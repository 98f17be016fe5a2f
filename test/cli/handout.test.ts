// The `handout` command: to standard output, into a file or a folder, in a language, and over nothing that is no handout.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { lesson } from '../analysis/handouts.ts';
import { swingwright, withFolder } from './program.ts';

describe('handout', function () {
  this.timeout(180_000);

  it('prints the page for the student, and the one for the file', () =>
    withFolder(lesson, (folder) => {
      const student = swingwright(['handout', 'lesson.swing.yaml'], folder);
      assert.equal(student.code, 0);
      assert.match(student.out, /^<!doctype html>\n<html lang="en">/);
      assert.doesNotMatch(student.out, /twisted on ice|What was measured/);
      const file = swingwright(
        ['handout', 'lesson.swing.yaml', '--for', 'file', '--health', '--language', 'de'],
        folder,
      );
      assert.match(file.out, /<html lang="de">.*twisted on ice.*Was gemessen wurde/s);
    }));

  it('writes a PDF, by the name of the file or into a folder', () =>
    withFolder(lesson, (folder) => {
      assert.equal(swingwright(['handout', 'lesson.swing.yaml', '--out', 'a.pdf'], folder).code, 0);
      assert.equal(readFileSync(join(folder, 'a.pdf'), 'latin1').slice(0, 5), '%PDF-');
      mkdirSync(join(folder, 'out'));
      const { out } = swingwright(
        ['handout', 'lesson.swing.yaml', '--out', 'out', '--format', 'pdf'],
        folder,
      );
      assert.match(out, /ansa-2026-05-14-student\.pdf/);
      assert.deepEqual(readdirSync(join(folder, 'out')), ['ansa-2026-05-14-student.pdf']);
    }));

  it('writes over an earlier handout, and over nothing else', () =>
    withFolder({ ...lesson, 'mine.html': 'my page', 'mine.pdf': 'x' }, (folder) => {
      const to = (out: string) => swingwright(['handout', 'lesson.swing.yaml', '--out', out], folder).code;
      assert.equal(to('a.html'), 0);
      assert.equal(to('a.html'), 0);
      for (const file of ['mine.html', 'mine.pdf', 'lesson.swing.yaml']) assert.equal(to(file), 2, file);
      assert.equal(readFileSync(join(folder, 'mine.html'), 'utf8'), 'my page');
    }));

  it('refuses a PDF without a place, a language without words, and what is no record', () =>
    withFolder({ ...lesson, 'fr.swing.yaml': 'swing: 1\nlanguage: fr\n' }, (folder) => {
      const refused = (...args: readonly string[]): string => {
        const { code, err } = swingwright(['handout', ...args], folder);
        assert.equal(code, 2);
        return err;
      };
      assert.match(refused('lesson.swing.yaml', '--format', 'pdf'), /expected `--out`/);
      assert.match(refused('lesson.swing.yaml', '--language', 'fr'), /en, de/);
      assert.match(refused('fr.swing.yaml'), /Found the language `fr`; expected one of `en`, `de`\./);
      assert.match(refused('ansa.student.yaml'), /is not a swing record/);
      assert.match(refused('none.swing.yaml'), /there is no such file/);
    }));
});
