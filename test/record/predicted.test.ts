// Predictions are read by full id, each by the model or by belief; anything else is said where it stands.
import assert from 'node:assert/strict';
import { parseDocument } from '../../src/record/parse.ts';

const head = 'swing: 1\nstudent: a.student.yaml\ndate: 2026-05-14\nclub: hybrid\n';

function read(text: string) {
  const document = parseDocument('swing', `${head}${text}`);
  assert.equal(document.kind, 'swing');
  return document as typeof document & { kind: 'swing' };
}

describe('predicted', () => {
  it('holds a measure for each full id, with where it comes from', () => {
    const { predicted, problems } = read(
      'predicted:\n  flight.carry: 178 m ± 4 m by model\n  delivery.path: [1 deg right ± 1 deg by belief, 2 deg right ± 1 deg by model]\n',
    );
    assert.deepEqual(problems, []);
    const carry = predicted.get('flight.carry')!.readings[0]!.measure;
    assert.deepEqual([carry.value, carry.stated, carry.method], [178, 4, 'model']);
    assert.deepEqual(
      predicted.get('delivery.path')!.readings.map(({ measure }) => measure.method),
      ['belief', 'model'],
    );
  });

  it('is no entry of the record', () => {
    assert.equal(read('predicted: { flight.carry: 178 m ± 4 m by model }\n').entries.size, 0);
  });

  it('takes no method of measuring, no short id and no setting of the student', () => {
    const codes = read(
      'predicted:\n  flight.carry: 178 m ± 4 m by radar\n  carry: 178 m\n  student.mass: 60 kg\n',
    ).problems.map(({ code }) => code);
    assert.deepEqual([...new Set(codes)].sort(), ['unknown-key', 'unknown-method']);
    assert.equal(codes.length, 3);
  });

  it('never throws on what a half-typed text holds', () => {
    for (const text of [
      'predicted:',
      'predicted: 3',
      'predicted: [a]',
      'predicted: { flight.carry: }',
      'predicted: { flight.carry: { } }',
    ])
      assert.doesNotThrow(() => read(`${text}\n`));
  });
});
