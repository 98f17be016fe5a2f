// The flight on a handout: what a goal leaves open has no edge there, and no line from a place to its words crosses another.
import assert from 'node:assert/strict';
import { contentOf } from '../../../src/draw/handout/content.tsx';
import { heightsOf } from '../../../src/draw/handout/leaders.tsx';
import { svgOf } from '../../../src/draw/picture.tsx';
import { themes } from '../../../src/draw/theme.ts';
import { handoutFrom, handoutOfFiles, sampleRecords } from '../../analysis/handouts.ts';
import type { Handout } from '../../../src/analysis/handout.ts';
import { part, places, type Point } from '../drawn.ts';

function flightOf(handout: Handout): string | undefined {
  const { flight } = contentOf(handout, 'student');
  return flight && svgOf(flight(themes.light));
}

function withGoal(goal: string): string {
  const flight = 'flight: { start: 1 deg right, curve: 6 m right, carry: 150 m }';
  return flightOf(handoutOfFiles(`swing: 1\n${flight}\ngoals: [${goal}]\n`))!;
}

describe('the flight on a handout', () => {
  it('frames a goal that says how far and to which side', () => {
    const zone = part(withGoal('{ finish: 5 m left..5 m right, carry: 150..160 m }'), 'data-part="goal"');
    assert.match(zone, /^<rect /);
    assert.match(zone, /stroke="#/);
  });

  it('fades out where a goal says nothing of carry, or of the side', () => {
    for (const [goal, open] of [
      ['{ finish: 5 m left..5 m right }', 'carry'],
      ['{ carry: 150..160 m }', 'finish'],
    ] as const) {
      const zone = part(withGoal(goal), 'data-part="goal"');
      assert.ok(zone.includes(`data-open="${open}"`));
      const strengths = [...zone.matchAll(/opacity="([\d.]+)"/g)].map(([, one]) => Number(one));
      assert.ok(Math.min(...strengths) < 0.1 && Math.max(...strengths) === 1, goal);
      // No edge runs across the open ends: every line goes along the flight, or every one across it.
      const edges = [...zone.matchAll(/<path d="([^"]+)"/g)].map(([whole]) => places(whole));
      assert.ok(edges.length > 0);
      for (const [from, to] of edges)
        assert.ok(open === 'carry' ? from!.x === to!.x : from!.y === to!.y, goal);
    }
  });

  it('draws no place that the carry of one goal and the finish of another make', () => {
    const svg = withGoal('{ carry: 150..160 m }, { finish: 5 m left..5 m right }');
    assert.ok(part(svg, 'data-part="goal"').includes('data-open="finish"'));
    assert.match(svg, />150 to 160 m</);
    assert.doesNotMatch(svg, />5 m left to 5 m right</);
  });

  it('leads from each place to its words without a crossing, in every sample', () => {
    let seen = 0;
    for (const [path, analysis] of sampleRecords) {
      const svg = flightOf(handoutFrom(analysis));
      if (svg === undefined) continue;
      const lines = [...svg.matchAll(/<path [^>]*data-part="leader"[^>]*>/g)].map(([one]) => lineOf(one));
      seen += lines.length;
      for (const [i, one] of lines.entries())
        for (const other of lines.slice(i + 1)) assert.ok(!cross(one, other), path);
    }
    assert.ok(seen > 5);
  });

  it('finds an order without a crossing where that of the heights has one', () => {
    // The left mark is a little lower than the right one, so its line would run through that of the right one.
    const marks = [
      { x: 40, y: 52 },
      { x: 100, y: 50 },
      { x: 96, y: 54 },
    ];
    const heights = heightsOf(marks, { x: 206, width: 146, between: [46, 290] });
    const lines = marks.map(({ x, y }, i): Line => [
      { x: x + 7, y },
      { x: 201, y: heights[i]! },
    ]);
    for (const [i, one] of lines.entries())
      for (const other of lines.slice(i + 1)) assert.ok(!cross(one, other));
    const sorted = heights.toSorted((a, b) => a - b);
    assert.ok(sorted[1]! - sorted[0]! >= 46 && sorted[2]! - sorted[1]! >= 46);
  });
});

function lineOf(path: string): Line {
  const [from, to] = places(path);
  return [from!, to!];
}

type Line = readonly [Point, Point];

function cross([a, b]: Line, [c, d]: Line): boolean {
  const side = (p: Point, q: Point, r: Point): number =>
    Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}
