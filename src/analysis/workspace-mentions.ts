// The names in a workspace file that stand for something: its own quantities, checks and relations, and every id in them.
import { ownCode } from '../checks/own-checks.ts';
import { namesIn as namesInMessage } from '../judgement/message.ts';
import type { Located, OutlineNode, WorkspaceFile } from '../record/document.ts';
import { registryOf } from '../record/workspace.ts';
import type { Mention } from './mentions.ts';
import { inExpression, quantityAt, quantityNamed, unquoted, type Home } from './quantity-mentions.ts';

/** It knows its own quantities, whatever registry it was read with. */
export function inWorkspace(uri: string, document: WorkspaceFile): readonly Mention[] {
  const { own, outline, text } = document;
  const home: Home = { registry: registryOf(document), workspace: uri };
  const sections = new Map(outline.map(({ name, children }) => [name, children]));
  const below = (section: string): readonly OutlineNode[] => sections.get(section) ?? [];
  const described = [...below('quantities'), ...below('derived')];
  const inside = (expression: Located<string>): readonly Mention[] => inExpression(expression, home);
  const named = (word: Located<string>): readonly Mention[] => quantityNamed(word, home);
  return [
    ...[...own.quantities, ...own.derived].map(({ quantity: { id }, keySpan }) =>
      quantityAt(id, unquoted(keySpan, text), 'definition', home),
    ),
    ...described.flatMap(({ children }) => children.flatMap((child) => inLike(child, text, home))),
    ...own.derived.flatMap(({ is }) => inside(is)),
    ...own.relations.flatMap(({ left, right }) => [...inside(left), ...inside(right)]),
    ...own.checks.flatMap(({ when, message, at }) => [
      ...inside(when),
      ...namesInMessage(message).flatMap(named),
      ...(at === undefined ? [] : named(at)),
    ]),
    ...below('show').flatMap(({ name, nameSpan }) => named({ value: name, span: unquoted(nameSpan, text) })),
    ...below('methods').flatMap((method) =>
      figuresOf(method).flatMap(({ name, nameSpan }) =>
        named({ value: name, span: unquoted(nameSpan, text) }),
      ),
    ),
    ...inColumns(document, home),
    ...(['checks', 'relations'] as const).flatMap((section) =>
      below(section).map(({ name, nameSpan }): Mention => {
        const kind = section === 'checks' ? 'check' : 'relation';
        return {
          thing: { kind, name, workspace: uri },
          span: unquoted(nameSpan, text),
          role: 'definition',
        };
      }),
    ),
    ...[...document.severities].flatMap(([code, { keySpan }]) =>
      checkCoded({ value: code, span: unquoted(keySpan, text) }, uri),
    ),
  ];
}

function figuresOf({ children }: OutlineNode): readonly OutlineNode[] {
  return children.find(({ name }) => name === 'uncertainty')?.children ?? [];
}

const prefix = ownCode('');

/** A check of the workspace's own, where its code stands. */
export function checkCoded({ value, span }: Located<string>, workspace: string): readonly Mention[] {
  if (!value.startsWith(prefix) || span.end - span.start !== value.length) return [];
  const place = { start: span.start + prefix.length, end: span.end };
  return [
    { thing: { kind: 'check', name: value.slice(prefix.length), workspace }, span: place, role: 'use' },
  ];
}

/** The word that stands for `like`; of what belongs to several checkpoints the first one's. */
function inLike({ name, nameSpan, span }: OutlineNode, text: string, home: Home): readonly Mention[] {
  const word = name === 'like' ? /[\w.]+/.exec(text.slice(nameSpan.end, span.end)) : null;
  if (word === null) return [];
  const start = nameSpan.end + word.index;
  const [, path] = /^checkpoints\.([^.]+)$/.exec(word[0]) ?? [];
  const { own } = home.registry;
  const value =
    path === undefined
      ? word[0]
      : (own.find(({ id }) => id.startsWith('checkpoints.') && id.endsWith(`.${path}`))?.id ?? word[0]);
  return quantityNamed({ value, span: { start, end: start + word[0].length } }, home);
}

/** Which quantity a column of shots holds, by its id or by what comes after the section; its place is told by the outline alone. */
function inColumns({ outline, text, shotColumns }: WorkspaceFile, home: Home): readonly Mention[] {
  const columns = outline
    .find(({ name }) => name === 'shots')
    ?.children.find(({ name }) => name === 'columns')?.children;
  return (columns ?? []).flatMap(({ name, nameSpan, span, children }): Mention[] => {
    const column = shotColumns.named.get(name);
    if (column?.kind !== 'quantity') return [];
    const { id, section } = column.quantity;
    const within = children.find((child) => child.name === 'quantity') ?? { nameSpan, span };
    const value = text.slice(within.nameSpan.end, within.span.end);
    const word = [id, id.slice(section.length + 1)].find((one) => value.includes(one));
    if (word === undefined) return [];
    const start = within.nameSpan.end + value.lastIndexOf(word);
    return [quantityAt(id, { start, end: start + word.length }, 'use', home)];
  });
}
