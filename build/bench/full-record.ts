// Writes a record in which every quantity has a value, as long as the longest that a coach would keep; for benchmarks.
import { showValue } from '../../src/measure/show.ts';
import { quantities } from '../../src/registry/generated.ts';
import type { Quantity } from '../../src/registry/quantity.ts';

const sections = ['conditions', 'checkpoints', 'delivery', 'ground', 'strike', 'flight'] as const;

interface Branch {
  [key: string]: Branch | string;
}

/** The text of a record and of its student; each value stands in the middle of its practice window. */
export function fullRecord(): { record: string; student: string } {
  const tree: Branch = {};
  for (const quantity of quantities) {
    if (!sections.some((section) => section === quantity.section)) continue;
    const keys = quantity.id.split('.');
    let branch = tree;
    for (const key of keys.slice(0, -1)) branch = (branch[key] ??= {}) as Branch;
    branch[keys.at(-1)!] = `${valueWithin(quantity)} by ${methodFor(quantity)}`;
  }
  return { record: `${head}${linesOf(tree, '')}`, student };
}

function valueWithin(quantity: Quantity): string {
  if (quantity.id === 'conditions.wind') return '3 m/s from left';
  const { min, max } = quantity.practice ?? quantity.bounds;
  return showValue(quantity, (min + max) / 2);
}

function methodFor({ uncertainty }: Quantity): string {
  return Object.keys(uncertainty.by)[0] ?? 'video';
}

function linesOf(branch: Branch, indent: string): string {
  return Object.entries(branch)
    .map(([key, below]) =>
      typeof below === 'string'
        ? `${indent}${key}: ${below}\n`
        : `${indent}${key}:\n${linesOf(below, `${indent}  `)}`,
    )
    .join('');
}

const head = `swing: 1
student: bench.student.yaml
date: 2026-05-02
club: seven iron
`;

const student = `student: 1
name: Bench
hand: left
stature: 175 cm
mass: 72 kg
bag:
  seven iron: { kind: iron, loft: 33 deg, lie: 62 deg, length: 37 in, head_mass: 268 g }
`;
