// The syntax tree of an expression, as mathjs parses it, over plain nodes that can do nothing but be looked at; knows no meaning.
import { createParse } from 'mathjs';

// mathjs exports its factories at run time and documents them, but its type file leaves them out.
declare module 'mathjs' {
  export const createParse: (scope: object) => (text: string) => unknown;
}

/** What may follow from a text; `other` is everything that this project does not take: ranges, assignments, matrices, … */
export type SyntaxNode =
  | { readonly kind: 'leaf'; readonly name: string }
  | { readonly kind: 'call'; readonly called: SyntaxNode; readonly args: readonly SyntaxNode[] }
  | {
      readonly kind: 'operation';
      /** As mathjs names it: `add`, `smaller`, `unaryMinus`, … */
      readonly name: string;
      readonly args: readonly SyntaxNode[];
      /** Two values side by side without a sign between them. */
      readonly implicit: boolean;
    }
  /** `a < b < c`: one more argument than there are names. */
  | { readonly kind: 'chain'; readonly names: readonly string[]; readonly args: readonly SyntaxNode[] }
  | { readonly kind: 'choice'; readonly args: readonly [SyntaxNode, SyntaxNode, SyntaxNode] }
  | { readonly kind: 'group'; readonly inner: SyntaxNode }
  | { readonly kind: 'nothing' }
  | { readonly kind: 'other'; readonly args: readonly SyntaxNode[] };

/** The tree, or the offset at which mathjs could not go on. */
export type Parsed = { readonly tree: SyntaxNode } | { readonly failedAt: number };

/** Never throws. The caller keeps nesting shallow, for the parser is recursive. */
export function parseSyntax(text: string): Parsed {
  try {
    return { tree: (parse(text) as Plain).tree };
  } catch (error) {
    const char = (error as { readonly char?: unknown }).char;
    return { failedAt: typeof char === 'number' ? Math.min(Math.max(0, char - 1), text.length) : 0 };
  }
}

/** The names of all leaves, in the order of the text. */
export function leavesOf(node: SyntaxNode): readonly string[] {
  switch (node.kind) {
    case 'leaf':
      return [node.name];
    case 'group':
      return leavesOf(node.inner);
    case 'call':
      return [node.called, ...node.args].flatMap(leavesOf);
    case 'operation':
    case 'chain':
    case 'choice':
    case 'other':
      return node.args.flatMap(leavesOf);
    case 'nothing':
      return [];
  }
}

/** mathjs asks of its nodes only these marks while it parses; the tree is all that we want of them. */
abstract class Plain {
  abstract readonly tree: SyntaxNode;
  declare readonly isNode: true;
}
Object.defineProperty(Plain.prototype, 'isNode', { value: true });

class ConstantNode extends Plain {
  readonly isConstantNode = true;
  readonly tree: SyntaxNode;
  constructor(value: unknown) {
    super();
    this.tree = value === undefined ? { kind: 'nothing' } : other([]);
  }
}

class SymbolNode extends Plain {
  readonly isSymbolNode = true;
  readonly tree: SyntaxNode;
  constructor(readonly name: string) {
    super();
    this.tree = { kind: 'leaf', name };
  }
}

class FunctionNode extends Plain {
  readonly isFunctionNode = true;
  readonly tree: SyntaxNode;
  constructor(
    readonly fn: Plain,
    readonly args: readonly Plain[],
    optional: boolean,
  ) {
    super();
    const trees = treesOf(args);
    this.tree = optional ? other([fn.tree, ...trees]) : { kind: 'call', called: fn.tree, args: trees };
  }
}

class OperatorNode extends Plain {
  readonly isOperatorNode = true;
  readonly tree: SyntaxNode;
  constructor(
    readonly op: string,
    readonly fn: string,
    readonly args: readonly Plain[],
    readonly implicit = false,
  ) {
    super();
    this.tree = { kind: 'operation', name: fn, args: treesOf(args), implicit };
  }
}

class RelationalNode extends Plain {
  readonly tree: SyntaxNode;
  constructor(names: readonly string[], args: readonly Plain[]) {
    super();
    this.tree = { kind: 'chain', names, args: treesOf(args) };
  }
}

class ConditionalNode extends Plain {
  readonly tree: SyntaxNode;
  constructor(condition: Plain, yes: Plain, no: Plain) {
    super();
    this.tree = { kind: 'choice', args: [condition.tree, yes.tree, no.tree] };
  }
}

class ParenthesisNode extends Plain {
  readonly tree: SyntaxNode;
  constructor(content: Plain) {
    super();
    this.tree = { kind: 'group', inner: content.tree };
  }
}

/** Matrices, objects, strings, ranges, assignments, definitions, blocks, properties: known, so that they can be refused. */
class RefusedNode extends Plain {
  readonly tree: SyntaxNode;
  constructor(...parts: readonly unknown[]) {
    super();
    this.tree = other(treesOf(parts.flat().filter((part) => part instanceof Plain)));
  }
}

/** Accessors are marked, so that the parser goes on after them instead of failing. */
class AccessorNode extends RefusedNode {
  readonly isAccessorNode = true;
}

function other(args: readonly SyntaxNode[]): SyntaxNode {
  return { kind: 'other', args };
}

function treesOf(nodes: readonly Plain[]): readonly SyntaxNode[] {
  return nodes.map(({ tree }) => tree);
}

/** The parser of mathjs alone: with none of its functions, units or evaluation, there is nothing that a text could call. */
const parse = createParse({
  typed: Object.assign(
    (_name: string, signatures: { readonly string: (text: string) => unknown }) => signatures.string,
    { addConversion: () => undefined },
  ),
  numeric: Number,
  config: { number: 'number', numberFallback: 'number' },
  ConstantNode,
  SymbolNode,
  FunctionNode,
  OperatorNode,
  RelationalNode,
  ConditionalNode,
  ParenthesisNode,
  AccessorNode,
  ArrayNode: RefusedNode,
  AssignmentNode: RefusedNode,
  BlockNode: RefusedNode,
  FunctionAssignmentNode: RefusedNode,
  IndexNode: RefusedNode,
  ObjectNode: RefusedNode,
  RangeNode: RefusedNode,
});
