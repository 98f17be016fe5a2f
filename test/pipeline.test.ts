// What the README tells to copy into a pipeline is run as it stands there: hooks, action, problem matchers.
import assert from 'node:assert/strict';
import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parse } from 'yaml';
import { gitEnvironment } from './cli/git-folder.ts';
import { cleanRecord, program, student, swingwright, withFolder, wrongRecord } from './cli/program.ts';

const root = resolve(import.meta.dirname, '..');
const text = (path: string): string => readFileSync(join(root, path), 'utf8');
const clean = { 'ansa.student.yaml': student, 'clean.swing.yaml': cleanRecord };

/** The block of the README that begins with this line. */
function block(first: string): string {
  const found = [...text('README.md').matchAll(/^```(?:sh|yaml|json)\n(.*?)^```$/gms)].map(
    ([, body = '']) => body,
  );
  const one = found.find((body) => body.startsWith(first));
  assert.ok(one, `no block in the README begins with ${first}`);
  return one;
}

describe('in a pipeline', () => {
  it('the hook of git holds back a commit with an error and lets others pass', () =>
    withFolder(clean, (folder) => {
      const env = gitEnvironment(folder);
      const git = (...args: string[]): number | null => spawnSync('git', args, { cwd: folder, env }).status;
      execFileSync('git', ['init', '-q'], { cwd: folder, env });
      const hook = join(folder, '.git/hooks/pre-commit');
      mkdirSync(join(folder, '.git/hooks'), { recursive: true });
      writeFileSync(hook, `#!/bin/sh\n${block('# .git/hooks/pre-commit')}`);
      chmodSync(hook, 0o755);
      git('add', 'ansa.student.yaml', 'clean.swing.yaml');
      assert.equal(git('commit', '-q', '-m', 'lessons'), 0);
      writeFileSync(join(folder, 'wrong lesson.swing.yaml'), wrongRecord);
      git('add', 'wrong lesson.swing.yaml');
      assert.equal(git('commit', '-q', '-m', 'wrong'), 1);
      writeFileSync(join(folder, 'note.txt'), 'no record');
      git('reset', '-q');
      git('add', 'note.txt');
      assert.equal(git('commit', '-q', '-m', 'note'), 0);
    }));

  it('the hook of git reads what is staged, whatever a file is called and wherever it lies', () =>
    withFolder(clean, (folder) => {
      const env = gitEnvironment(folder);
      const git = (...args: string[]): number | null => spawnSync('git', args, { cwd: folder, env }).status;
      execFileSync('git', ['init', '-q'], { cwd: folder, env });
      mkdirSync(join(folder, '.git/hooks'), { recursive: true });
      const hook = join(folder, '.git/hooks/pre-commit');
      writeFileSync(hook, `#!/bin/sh\n${block('# .git/hooks/pre-commit')}`);
      chmodSync(hook, 0o755);
      git('add', 'ansa.student.yaml', 'clean.swing.yaml');
      assert.equal(git('commit', '-q', '-m', 'lessons'), 0);
      mkdirSync(join(folder, 'sub'));
      for (const [name, wrong] of [
        ['Übung.swing.yaml', wrongRecord],
        ['-q.swing.yaml', wrongRecord],
        ['sub/swingwright.yaml', 'swingwright: 1\ncoverge: 2\nmethods: [eye]\n'],
        ['clean.review.yaml', 'review: "1\n'],
      ] as const) {
        writeFileSync(join(folder, name), wrong);
        assert.equal(git('add', '--', name), 0);
        assert.equal(git('commit', '-q', '-m', name), 1, name);
        git('rm', '-q', '-f', '--cached', '--', name);
        rmSync(join(folder, name));
      }
      // What is committed counts, not what lies in the folder.
      writeFileSync(join(folder, '-q.swing.yaml'), wrongRecord);
      git('add', '--', '-q.swing.yaml');
      writeFileSync(join(folder, '-q.swing.yaml'), cleanRecord);
      assert.equal(git('commit', '-q', '-m', 'wrong in the index'), 1);
      git('add', '--', '-q.swing.yaml');
      writeFileSync(join(folder, '-q.swing.yaml'), wrongRecord);
      assert.equal(git('commit', '-q', '-m', 'right in the index'), 0);
    })).timeout(120_000);

  it('the hook for pre-commit is the same in the README and for other repositories, and runs on the files that it names', () => {
    interface Hook {
      readonly id: string;
      readonly entry: string;
      readonly files: string;
      readonly language: string;
    }
    const { repos } = parse(block('# .pre-commit-config.yaml')) as { repos: { hooks: Hook[] }[] };
    const shared = parse(text('.pre-commit-hooks.yaml')) as Hook[];
    const [local] = repos[0]!.hooks;
    const same = shared.find(({ id }) => id === local!.id)!;
    assert.deepEqual([local!.entry, local!.files, local!.language], [same.entry, same.files, same.language]);
    const files = new RegExp(local!.files);
    for (const name of [
      'a.swing.yaml',
      'x/b.student.yaml',
      'c.faults.yaml',
      'swingwright.yaml',
      'x/swingwright.yaml',
    ])
      assert.match(name, files);
    for (const name of ['a.yaml', 'notswingwright.yaml', 'a.swing.yaml.bak'])
      assert.doesNotMatch(name, files);
    withFolder({ ...clean, 'wrong.swing.yaml': wrongRecord }, (folder) => {
      const env = gitEnvironment(folder);
      const run = (...names: string[]): number | null =>
        spawnSync('sh', ['-c', `${local!.entry} "$@"`, 'hook', ...names], { cwd: folder, env }).status;
      assert.equal(run('clean.swing.yaml', 'ansa.student.yaml'), 0);
      assert.equal(run('clean.swing.yaml', 'wrong.swing.yaml'), 1);
    });
  });

  it('the action checks, writes SARIF where it is asked to, and fails with an error', () => {
    const { runs } = parse(text('action.yml')) as {
      runs: { using: string; steps: { name: string; run: string; env?: Record<string, string> }[] };
    };
    assert.equal(runs.using, 'composite');
    const step = runs.steps.find(({ name }) => name === 'Check')!;
    // What a workflow says reaches the shell as a variable alone, never as text of the script.
    for (const { run } of runs.steps) assert.doesNotMatch(run, /\$\{\{/);
    const workflow = parse(block('# .github/workflows/lessons.yml')) as {
      jobs: { check: { steps: { uses: string; with?: Record<string, string> }[] } };
    };
    const given = workflow.jobs.check.steps.find(({ uses }) => uses.includes('swingwright'))!.with!;
    withFolder({ ...clean, 'wrong.swing.yaml': wrongRecord }, (folder) => {
      const action = join(folder, '.action');
      mkdirSync(join(action, 'dist'), { recursive: true });
      writeFileSync(join(action, 'dist/cli.js'), readFileSync(program()));
      writeFileSync(join(action, 'package.json'), '{ "type": "module" }');
      const env = {
        ...gitEnvironment(folder),
        GITHUB_ACTION_PATH: action,
        SWINGWRIGHT_PATH: given['path'],
        SWINGWRIGHT_SARIF: given['sarif'],
      };
      assert.deepEqual(Object.keys(step.env ?? {}), ['SWINGWRIGHT_PATH', 'SWINGWRIGHT_SARIF']);
      const { status, stdout } = spawnSync('bash', ['-e', '-c', step.run], {
        cwd: folder,
        env,
        encoding: 'utf8',
      });
      assert.equal(status, 1);
      assert.match(stdout, /^::add-matcher::.*\.action\/\.github\/swingwright-matcher\.json$/m);
      assert.match(stdout, /^wrong\.swing\.yaml:7:22: error: /m);
      const sarif = JSON.parse(readFileSync(join(folder, given['sarif']!), 'utf8')) as {
        runs: { results: unknown[] }[];
      };
      assert.equal(sarif.runs[0]!.results.length, 1);
      const fine = spawnSync('bash', ['-e', '-c', step.run], {
        cwd: folder,
        env: { ...env, SWINGWRIGHT_PATH: 'clean.swing.yaml', SWINGWRIGHT_SARIF: '' },
      });
      assert.equal(fine.status, 0);
    });
    assert.ok(existsSync(join(root, '.github/swingwright-matcher.json')));
  });

  it('the problem matchers of action and editor read every line that `check` prints', () => {
    interface Pattern {
      readonly regexp: string;
    }
    const action = JSON.parse(text('.github/swingwright-matcher.json')) as {
      problemMatcher: { pattern: Pattern[] }[];
    };
    const manifest = JSON.parse(text('package.json')) as {
      contributes: { problemMatchers: { name: string; pattern: Pattern }[] };
    };
    const [editor] = manifest.contributes.problemMatchers;
    const { regexp } = action.problemMatcher[0]!.pattern[0]!;
    assert.equal(editor!.pattern.regexp, regexp);
    const task = JSON.parse(block('{\n  "version"')) as {
      tasks: { command: string; problemMatcher: string }[];
    };
    assert.equal(task.tasks[0]!.problemMatcher, `$${editor!.name}`);
    const { out } = swingwright(
      task.tasks[0]!.command.split(' ')
        .slice(1)
        .map((word) => (word === '.' ? 'samples' : word)),
      root,
    );
    const lines = out.trimEnd().split('\n');
    assert.ok(lines.length > 10);
    const read = lines.map((line) => new RegExp(regexp).exec(line));
    for (const [i, match] of read.entries()) assert.ok(match, lines[i]);
    const json = JSON.parse(swingwright(['check', 'samples', '--format', 'json'], root).out) as {
      file: string;
      code: string;
      message: string;
      range: { start: { line: number; character: number } };
    }[];
    assert.deepEqual(
      read.map((match) => match!.slice(1, 7).filter((_, i) => i !== 3)),
      json.map(({ file, code, message, range: { start } }) => [
        file,
        String(start.line + 1),
        String(start.character + 1),
        message,
        code,
      ]),
    );
  });

  it('a badge says what is wrong, and that nothing is', () => {
    const badge = (files: Readonly<Record<string, string>>, ...paths: readonly string[]): unknown =>
      withFolder(
        files,
        (folder) => JSON.parse(swingwright(['check', '--format', 'badge', ...paths], folder).out) as unknown,
      );
    assert.deepEqual(badge(clean), {
      schemaVersion: 1,
      label: 'lessons',
      message: 'in order',
      color: 'green',
      isError: false,
    });
    assert.deepEqual(badge({ ...clean, 'wrong.swing.yaml': wrongRecord }), {
      schemaVersion: 1,
      label: 'lessons',
      message: '1 error',
      color: 'red',
      isError: true,
    });
    const { message, color } = badge(clean, '.', 'gone.swing.yaml') as { message: string; color: string };
    assert.deepEqual([message, color], ['1 file not read', 'yellow']);
    assert.deepEqual(badge({}), {
      schemaVersion: 1,
      label: 'lessons',
      message: 'nothing checked',
      color: 'lightgrey',
      isError: false,
    });
  });

  it('a finding in SARIF stays the same one when lines above it change, and is another one in another place of its file', () => {
    interface Log {
      readonly runs: readonly { readonly results: readonly { readonly partialFingerprints: object }[] }[];
    }
    const prints = (record: string): readonly string[] =>
      withFolder({ 'ansa.student.yaml': student, 'a.swing.yaml': record }, (folder) =>
        (JSON.parse(swingwright(['check', '--format', 'sarif'], folder).out) as Log).runs[0]!.results.map(
          ({ partialFingerprints }) => JSON.stringify(partialFingerprints),
        ),
      );
    const before = prints(wrongRecord);
    assert.equal(before.length, 1);
    assert.deepEqual(prints(`# above\n\n${wrongRecord}`), before);
  });

  it('a finding in SARIF is known by its code and key, whatever numbers it tells of and from wherever it is asked for', () => {
    interface Log {
      readonly runs: readonly {
        readonly results: readonly {
          readonly message: { text: string };
          readonly partialFingerprints: object;
        }[];
      }[];
    }
    const record = (u: number): string =>
      `swing: 1\ndelivery:\n  face: 0 deg ± ${u} deg\n  path: 0 deg ± ${u} deg\n  face_to_path: 8 deg right ± 1 deg\n`;
    withFolder(
      { 'sub/swingwright.yaml': 'swingwright: 1\n', 'sub/deep/a.swing.yaml': record(1) },
      (folder) => {
        const results = (at: string, path: string) => {
          const { out } = swingwright(['check', path, '--format', 'sarif'], join(folder, at));
          return (JSON.parse(out) as Log).runs[0]!.results;
        };
        const [before, inside] = [results('.', 'sub'), results('sub/deep', '.')];
        assert.ok(before.length > 0);
        const prints = (all: typeof before) => all.map((one) => one.partialFingerprints);
        assert.deepEqual(prints(inside), prints(before));
        writeFileSync(join(folder, 'sub/deep/a.swing.yaml'), `# above\n${record(0.9)}`);
        const after = results('.', 'sub');
        assert.notDeepEqual(
          after.map(({ message }) => message.text),
          before.map(({ message }) => message.text),
        );
        assert.deepEqual(prints(after), prints(before));
        assert.equal(new Set(prints(after).map((one) => JSON.stringify(one))).size, after.length);
      },
    );
  });
});
