// The graph of causes: each fault and miss once, arrows from causes to what they bring about, doubt told by line and words.
import assert from 'node:assert/strict';
import { analysed, student } from '../language/analysed.ts';
import { assertKept, assertSound, drawn, numberAt, part } from './drawn.ts';

const book = `faults: 1
book:
  stays-back:
    title: Weight stays on the trail side for much longer than it should
    evidence: checkpoints.impact.lead_pressure < 70 %
    tends_to: [{ effect: checkpoints.impact.shaft_lean, direction: backward }]
  handle-trails:
    title: Handle behind the head
    evidence: checkpoints.impact.shaft_lean < 0 deg
    tends_to: [{ effect: delivery.low_point.ahead, direction: behind }]
`;
const record = `swing: 1
student: mira.student.yaml
faults_from: house.faults.yaml
checkpoints: { impact: { lead_pressure: 60 % ± 3 %, shaft_lean: 8 deg forward ± 1 deg } }
faults: [{ fault: stays-back }, { fault: handle-trails }]
misses: [heavy, hook]
`;
const files = { 'mira.student.yaml': student, 'house.faults.yaml': book };
const middle = (svg: string, node: string): { x: number; y: number } => {
  const box = part(svg, `data-node="${node}"`);
  return {
    x: numberAt(box, 'x') + numberAt(box, 'width') / 2,
    y: numberAt(box, 'y') + numberAt(box, 'height') / 2,
  };
};

describe('the graph of causes', () => {
  const svg = drawn('causes', analysed(record, { files }));

  it('has causes before what they bring about', () => {
    const [first, then, miss] = ['fault stays-back', 'fault handle-trails', 'miss heavy'].map(
      (node) => middle(svg, node).x,
    );
    assert.ok(first! < then! && then! < miss!);
    assert.equal((svg.match(/data-node=/g) ?? []).length, 4);
  });

  it('leads from one to the other, and says through what', () => {
    const lean =
      /<desc[^>]*>.*Weight stays .* would lead to Handle behind the head through shaft lean, against the numbers\./;
    assert.match(svg, lean);
    assert.match(svg, /Handle behind the head would lead to heavy through low point, against the numbers\./);
    assert.equal((svg.match(/<path[^>]*stroke-dasharray="5 4"/g) ?? []).length, 2);
    const held = drawn(
      'causes',
      analysed(record.replace(/shaft_lean: [^\n,}]*/, 'shaft_lean: 6 deg backward by video'), { files }),
    );
    assert.match(held, /Handle behind the head leads to heavy through low point\./);
    assert.doesNotMatch(held, /against the numbers/);
    assert.ok(svg.includes('>shaft lean<') && svg.includes('>low point<'));
  });

  it('tells what the numbers speak against, and a miss that nothing explains, by a dashed rim and by words', () => {
    const handle = part(svg, 'data-node="fault handle-trails"');
    assert.match(handle, /stroke-dasharray="5 4"/);
    assert.match(handle, /contradicted/);
    assert.match(part(svg, 'data-node="miss hook"'), /stroke-dasharray="5 4".*no stated fault explains it/s);
    assert.match(part(svg, 'data-node="fault stays-back"'), /stroke-dasharray="none".*supported/s);
    assert.match(part(svg, 'data-node="fault stays-back"'), /data-id="stays-back"/);
  });

  it('says that nothing is stated where a book is there', () => {
    const none = drawn('causes', analysed(record.replace(/faults: \[.*/s, ''), { files }));
    assert.match(none, />No fault of the book and no miss is stated\.?</);
    assert.doesNotMatch(none, /Not known/);
  });

  it('breaks a long title into lines', () => {
    assert.ok((part(svg, 'data-node="fault stays-back"').match(/<text/g) ?? []).length >= 3);
  });

  it('says what is not known, and stands loops', () => {
    assert.match(drawn('causes', analysed('swing: 1\n')), /Not known: stated faults/);
    const round = book.replace(
      'tends_to: [{ effect: delivery.low_point.ahead, direction: behind }]',
      'tends_to: [{ effect: checkpoints.impact.lead_pressure, direction: less }]',
    );
    assertSound(drawn('causes', analysed(record, { files: { ...files, 'house.faults.yaml': round } })));
  });

  it('is kept', () => assertKept('causes', svg));
});
