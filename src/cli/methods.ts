// The `methods` command: how far methods of measuring agree in a folder's own records, and, if asked, what that says of them.
import { jsonText } from './formats/json-text.ts';
import { writeFile } from 'node:fs/promises';
import { URI } from 'vscode-uri';
import {
  fewestForFigure,
  methodFigures,
  withMethodFigures,
  type MethodFigure,
} from '../analysis/method-figures.ts';
import { methodAgreementOf, type MethodAgreement } from '../analysis/method-pairs.ts';
import { agreementLines, figureLine } from '../analysis/method-words.ts';
import type { Analysis } from '../analysis/result.ts';
import { settle } from '../analysis/settle.ts';
import { nearestWorkspace } from '../analysis/workspace.ts';
import { toPath, toUri } from '../disk/files.ts';
import { differenceFromSI } from '../measure/units.ts';
import type { Interval95 } from '../model/method-comparison.ts';
import { kindOf } from '../record/kind.ts';
import type { Quantity } from '../registry/quantity.ts';
import { builtIn } from '../registry/registry.ts';
import { printable } from './formats/text.ts';
import { practiceAt } from './practice.ts';

export interface MethodsOptions {
  readonly format: 'text' | 'json';
  /** This quantity alone. */
  readonly quantity: string | undefined;
  readonly keep: 'print' | 'write';
}

/** 0 said (and written, if asked), 1 nothing was measured twice or nothing can be written, 2 a file cannot be read or written. */
export async function methodsCommand(
  folder: string,
  { format, quantity, keep }: MethodsOptions,
  signal: AbortSignal,
): Promise<number> {
  const practice = await practiceAt(folder, signal);
  if (practice === undefined) return 2;
  const { files, load, list, cache } = practice;
  const top = toUri(folder);
  const workspace = await nearestWorkspace(top, files, load);
  const analyses: Analysis[] = [];
  for (const uri of (await list(top)).filter((one) => kindOf(one) === 'swing')) {
    const analysis = await settle(uri, files, load, signal, cache);
    // What a method is worth is said in one workspace, and learnt from its records alone.
    if ((analysis.subject.workspace?.uri ?? workspace.uri) === workspace.uri) analyses.push(analysis);
  }
  const all = methodAgreementOf(analyses);
  const isAsked = (one: { readonly quantity: Quantity }): boolean =>
    quantity === undefined || one.quantity.id === quantity;
  const found = { ...all, paired: all.paired.filter(isAsked), repeated: all.repeated.filter(isAsked) };
  const figures = methodFigures(found.paired, analyses[0]?.subject.registry ?? builtIn);
  process.stdout.write(format === 'json' ? agreementJson(found, figures) : agreementText(found, figures));
  if (found.paired.length + found.repeated.length === 0) return 1;
  return keep === 'write' ? write(figures, workspace) : 0;
}

function agreementText(found: MethodAgreement, figures: readonly MethodFigure[]): string {
  const lines = [
    ...agreementLines(found),
    ...(figures.length === 0
      ? found.paired.length === 0
        ? []
        : [
            `No figure for the method table yet: it takes ${fewestForFigure} pairs of a method with a surer one.`,
          ]
      : ['For the method table', ...figures.map((figure) => `  ${figureLine(figure)}`)]),
  ];
  return lines.map((line) => `${printable(line)}\n`).join('');
}

function agreementJson(
  { records, paired, repeated }: MethodAgreement,
  figures: readonly MethodFigure[],
): string {
  const shown = ({ unit }: Quantity, value: number): number => differenceFromSI(value, unit);
  const interval = (quantity: Quantity, { from, to }: Interval95) => [
    shown(quantity, from),
    shown(quantity, to),
  ];
  const body = {
    records,
    paired: paired.map(({ quantity, one, other, pairs, comparison: c }) => ({
      quantity: quantity.id,
      unit: quantity.unit,
      one,
      other,
      pairs: pairs.length,
      ...(c && {
        bias: shown(quantity, c.bias),
        biasInterval: interval(quantity, c.biasInterval),
        deviation: shown(quantity, c.deviation),
        limits: interval(quantity, c.limits),
        limitIntervals: [interval(quantity, c.limitIntervals.from), interval(quantity, c.limitIntervals.to)],
        ...(c.trendInterval && { trend: c.trend, trendInterval: [c.trendInterval.from, c.trendInterval.to] }),
      }),
    })),
    repeated: repeated.map(({ quantity, method, repeatability: r }) => ({
      quantity: quantity.id,
      unit: quantity.unit,
      method,
      things: r.things,
      measurements: r.measurements,
      within: shown(quantity, r.within),
      coefficient: shown(quantity, r.coefficient),
    })),
    figures: figures.map(({ quantity, ...figure }) => ({
      ...figure,
      quantity: quantity.id,
      unit: quantity.unit,
    })),
  };
  return jsonText(body);
}

async function write(
  figures: readonly MethodFigure[],
  { uri, text = '' }: { readonly uri: string; readonly text: string | undefined },
): Promise<number> {
  const written = figures.length === 0 ? undefined : withMethodFigures(text, figures);
  if (written === undefined) {
    const reason =
      figures.length === 0
        ? `expected at least ${fewestForFigure} pairs of a method with a surer one`
        : 'the file cannot take the figures as it is; mend what is wrong there first';
    process.stderr.write(`swingwright: nothing written to \`${printable(toPath(uri))}\`: ${reason}.\n`);
    return 1;
  }
  try {
    await writeFile(URI.parse(uri).fsPath, written);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    process.stderr.write(`swingwright: cannot write \`${printable(toPath(uri))}\`: ${printable(reason)}.\n`);
    return 2;
  }
  process.stdout.write(`Written to ${printable(toPath(uri))}.\n`);
  return 0;
}
