/**
 * Loaded into VS Code's server before its own code: ends the server's whole process group, and removes its
 * temporary folders, as soon as its standard input closes. That happens on every way out of the process that started it, even
 * when that one is killed.
 */
'use strict';
const fs = require('node:fs');
const path = require('node:path');

// The server's child processes inherit this loading, but not the mark.
if (process.env.SWINGWRIGHT_HOST_GUARD) {
  const removable = (process.env.SWINGWRIGHT_HOST_REMOVE ?? '').split(path.delimiter).filter(Boolean);
  delete process.env.SWINGWRIGHT_HOST_GUARD;
  delete process.env.SWINGWRIGHT_HOST_REMOVE;
  process.on('SIGTERM', () => {});
  process.stdin.resume();
  process.stdin.on('error', () => {});
  process.stdin.once('close', endGroup);
  process.stdin.once('end', endGroup);

  function endGroup() {
    process.kill(-process.pid, 'SIGTERM');
    setTimeout(() => {
      try {
        for (const folder of removable) fs.rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
      } finally {
        process.kill(-process.pid, 'SIGKILL');
      }
    }, 300);
  }
}
