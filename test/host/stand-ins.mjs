/**
 * Writes plain-JavaScript stand-ins for the native modules that VS Code's server wants and npm ships without a binary:
 * the logger, the watch on a parent process, and the machine's identity (the same nought for everyone). Knows nothing of how the rest is installed.
 */
import * as fs from 'node:fs/promises';
import path from 'node:path';

/** Appends each record to the log's file at once, in the form that the real logger is set to. */
const LOGGER = `
const fs = require('node:fs');
const path = require('node:path');
const levels = ['trace', 'debug', 'info', 'warning', 'error', 'critical', 'off'];

class Logger {
  constructor(file) {
    this.file = file;
    this.level = 2;
    this.bare = false;
    fs.mkdirSync(path.dirname(file), { recursive: true });
  }
  write(level, message) {
    if (level < this.level) return;
    const time = new Date().toISOString().replace('T', ' ').replace('Z', '');
    const line = this.bare ? message : time + ' [' + levels[level] + '] ' + message + '\\n';
    try { fs.appendFileSync(this.file, line); } catch { /* The log folder is gone: the host is being ended. */ }
  }
  trace(message) { this.write(0, message); }
  debug(message) { this.write(1, message); }
  info(message) { this.write(2, message); }
  warn(message) { this.write(3, message); }
  error(message) { this.write(4, message); }
  critical(message) { this.write(5, message); }
  getLevel() { return this.level; }
  setLevel(level) { this.level = level; }
  setPattern() { this.bare = false; }
  clearFormatters() { this.bare = true; }
  flush() {}
  drop() {}
}

exports.version = 0;
exports.setLevel = () => {};
exports.setFlushOn = () => {};
exports.shutdown = () => {};
exports.createRotatingLogger = async (name, file) => new Logger(file);
exports.createAsyncRotatingLogger = async (name, file) => new Logger(file);
`;

/** Ends this process within three seconds once the given process is gone. */
const WATCHDOG = `
exports.start = (parent) => {
  setInterval(() => {
    try { process.kill(parent, 0); } catch (error) { if (error.code === 'ESRCH') process.exit(87); }
  }, 3000).unref();
};
exports.exit = (code) => process.exit(code);
`;

const IDENTITY = `
exports.getDeviceId = async () => '00000000-0000-0000-0000-000000000000';
`;

/** @param {string} modules the node_modules folder that gets them */
export async function writeStandIns(modules) {
  await writeModule(path.join(modules, '@vscode', 'spdlog'), LOGGER);
  await writeModule(path.join(modules, '@vscode', 'native-watchdog'), WATCHDOG);
  await writeModule(path.join(modules, '@vscode', 'deviceid'), IDENTITY);
}

async function writeModule(/** @type {string} */ folder, /** @type {string} */ text) {
  await fs.mkdir(folder, { recursive: true });
  await fs.writeFile(path.join(folder, 'index.js'), `'use strict';${text}`);
  const manifest = { name: `@vscode/${path.basename(folder)}`, version: '0.0.0', main: './index.js' };
  await fs.writeFile(path.join(folder, 'package.json'), JSON.stringify(manifest));
}
