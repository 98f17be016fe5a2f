// Two players at one checkpoint over one another: what differs to scale, told by line and letter, at the checkpoints of both records alone.
import assert from 'node:assert/strict';
import { compareRecords, compareWithTemplate, isRecord } from '../../src/analysis/compare.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import { comparedRecord, comparisonPage } from '../../src/draw/comparison.tsx';
import { OverlaidFigure, overlaidViews } from '../../src/draw/overlaid-figure.tsx';
import { svgOf } from '../../src/draw/picture.tsx';
import { templatePage } from '../../src/draw/template-comparison.tsx';
import { themes } from '../../src/draw/theme.ts';
import { analysed, student } from '../language/analysed.ts';
import { assertSound, part, places } from './drawn.ts';
import { boxesOf, overlap, sizeOf } from './words-on.ts';

const theme = themes.light;

function record(lean: number, further = '', hand = 'right'): Analysis {
  const files = { 'mira.student.yaml': student.replace('hand: right', `hand: ${hand}`) };
  const text = `swing: 1
student: mira.student.yaml
club: hybrid
checkpoints:
  impact: { shaft_lean: ${lean} deg forward, lead_shoulder: 5 cm ahead, forward_bend: 30 deg forward }
${further}`;
  return analysed(text, { files });
}

const [first, second] = [record(2), record(12, '  top: { shoulder_turn: 90 deg closed }\n')];
const view = { checkpoint: 'impact', view: 'face_on' } as const;

/** Degrees from upright, right positive. */
function leanOf(svg: string, side: 'A' | 'B'): number {
  const [end, head] = places(part(part(svg, `data-side="${side}"`), 'data-part="shaft"'));
  return (Math.atan2(end!.x - head!.x, head!.y - end!.y) * 180) / Math.PI;
}

describe('two players laid over one another', () => {
  const svg = svgOf(OverlaidFigure({ first, second, theme, ...view }));

  it('lean their shafts as recorded, to half a degree', () => {
    assert.ok(Math.abs(leanOf(svg, 'A') - 2) < 0.5, String(leanOf(svg, 'A')));
    assert.ok(Math.abs(leanOf(svg, 'B') - 12) < 0.5, String(leanOf(svg, 'B')));
  });

  it('lean toward a target on the left for a left-handed player', () => {
    const [a, b] = [record(2, '', 'left'), record(12, '', 'left')];
    const mirrored = svgOf(OverlaidFigure({ first: a, second: b, theme, ...view }));
    assert.ok(Math.abs(leanOf(mirrored, 'B') + 12) < 0.5);
    assert.ok(mirrored.includes('← target'));
  });

  it('are told apart by dashes and letters, and in words', () => {
    assert.match(part(svg, 'data-side="A"'), /stroke-dasharray/);
    for (const [held] of part(svg, 'data-side="B"').matchAll(/<g [^>]*data-anchor="held".*?<\/g>/g))
      assert.doesNotMatch(held, /stroke-dasharray/);
    assert.deepEqual(
      [...part(svg, 'data-part="letters"').matchAll(/>([AB])</g)].map(([, letter]) => letter),
      ['A', 'B'],
    );
    assert.match(svg, /<desc[^>]*>Shaft lean: A 2\.0 deg forward, B 12\.0 deg forward\.<\/desc>/);
  });

  it('are dotted where nothing was recorded, on both sides', () => {
    for (const side of ['A', 'B'] as const) {
      const own = part(svg, `data-side="${side}"`);
      const guessed = [...own.matchAll(/<(?:g|path) [^>]*data-anchor="guessed"[^>]*>(?:<path [^>]*>)?/g)];
      assert.ok(guessed.length > 0, side);
      for (const [one] of guessed) {
        assert.ok(one.includes('stroke-dasharray="1 3.5"'), one);
        assert.ok(one.includes(`stroke="${side === 'A' ? theme.soft : theme.entered}"`), one);
      }
      const held = [...own.matchAll(/<(?:g|path) [^>]*data-anchor="held"[^>]*>/g)];
      assert.ok(held.length > 0, side);
      assert.ok(!held.some(([one]) => one.includes('stroke-dasharray="1 3.5"')));
    }
  });

  it('say where a figure does not fit its entries, and of which record', () => {
    const odd = record(12, '  top: { shoulder_turn: 90 deg closed }\n');
    const far = analysed(
      'swing: 1\ncheckpoints: { impact: { shaft_lean: 2 deg forward, head: 150 cm behind } }\n',
    );
    const picture = svgOf(OverlaidFigure({ first: far, second: odd, theme, ...view }));
    assert.match(
      picture,
      /<desc[^>]*>[^<]*A: Head[^<]* drawn as near as a body comes, \d+ cm [^<]*, not 150 cm behind\./,
    );
    assert.match(picture, />A: Head[^<]* drawn as near /);
    assert.doesNotMatch(picture, />B: /);
  });

  it('are drawn as in a mirror where one plays the other way round, and say so', () => {
    const left = record(2, '', 'left');
    assert.deepEqual(
      overlaidViews({ first: left, second }).map(({ title }) => title),
      ['Impact, face-on'],
    );
    const mixed = svgOf(OverlaidFigure({ first: left, second, theme, ...view }));
    assert.match(mixed, />A plays left-handed and is drawn as in a mirror</);
    assert.ok(Math.abs(leanOf(mixed, 'A') - 2) < 0.5 && Math.abs(leanOf(mixed, 'B') - 12) < 0.5);
    assert.doesNotMatch(svg, /mirror/);
  });

  it('stay on both pictures whichever way each of them plays', () => {
    const bent = (hand: string, bend: number): Analysis =>
      analysed(
        `swing: 1\nstudent: mira.student.yaml\ncheckpoints: { address: { forward_bend: ${bend} deg forward, stance_width: ${bend} cm } }\n`,
        { files: { 'mira.student.yaml': student.replace('hand: right', `hand: ${hand}`) } },
      );
    for (const [a, b] of [
      [bent('right', 34), bent('left', 40)],
      [bent('left', 34), bent('right', 40)],
      [bent('left', 34), bent('left', 40)],
    ] as const) {
      const all = overlaidViews({ first: a, second: b });
      assert.deepEqual(
        all.map(({ title }) => title),
        ['Address, face-on', 'Address, down the line'],
      );
      for (const at of all) {
        const picture = svgOf(OverlaidFigure({ first: a, second: b, theme, ...at }));
        const { width, height } = sizeOf(picture);
        for (const side of ['A', 'B']) {
          const d = [...part(picture, `data-side="${side}"`).matchAll(/ d="([^"]+)"/g)].map(
            ([, path]) => path!,
          );
          const numbers = d.flatMap((path) => path.match(/-?[\d.]+/g)!.map(Number));
          assert.ok(numbers.length > 100);
          for (const [i, one] of numbers.entries())
            assert.ok(one >= 0 && one <= (i % 2 === 0 ? width : height), `${at.title}, ${side}: ${one}`);
        }
        const letters = part(picture, 'data-part="letters"');
        for (const [, x] of letters.matchAll(/ (?:c?x)="(-?[\d.]+)"/g))
          assert.ok(Number(x) > 0 && Number(x) < width, letters);
      }
    }
  });

  it('are drawn where both records have entries and a view shows what differs', () => {
    assert.deepEqual(
      overlaidViews({ first, second }).map(({ title }) => title),
      ['Impact, face-on'],
    );
    assert.deepEqual(overlaidViews({ first, second: first }), []);
    assert.deepEqual(overlaidViews({ first, second: analysed('swing: 1\n') }), []);
  });

  it('have all words inside and apart, and hold numbers only, whatever was written', () => {
    const absurd = record(5000, '  address: { head: 1e12 cm behind, stance_width: 1e300 m }\n');
    const other = record(-89, '  address: { head: 3 cm behind, stance_width: 2 cm }\n');
    const all = overlaidViews({ first: absurd, second: other });
    assert.ok(all.length > 0);
    for (const at of all) {
      const drawn = svgOf(OverlaidFigure({ first: absurd, second: other, theme, ...at }));
      assertSound(drawn);
      const { width, height } = sizeOf(drawn);
      const boxes = boxesOf(drawn);
      for (const [i, box] of boxes.entries()) {
        assert.ok(box.left >= 0 && box.right <= width && box.top >= 0 && box.bottom <= height, box.text);
        for (const next of boxes.slice(i + 1)) assert.ok(!overlap(box, next), `${box.text} on ${next.text}`);
      }
    }
  });
});

describe('figures on pages that compare', () => {
  const idsOn = (page: string): readonly string[] =>
    [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id!);

  it('stand on the page of two records, each id once', () => {
    assert.ok(isRecord(first) && isRecord(second));
    const page = comparisonPage(
      comparedRecord('a', first),
      comparedRecord('b', second),
      compareRecords(first, second),
    );
    assert.match(page, /<figcaption>Impact, face-on<\/figcaption>/);
    assert.equal(new Set(idsOn(page)).size, idsOn(page).length);
  });

  it('stand before the windows of the template that they are compared with, each id once', () => {
    assert.ok(isRecord(second));
    const template = analysed(
      `template: 1
checkpoints:
  impact: { shaft_lean: 4..8 deg forward }
  top: { shoulder_turn: 85..100 deg closed }
`,
      { name: 'iron.template.yaml' },
    );
    const comparison = compareWithTemplate(second, template);
    assert.ok(comparison);
    const of = { name: 'iron.template.yaml', analysis: template };
    const page = templatePage(comparedRecord('a', second), of, comparison);
    assert.match(page, /data-window="shaft_lean"/);
    assert.match(page, /<figcaption>Top, face-on<\/figcaption>/);
    assert.equal(new Set(idsOn(page)).size, idsOn(page).length);
  });
});
