// A small practice of several files, for tests of what leads from one file to others.
import { cardOf, type Card } from '../../src/analysis/cards.ts';
import { kindOf } from '../../src/record/kind.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { registryOf } from '../../src/record/workspace.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { marked } from '../marked.ts';
import { analysed } from './analysed.ts';

export const lessons = 'file:///lessons/';

export const practice: Readonly<Record<string, string>> = {
  'mira.student.yaml': `student: 1
name: Mira
hand: right
bag:
  hybrid: { kind: hybrid, loft: 22 deg }
  seven iron: { kind: iron, loft: 33 deg }
goals: [{ shape: draw, club: seven iron }]
`,
  'ansa.student.yaml': `student: 1
name: Ansa
bag: { hybrid: { kind: hybrid } }
`,
  'house.faults.yaml': `faults: 1
extends: base.faults.yaml
book:
  weight-back:
    title: Weight stays back
    evidence: checkpoints.impact.lead_pressure < 70 %
    tends_to: [{ effect: delivery.low_point.ahead, direction: behind }]
`,
  'base.faults.yaml': `faults: 1
book:
  weight-back: { title: Another }
  handle-trails: { evidence: checkpoints.impact.shaft_lean < 0 deg }
`,
  'other.faults.yaml': 'faults: 1\nbook: { weight-back: {} }\n',
  'iron.template.yaml': `template: 1
title: Iron from the turf
checkpoints:
  impact: { lead_pressure: { window: 75..95 % } }
`,
  'a.swing.yaml': `swing: 1
student: mira.student.yaml
date: 2026-05-14
club: hybrid
template: iron.template.yaml
faults_from: house.faults.yaml
checkpoints:
  impact:
    lead_pressure: 65 %
delivery: { path: 5 deg right, face: 1 deg right }
faults:
  - { fault: weight-back, at: impact } # seen
misses: [heavy]
plan:
  - { change: checkpoints.impact.lead_pressure, to: 80 %, because: [weight-back, handle-trails] }
`,
  'b.swing.yaml': `swing: 1
student: mira.student.yaml
date: 2026-06-01
club: "seven iron"
faults_from: base.faults.yaml
faults: [{ fault: 'weight-back' }]
`,
  'c.swing.yaml': `swing: 1
student: ansa.student.yaml
club: hybrid
faults_from: other.faults.yaml
faults: [{ fault: weight-back }]
`,
};

/** The practice with other texts for some files, as cards; own quantities are known where a workspace file is among them. */
export function cardsIn(files: Readonly<Record<string, string>> = practice): Card[] {
  const workspace = parseDocument('workspace', files['swingwright.yaml'] ?? '');
  const registry = workspace.kind === 'workspace' ? registryOf(workspace) : builtIn;
  const home = {
    registry,
    workspace: 'swingwright.yaml' in files ? `${lessons}swingwright.yaml` : undefined,
  };
  return Object.entries(files).map(([name, text]) => {
    const kind = kindOf(name) ?? 'review';
    const own = kind === 'workspace' ? { ...home, registry: builtIn } : home;
    return cardOf(lessons + name, parseDocument(kind, text, own.registry), own);
  });
}

export interface Cursor {
  readonly analysis: Analysis;
  readonly position: { readonly line: number; readonly character: number };
  readonly files: Readonly<Record<string, string>>;
}

/** The cursor just inside `word` where `after` has been read, in one file of the practice. */
export function cursorAt(name: string, word: string, after = '', files = practice): Cursor {
  const text = files[name]!;
  const from = after === '' ? 0 : text.indexOf(after) + after.length;
  const at = text.indexOf(word, from);
  if (at < from || from < after.length) throw new Error(`\`${word}\` does not stand in ${name}.`);
  const { position } = marked(`${text.slice(0, at + 1)}$0${text.slice(at + 1)}`);
  return { analysis: analysed(text, { name, files }), position, files };
}

/** `name:line: text of the range`, the line counted from one. */
export function shown(
  uri: string,
  range: {
    readonly start: { line: number; character: number };
    readonly end: { line: number; character: number };
  },
  files: Readonly<Record<string, string>> = practice,
): string {
  const name = uri.replace(lessons, '');
  const line = files[name]?.split('\n')[range.start.line] ?? '';
  const words =
    range.start.line === range.end.line ? line.slice(range.start.character, range.end.character) : `${line}…`;
  return `${name}:${range.start.line + 1}: ${words}`;
}
