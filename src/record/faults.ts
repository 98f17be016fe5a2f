// Reads a fault book from its tree; an expression is kept as text with its place, for what it says is not known here.
import { quote, quoteList } from '../measure/quote.ts';
import type { Quantity } from '../registry/quantity.ts';
import { changeWords } from '../registry/registry.ts';
import { readBodyPlace } from './body-place.ts';
import { findNamed } from './change.ts';
import type {
  BelievedEffect,
  Caution,
  Evidence,
  Fault,
  FaultChange,
  FaultFile,
  Located,
} from './document.ts';
import { readTarget, type Reader } from './entry.ts';
import { readSize, readStep } from './size.ts';
import { valueAt, type Pair, type Tree } from './tree.ts';
import { locate, wordAt, wordsAt, wordsOf } from './word.ts';

export type FaultParts = Omit<FaultFile, 'text' | 'problems' | 'silences' | 'outline'>;

export function readFaults(tree: Tree, reader: Reader): FaultParts {
  const faults = new Map<string, Fault>();
  const book = valueAt(tree, 'book');
  if (book?.kind === 'map')
    for (const pair of book.pairs.values()) faults.set(pair.key, readFault(pair, reader));
  return { kind: 'faults', faults, extends: wordAt(tree, 'extends') };
}

function readFault({ key, keySpan, value }: Pair, reader: Reader): Fault {
  return {
    id: { value: key, span: keySpan },
    title: wordsAt(value, 'title'),
    explanation: wordsAt(value, 'explanation'),
    at: wordsOf(valueAt(value, 'at')),
    evidence: readEvidence(valueAt(value, 'evidence')),
    tendsTo: itemsAt(value, 'tends_to').flatMap((item) => readEffect(item, reader)),
    changes: itemsAt(value, 'changes').flatMap((item) => readChange(item, reader)),
    cautions: wordsOf(valueAt(value, 'cautions')).map((part): Caution => ({
      part,
      place: readBodyPlace(part, reader),
    })),
    drills: wordsOf(valueAt(value, 'drills')).map((drill) => drill.value),
    span: { start: keySpan.start, end: Math.max(keySpan.end, value.span.end) },
  };
}

function readEvidence(tree: Tree | undefined): readonly Evidence[] {
  const items = tree?.kind === 'list' ? tree.items : tree === undefined ? [] : [tree];
  return items.flatMap((item) => {
    const expression = item.kind === 'map' ? wordAt(item, 'expression') : locate(item);
    if (expression === undefined) return [];
    const weight = valueAt(item, 'weight');
    const written = weight?.kind === 'scalar' && typeof weight.plain === 'number' ? weight.plain : 1;
    return [{ expression, weight: Number.isFinite(written) && written >= 0 ? written : 1 }];
  });
}

function readEffect(item: Tree, reader: Reader): readonly BelievedEffect[] {
  const effect = wordAt(item, 'effect');
  if (effect === undefined) return [];
  const quantity = findNamed(effect, reader);
  const direction = wordAt(item, 'direction');
  const sign = quantity && direction && signOf(direction, quantity, reader);
  const of = wordAt(item, 'of');
  return [
    {
      effect,
      quantity,
      sign,
      direction,
      size: quantity && readSize(valueAt(item, 'size'), quantity, reader),
      sizeWords: wordsAt(item, 'size'),
      of,
      ofQuantity: findNamed(of, reader),
    },
  ];
}

/** Of a direction word of the quantity, of a comparative, or of `more` or `less`. */
function signOf({ value, span }: Located<string>, quantity: Quantity, reader: Reader): 1 | -1 | undefined {
  const words = changeWords(quantity);
  const known = words.find(({ word }) => word === value.toLowerCase());
  if (known !== undefined) return known.sign;
  const expected = quoteList(words.map(({ word }) => word));
  reader.problems.push({ code: 'unknown-direction', span, found: quote(value), expected });
  return undefined;
}

function readChange(item: Tree, reader: Reader): readonly FaultChange[] {
  const change = wordAt(item, 'change');
  if (change === undefined) return [];
  const quantity = findNamed(change, reader);
  const to = item.kind === 'map' ? item.pairs.get('to') : undefined;
  const target = quantity && to && readTarget(to, 'value', quantity, reader);
  return [
    {
      change,
      quantity,
      by: quantity && readStep(valueAt(item, 'by'), quantity, reader),
      byWords: wordsAt(item, 'by'),
      to: target && { target, span: to.value.span },
      toWords: wordsAt(item, 'to'),
      when: wordsAt(item, 'when'),
      feel: wordsAt(item, 'feel'),
    },
  ];
}

function itemsAt(tree: Tree, key: string): readonly Tree[] {
  const list = valueAt(tree, key);
  return list?.kind === 'list' ? list.items : [];
}
