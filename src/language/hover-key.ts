// The hover on a key that is no quantity: what the schema says of it, and what follows there from the entries.
import { upperFirst } from '../measure/quote.ts';
import type { Analysis } from '../analysis/result.ts';
import { showValue } from '../measure/show.ts';
import { findCheck } from '../checks/table.ts';
import { descriptions, type Description } from './descriptions.generated.ts';
import type { Remark } from './hover.ts';
import { code } from './markdown.ts';
import { holds } from './places.ts';
import { flightLines } from './windows.ts';
import { list, nameOf } from './words.ts';

/** So that what is computed is not crowded out by what is not. */
const mostMissing = 4;

export function hoverOnKey(analysis: Analysis, offset: number): Remark | undefined {
  const { document } = analysis;
  let nodes = document.outline;
  let place: Description = descriptions[document.kind];
  const path: string[] = [];
  for (;;) {
    const node =
      nodes.find(({ nameSpan }) => holds(nameSpan, offset)) ?? nodes.find(({ span }) => holds(span, offset));
    if (node === undefined) return undefined;
    // The outline has the items of a list where a mapping has its keys.
    const item = place.below?.['[]'];
    const below = item ?? partOf(place, node.name);
    if (below === undefined) return undefined;
    if (item === undefined) {
      path.push(node.name);
      const title = isKnown(place, node.name) ? titleOf(node.name) : code(node.name);
      if (holds(node.nameSpan, offset))
        return { span: node.nameSpan, lines: linesOn(path, title, below.text, analysis) };
    }
    nodes = node.children;
    place = below;
  }
}

/** The part with this key, or the one for every key that the user names. */
function partOf(place: Description, key: string): Description | undefined {
  return isKnown(place, key) ? place.below?.[key] : place.below?.['*'];
}

function isKnown({ below }: Description, key: string): boolean {
  return below !== undefined && Object.hasOwn(below, key);
}

function titleOf(key: string): string {
  return upperFirst(key.replaceAll('_', ' '));
}

function linesOn(path: readonly string[], title: string, text: string, analysis: Analysis): string[] {
  const { derivation, document, subject } = analysis;
  const { registry } = subject;
  const prefix = path.join('.');
  const check =
    document.kind === 'workspace' && path[0] === 'severities' ? findCheck(path[1] ?? '') : undefined;
  const derived = [...(derivation?.values.values() ?? [])].flatMap((value) => {
    const quantity = registry.find(value.id);
    if (value.kind === 'entered' || quantity === undefined || !value.id.startsWith(`${prefix}.`)) return [];
    const shown = showValue(quantity, value.value, value.u);
    return [`${quantity.title}: ${shown}${value.kind === 'expected' ? ' (expected)' : ''}`];
  });
  const missing = [...(derivation?.missing.values() ?? [])].flatMap(({ id, needs }) => {
    const quantity = registry.find(id);
    if (quantity === undefined || !id.startsWith(`${prefix}.`)) return [];
    if (needs.length === 0) return [`${quantity.title}: no number comes out of what is entered`];
    return [
      `${quantity.title}: would take ${list(
        needs.map((need) => nameOf(need, registry)),
        4,
      )}`,
    ];
  });
  // A checkpoint's words begin with its title.
  const words = text.startsWith(`${title}: `) ? titleOf(text.slice(title.length + 2)) : text;
  return [
    `**${title}**`,
    ...(words === '' ? [] : [words]),
    ...(check === undefined ? [] : [`${check.title} (${check.severity} where nothing is said).`]),
    ...(document.kind === 'swing' && prefix === 'flight' ? flightLines(analysis) : []),
    ...(derived.length === 0 ? [] : ['*Computed from the entries*', ...derived]),
    ...(missing.length === 0 ? [] : ['*Not computed yet*', ...missing.slice(0, mostMissing)]),
  ];
}
