// The `derive` command: every quantity of one record, entered or computed, as a table or as JSON.
import pc from 'picocolors';
import { createCache } from '../analysis/cache.ts';
import type { Analysis, FileState } from '../analysis/result.ts';
import { settle } from '../analysis/settle.ts';
import { differenceFromSI, fromSI } from '../measure/units.ts';
import type { Value } from '../model/value.ts';
import type { Quantity } from '../registry/quantity.ts';
import { findQuantity } from '../registry/registry.ts';
import { printable, textReport } from './formats/text.ts';
import { loadFile, toPath, toUri } from './files.ts';
import { findingJson } from './report.ts';
import { showValue } from '../measure/show.ts';

/** Prints what follows from the record at `path`; 2 where it cannot be read or is no record, 1 where a finding is an error. */
export async function derive(path: string, format: 'text' | 'json', signal: AbortSignal): Promise<number> {
  const uri = toUri(path);
  const own = await loadFile(uri);
  if (own.kind !== 'text') {
    const reason = own.kind === 'missing' ? 'there is no such file' : own.reason;
    process.stderr.write(`swingwright: cannot read \`${printable(path)}\`: ${printable(reason)}.\n`);
    return 2;
  }
  const files = new Map<string, FileState>([[uri, own]]);
  const analysis = await settle(uri, files, loadFile, signal, createCache());
  if (analysis.derivation === undefined) {
    process.stderr.write(
      `swingwright: \`${printable(path)}\` is not a swing record; expected a file that ends in \`.swing.yaml\`.\n`,
    );
    return 2;
  }
  process.stdout.write(format === 'json' ? derivationJson(analysis) : derivationText(analysis));
  return analysis.findings.some(({ severity }) => severity === 'error') ? 1 : 0;
}

function derivationJson(analysis: Analysis): string {
  const file = toPath(analysis.uri);
  const quantities = Object.fromEntries(
    valuesOf(analysis).map(({ quantity, value }) => [
      quantity.id,
      {
        value: tidy(fromSI(value.value, quantity.unit)),
        u: value.u === null ? null : tidy(differenceFromSI(value.u, quantity.unit)),
        unit: quantity.unit,
        shown: showValue(quantity, value.value, value.u),
        kind: value.kind,
        from: value.from,
      },
    ]),
  );
  const findings = analysis.findings.map((finding) => findingJson(file, finding));
  return `${JSON.stringify({ format: 1, file, quantities, findings }, null, 2)}\n`;
}

function derivationText(analysis: Analysis): string {
  const derivation = analysis.derivation!;
  const values = valuesOf(analysis);
  const idWide = Math.max(0, ...values.map(({ quantity }) => quantity.id.length));
  const shown = values.map(({ quantity, value }) => showValue(quantity, value.value, value.u));
  const shownWide = Math.max(0, ...shown.map((text) => text.length));
  const rows = values.map(({ quantity, value }, at) => {
    const head = `${quantity.id.padEnd(idWide)}  ${shown[at]!.padEnd(shownWide)}`;
    const expected = derivation.expected.get(quantity.id);
    const origin =
      value.kind === 'derived'
        ? originWords(value)
        : expected && `entered; the others say ${showValue(quantity, expected.value, expected.u)}`;
    return `${head}  ${pc.dim(origin ?? 'entered')}`;
  });
  const missing = [...derivation.missing.values()].map(
    ({ id, needs }) => `${id.padEnd(idWide)}  ${pc.dim(`not computed; needs ${needs.join(', ')}`)}`,
  );
  const parts = [
    rows.join('\n'),
    missing.join('\n'),
    textReport([{ file: toPath(analysis.uri), findings: analysis.findings }]),
  ];
  return parts.filter((part) => part !== '').join('\n\n');
}

function originWords({ from, assumed }: Value): string {
  const entries = from.length > 0 ? `from ${from.join(', ')}` : 'from no entry';
  return assumed.length > 0 ? `${entries}; assumes ${assumed.map(({ words }) => words).join(', ')}` : entries;
}

function valuesOf({ derivation }: Analysis): { quantity: Quantity; value: Value }[] {
  return [...(derivation?.values.values() ?? [])].flatMap((value) => {
    const quantity = findQuantity(value.id);
    return quantity === undefined ? [] : [{ quantity, value }];
  });
}

/** Twelve significant digits: all that is meant, without the dust of binary fractions. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
