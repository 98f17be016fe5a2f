/**
 * Loads the packages of this folder, which are apart from the main ones because they are heavy, and installs them first
 * where they are missing.
 */
import { fileURLToPath } from 'node:url';
import { installPackages } from '../../build/setup.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));

/** @returns {Promise<typeof import('playwright-core')>} */
export const loadPlaywright = () => load('playwright-core');

/** @returns {Promise<typeof import('@vscode/test-electron')>} */
export const loadTestElectron = () => load('@vscode/test-electron');

/** @returns {Promise<typeof import('jszip')>} */
export const loadZip = async () => (await load('jszip')).default;

/** The text of the script that checks a page for what keeps people out. */
export async function loadAxe() {
  return (await load('axe-core')).default.source;
}

async function load(/** @type {string} */ name) {
  installPackages(here);
  return import(name);
}
