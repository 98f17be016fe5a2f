// A left-handed beside a right-handed player: left and right of the target line stay where they are, body and arc are mirrored, and each says so.
import assert from 'node:assert/strict';
import { compareRecords, isRecord, type RecordAnalysis } from '../../src/analysis/compare.ts';
import { summaryOf } from '../../src/analysis/comparison-words.ts';
import { comparedRecord, comparisonPage } from '../../src/draw/comparison.tsx';
import { OverlaidAbove } from '../../src/draw/overlaid-above.tsx';
import { OverlaidFlight } from '../../src/draw/overlaid-flight.tsx';
import { OverlaidFront } from '../../src/draw/overlaid-front.tsx';
import { svgOf } from '../../src/draw/picture.tsx';
import { themes } from '../../src/draw/theme.ts';
import { analysed, student } from '../language/analysed.ts';
import { numberAt, part } from './drawn.ts';

const text = `swing: 1
student: mira.student.yaml
club: hybrid
delivery:
  path: 5 deg right ± 1 deg
  face: 1 deg left ± 1 deg
  low_point: { ahead: 4 cm ahead ± 1 cm }
  arc: { radius: 1.4 m, inclination: 58 deg }
flight: { start: 1 deg left, curve: 5 m right, carry: 160 m ± 2 m, finish: 3 m right ± 1 m }
`;
const played = (hand: string): RecordAnalysis => {
  const analysis = analysed(text, {
    files: { 'mira.student.yaml': student.replace(/^hand: \w+/m, `hand: ${hand}`) },
  });
  assert.ok(isRecord(analysis) && analysis.subject.student?.document.hand?.value === hand);
  return analysis;
};
const [left, right] = [played('left'), played('right')];
const theme = themes.light;
const rule =
  /A plays left-handed and B right-handed\. Left and right of the target line are compared as they are, not mirrored: a club path to the right is in-to-out for the right-handed player and out-to-in for the left-handed one/;

describe('a left-handed beside a right-handed player', () => {
  it('is said to be compared as left and right are, in words and on the page', () => {
    const comparison = compareRecords(left, right);
    assert.match(summaryOf(comparison).join(' '), rule);
    assert.match(comparisonPage(comparedRecord('a', left), comparedRecord('b', right), comparison), rule);
    assert.ok(!comparison.entries.some(({ quantity }) => quantity.id === 'delivery.path'));
    assert.doesNotMatch(summaryOf(compareRecords(left, left)).join(' '), /handed/);
  });

  it('is drawn so from above: equal paths and landings lie on one another, and the picture says whose is whose', () => {
    const pictures = [OverlaidAbove, OverlaidFlight].map((draw) => [
      svgOf(draw({ first: left, second: right, theme })),
      svgOf(draw({ first: left, second: left, theme })),
    ]);
    for (const [two, one] of pictures) {
      assert.match(two!, />A plays left-handed, B right-handed; left and right are as they are/);
      assert.doesNotMatch(one!, /handed/);
    }
    const angle = (side: string): number =>
      numberAt(part(part(pictures[0]![0]!, `data-side="${side}"`), 'data-id="delivery.path"'), 'data-angle');
    assert.deepEqual([angle('A'), angle('B')], [5, 5]);
  });

  it('has its arc drawn as in a mirror, toward the one target, and the picture says so', () => {
    const svg = svgOf(OverlaidFront({ first: left, second: right, theme }));
    const [a, b] = ['A', 'B'].map((side) =>
      numberAt(part(part(svg, `data-side="${side}"`), 'data-part="low-point"'), 'cx'),
    );
    assert.equal(a, b);
    assert.match(svg, />A plays left-handed and is drawn as in a mirror\.</);
    assert.doesNotMatch(svgOf(OverlaidFront({ first: right, second: right, theme })), /mirror/);
  });
});

describe('where the balls of two records come down', () => {
  it('is told with distances to the side, true to scale', () => {
    const svg = svgOf(OverlaidFlight({ first: right, second: right, theme }));
    const sides = [...svg.matchAll(/data-part="side"><path d="M ([\d.]+) .*?>([^<]*)<\/text>/g)].map(
      ([, x, words]) => ({ x: Number(x), words: words! }),
    );
    const at = (words: string): number => sides.find((one) => one.words === words)!.x;
    const unit = (at('4 m right') - at('4 m left')) / 8;
    const ellipse = part(part(svg, 'data-side="A"'), 'data-part="ellipse"');
    assert.ok(Math.abs((numberAt(ellipse, 'cx') - at('0')) / unit - 3) < 0.05);
  });

  it('is the centre of the shots, beside the entries where those say otherwise', () => {
    const shots = `shots:\n${[158, 162, 160]
      .map((carry, i) => `  - { carry: ${carry} m, finish: ${i + 1} m right }\n`)
      .join('')}`;
    const withShots = analysed(text + shots, { files: { 'mira.student.yaml': student } });
    const svg = svgOf(OverlaidFlight({ first: right, second: withShots, theme }));
    const said = svg.slice(0, svg.indexOf('</desc>'));
    assert.match(said, /A: one flight, which comes down 160 m ahead, 3\.0 m right\./);
    assert.match(
      said,
      /B: 3 shots, their centre 160 m ahead, 2\.0 m right; the record’s own entry is finish 3\.0 m right \(mean of the shots 2\.0 m right\), not drawn\./,
    );
  });
});
