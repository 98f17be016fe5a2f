// Reads the calibration of the flight from the workspace file; how it is fitted and used is not known here.
import type { Notation } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import type { WrittenCalibration } from './document.ts';
import type { Reader } from './entry.ts';
import { readHere } from './read-here.ts';
import { valueAt, type ScalarTree, type Tree } from './tree.ts';

const factor: Notation = { dimension: 'ratio', unit: '', directions: [], decimals: 3 };
const speed: Notation = { dimension: 'speed', unit: 'm/s', directions: [], decimals: 1 };

/** No ball's drag or lift is less than half or more than twice what was published of others (judgement). */
const [least, most] = [0.5, 2];

/** A factor written without its uncertainty is taken to be known to a twentieth (judgement). */
const unstated = 0.05;

export function readCalibration(tree: Tree, reader: Reader): WrittenCalibration | undefined {
  const pair = tree.kind === 'map' ? tree.pairs.get('calibration') : undefined;
  if (pair?.value.kind !== 'map') return undefined;
  const { value, keySpan } = pair;
  const drag = readFactor(valueAt(value, 'drag'), reader);
  const lift = readFactor(valueAt(value, 'lift'), reader);
  const ballSpeed = readSpeeds(valueAt(value, 'ball_speed'), reader);
  if (drag === undefined) return undefined;
  const correlation = numberAt(value, 'correlation') ?? 0;
  return {
    drag,
    lift,
    correlation: Math.min(1, Math.max(-1, correlation)),
    shots: numberAt(value, 'shots'),
    ballSpeed,
    keySpan,
    span: value.span,
  };
}

function readFactor(tree: Tree | undefined, reader: Reader): WrittenCalibration['lift'] {
  const read = readHere(tree, factor, { window: 'no', methods: reader.registry.methodNames }, reader);
  if (read?.kind !== 'measure') return undefined;
  if (read.value >= least && read.value <= most)
    return { value: read.value, u: read.stated ?? unstated * read.value };
  reader.problems.push({
    code: 'number-out-of-range',
    span: tree!.span,
    found: quote((tree as ScalarTree).source),
    expected: `a factor from ${least} to ${most}`,
  });
  return undefined;
}

function readSpeeds(tree: Tree | undefined, reader: Reader): WrittenCalibration['ballSpeed'] {
  const read = readHere(tree, speed, { window: 'only', methods: reader.registry.methodNames }, reader);
  return read?.kind === 'window' ? { from: read.from, to: read.to } : undefined;
}

function numberAt(tree: Tree, key: string): number | undefined {
  const plain = valueAt(tree, key)?.plain;
  return typeof plain === 'number' && Number.isFinite(plain) ? plain : undefined;
}
