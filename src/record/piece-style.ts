// Writes a value in the style of another one, so that two sides that differ in looks can be compared; loses nothing or does nothing.
import type { Branch, Child, Piece } from './pieces.ts';

/** The block that a value is, if it is one. */
export function blockOf(piece: Piece | undefined): Branch | undefined {
  return piece !== undefined && piece.kind !== 'leaf' && piece.style === 'block' ? piece : undefined;
}

/** The same value in the style of `like` where both hold the same kind of thing and nothing gets lost; else as it is. */
export function inStyleOf(like: Piece, piece: Piece): Piece {
  if (like.kind === 'leaf' || piece.kind !== like.kind || piece.style === like.style) return piece;
  return like.style === 'flow' ? (flowOf(piece, like) ?? piece) : blockFrom(piece, like.indent);
}

function blockFrom(piece: Branch, indent: number): Branch {
  const children = piece.children.map((child): Child => ({
    ...child,
    lead: '',
    head: piece.kind === 'list' ? '- ' : child.head,
  }));
  return { ...piece, style: 'block', indent, open: '', close: '', children };
}

/** Undefined where comments or several lines stand in the way. */
function flowOf(piece: Branch, like: Branch): Branch | undefined {
  const children: Child[] = [];
  for (const child of piece.children) {
    const { lead, headTail, tail, value } = child;
    if ((lead + headTail + tail).trim() !== '') return undefined;
    const inner = value.kind === 'leaf' || value.style === 'flow' ? value : flowOf(value, braces(value));
    if (inner === undefined || (inner.kind === 'leaf' && /[\n,{}[\]]/.test(inner.text))) return undefined;
    const head = piece.kind === 'list' ? '' : `${child.head.trimEnd()} `;
    children.push({
      ...child,
      lead: children.length === 0 ? '' : ' ',
      head,
      headTail: '',
      tail: '',
      value: inner,
    });
  }
  return { ...piece, style: 'flow', indent: 0, open: like.open, close: like.close, children };
}

function braces({ kind }: Branch): Branch {
  const [open, close] = kind === 'map' ? ['{ ', ' }'] : ['[', ']'];
  return { kind, style: 'flow', indent: 0, open, close, children: [] };
}
