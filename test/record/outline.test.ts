import assert from 'node:assert/strict';
import type { OutlineNode } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { lesson } from './lesson.ts';

const drawn = (nodes: readonly OutlineNode[], indent = ''): string =>
  nodes
    .map(
      ({ name, detail, children }) =>
        `${indent}${name}${detail && ` = ${detail}`}\n${drawn(children, `${indent}  `)}`,
    )
    .join('');

describe('the outline', () => {
  it('has sections, checkpoints, entries as they are written, and the items of lists by their names', () => {
    const { outline } = parseDocument(
      'swing',
      `swing: 1
club: hybrid
checkpoints:
  impact:
    shaft_lean: 9 deg   forward # x
    lead_pressure: { value: 66 %, by: pressure mat }
delivery:
  face: [1 deg right, 2 deg right]
  path:
faults:
  - { fault: folds, at: top }
plan:
  - change: delivery.path
    to: 2 deg right
notes: >
  two
  lines
`,
    );
    assert.equal(
      drawn(outline),
      `club = hybrid
checkpoints
  impact
    shaft_lean = 9 deg forward
    lead_pressure = { value: 66 %, by: pressure mat }
delivery
  face = [1 deg right, 2 deg right]
  path
faults = - { fault: folds, at: top }
  folds
    fault = folds
    at = top
plan = - change: delivery.path to: 2 deg right
  delivery.path
    change = delivery.path
    to = 2 deg right
notes = > two lines
`,
    );
  });

  it('keeps every node inside the one above it, in the order of the text', () => {
    const check = (nodes: readonly OutlineNode[], start: number, end: number): void => {
      let last = start;
      for (const { span, nameSpan, children } of nodes) {
        assert.ok(last <= span.start && span.end <= end);
        assert.ok(span.start <= nameSpan.start && nameSpan.end <= span.end);
        check(children, span.start, span.end);
        last = span.end;
      }
    };
    check(parseDocument('swing', lesson).outline, 0, lesson.length);
  });

  it('has details of one short line', () => {
    const { outline } = parseDocument('swing', `swing: 1\nnotes: ${'word '.repeat(200)}\n`);
    assert.ok(outline[0]!.detail.length <= 80);
  });
});
