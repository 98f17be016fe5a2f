/**
 * Lets tests that run inside the extension host look at and act on the page: a small service on the loopback address
 * whose secret address is handed to the tests through the environment. Only for tests.
 */
import { randomBytes } from 'node:crypto';
import * as fs from 'node:fs/promises';
import http from 'node:http';
import path from 'node:path';

/** The environment variable that tells tests the stage's address. */
export const STAGE_VARIABLE = 'SWINGWRIGHT_STAGE';

const REQUEST_LIMIT_BYTES = 100_000;

/** @typedef {import('./workbench.mjs').Tools} Tools */

/**
 * @typedef {object} Stage
 * @property {string} address with the secret; an act is a POST to `address/name` with a JSON list of arguments
 * @property {(tools: Tools) => void} open from now on acts reach the page; earlier ones wait for it
 * @property {() => void} close
 */

/**
 * @param {string} screenshotFolder where `screenshot` writes
 * @returns {Promise<Stage>}
 */
export async function startStage(screenshotFolder) {
  const secret = randomBytes(24).toString('base64url');
  /** @type {(tools: Tools) => void} */
  let open = () => {};
  /** @type {Promise<Tools>} */
  const opened = new Promise((resolve) => (open = resolve));

  // One act at a time: two mice on one page would get in each other's way.
  let last = Promise.resolve();
  const server = http.createServer((request, response) => {
    const answer = (/** @type {number} */ status, /** @type {unknown} */ value) => {
      response.writeHead(status, { 'content-type': 'application/json' });
      response.end(JSON.stringify(value ?? null));
    };
    const [, given, name = ''] = (request.url ?? '').split('/');
    // Requests of a browser's page carry an origin; a test's do not.
    if (given !== secret || request.method !== 'POST' || request.headers.origin)
      return answer(404, 'Not found.');
    last = last
      .then(async () => actOn(await opened, screenshotFolder, name, await readArguments(request)))
      .then((value) => answer(200, value))
      .catch((error) => answer(500, String(error?.message ?? error)));
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(undefined)));
  const { port } = /** @type {import('node:net').AddressInfo} */ (server.address());
  return {
    address: `http://127.0.0.1:${port}/${secret}`,
    open,
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}

async function actOn(
  /** @type {Tools} */ tools,
  /** @type {string} */ screenshotFolder,
  /** @type {string} */ name,
  /** @type {unknown[]} */ values,
) {
  if (name === 'screenshot') {
    const [title, theme] = values;
    if (typeof title !== 'string' || !/^[\w-]+$/.test(title))
      throw new Error('A screenshot wants a plain name.');
    if (theme) await tools.theme(/** @type {import('./workbench.mjs').Theme} */ (theme));
    const file = path.join(screenshotFolder, `${title}.png`);
    await fs.mkdir(screenshotFolder, { recursive: true });
    await tools.screenshot(file);
    return file;
  }
  const act = Object.hasOwn(tools, name) ? /** @type {Record<string, Function>} */ (tools)[name] : undefined;
  if (!act) throw new Error(`The stage has no act ${name}.`);
  return act(...values);
}

/** @returns {Promise<unknown[]>} */
async function readArguments(/** @type {http.IncomingMessage} */ request) {
  let text = '';
  for await (const chunk of request) {
    text += chunk;
    if (text.length > REQUEST_LIMIT_BYTES) throw new Error('The request is too long.');
  }
  const values = JSON.parse(text || '[]');
  if (!Array.isArray(values)) throw new Error('The arguments are a JSON list.');
  return values;
}
