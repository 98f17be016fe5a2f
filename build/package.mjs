// `npm run package`: builds small files and packs them as swingwright.vsix, which any VS Code can install.
import { run, setUp } from './setup.mjs';

setUp();
run(process.execPath, ['build/bundle.mjs', '--production']);
run(process.execPath, [
  'node_modules/@vscode/vsce/vsce',
  'package',
  '--no-dependencies',
  '--allow-missing-repository',
  // The pictures of the README come with the package.
  '--no-rewrite-relative-links',
  '--out',
  'swingwright.vsix',
]);
