// What a workspace file may say where the cursor stands: units, ids, columns, codes, how an own id begins, and which quantity a figure is of; reads no file.
import { ownCode } from '../checks/own-checks.ts';
import type { Dimension } from '../measure/measure.ts';
import { dimensions, isDimension } from '../measure/unit-table.ts';
import { findUnit, unitsOf } from '../measure/units.ts';
import type { OutlineNode } from '../record/document.ts';
import { stepOf } from '../record/lines.ts';
import { findLike, sections } from '../record/own-quantity.ts';
import { findShotQuantity, shotKeys } from '../record/shot-quantity.ts';
import { checkpoints, type Quantity } from '../registry/quantity.ts';
import type { Registry } from '../registry/registry.ts';
import type { About } from './completion-about.ts';
import type { ExpressionContinuation } from './completion-expression.ts';
import { unique } from './completion-habits.ts';
import { escapeSnippet, type Proposal } from './completion-item.ts';
import type { Path } from './completion-place.ts';
import { ids, methodWords, type Word } from './completion-ids.ts';
import type { Desire } from './completion.ts';

/** Words for the value at `path`; undefined where only the schema knows some. */
export function workspaceWords(desire: Desire, path: Path): readonly Word[] | undefined {
  const { registry } = desire.analysis.subject;
  const [section, name, third, fourth] = path.map(String);
  const isDeclared = section === 'quantities' || section === 'derived';
  if (isDeclared && third === 'unit') return unitWords(likeOf(desire, section, name!)?.dimension);
  if (third === 'like' || (section === 'checks' && third === 'at'))
    return ids(desire).map(({ id, title }) => ({ word: id, detail: title }));
  if (section === 'show' && path.length === 2) return unitsFor(dimensionOf(name!, registry));
  if (section !== 'shots') return undefined;
  if (path.at(-1) === 'by') return methodWords(desire);
  if (name !== 'columns' || third === undefined) return undefined;
  if (fourth === 'unit')
    return unitsFor(findShotQuantity(said(desire, path, 'quantity'), registry)?.dimension);
  if (path.length > 3 && fourth !== 'quantity') return undefined;
  const known = unique(shotKeys(registry).map((key) => findShotQuantity(key, registry)?.id));
  return [
    ...known.map((id) => ({ word: id, detail: registry.find(id)?.title })),
    ...(path.length === 3 ? [{ word: 'ignore', detail: 'a column that is not read' }] : []),
  ];
}

/** Keys that only this workspace has, beside those of the schema. */
export function workspaceKeys({ analysis: { document, subject } }: Desire, path: Path): readonly string[] {
  if (path.length === 1 && path[0] === 'severities')
    return (childOf(document.outline, 'checks')?.children ?? []).map(({ name }) => ownCode(name));
  const isByMethod = path.length === 3 && path[2] === 'uncertainty' && path[0] !== 'methods';
  const own = [...subject.registry.ownMethods.values()].filter(({ isRefused }) => isRefused !== true);
  return isByMethod ? own.map(({ name }) => name) : [];
}

/** How the id of an own quantity may begin; its last part is the developer's. */
export function proposePrefixes(
  { cursor, snippets, text, newline }: Desire,
  path: Path,
): readonly Proposal[] {
  const isThere = cursor.quote !== '' || /^\s*:/.test(cursor.after);
  const isDeclaring = path.length === 1 && (path[0] === 'quantities' || path[0] === 'derived');
  if (!isDeclaring || isThere) return [];
  // Without places to fill in, only what is half written already can be written on.
  if (!snippets && cursor.word.start === cursor.word.end) return [];
  const prefixes = [
    ...sections.map((section) => `${section}.`),
    ...checkpoints.map((one) => `checkpoints.${one}.`),
  ];
  const end =
    cursor.style === 'flow' || cursor.after.trim() !== ''
      ? ': '
      : `:${newline}${' '.repeat(cursor.column + stepOf(text))}`;
  return prefixes.map((prefix): Proposal => {
    const shown = { label: prefix, kind: 'reference' as const, detail: 'an own quantity below it' };
    return snippets
      ? { ...shown, text: `${escapeSnippet(prefix)}\${1:name}${end}$0`, isSnippet: true }
      : { ...shown, text: prefix };
  });
}

/** The quantity that a window or an uncertainty is of, also where its declaration is not yet whole. */
export function workspaceAbout(desire: Desire, path: Path): About | undefined {
  const [section, name, field, last] = path.map(String);
  if (section === 'methods' && field === 'uncertainty' && last !== undefined) {
    const dimension = dimensionOf(last, desire.analysis.subject.registry);
    return (
      dimension && {
        quantity: plainQuantity(dimension, unitsOf(dimension)[0]?.name ?? ''),
        form: 'uncertainty',
      }
    );
  }
  if (section !== 'quantities' && section !== 'derived') return undefined;
  const isWindow = path.length === 3 && (field === 'bounds' || field === 'practice');
  if (!isWindow && field !== 'uncertainty') return undefined;
  const quantity = declaredQuantity(desire, section, name!);
  return quantity && { quantity, form: isWindow ? 'window' : 'uncertainty' };
}

/** Ids between the braces of a check's message, those of its condition first. */
export function continueMessage(
  value: string,
  at: number,
  desire: Desire,
): ExpressionContinuation | undefined {
  const open = /\{([\w.]*)$/.exec(value.slice(0, at));
  if (open === null) return undefined;
  const end = at + /^[\w.]*/.exec(value.slice(at))![0].length;
  const tail = value.charAt(end) === '}' ? '' : '}';
  const condition = said(desire, desire.cursor.path, 'when');
  const asked = ids(desire).toSorted(
    (a, b) => Number(condition.includes(b.id)) - Number(condition.includes(a.id)),
  );
  return {
    start: at - open[1]!.length,
    end,
    proposals: asked.map(({ id, title, meaning }) => ({
      label: id,
      text: id + tail,
      kind: 'quantity',
      detail: title,
      words: meaning,
    })),
  };
}

function declaredQuantity(desire: Desire, section: string, id: string): Quantity | undefined {
  const { registry } = desire.analysis.subject;
  const node = declared(desire, section, id);
  const written = wordOf(node, 'unit');
  // No word at all would be the unit of a ratio.
  const unit = written === '' ? undefined : findUnit(written);
  const like = likeOf(desire, section, id);
  const words = (childOf(node?.children, 'directions')?.children ?? []).flatMap(({ name, detail }) =>
    /^(?:positive|negative)$/.test(detail)
      ? [{ word: name, sign: detail === 'positive' ? 1 : -1 } as const]
      : [],
  );
  const known = registry.find(id) ?? like;
  if (unit === undefined && known === undefined) return undefined;
  const base = known ?? plainQuantity(unit!.dimension, unit!.name);
  return {
    ...base,
    ...(unit === undefined ? {} : { dimension: unit.dimension, unit: unit.name }),
    ...(words.length > 0 ? { directions: words } : {}),
  };
}

/** What is declared as like a quantity of checkpoints need not name one of them. */
function likeOf(desire: Desire, section: string, id: string): Quantity | undefined {
  const name = wordOf(declared(desire, section, id), 'like');
  const { registry } = desire.analysis.subject;
  if (name === '') return undefined;
  const here = checkpoints.flatMap((checkpoint) => findLike(name, checkpoint, registry) ?? []);
  return registry.find(name) ?? here[0];
}

function plainQuantity(dimension: Dimension, unit: string): Quantity {
  return {
    id: '',
    section: 'delivery',
    key: '',
    title: dimension,
    meaning: '',
    from: '',
    to: '',
    dimension,
    unit,
    directions: [],
    decimals: 2,
    lateral: false,
    bounds: { min: -Infinity, max: Infinity, source: '' },
    practice: undefined,
    practiceByClub: undefined,
    uncertainty: { otherwise: 0, by: {} },
  };
}

function unitWords(first: Dimension | undefined): readonly Word[] {
  const units = [...new Set([...(first ? [first] : []), ...dimensions])].flatMap((dimension) =>
    unitsFor(dimension),
  );
  return [...units, { word: 'ratio', detail: 'a plain number' }];
}

function unitsFor(dimension: Dimension | undefined): readonly Word[] {
  if (dimension === undefined) return [];
  return unitsOf(dimension).flatMap(({ name }) => (name === '' ? [] : [{ word: name, detail: dimension }]));
}

function dimensionOf(name: string, { find }: Registry): Dimension | undefined {
  return find(name)?.dimension ?? (isDimension(name) ? name : undefined);
}

function declared({ analysis }: Desire, section: string, name: string): OutlineNode | undefined {
  return childOf(childOf(analysis.document.outline, section)?.children, name);
}

/** What another key of the mapping at the cursor says; empty where it says nothing. */
function said({ analysis }: Desire, path: Path, key: string): string {
  let node: Pick<OutlineNode, 'children'> | undefined = { children: analysis.document.outline };
  for (const part of path.slice(0, -1)) node = childOf(node?.children, String(part));
  return wordOf(node, key);
}

function wordOf(node: Pick<OutlineNode, 'children'> | undefined, key: string): string {
  return childOf(node?.children, key)?.detail.replace(/^(["'])(.*)\1$/, '$2') ?? '';
}

function childOf(nodes: readonly OutlineNode[] | undefined, key: string): OutlineNode | undefined {
  return nodes?.find(({ name }) => name === key);
}
