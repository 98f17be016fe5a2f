// Runs mocha over the given test files inside the extension host and leaves the counts in a file; it knows no test.
import * as fs from 'node:fs';
import { findSourceMap } from 'node:module';
import Mocha from 'mocha';

const TEST_LIMIT_MS = 90_000;
/** A page that was not drawn in time, or a host that stood still, is tried once more; what is wrong fails again. */
const RETRIES = 1;

/** Loads every test file and runs the tests; rejects when one fails, which VS Code turns into its exit code. */
export async function runMocha(loads: (() => void)[]): Promise<void> {
  const color = process.env['SWINGWRIGHT_TEST_COLOUR'] === 'on';
  const mocha = new Mocha({ ui: 'bdd', timeout: TEST_LIMIT_MS, retries: RETRIES, color, reporter: 'spec' });
  const grep = process.env['SWINGWRIGHT_TEST_GREP'];
  if (grep) mocha.fgrep(grep);

  mocha.suite.emit('pre-require', globalThis as unknown as Mocha.MochaGlobals, '', mocha);
  for (const load of loads) load();

  let retried = 0;
  const stats = await new Promise<Mocha.Stats | undefined>((resolve) => {
    const runner = mocha.run(() => resolve(runner.stats));
    runner.on('retry', (test: Mocha.Test, error: Error) => {
      retried += 1;
      console.log(`    … ${test.title}: tried again after ${error.message}`);
    });
    runner.on('fail', (_test, error: Error) => {
      if (error.stack) error.stack = nameSources(error.stack);
    });
  });
  const { passes = 0, failures = 0, pending = 0 } = stats ?? {};
  const counts = { passed: passes, failed: failures, skipped: pending, retried };
  const file = process.env['SWINGWRIGHT_TEST_RESULTS'];
  if (file) fs.writeFileSync(file, JSON.stringify(counts));
  if (counts.failed > 0) throw new Error(`${counts.failed} of the tests failed.`);
}

/** Puts the sources' places in a stack trace; VS Code has taken over the place where Node would do it. */
function nameSources(stack: string): string {
  return stack.replaceAll(
    /(\/[^\s():]+\.cjs):(\d+):(\d+)/g,
    (place: string, file: string, line: string, column: string) => {
      const entry = findSourceMap(file)?.findEntry(Number(line) - 1, Number(column) - 1);
      if (!entry || !('originalSource' in entry)) return place;
      return `${entry.originalSource.replace(/^.*\/test\/host\//, 'test/host/')}:${entry.originalLine + 1}`;
    },
  );
}
