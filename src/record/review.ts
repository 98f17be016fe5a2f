// Reads a colleague's review from its tree: the remarks with their replies, and who signed the record off; knows no record.
import type { Located, ReviewFile } from './document.ts';
import { remarkStates, type Remark, type RemarkState, type Reply, type Signature } from './remark.ts';
import { valueAt, type Tree } from './tree.ts';
import { innerSpan, wordAt, wordsAt } from './word.ts';

export type ReviewParts = Omit<ReviewFile, 'text' | 'problems' | 'silences' | 'outline'>;

export function readReview(tree: Tree): ReviewParts {
  return {
    kind: 'review',
    of: wordAt(tree, 'of'),
    remarks: itemsAt(tree, 'threads').map(readRemark),
    signatures: itemsAt(tree, 'signed_off').map(readSignature),
  };
}

function itemsAt(tree: Tree, key: string): readonly Tree[] {
  const list = valueAt(tree, key);
  return list?.kind === 'list' ? list.items.filter(({ kind }) => kind === 'map') : [];
}

function readRemark(tree: Tree): Remark {
  const { state, ...said } = readReply(tree);
  const place = textAt(tree, 'state');
  return {
    ...said,
    id: textAt(tree, 'id'),
    about: textAt(tree, 'about'),
    value: textAt(tree, 'value'),
    stated: state === undefined || place === undefined ? undefined : { value: state, span: place.span },
    replies: itemsAt(tree, 'replies').map(readReply),
  };
}

function readReply(tree: Tree): Reply {
  const state = wordsAt(tree, 'state');
  return {
    author: wordsAt(tree, 'author'),
    time: wordsAt(tree, 'time'),
    text: wordsAt(tree, 'text'),
    suggests: wordsAt(tree, 'suggests'),
    state: isState(state) ? state : undefined,
    span: tree.span,
  };
}

function readSignature(tree: Tree): Signature {
  return {
    by: textAt(tree, 'by'),
    time: wordsAt(tree, 'time'),
    hash: textAt(tree, 'hash'),
    span: tree.span,
  };
}

/** What YAML takes for a number is text here too: an id or a value is what is written. */
function textAt(tree: Tree, key: string): Located<string> | undefined {
  const value = valueAt(tree, key);
  if (value?.kind !== 'scalar' || value.plain === null) return undefined;
  return { value: value.source, span: innerSpan(value) };
}

function isState(word: string | undefined): word is RemarkState {
  return (remarkStates as readonly (string | undefined)[]).includes(word);
}
