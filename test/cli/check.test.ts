import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import type { Log } from 'sarif';
import { cleanRecord, program, student, swingwright, withFolder, wrongRecord } from './program.ts';

const practice = {
  'ansa.student.yaml': student,
  'clean.swing.yaml': cleanRecord,
  'wrong.swing.yaml': wrongRecord,
};

interface FindingJson {
  readonly file: string;
  readonly code: string;
  readonly severity: string;
  readonly range: {
    readonly start: { readonly line: number; readonly character: number };
    readonly end: object;
  };
}

describe('swingwright check', () => {
  it('ends with 0 and counts the files where nothing is an error', () => {
    withFolder({ 'ansa.student.yaml': student, 'clean.swing.yaml': cleanRecord }, (folder) => {
      const { code, out } = swingwright(['check'], folder);
      assert.equal(code, 0);
      assert.match(out, /^2 files: no findings$/m);
    });
  });

  it('ends with 1 and names file, line and code where something is an error', () => {
    withFolder(practice, (folder) => {
      const { code, out } = swingwright(['check', '.'], folder);
      assert.equal(code, 1);
      assert.match(out, /^wrong\.swing\.yaml\n {2}7:22 {2}error .*`deg`.* wrong-dimension$/m);
      assert.match(out, /^3 files: 1 error$/m);
    });
  });

  it('calls a severity as the settings do', () => {
    const chop = `swing: 1\ndelivery:\n  attack: 20 deg down\n  path: 20 deg right\n`;
    withFolder({ 'chop.swing.yaml': chop }, (folder) => {
      const { out } = swingwright(['check', '.'], folder);
      assert.match(out, /^ {2}3:11 {2}information {2}Attack angle .* outside-practice$/m);
      assert.match(out, /^1 file: 2 information, 1 hint$/m);
    });
  });

  it('prints zero-based ranges as JSON, the same shape for every finding', () => {
    withFolder(practice, (folder) => {
      const { code, out } = swingwright(['check', '--format', 'json'], folder);
      const findings = JSON.parse(out) as FindingJson[];
      assert.equal(code, 1);
      assert.deepEqual(
        findings.map(({ file, code: found, severity, range }) => ({ file, found, severity, range })),
        [
          {
            file: 'wrong.swing.yaml',
            found: 'wrong-dimension',
            severity: 'error',
            range: { start: { line: 6, character: 21 }, end: { line: 6, character: 24 } },
          },
        ],
      );
      assert.deepEqual(Object.keys(findings[0]!), [
        'file',
        'code',
        'severity',
        'message',
        'range',
        'related',
      ]);
    });
  });

  it('prints an empty JSON array where there is no finding', () => {
    withFolder({ 'ansa.student.yaml': student }, (folder) => {
      assert.deepEqual(JSON.parse(swingwright(['check', '--format', 'json'], folder).out), []);
    });
  });

  it('prints SARIF whose results name a rule of the run, with one-based places and stable fingerprints', () => {
    withFolder(practice, (folder) => {
      const { out } = swingwright(['check', '--format', 'sarif'], folder);
      const log = JSON.parse(out) as Log;
      const [run] = log.runs;
      const [result] = run!.results!;
      assert.equal(log.version, '2.1.0');
      assert.equal(run!.tool.driver.rules![result!.ruleIndex!]!.id, 'wrong-dimension');
      assert.deepEqual(result!.locations![0]!.physicalLocation, {
        artifactLocation: { uri: 'wrong.swing.yaml' },
        region: { startLine: 7, startColumn: 22, endLine: 7, endColumn: 25 },
      });
      const moved = { ...practice, 'wrong.swing.yaml': `# a line above\n${wrongRecord}` };
      const again = withFolder(moved, (other) => swingwright(['check', '--format', 'sarif'], other).out);
      const [movedResult] = (JSON.parse(again) as Log).runs[0]!.results!;
      assert.deepEqual(movedResult!.partialFingerprints, result!.partialFingerprints);
    });
  });

  it('prints JUnit XML in which only errors are failures', () => {
    withFolder(practice, (folder) => {
      const { out } = swingwright(['check', '--format', 'junit'], folder);
      assert.match(out, /<testsuites name="swingwright" tests="3" failures="1" errors="0">/);
      assert.match(out, /<testsuite name="clean\.swing\.yaml" tests="1" failures="0"/);
      assert.match(
        out,
        /<testcase name="wrong-dimension at 7:22" classname="wrong\.swing\.yaml"><failure type="wrong-dimension"/,
      );
    });
  });

  it('reports a path that does not exist, goes on with the rest, and ends with 2', () => {
    withFolder(practice, (folder) => {
      const { code, out, err } = swingwright(['check', 'nowhere', 'wrong.swing.yaml'], folder);
      assert.equal(code, 2);
      assert.match(err, /cannot check `nowhere`: there is no such file or folder/);
      assert.match(out, /wrong-dimension/);
    });
  });

  it('reports a file that is no Swingwright file, and a folder that holds none', () => {
    withFolder({ 'notes.txt': 'x', 'empty/readme.md': 'x' }, (folder) => {
      const { code, err } = swingwright(['check', 'notes.txt', 'empty'], folder);
      assert.equal(code, 2);
      assert.match(err, /cannot check `notes\.txt`: its name ends in none of the known suffixes/);
      assert.match(err, /cannot check `empty`: it holds no Swingwright file/);
    });
  });

  it('reports a file that cannot be read and goes on with the rest', () => {
    withFolder({ 'ansa.student.yaml': student, 'clean.swing.yaml': cleanRecord }, (folder) => {
      symlinkSync('loop.swing.yaml', join(folder, 'loop.swing.yaml'));
      const { code, out, err } = swingwright(['check', 'loop.swing.yaml', 'clean.swing.yaml'], folder);
      assert.equal(code, 2);
      assert.match(err, /cannot check `loop\.swing\.yaml`: its links go round in a circle/);
      assert.match(out, /^1 file: no findings$/m);
    });
  });

  it('reports links of a folder that lead nowhere, and goes on with the rest', () => {
    withFolder({ 'ansa.student.yaml': student, 'clean.swing.yaml': cleanRecord }, (folder) => {
      symlinkSync('gone.swing.yaml', join(folder, 'old.swing.yaml'));
      symlinkSync('gone', join(folder, 'year'));
      const { code, out, err } = swingwright(['check'], folder);
      assert.equal(code, 2);
      assert.match(err, /cannot check `old\.swing\.yaml`: its link leads nowhere\./);
      assert.match(err, /cannot check `year`: its link leads nowhere\./);
      assert.match(out, /^2 files: no findings$/m);
    });
  });

  it('reports each file once where links of folders go round, and follows those that do not', () => {
    const files = { 'lessons/ansa.student.yaml': student, 'lessons/clean.swing.yaml': cleanRecord };
    withFolder({ ...files, 'elsewhere/other.student.yaml': student }, (folder) => {
      const lessons = join(folder, 'lessons');
      symlinkSync('.', join(lessons, 'again'));
      symlinkSync('../elsewhere', join(lessons, 'linked'));
      mkdirSync(join(lessons, 'deep'));
      symlinkSync('../..', join(lessons, 'deep/up'));
      const { code, out } = swingwright(['check', '--format', 'junit', '.'], lessons);
      assert.equal(code, 0);
      assert.deepEqual(
        [...out.matchAll(/<testsuite name="([^"]*)"/g)].map(([, name]) => name!.split('/').at(-1)).sort(),
        ['ansa.student.yaml', 'clean.swing.yaml', 'other.student.yaml'],
      );
    });
  });

  it('refuses to wait for what is not a regular file', function () {
    if (process.platform === 'win32') this.skip();
    const record = cleanRecord.replace('ansa.student', 'pipe.student');
    withFolder({ 'clean.swing.yaml': record }, (folder) => {
      for (const name of ['pipe.swing.yaml', 'pipe.student.yaml'])
        assert.equal(spawnSync('bash', ['-c', 'mkfifo "$0"', join(folder, name)]).status, 0);
      const { code, err } = swingwright(['check', 'pipe.swing.yaml'], folder);
      assert.equal(code, 2);
      assert.match(err, /cannot check `pipe\.swing\.yaml`: it is not a regular file\./);
      const { out } = swingwright(['check', 'clean.swing.yaml'], folder);
      assert.match(out, /it is not a regular file.* unreadable-reference$/m);
    });
  });

  it('ends as its findings ask for when the reader has seen enough', function () {
    if (process.platform === 'win32') this.skip();
    withFolder({ ...practice, 'clean/clean.swing.yaml': 'swing: 1\n' }, (folder) => {
      const status = (path: string): string =>
        spawnSync(
          'bash',
          [
            '-c',
            `"$0" "$1" check --format sarif ${path} | head -c 1 >/dev/null; echo "\${PIPESTATUS[0]}"`,
            process.execPath,
            program(),
          ],
          { cwd: folder, encoding: 'utf8' },
        ).stdout.trim();
      assert.equal(status('.'), '1');
      assert.equal(status('clean'), '0');
    });
  });

  it('says of a file in another encoding that it is not UTF-8', () => {
    withFolder(
      {
        'wide.swing.yaml': Buffer.from('\ufeff' + cleanRecord, 'utf16le'),
        'latin.student.yaml': Buffer.from('student: 1\nname: Jos\xe9\n', 'latin1'),
      },
      (folder) => {
        const { code, out } = swingwright(['check'], folder);
        assert.equal(code, 1);
        assert.match(
          out,
          /^wide\.swing\.yaml\n {2}1:1 {2}error {2}Found \d+ characters .* UTF-8\. {2}unreadable-characters$/m,
        );
        assert.match(
          out,
          /^latin\.student\.yaml\n {2}2:10 {2}error {2}Found a character .* unreadable-characters$/m,
        );
        assert.match(out, /^2 files: 2 errors$/m);
      },
    );
  });

  it('reads a file with a byte-order mark, with CRLF and with bytes that are no UTF-8', () => {
    const bytes = Buffer.concat([
      Buffer.from('\ufeffswing: 1\r\nclub: '),
      Buffer.from([0xff, 0xfe, 0x00]),
      Buffer.from('\r\n'),
    ]);
    withFolder(
      {
        'odd.swing.yaml': bytes,
        'bom.swing.yaml': `\ufeff${wrongRecord.replaceAll('\n', '\r\n')}`,
        'ansa.student.yaml': student,
      },
      (folder) => {
        const { code, out } = swingwright(['check', '--format', 'json', 'bom.swing.yaml'], folder);
        const [finding] = JSON.parse(out) as FindingJson[];
        assert.equal(code, 1);
        assert.deepEqual(finding?.range.start, { line: 6, character: 21 });
        const odd = swingwright(['check', '--format', 'json', 'odd.swing.yaml'], folder);
        assert.notEqual(odd.code, null);
        assert.ok(Array.isArray(JSON.parse(odd.out)));
      },
    );
  });

  it('prints no control characters of a file to the terminal', () => {
    withFolder({ 'bad.swing.yaml': 'swing: 1\n"\\e[31mkey\\u202e": 1\n' }, (folder) => {
      const { out } = swingwright(['check'], folder);
      assert.match(out, /unknown-key/);
      // eslint-disable-next-line no-control-regex
      assert.doesNotMatch(out, /[\u001b\u202e]/);
    });
  });

  it('ends with 2 on an unknown option, format or command', () => {
    withFolder({}, (folder) => {
      for (const args of [['check', '--fast'], ['check', '--format', 'xml'], ['chekc']]) {
        assert.equal(swingwright(args, folder).code, 2, args.join(' '));
      }
    });
  });
});
