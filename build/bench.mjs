// `npm run bench`: speeds as ratios within one run; needs SciPy for the last one and says so where it is absent.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root, run, setUp } from './setup.mjs';

setUp();
await runBundled('build/bench/keystroke.ts');
await runBundled('build/bench/agreement.ts');
await runBundled('build/bench/plans.ts');
await runBundled('build/bench/sheet.ts');
await runBundled('build/bench/comparison.ts');
run(process.execPath, ['--import=tsx', 'build/bench/keystrokes.ts']);
run(process.execPath, ['--import=tsx', 'build/bench/trajectory.ts']);

/** Bundles as for delivery, since what tsx hands to Node is slower, then runs that. */
async function runBundled(entry) {
  const { build } = await import('esbuild');
  const folder = await mkdtemp(join(tmpdir(), 'swingwright-bench-'));
  const outfile = join(folder, 'bench.cjs');
  try {
    await build({
      absWorkingDir: root,
      entryPoints: [entry],
      outfile,
      bundle: true,
      minify: true,
      platform: 'node',
      target: 'node20',
      format: 'cjs',
      logLevel: 'warning',
    });
    run(process.execPath, [outfile]);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
