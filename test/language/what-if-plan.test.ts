// What was tried goes into the plan as the smallest edit: all else stays to the letter, and the reader finds what was meant.
import assert from 'node:assert/strict';
import { lineTableOf } from '../../src/analysis/positions.ts';
import { whatIfEdits } from '../../src/language/what-if-plan.ts';
import type { Move } from '../../src/language/what-if.ts';
import { analysed } from './analysed.ts';
import { planFiles, planRecord } from './plan-record.ts';

const path: Move = { id: 'delivery.path', value: -1 };
const stance: Move = { id: 'checkpoints.address.stance_width', value: 41 };

function written(plan: string, moves: readonly Move[], because: readonly string[] = []): string {
  return edited(planRecord(plan), moves, because).slice(planRecord('').length);
}

function edited(text: string, moves: readonly Move[], because: readonly string[] = []): string {
  const { starts } = lineTableOf(text);
  return whatIfEdits(analysed(text, { files: planFiles }), moves, because)
    .map(({ range: { start, end }, newText }) => ({
      from: starts[start.line]! + start.character,
      to: starts[end.line]! + end.character,
      newText,
    }))
    .sort((a, b) => b.from - a.from)
    .reduce((done, { from, to, newText }) => done.slice(0, from) + newText + done.slice(to), text);
}

const pathItem = `  - change: delivery.path
    to: 1.0 deg left
    because: [trail-side]
    proof: delivery.path > -2 deg
`;

describe('writing what was tried as a plan', () => {
  it('adds a plan where there is none, with the proof that follows', () => {
    assert.equal(written('', [path], ['trail-side']), `plan:\n${pathItem}`);
  });

  it('adds an item behind the last one, in the same way of writing', () => {
    const block = 'plan:\n- change: delivery.attack # first\n  to: 1 deg down\n# the end\n';
    const item = pathItem.replaceAll(/^ {2}/gm, '');
    assert.equal(
      written(block, [path], ['trail-side']),
      `plan:\n- change: delivery.attack # first\n  to: 1 deg down\n${item}# the end\n`,
    );
    const flow = 'plan: [{ change: delivery.attack, to: 1 deg down }] # here\n';
    assert.equal(
      written(flow, [path]),
      'plan: [{ change: delivery.attack, to: 1 deg down }, { change: delivery.path, to: 1.0 deg left, proof: delivery.path > -2 deg }] # here\n',
    );
  });

  it('adds it behind a last line without an end, and with the ends of lines that the file has', () => {
    const open = 'plan:\n  - { change: delivery.attack, to: 1 deg down }';
    assert.equal(written(open, [path], ['trail-side']), `${open}\n${pathItem.trimEnd()}`);
    const text = planRecord('plan:\n  - { change: delivery.attack, to: 1 deg down }\n').replaceAll(
      '\n',
      '\r\n',
    );
    assert.equal(edited(text, [path], ['trail-side']), text + pathItem.replaceAll('\n', '\r\n'));
  });

  it('puts the number in the place of the number where the quantity is planned already', () => {
    const plan = `plan:
  - change: checkpoints.address.stance_width # narrower
    to: 44 cm
    because: [trail-side]
`;
    assert.equal(written(plan, [stance]), plan.replace('44 cm', '41 cm'));
    assert.equal(written(plan, [stance, path], ['trail-side']), plan.replace('44 cm', '41 cm') + pathItem);
  });

  it('says to what where a change was planned without', () => {
    const block = 'plan:\n  - change: checkpoints.address.stance_width\n    because: [trail-side]\n';
    assert.equal(
      written(block, [stance]),
      'plan:\n  - change: checkpoints.address.stance_width\n    to: 41 cm\n    because: [trail-side]\n',
    );
    assert.equal(
      written('plan: [{ change: checkpoints.address.stance_width }]\n', [stance]),
      'plan: [{ change: checkpoints.address.stance_width, to: 41 cm }]\n',
    );
  });

  it('writes nothing where nothing was moved, or the plan cannot be read', () => {
    assert.equal(written('', []), '');
    assert.equal(written('plan: [{ change: \n', [path]), 'plan: [{ change: \n');
  });
});
