// The page of a comparison stands alone, and its pictures are true to their angles and lengths and say in words what they cannot show.
import assert from 'node:assert/strict';
import { compareRecords, isRecord } from '../../src/analysis/compare.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import { comparedRecord, comparisonPage } from '../../src/draw/comparison.tsx';
import { OverlaidAbove } from '../../src/draw/overlaid-above.tsx';
import { OverlaidFlight } from '../../src/draw/overlaid-flight.tsx';
import { OverlaidFront } from '../../src/draw/overlaid-front.tsx';
import { svgOf } from '../../src/draw/picture.tsx';
import { SizeMark } from '../../src/draw/size-mark.tsx';
import { themes } from '../../src/draw/theme.ts';
import { sampleRecords } from '../analysis/handouts.ts';
import { analysed, student } from '../language/analysed.ts';
import { angleOf, assertKept, numberAt, part, places } from './drawn.ts';

const files = { 'mira.student.yaml': student };
const head = 'swing: 1\nstudent: mira.student.yaml\nclub: hybrid\n';
const strike = (path: number, ahead: number, carry: number): string => `${head}delivery:
  path: ${path} deg right ± 1 deg
  face: 1 deg left ± 1 deg
  low_point: { ahead: ${ahead} cm ahead ± 1 cm }
  arc: { radius: 1.4 m, inclination: 58 deg }
flight: { start: 1 deg left, curve: 5 m right, carry: ${carry} m ± 2 m, finish: 3 m right ± 1 m }
`;
const [first, second] = [analysed(strike(5, 3, 160), { files }), analysed(strike(-2, 9, 170), { files })];
const nothing = analysed('swing: 1\n');
const absurd = analysed(
  'swing: 1\ndelivery: { path: 5000 deg right, low_point: { ahead: 1e300 m ahead } }\nflight: { carry: -4 m, finish: 1e200 m left }\n',
);
const theme = themes.light;

describe('two records laid over one another', () => {
  it('draws both paths in their directions, to half a degree', () => {
    const svg = svgOf(OverlaidAbove({ first, second, theme }));
    for (const [side, angle] of [
      ['A', 5],
      ['B', -2],
    ] as const) {
      const line = places(part(part(svg, `data-side="${side}"`), 'data-id="delivery.path"'), 0);
      assert.ok(Math.abs(angleOf(line) - angle) < 0.5, `${side} ${angleOf(line)}`);
    }
    assert.match(svg, /A {2}Club path: 5\.0 deg right/);
    assertKept('overlaid-strike-from-above', svg);
  });

  it('says of which record face to path is not what path and face as entered make it', () => {
    const torn = `${head}delivery: { club_speed: 38 m/s by radar, path: 4 deg right by eye, face: 3 deg left by eye }
flight: { start: 1 deg left by radar, curve: 8 m right by radar, carry: 120 m by radar }
`;
    const words = svgOf(OverlaidAbove({ first: nothing, second: analysed(torn, { files }), theme }));
    assert.match(words, /B: Face to path is what all entries together say; .* would make it 7 deg left/);
    assert.doesNotMatch(words, /A: Face to path is what all entries/);
  });

  it('draws faces square to their directions, and balls that leave in theirs, to half a degree', () => {
    const svg = svgOf(OverlaidAbove({ first, second, theme }));
    for (const side of ['A', 'B']) {
      const own = part(svg, `data-side="${side}"`);
      const bar = angleOf(places(part(own, 'data-id="delivery.face"'))) - 90;
      assert.ok(Math.abs(bar - -1) < 0.5, `${side} ${bar}`);
      const [, x, y, bendX, bendY] = /d="M (\S+) (\S+) Q (\S+) (\S+) /
        .exec(part(own, 'data-id="flight.start"'))!
        .map(Number);
      const start = angleOf([
        { x: x!, y: y! },
        { x: bendX!, y: bendY! },
      ]);
      assert.ok(Math.abs(start - -1) < 0.5, `${side} ${start}`);
    }
  });

  it('raises each arc above its low point as a circle in its plane does', () => {
    const svg = svgOf(OverlaidFront({ first, second, theme }));
    const tenCentimetres = 90;
    for (const side of ['A', 'B']) {
      const own = part(svg, `data-side="${side}"`);
      const low = part(own, 'data-part="low-point"');
      const [lowX, lowY] = [numberAt(low, 'cx'), numberAt(low, 'cy')];
      for (const { x, y } of places(part(own, 'data-part="arc"'))) {
        const ahead = (x - lowX) / tenCentimetres / 10;
        // R (1 − cos θ) sin i, with sin θ = ahead / R.
        const up = 1.4 * (1 - Math.sqrt(1 - (ahead / 1.4) ** 2)) * Math.sin((58 * Math.PI) / 180);
        assert.ok(Math.abs((lowY - y) / tenCentimetres / 10 - up) < 0.0005, `${side} ${ahead}`);
      }
    }
  });

  it('sets a landing as far right of the target line as its finish, by the same scale', () => {
    const svg = svgOf(OverlaidFlight({ first, second, theme }));
    const ellipse = (side: string): string => part(part(svg, `data-side="${side}"`), 'data-part="ellipse"');
    const unit =
      (numberAt(ellipse('A'), 'cy') - numberAt(ellipse('B'), 'cy')) /
      (Math.sqrt(170 ** 2 - 9) - Math.sqrt(160 ** 2 - 9));
    const [line] = places(part(svg, 'data-part="target-line"'));
    for (const side of ['A', 'B'])
      assert.ok(Math.abs((numberAt(ellipse(side), 'cx') - line!.x) / unit - 3) < 0.05, side);
  });

  it('sets low points 6 cm apart by 6 cm of its scale', () => {
    const svg = svgOf(OverlaidFront({ first, second, theme }));
    const at = (side: string): number =>
      numberAt(part(part(svg, `data-side="${side}"`), 'data-part="low-point"'), 'cx');
    const tenCentimetres = 90;
    assert.match(part(svg, 'data-part="scale"'), new RegExp(`l ${tenCentimetres} 0`));
    assert.ok(Math.abs(at('B') - at('A') - 0.6 * tenCentimetres) < 0.05);
    assertKept('overlaid-strike-from-front', svg);
  });

  it('sets landings 10 m apart by 10 m of its scale, with ellipses of 95 %', () => {
    const svg = svgOf(OverlaidFlight({ first, second, theme }));
    const lines = [...svg.matchAll(/M 56 ([\d.]+) H [\d.]+".*?>(\d+) m</g)].map(
      ([, y, m]) => [Number(y), Number(m)] as const,
    );
    const unit = (lines[0]![0] - lines.at(-1)![0]) / (lines.at(-1)![1] - lines[0]![1]);
    const ellipse = (side: string): string => part(part(svg, `data-side="${side}"`), 'data-part="ellipse"');
    const ahead = (carry: number): number => Math.sqrt(carry ** 2 - 9);
    const apart = numberAt(ellipse('A'), 'cy') - numberAt(ellipse('B'), 'cy');
    assert.ok(Math.abs(apart - (ahead(170) - ahead(160)) * unit) < 0.1);
    // √χ²(0.95; 2) = 2.4477 (JCGM 102:2011, 6.5.2, table 1) of u = 2 m and 1 m.
    assert.ok(Math.abs(numberAt(ellipse('A'), 'ry') - 2.4477 * 2 * unit) < 0.1);
    assert.ok(Math.abs(numberAt(ellipse('A'), 'rx') - 2.4477 * unit) < 0.1);
    assertKept('overlaid-flight-from-above', svg);
  });

  it('draws what can be drawn of little, nothing or nonsense, and says what is not known', () => {
    for (const other of [nothing, absurd])
      for (const draw of [OverlaidAbove, OverlaidFront, OverlaidFlight])
        for (const pair of [
          { first: other, second },
          { first, second: other },
          { first: other, second: other },
        ])
          assert.doesNotMatch(svgOf(draw({ ...pair, theme })), /NaN|Infinity|undefined/);
    assert.match(
      svgOf(OverlaidAbove({ first: nothing, second, theme })),
      /Not known: path \(A\), face \(A\)/,
    );
    assert.match(
      svgOf(OverlaidFlight({ first: nothing, second: nothing, theme })),
      /where the ball comes down \(A\)/,
    );
  });

  it('marks a difference at so many uncertainties, beside the band of measuring twice', () => {
    const svg = svgOf(SizeMark({ difference: { value: 3, u: 1, size: 'larger' }, theme })!);
    const band = part(svg, 'data-part="band"');
    const [middle, half] = [numberAt(band, 'x') + numberAt(band, 'width') / 2, numberAt(band, 'width') / 2];
    assert.ok(Math.abs((numberAt(part(svg, 'data-part="mark"'), 'cx') - middle) / half - 3 / 1.96) < 0.01);
    assert.equal(
      SizeMark({ difference: { value: undefined, u: undefined, size: 'not known' }, theme }),
      null,
    );
  });
});

describe('the page of a comparison', () => {
  const pageFor = (one: Analysis, other: Analysis): string => {
    assert.ok(isRecord(one) && isRecord(other));
    return comparisonPage(
      { name: 'a', analysis: one },
      { name: 'b', analysis: other },
      compareRecords(one, other),
    );
  };

  it('stands alone: no script, no address to load from', () => {
    const page = pageFor(first, second);
    assert.match(page, /^<!doctype html>/);
    assert.doesNotMatch(page, /<script|\ssrc=|href=|@import|url\((?!#)/);
    assert.match(page, /default-src &#39;none&#39;|default-src 'none'/);
    assert.match(page, /larger than measuring it twice explains/);
  });

  it('holds of anything', () => {
    for (const one of [nothing, absurd, first])
      for (const other of [nothing, absurd, second])
        assert.doesNotMatch(pageFor(one, other), /NaN|Infinity|undefined/);
    assert.match(pageFor(first, first), /Nothing differs/);
  });
});

describe('a page of two lessons with findings about health', () => {
  const lessonOf = (day: string): Parameters<typeof comparedRecord>[1] => {
    const [, found] = sampleRecords.find(([path]) => path.startsWith(`runa/${day}`)) ?? [];
    assert.ok(found && isRecord(found), day);
    return found;
  };
  const pageOf = (a: string, b: string): string => {
    const [one, other] = [lessonOf(a), lessonOf(b)];
    return comparisonPage(comparedRecord('a', one), comparedRecord('b', other), compareRecords(one, other));
  };

  it('shows and counts none of them, and says so whatever was found', () => {
    const page = pageOf('2026-08-03', '2026-08-24');
    assert.match(page, /3 findings gone/);
    for (const one of [page, pageOf('2026-08-03', '2026-08-03')])
      assert.match(one, /Findings about health are never shown or counted on this page\./);
  });

  it('tells differences of shares in points', () => {
    assert.match(pageOf('2026-08-03', '2026-08-24'), /points more ±\s\d+(\.\d)?\spoints/);
  });
});
