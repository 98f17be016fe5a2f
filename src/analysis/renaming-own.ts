// How a quantity of a workspace's own is renamed: which ids change together, what its new ones are, and why it cannot be; edits nothing.
import { quote } from '../measure/quote.ts';
import { parseDocument } from '../record/parse.ts';
import { registryOf } from '../record/workspace.ts';
import { builtIn, type Registry } from '../registry/registry.ts';
import type { Card } from './cards.ts';
import type { Thing } from './mentions.ts';

export type OwnQuantity = Thing & { readonly kind: 'quantity' };

/** New ids by old ones: one declaration gives an id at each of its checkpoints. */
export interface OwnIds {
  readonly ids: ReadonlyMap<string, string>;
  readonly oldKey: string;
  readonly newKey: string;
}

const keyPattern = /^[a-z][a-z0-9_]*$/;

/** Where the id is declared, as written there; undefined where the workspace file is not among the cards. */
export function declarationOf({ name, workspace }: OwnQuantity, cards: readonly Card[]): string | undefined {
  const card = cards.find(({ uri }) => uri === workspace);
  const definition = card && definitionsIn(card).find(({ thing }) => thing.name === name);
  return definition && card.text.slice(definition.span.start, definition.span.end);
}

/** `to` is a key, or a full id in the same place. In words why it cannot be. */
export function ownIdsFor(thing: OwnQuantity, to: string, cards: readonly Card[]): OwnIds | string {
  const declared = declarationOf(thing, cards);
  const card = cards.find(({ uri }) => uri === thing.workspace);
  if (declared === undefined || card === undefined)
    return `${quote(thing.name)} is declared in a workspace file that was not looked through; look through its folder.`;
  const oldKey = keyOf(thing.name);
  const newKey = keyOf(to);
  const place = to.slice(0, Math.max(0, to.length - newKey.length - 1));
  if (place !== '' && place !== placeOf(declared) && place !== placeOf(thing.name))
    return `Found ${quote(to)}; expected ${quote(`${placeOf(declared)}.`)} and a key, for only the last word of an id can be renamed.`;
  if (!keyPattern.test(newKey))
    return `Found ${quote(newKey)}; expected a key in small letters, digits and \`_\`, with a letter first.`;
  const span = definitionsIn(card).find((one) => one.thing.name === thing.name)?.span;
  const together = definitionsIn(card).filter((one) => one.span.start === span?.start);
  const ids = new Map(together.map((one) => [one.thing.name, `${placeOf(one.thing.name)}.${newKey}`]));
  const taken = newKey === oldKey ? undefined : takenBy([...ids.values()], registryFrom(card.text));
  if (taken !== undefined)
    return `${quote(taken)} is known already; expected an id that no other quantity has.`;
  return { ids, oldKey, newKey };
}

/** What is known where the workspace file has this text. */
export function registryFrom(text: string): Registry {
  const document = parseDocument('workspace', text);
  return document.kind === 'workspace' ? registryOf(document) : builtIn;
}

function takenBy(ids: readonly string[], { quantities, broken }: Registry): string | undefined {
  const known = [...quantities.map(({ id }) => id), ...broken];
  return known.find((other) => ids.some((id) => other === id || other.startsWith(`${id}.`)));
}

function definitionsIn({ mentions }: Card) {
  return mentions.filter(({ thing, role }) => thing.kind === 'quantity' && role === 'definition');
}

function keyOf(id: string): string {
  return id.slice(id.lastIndexOf('.') + 1);
}

function placeOf(id: string): string {
  return id.slice(0, Math.max(0, id.lastIndexOf('.')));
}
