// Keeping in the record what its plan is predicted to lead to: where it is offered, and that it touches only what changes.
import assert from 'node:assert/strict';
import { findActions, type ActionRequest } from '../../src/language/index.ts';
import type { SwingRecord } from '../../src/record/document.ts';
import { marked } from '../marked.ts';
import { analysed } from './analysed.ts';
import { planFiles as files, planRecord, twoChanges } from './plan-record.ts';

const title = 'Store what this plan predicts';
const plan = planRecord(twoChanges);

function editsAt(source: string): readonly { readonly before: string; readonly after: string }[] | undefined {
  const { text, position } = marked(source);
  const request: ActionRequest = {
    range: { start: position, end: position },
    version: 1,
    edits: 'plain',
    explanation: () => undefined,
    textOf: () => undefined,
  };
  const found = findActions(analysed(text, { files }), request).find((action) => action.title === title);
  const offset = ({ line, character }: { line: number; character: number }): number =>
    text
      .split('\n')
      .slice(0, line)
      .reduce((sum, { length }) => sum + length + 1, 0) + character;
  return found?.edit?.documentChanges[0]!.edits.map((edit) => {
    assert.ok('newText' in edit);
    return { before: text.slice(offset(edit.range.start), offset(edit.range.end)), after: edit.newText };
  });
}

/** The record with all that is offered at its plan. */
function stored(text: string): string {
  const [edit] = editsAt(text.replace('plan:', 'pl$0an:')) ?? [];
  assert.ok(edit !== undefined && edit.before === '');
  return text + edit.after;
}

describe('storing what a plan predicts', () => {
  it('writes one block that reads back', () => {
    const text = stored(plan);
    const { predicted, problems } = analysed(text, { files }).document as SwingRecord;
    assert.ok(predicted.size >= 5);
    assert.equal(
      problems.filter(({ span }) => span.start >= plan.length).length,
      0,
      JSON.stringify(problems),
    );
    for (const { readings } of predicted.values())
      assert.ok(['model', 'belief'].includes(readings[0]!.measure.method!));
  });

  it('is offered in the plan and on the first key, not elsewhere, and not on the first key once something is kept', () => {
    assert.ok(editsAt(plan.replace('to: 41', 'to: 4$01')));
    assert.ok(editsAt(plan.replace('swing:', 'sw$0ing:')));
    assert.equal(editsAt(plan.replace('club:', 'cl$0ub:')), undefined);
    const kept = `${plan}predicted:\n  flight.carry: 100 m ± 9 m by model\n`;
    assert.equal(editsAt(kept.replace('swing:', 'sw$0ing:')), undefined);
    assert.ok(editsAt(kept.replace('predicted:', 'predi$0cted:')));
  });

  it('is not offered where all is kept already, or where there is no plan', () => {
    assert.equal(editsAt(stored(plan).replace('predicted:', 'predi$0cted:')), undefined);
    assert.equal(editsAt(planRecord('').replace('swing:', 'sw$0ing:')), undefined);
  });

  it('afterwards changes only the lines that the changed plan changes, and leaves comments and other methods alone', () => {
    const text = stored(plan)
      .replace(/( {2}flight\.carry: ).*/, '$1100 m ± 9 m by model # the coach looks at this')
      .concat('  delivery.club_speed: 41 m/s by model\n  club.loft: 22 deg by hand\n');
    assert.deepEqual(editsAt(text.replace('predicted:', 'predi$0cted:')), [
      { before: '100 m ± 9 m by model', after: /flight\.carry: (.*)/.exec(stored(plan))![1] },
      { before: '  delivery.club_speed: 41 m/s by model\n', after: '' },
    ]);
  });

  it('adds what is missing below the others', () => {
    const whole = stored(plan);
    const without = whole.replace(/ {2}flight\.carry: .*\n/, '');
    const [edit, ...others] = editsAt(without.replace('predicted:', 'predi$0cted:'))!;
    assert.equal(others.length, 0);
    assert.match(edit!.after, /^ {2}flight\.carry: .* by belief\n$/);
    assert.equal(edit!.before, '');
  });

  it('replaces a block in one line as a whole', () => {
    const line = 'predicted: { flight.carry: 100 m ± 9 m by model }\n';
    const [edit, ...others] = editsAt(`${plan}${line}`.replace('predicted:', 'predi$0cted:'))!;
    assert.deepEqual([edit!.before, others.length], [line, 0]);
  });
});
