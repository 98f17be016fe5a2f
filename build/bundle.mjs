// Bundles the extension, its server and the command line into dist/; `--production` for small files without source maps.
import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { chmod, rm, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

const root = resolve(import.meta.dirname, '..');
const production = process.argv.includes('--production');

const node = { platform: 'node', target: 'node20' };
// The extension host of a browser loads one CommonJS file and hands it `vscode`; the worker runs a plain script.
const web = { platform: 'browser', target: 'es2022', mainFields: ['browser', 'module', 'main'] };

// Some packages of the command line are CommonJS and say `require`, which a module has to be given.
const requireInModule = {
  js: "import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(import.meta.url);",
};

/** What prints stays out of whatever may print: it is large, and loaded from its own file when somebody does. */
const printApart = {
  name: 'print-apart',
  setup: (/** @type {import('esbuild').PluginBuild} */ bundle) =>
    bundle.onResolve({ filter: /\/print\/handout-pdf\.ts$/ }, ({ kind }) =>
      kind === 'dynamic-import' ? { path: './print.cjs', external: true } : undefined,
    ),
};

/** @type {readonly (import('esbuild').BuildOptions & { from: string, to: string })[]} */
const bundles = [
  {
    from: 'src/extension/desktop.ts',
    to: 'dist/extension.cjs',
    format: 'cjs',
    external: ['vscode'],
    ...node,
  },
  { from: 'src/server/node.ts', to: 'dist/server.cjs', format: 'cjs', plugins: [printApart], ...node },
  { from: 'src/print/handout-pdf.ts', to: 'dist/print.cjs', format: 'cjs', ...node },
  {
    from: 'src/extension/browser.ts',
    to: 'dist/web/extension.cjs',
    format: 'cjs',
    external: ['vscode'],
    ...web,
  },
  { from: 'src/server/browser.ts', to: 'dist/web/server.js', format: 'iife', ...web },
  // What runs in a panel: its style sheet is bundled beside it.
  { from: 'src/panel/sheet.tsx', to: 'dist/panel/sheet.js', format: 'iife', ...web },
  { from: 'src/panel/sheet.css', to: 'dist/panel/sheet.css' },
  {
    from: 'src/cli/main.ts',
    to: 'dist/cli.js',
    format: 'esm',
    banner: requireInModule,
    plugins: [printApart],
    ...node,
  },
];

const packages = new Set();
await rm(join(root, 'dist'), { recursive: true, force: true });
for (const { from, to, ...options } of bundles) {
  if (!existsSync(join(root, from))) continue;
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: [from],
    outfile: to,
    bundle: true,
    metafile: true,
    minify: production,
    sourcemap: !production,
    legalComments: 'none',
    logLevel: 'warning',
    define: { 'process.env.NODE_ENV': production ? '"production"' : '"development"' },
    ...options,
  });
  for (const input of Object.keys(metafile.inputs)) {
    const name = /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(input);
    if (name !== null) packages.add(name[0]);
  }
  printSize(to);
}
await writeFile(join(root, 'dist/licences.txt'), licences());
if (existsSync(join(root, 'dist/cli.js'))) await chmod(join(root, 'dist/cli.js'), 0o755);

/** What the licences of the bundled packages ask for: their text, once for each package. */
function licences() {
  const texts = [...packages].sort().map((folder) => {
    const { name, version, license } = JSON.parse(readFileSync(join(root, folder, 'package.json'), 'utf8'));
    const file = readdirSync(join(root, folder)).find((entry) => /^licen[cs]e/i.test(entry));
    const text = file === undefined ? '' : readFileSync(join(root, folder, file), 'utf8').trim();
    return `${name} ${version} (${license})\n\n${text}\n`;
  });
  // The letters of PDF come with pdfmake and have a licence of their own, which is the one that pdfjs-dist stands under too.
  const apache = readFileSync(join(root, 'node_modules/pdfjs-dist/LICENSE'), 'utf8').trim();
  texts.push(`Roboto (Apache-2.0)\n\n${apache}\n`);
  return texts.join(`\n${'-'.repeat(80)}\n\n`);
}

function printSize(file) {
  const { size } = statSync(join(root, file));
  const zipped = gzipSync(readFileSync(join(root, file))).length;
  console.log(`${file.padEnd(24)} ${kilobytes(size)} kB  ${kilobytes(zipped)} kB gzip`);
}

function kilobytes(bytes) {
  return (bytes / 1000).toFixed(0).padStart(5);
}
