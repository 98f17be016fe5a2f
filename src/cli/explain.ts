// The `explain` command: what a finding code or a quantity means, those of the workspace here included, or the list of all codes.
import { resolve } from 'node:path';
import type { Analysis, FileState } from '../analysis/result.ts';
import { settle } from '../analysis/settle.ts';
import { workspaceCandidates } from '../analysis/workspace.ts';
import type { Check } from '../checks/check.ts';
import { checkFrom } from '../checks/own-checks.ts';
import { checks } from '../checks/table.ts';
import { loadFile, toUri } from '../disk/files.ts';
import { findNearest } from '../measure/nearest.ts';
import { showWindow } from '../measure/show.ts';
import { meaningOfMiss } from '../registry/meaning-of-miss.ts';
import type { Quantity } from '../registry/quantity.ts';
import { builtIn, findMiss, type Registry } from '../registry/registry.ts';
import { printable } from './formats/text.ts';

/** Prints the explanation of `word`, or one line a code where none is given; 2 where there is no such word. */
export async function explain(
  word: string | undefined,
  folder: string,
  signal: AbortSignal,
): Promise<number> {
  const analysis = await workspaceOf(folder, signal);
  const all = [...checks, ...(analysis?.subject.own.checks ?? []).map(checkFrom)];
  if (word === undefined) {
    const wide = Math.max(...all.map((check) => check.code.length));
    process.stdout.write(
      all.map((check) => `${check.code.padEnd(wide)}  ${printable(check.title)}\n`).join(''),
    );
    return 0;
  }
  const registry = analysis?.subject.registry ?? builtIn;
  const text = aboutCode(word, all) ?? aboutQuantity(word, registry, analysis) ?? aboutMiss(word);
  if (text === undefined) {
    process.stderr.write(
      `swingwright: there is no finding code \`${printable(word)}\`; ${advice(word, all, registry)}\n`,
    );
    return 2;
  }
  process.stdout.write(text);
  return 0;
}

/** The analysis of the workspace file in this folder or the nearest one above; undefined where there is none. */
async function workspaceOf(folder: string, signal: AbortSignal): Promise<Analysis | undefined> {
  for (const uri of workspaceCandidates(toUri(resolve(folder, 'any.swing.yaml')))) {
    const state = await loadFile(uri);
    if (state.kind === 'missing') continue;
    return state.kind === 'text'
      ? settle(uri, new Map<string, FileState>([[uri, state]]), loadFile, signal)
      : undefined;
  }
  return undefined;
}

function aboutCode(word: string, all: readonly Check[]): string | undefined {
  const check = all.find(({ code }) => code === word);
  if (check === undefined) return undefined;
  return `${check.code} (${check.severity}): ${printable(check.title)}\n\n${shown(check.explanation.trim())}\n`;
}

function aboutQuantity(id: string, registry: Registry, analysis: Analysis | undefined): string | undefined {
  const quantity = registry.find(id);
  if (quantity === undefined) return undefined;
  const { title, meaning, from, to, unit, directions, practice, bounds } = quantity;
  const own = analysis?.document.kind === 'workspace' ? analysis.document.own.derived : [];
  const derived = own.find((one) => one.quantity.id === id);
  const words = [...new Set(directions.map(({ word }) => word))];
  const window = ({ min, max, source }: Quantity['bounds']): string =>
    `${showWindow(quantity, min, max)} (${source})`;
  const lines = [
    `${id}: ${title}`,
    '',
    ...(meaning === '' ? [] : [meaning]),
    ...(derived === undefined ? [] : [`Computed in this workspace as ${derived.is.value}.`]),
    ...(from === '' || to === '' ? [] : [`From ${from} to ${to}.`]),
    `In ${unit === '' ? 'plain numbers' : unit}${words.length === 0 ? '' : `, with ${words.join(', ')}`}.`,
    ...(practice === undefined ? [] : [`Usual: ${window(practice)}.`]),
    `Possible: ${window(bounds)}.`,
  ];
  return `${lines.map(printable).join('\n')}\n`;
}

function aboutMiss(word: string): string | undefined {
  const miss = findMiss(word);
  return miss && `${word}, a miss: ${meaningOfMiss(miss, undefined)}\n`;
}

function advice(word: string, all: readonly Check[], { quantities, broken }: Registry): string {
  if (broken.has(word)) return 'its declaration in `swingwright.yaml` cannot be read.';
  const nearest = findNearest(word, [...all.map(({ code }) => code), ...quantities.map(({ id }) => id)]);
  return nearest === undefined ? '`swingwright explain` lists them.' : `did you mean \`${nearest}\`?`;
}

/** Line by line, since what a workspace says may hold signs that a terminal would obey. */
function shown(text: string): string {
  return text.split('\n').map(printable).join('\n');
}
