// The rewrite that adds the keys for which the template has windows and the record has none, without a value; writes no number.
import type { Analysis } from '../analysis/result.ts';
import { rangeOf, type LineTable } from '../analysis/positions.ts';
import type { OutlineNode } from '../record/document.ts';
import { keysInto, treeOf } from './new-keys.ts';
import { keysKept, type Rewrite } from './rewrite.ts';
import { touches } from './places.ts';
import type { TextRange } from './shapes.ts';

/** Offered on the key of a checkpoint or of another part of the record; the innermost one that the cursor is on. */
export function addWhatTemplateAsks(
  analysis: Analysis,
  table: LineTable,
  range: TextRange,
): readonly Rewrite[] {
  const { document, subject } = analysis;
  const windows = subject.template?.document.windows;
  if (document.kind !== 'swing' || windows === undefined) return [];
  const here = placedNodes(document.outline, '').filter(({ node }) =>
    touches(rangeOf(table, node.nameSpan), range),
  );
  const at = here.at(-1);
  if (at === undefined) return [];
  const asked = [...windows.keys()].filter(
    (id) => id.startsWith(`${at.path}.`) && !isThere(at.node, id.slice(at.path.length + 1).split('.')),
  );
  if (asked.length === 0) return [];
  const edits = keysInto(
    document,
    at.node,
    treeOf(asked.map((id) => id.slice(at.path.length + 1).split('.'))),
  );
  if (edits === undefined || !keysKept(analysis, edits)) return [];
  const [first, ...others] = asked.map((id) => `\`${id.slice(at.path.length + 1)}\``);
  const more = others.length === 0 ? '' : ` and ${others.length} more`;
  return [{ title: `Add what the template asks for here: ${first!}${more}`, edits }];
}

interface PlacedNode {
  readonly path: string;
  readonly node: OutlineNode;
}

/** The parts of a record that templates speak of, outer ones first. */
const parts = ['checkpoints', 'delivery', 'ground', 'strike', 'flight'];

function placedNodes(nodes: readonly OutlineNode[], above: string): readonly PlacedNode[] {
  return nodes.flatMap((node) => {
    const path = above === '' ? node.name : `${above}.${node.name}`;
    if (!parts.some((part) => path === part || path.startsWith(`${part}.`))) return [];
    return [{ path, node }, ...placedNodes(node.children, path)];
  });
}

function isThere(node: OutlineNode, [first, ...rest]: readonly string[]): boolean {
  const child = node.children.find(({ name }) => name === first);
  return child !== undefined && (rest.length === 0 || isThere(child, rest));
}
