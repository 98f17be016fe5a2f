// Writes one value below a path of keys into a file, with the keys that are missing; everything else stays as it was written.
import { piecesOf, printPieces, type Branch, type Child, type Piece } from './pieces.ts';

/** Undefined where the text cannot be cut into its keys, or where something other than keys stands in the way. */
export function withValue(text: string, path: readonly string[], value: string): string | undefined {
  const pieces = piecesOf(text);
  if (pieces === undefined) return undefined;
  const root = set(pieces.root, path, value);
  return root === undefined ? undefined : printPieces({ ...pieces, root });
}

function set(branch: Branch, [key = '', ...rest]: readonly string[], value: string): Branch | undefined {
  if (branch.kind !== 'map') return undefined;
  const at = branch.children.findIndex((child) => child.key === key);
  const known = branch.children[at];
  const written = known === undefined ? newValue(rest, value) : changed(known.value, rest, value);
  if (written === undefined) return undefined;
  const child: Child =
    known === undefined
      ? {
          key,
          stem: key,
          isNamed: true,
          lead: spaceIn(branch),
          head: `${keyText(key)}: `,
          headTail: '',
          value: written,
          tail: '',
        }
      : {
          ...known,
          head:
            /\s$/.test(known.head) || written.kind !== 'leaf'
              ? spaced(known.head, written)
              : `${known.head} `,
          value: written,
          // Of a key without a value the space before its comment came before the value.
          tail: known.tail.startsWith('#') ? ` ${known.tail}` : known.tail,
        };
  const children = known === undefined ? [...branch.children, child] : branch.children.with(at, child);
  return { ...branch, children };
}

function changed(piece: Piece, rest: readonly string[], value: string): Piece | undefined {
  if (rest.length === 0) return piece.kind === 'leaf' ? { kind: 'leaf', text: value } : undefined;
  if (piece.kind !== 'leaf') return set(piece, rest, value);
  return piece.text.trim() === '' || piece.text === '{}' ? newValue(rest, value) : undefined;
}

/** `{ uncertainty: { angle: 3 deg } }` */
function newValue(rest: readonly string[], value: string): Piece {
  return {
    kind: 'leaf',
    text: rest.reduceRight((inner, key) => `{ ${keyText(key)}: ${inner} }`, value),
  };
}

/** In a block a new key begins its own line. */
function spaceIn({ style, children }: Branch): string {
  return style === 'flow' && children.length > 0 ? ' ' : '';
}

function spaced(head: string, value: Piece): string {
  return value.kind !== 'leaf' && value.style === 'block' ? head : `${head.trimEnd()} `;
}

function keyText(key: string): string {
  return /^[\p{L}_][\p{L}\p{M}\p{N} ._-]*$/u.test(key) && key.trim() === key ? key : JSON.stringify(key);
}
