// The pressure from checkpoint to checkpoint stands at its share, in the order of the swing, before what is taught.
import assert from 'node:assert/strict';
import { analysed, student } from '../language/analysed.ts';
import { assertKept, assertSound, drawn, numberAt, part } from './drawn.ts';

const record = `swing: 1
student: mira.student.yaml
club: hybrid
template: house.template.yaml
checkpoints:
  address: { lead_pressure: 50 % ± 3 % }
  top: { lead_pressure: 25 % ± 3 % }
  impact: { lead_pressure: 80 % ± 3 % }
`;
const template = `template: 1
checkpoints: { impact: { lead_pressure: { window: 75..95 %, source: common practice } } }
`;
const files = { 'mira.student.yaml': student, 'house.template.yaml': template };
const [top, bottom] = [30, 250];
const shareAt = (y: number): number => (100 * (bottom - y)) / (bottom - top);

describe('the picture of the pressure', () => {
  const svg = drawn('pressure', analysed(record, { files }));

  it('has each entry at its share, one after another', () => {
    const dots = ['address', 'top', 'impact'].map((at) => {
      const dot = part(svg, `data-id="checkpoints.${at}.lead_pressure"`);
      return { x: numberAt(dot, 'cx'), share: shareAt(numberAt(dot, 'cy')) };
    });
    assert.deepEqual(
      dots.map(({ share }) => Math.round(share)),
      [50, 25, 80],
    );
    assert.ok(dots[0]!.x < dots[1]!.x && dots[1]!.x < dots[2]!.x);
  });

  it('has the interval of 95 % to scale', () => {
    const line = part(svg, 'data-id="checkpoints.top.lead_pressure"');
    const [, low, high] = /M [\d.]+ ([\d.]+) L [\d.]+ ([\d.]+)/.exec(line)!.map(Number);
    assert.ok(Math.abs(shareAt(low!) - (25 - 1.96 * 3)) < 0.5);
    assert.ok(Math.abs(shareAt(high!) - (25 + 1.96 * 3)) < 0.5);
  });

  it('has the taught window where it is', () => {
    const window = part(svg, 'data-window="impact"');
    const y = numberAt(window, 'y');
    assert.ok(Math.abs(shareAt(y) - 95) < 0.5);
    assert.ok(Math.abs(shareAt(y + numberAt(window, 'height')) - 75) < 0.5);
    assert.ok(window.includes('hatch-taught'));
  });

  it('says in words what it shows', () => {
    assert.match(svg, /<desc[^>]*>address: 50 % ± 3 %.* impact: 80 % ± 3 %.*taught 75\.\.95 %/);
  });

  it('says what is not known, and draws what cannot be', () => {
    assert.match(drawn('pressure', analysed('swing: 1\n')), /Not known: pressure at any checkpoint/);
    const absurd = drawn(
      'pressure',
      analysed('swing: 1\ncheckpoints: { impact: { lead_pressure: 9e9 % } }\n'),
    );
    assertSound(absurd);
    // An arrow at the upper edge, and no dot that would say 100 %.
    const mark = part(absurd, 'data-id="checkpoints.impact.lead_pressure"');
    assert.match(mark, /data-part="off-the-scale"/);
    assert.doesNotMatch(mark, /<circle/);
    const [, top] = /translate\([\d.]+ ([\d.]+)\) rotate\(270\)/.exec(mark)!;
    assert.equal(shareAt(Number(top)), 100);
    assert.match(absurd, />9900 %, off the scale</);
  });

  it('is kept', () => assertKept('pressure', svg));
});
