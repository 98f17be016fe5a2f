// `npm test`: installs what is missing, builds, runs the tests outside VS Code and then those inside it.
import { spawn } from 'node:child_process';
import { root, run, setUp } from './setup.mjs';

setUp();
run(process.execPath, ['build/bundle.mjs']);

const suites = [
  [
    'unit, published and property tests',
    ['node_modules/mocha/bin/mocha.js', '--reporter', 'build/reporter.cjs', 'test/**/*.test.ts'],
  ],
  ['tests inside VS Code', ['test/host/run.mjs']],
  ["tests inside VS Code, the extension in the browser's worker", ['test/host/run.mjs', '--web']],
  ['a sheet in a window that is reloaded, and in another one', ['test/host/windows.mjs']],
];

let passed = 0;
let failed = 0;
let retried = 0;
let broken = false;
for (const [name, args] of suites) {
  console.log(`\n── ${name}\n`);
  const { code, output } = await runSuite(args);
  const counts = [...output.matchAll(/^(\d+) passed, (\d+) failed(?:.*, (\d+) tried again)?/gm)].at(-1);
  passed += Number(counts?.[1] ?? 0);
  failed += Number(counts?.[2] ?? 0);
  retried += Number(counts?.[3] ?? 0);
  broken ||= code !== 0 || counts === undefined;
}
console.log(`\n${passed} passed, ${failed} failed${retried > 0 ? `, ${retried} tried again` : ''}`);
process.exit(broken || failed > 0 ? 1 : 0);

/** Shows a suite's output as it comes and keeps it. */
function runSuite(args) {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] });
    let output = '';
    child.stdout.on('data', (chunk) => {
      output += chunk;
      process.stdout.write(chunk);
    });
    child.on('error', fail);
    child.on('close', (code) => done({ code, output }));
  });
}
