// Reads the workspace file from its tree: coverage, how loud each finding is, how good each method is, shots, flight; knows no record.
import type { Dimension, Problem, Span } from '../measure/measure.ts';
import { isDimension } from '../measure/unit-table.ts';
import type { Method } from '../registry/quantity.ts';
import { registryWith, type Registry } from '../registry/registry.ts';
import { readCalibration } from './calibration.ts';
import type { SeverityName, WorkspaceFile } from './document.ts';
import type { Reader } from './entry.ts';
import { readShotColumns } from './shot-columns.ts';
import { readFigure } from './figure.ts';
import { neitherIdNorDimension, readOwn, untold } from './own.ts';
import { checkMethodName } from './own-method.ts';
import { isEmpty, valueAt, type Pair, type Tree } from './tree.ts';
import { wordAt, wordsAt } from './word.ts';

export type WorkspaceParts = Omit<WorkspaceFile, 'text' | 'problems' | 'silences' | 'outline'>;

const severityNames: readonly string[] = [
  'error',
  'warning',
  'information',
  'hint',
  'off',
] satisfies SeverityName[];

export function readWorkspace(tree: Tree, reader: Reader): WorkspaceParts {
  const named = readMethods(valueAt(tree, 'methods'), reader);
  const withMethods = { ...reader, registry: registryWith({ methods: [...named.values()] }) };
  const own = readOwn(tree, withMethods);
  // A figure may be of one of the workspace's own quantities, so these are read first.
  const problems: Problem[] = [];
  const known = { ...reader, registry: registryOf({ methods: named, own }), problems };
  const methods = withFiguresOfQuantities(named, valueAt(tree, 'methods'), known);
  const registry = registryOf({ methods, own });
  const shotColumns = readShotColumns(valueAt(tree, 'shots'), { ...reader, registry, problems });
  reader.problems.push(...untold(problems, own.told));
  return {
    kind: 'workspace',
    coverage: readCoverage(valueAt(tree, 'coverage')),
    mostChanges: readCount(valueAt(tree, 'most_changes')),
    language: wordAt(tree, 'language'),
    severities: readSeverities(valueAt(tree, 'severities')),
    methods,
    shotColumns,
    own,
    calibration: readCalibration(tree, reader),
  };
}

/** The built-in registry with what this workspace has of its own. */
export function registryOf({ methods, own }: Pick<WorkspaceFile, 'methods' | 'own'>): Registry {
  return registryWith({
    methods: [...methods.values()],
    quantities: [...own.quantities, ...own.derived].map(({ quantity }) => quantity),
    shown: own.shown,
    broken: own.broken,
  });
}

function readCoverage(tree: Tree | undefined): number {
  const value = tree?.plain;
  return typeof value === 'number' && Number.isFinite(value) && value > 0 ? value : 1;
}

function readCount(tree: Tree | undefined): number | undefined {
  const value = tree?.plain;
  return typeof value === 'number' && Number.isInteger(value) && value > 0 ? value : undefined;
}

function readSeverities(tree: Tree | undefined): WorkspaceParts['severities'] {
  const severities = new Map<string, { severity: SeverityName; keySpan: Span }>();
  if (tree?.kind !== 'map') return severities;
  for (const { key, keySpan, value } of tree.pairs.values()) {
    if (value.kind !== 'scalar' || !severityNames.includes(value.source)) continue;
    severities.set(key, { severity: value.source as SeverityName, keySpan });
  }
  return severities;
}

function readMethods(tree: Tree | undefined, reader: Reader): ReadonlyMap<string, Method> {
  const methods = new Map<string, Method>();
  if (tree?.kind !== 'map') return methods;
  for (const pair of tree.pairs.values()) {
    const { key, value } = pair;
    const isGood = checkMethodName(pair, reader);
    // Nothing could be measured by no word at all.
    if (key.trim() === '') continue;
    const meaning = wordsAt(value, 'meaning') ?? reader.registry.findMethod(key)?.meaning ?? '';
    methods.set(key, {
      name: key,
      meaning,
      uncertainty: readUncertainties(valueAt(value, 'uncertainty'), reader),
      ...(isGood ? {} : { isRefused: true }),
    });
  }
  return methods;
}

function readUncertainties(tree: Tree | undefined, reader: Reader): Method['uncertainty'] {
  const figures: Partial<Record<Dimension, { u: number; source: string }>> = {};
  if (tree?.kind !== 'map') return figures;
  for (const { key, value } of tree.pairs.values()) {
    if (!isDimension(key) || value.kind !== 'scalar' || isEmpty(value)) continue;
    const u = readFigure(value, key, reader);
    if (u !== undefined) figures[key] = { u, source: 'the workspace file' };
  }
  return figures;
}

function withFiguresOfQuantities(
  methods: ReadonlyMap<string, Method>,
  tree: Tree | undefined,
  reader: Reader,
): ReadonlyMap<string, Method> {
  const all = new Map(methods);
  for (const [name, method] of methods) {
    const figures = valueAt(valueAt(tree, name), 'uncertainty');
    if (figures?.kind !== 'map') continue;
    const pairs = [...figures.pairs.values()].filter(({ key }) => !isDimension(key));
    const ofQuantities = Object.fromEntries(pairs.flatMap((pair) => readOfQuantity(pair, reader)));
    if (Object.keys(ofQuantities).length > 0) all.set(name, { ...method, ofQuantities });
  }
  return all;
}

function readOfQuantity(
  pair: Pair,
  reader: Reader,
): readonly (readonly [string, { readonly u: number; readonly source: string }])[] {
  const { key, value } = pair;
  const quantity = reader.registry.find(key);
  if (quantity === undefined) {
    reader.problems.push(neitherIdNorDimension('unknown-key', pair, reader.registry));
    return [];
  }
  if (value.kind !== 'scalar' || isEmpty(value)) return [];
  const u = readFigure(value, quantity.dimension, reader);
  return u === undefined ? [] : [[key, { u, source: 'the workspace file' }]];
}
