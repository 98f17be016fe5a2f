// Proposes the keys that fit at a place and are not yet there, what is most likely written next first; a key only, never a tree.
import { checkpoints, type Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import { codes, findCheck } from '../checks/table.ts';
import { stepOf } from '../record/lines.ts';
import { rankKeys, unique, wantedIds } from './completion-habits.ts';
import { asValue, type Proposal } from './completion-item.ts';
import { describedAt, placeAt, quantityAt, type Path } from './completion-place.ts';
import { workspaceKeys } from './completion-workspace.ts';
import type { Desire } from './completion.ts';
import { escapeMarkdown } from './markdown.ts';
import type { Place } from './places.generated.ts';

export function proposeKeys(desire: Desire, path: Path): Proposal[] {
  const { analysis, cursor, earlier } = desire;
  const { kind } = analysis.document;
  const { registry } = analysis.subject;
  const place = placeAt(kind, path);
  const own = kind === 'swing' || kind === 'template' ? ownKeys(path.join('.'), registry) : [];
  const areCodes = kind === 'workspace' && path[0] === 'severities' && path.length === 1;
  const isShown =
    prefixIs('show', path) || (path.length === 3 && path[0] === 'methods' && path[2] === 'uncertainty');
  const shown = kind === 'workspace' && isShown ? shownKeys(registry) : [];
  const further = kind === 'workspace' ? workspaceKeys(desire, path) : [];
  const keys = unique([...further, ...keysIn(place, areCodes), ...own, ...shown]).filter(
    (key) => !isThere(key, cursor.siblings),
  );
  const isMeasured =
    quantityAt(kind, path, registry) === undefined && (kind === 'swing' || kind === 'template');
  const prefix = path.join('.');
  const isRanked = isMeasured && /^(?:checkpoints\.|delivery|ground|strike|flight|conditions)/.test(prefix);
  const ranked = isRanked ? rankKeys(keys, prefix, analysis, earlier) : keys;
  const next = prefix === 'checkpoints' ? nextCheckpoint(desire, keys) : undefined;
  return ranked.map((key) => {
    const below = [...path, key];
    const holds = placeAt(kind, below)?.holds ?? 'value';
    const quantity = quantityAt(kind, below, registry);
    const isQuantity = quantity !== undefined && quantityAt(kind, path, registry) === undefined;
    return {
      label: key,
      ...keyText(quoted(key, desire), holds, desire),
      ...(cursor.quote === '' ? {} : { filter: `${cursor.quote}${key}` }),
      kind: holds === 'value' ? 'key' : 'reference',
      detail: isQuantity ? titled(quantity) : findCheck(key)?.title,
      words: isQuantity ? meaningOf(quantity) : escapeMarkdown(describedAt(kind, below) ?? ''),
      isLikely: key === next,
    };
  });
}

/** With the quotation marks that are there, else with those that it needs. */
function quoted(key: string, { cursor: { quote, style } }: Desire): string {
  return quote === '' ? asValue(key, quote, style) : `${quote}${asValue(key, quote, style)}${quote}`;
}

/** The key with its colon, and for a mapping the line on which its first key will stand. */
function keyText(
  key: string,
  holds: Place['holds'],
  { cursor, newline, text }: Desire,
): { readonly text: string; readonly again: boolean } {
  const { after, style, column, quote } = cursor;
  // Behind quotation marks the colon needs no space (YAML 1.2.2, 7.4.2).
  if (quote !== '' && /^\s*:/.test(after)) return { text: key, again: false };
  if (/^\s*:(?:\s|$)/.test(after)) return { text: key, again: false };
  if (style === 'block' && holds === 'mapping' && after.trim() === '')
    return { text: `${key}:${newline}${' '.repeat(column + stepOf(text))}`, again: true };
  if (style === 'block' && /^\s+[^\s#]/.test(after)) return { text: `${key}:`, again: false };
  return { text: `${key}: `, again: true };
}

function keysIn(place: Place | undefined, areCodes: boolean): readonly string[] {
  if (areCodes) return codes;
  const keys = Object.keys(place?.below ?? {}).filter((key) => key !== '*' && key !== '[]');
  // A shot's `flight.carry` is its `carry` in full.
  return keys.filter((key) => !keys.includes(key.slice(key.indexOf('.') + 1)) || !key.includes('.'));
}

function prefixIs(section: string, path: Path): boolean {
  return path.length === 1 && path[0] === section;
}

/** What a shown unit, or the figure of a method, may be for: a dimension that has units, or one quantity. */
function shownKeys({ quantities }: Registry): readonly string[] {
  const measured = quantities.filter(({ unit }) => unit !== '');
  return [...measured.map(({ dimension }) => dimension), ...measured.map(({ id }) => id)];
}

/** Keys of quantities that the workspace adds. */
function ownKeys(prefix: string, registry: Registry): readonly string[] {
  if (prefix === '') return [];
  return registry.quantities.flatMap(({ id }) =>
    id.startsWith(`${prefix}.`) ? [id.slice(prefix.length + 1).split('.')[0]!] : [],
  );
}

function isThere(key: string, siblings: ReadonlyMap<string, number>): boolean {
  return siblings.has(key) || [...siblings.keys()].some((other) => other.endsWith(`.${key}`));
}

/** The first one after the last that is written, of those that something asks for. */
function nextCheckpoint({ analysis, cursor, earlier }: Desire, keys: readonly string[]): string | undefined {
  const asked = new Set(wantedIds(analysis, earlier).map((id) => id.split('.')[1]));
  const start = cursor.word.start;
  const above = [...cursor.siblings]
    .filter(([, at]) => at < start)
    .map(([key]) => checkpoints.findIndex((one) => one === key));
  const last = Math.max(-1, ...above);
  const later = checkpoints.filter((one, index) => index > last && keys.includes(one));
  return later.find((one) => asked.has(one)) ?? later[0];
}

/** Short, for it stands beside the key in the list. */
function titled({ title, unit }: Quantity): string {
  return unit === '' ? title : `${title}, ${unit}`;
}

function meaningOf({ meaning, from, to, directions }: Quantity): string {
  const words = directions.map(({ word }) => `*${word}*`);
  const said = words.length === 0 ? '' : `\n\nSaid as ${words.slice(0, -1).join(', ')} or ${words.at(-1)}.`;
  return `${escapeMarkdown(meaning)}\n\nFrom ${escapeMarkdown(from)} to ${escapeMarkdown(to)}.${said}`;
}
