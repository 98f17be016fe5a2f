// One student over time: what was measured with which interval, goals and plans lesson by lesson, and what is missing is said.
import assert from 'node:assert/strict';
import { forecastOf } from '../../src/analysis/plan.ts';
import { progressOf } from '../../src/analysis/progress.ts';
import { gapsOf, goalPointWords, movedWords, spanWords } from '../../src/analysis/progress-words.ts';
import { progressPage } from '../../src/draw/progress.tsx';
import { ProofRows } from '../../src/draw/proof-rows.tsx';
import { SmallMultiples } from '../../src/draw/small-multiples.tsx';
import { svgOf } from '../../src/draw/picture.tsx';
import { themes } from '../../src/draw/theme.ts';
import { Timeline } from '../../src/draw/timeline.tsx';
import { numberAt, part } from '../draw/drawn.ts';
import { lessonsOf, recordOf } from './practice.ts';

const everything = { club: undefined, quantities: [] };
const only = (...quantities: readonly string[]) => ({ club: undefined, quantities });
const at = (path: number, carry: number): string =>
  `delivery: { path: ${path} deg right ± 1 deg }\nflight: { carry: ${carry} m ± 2 m, finish: ${path} m right ± 1 m }\ngoals: [{ finish: 2 m left..2 m right }]\n`;
const three = {
  'a.swing.yaml': recordOf(
    '2026-05-01',
    `${at(6, 150)}plan: [{ change: delivery.path, to: 1 deg right ± 0.5 deg, proof: delivery.path < 3 deg }]\n`,
  ),
  'b.swing.yaml': recordOf('2026-05-15', at(4, 155)),
  'c.swing.yaml': recordOf('2026-06-12', at(1, 160)),
};

describe('the progress of a student', () => {
  it('gives each measured value with 1.96 standard uncertainties to each side, the oldest first', async () => {
    const [club, ...others] = progressOf(await lessonsOf(three), only('delivery.path'));
    assert.deepEqual(others, []);
    assert.equal(spanWords(club!), '3 lessons from 2026-05-01 to 2026-06-12');
    const { points, change } = club!.series[0]!;
    const degrees = (angle: number): number => Math.round((angle * 180e4) / Math.PI) / 1e4;
    assert.deepEqual(
      points.map(({ lesson, value, low, high }) => [
        lesson.date,
        degrees(value.value),
        degrees(low),
        degrees(high),
      ]),
      [
        ['2026-05-01', 6, 4.04, 7.96],
        ['2026-05-15', 4, 2.04, 5.96],
        ['2026-06-12', 1, -0.96, 2.96],
      ],
    );
    // 5 of √2 standard uncertainties: 3.5.
    assert.equal(change?.size, 'larger');
    assert.equal(
      movedWords(club!.series[0]!),
      '5.0 deg further left ± 1.4 deg from the first to the last, larger than measuring it twice explains',
    );
  });

  it('shows what goals and plans are about where nothing is asked for, and how they stood', async () => {
    const [club] = progressOf(await lessonsOf(three), everything);
    assert.deepEqual(
      club!.series.map(({ quantity }) => quantity.id),
      ['delivery.path', 'flight.finish', 'flight.carry'],
    );
    assert.deepEqual(
      club!.goals[0]!.points.map(({ standing }) => standing.chance! > 0.5),
      [false, false, true],
    );
    assert.match(
      goalPointWords(club!.goals[0]!, club!.goals[0]!.points[2]!),
      /^1\.0 m right ± 1\.0 m; inside 2 m left\.\.2 m right with 84 %$/,
    );
    assert.deepEqual(
      club!.held.map(({ lesson, plan, outcome }) => [lesson.date, plan.date, outcome.proofs[0]?.state]),
      [
        ['2026-05-15', '2026-05-01', 'cannot tell'],
        ['2026-06-12', '2026-05-01', 'met'],
      ],
    );
    assert.deepEqual(
      club!.held.map(({ decided }) => decided?.next.date),
      [undefined, '2026-05-15'],
    );
    assert.deepEqual(
      club!.conflicts.map(({ count }) => count),
      [0, 0, 0],
    );
  });

  it('says what is missing: dates, order, a second lesson, a measurement', async () => {
    const lessons = await lessonsOf({
      'a.swing.yaml': recordOf('2026-05-01', at(6, 150)),
      'b.swing.yaml': recordOf('2026-05-01', at(5, 150)),
      'c.swing.yaml': recordOf(undefined, at(4, 150)),
      'd.swing.yaml': recordOf('2026-05-02', 'delivery: { path: 1 deg right }\n', { club: 'driver' }),
    });
    const clubs = progressOf(lessons, only('delivery.path', 'strike.height'));
    assert.deepEqual(
      clubs.map(({ club }) => club),
      ['hybrid', 'driver'],
    );
    assert.deepEqual(clubs.map(gapsOf), [
      [
        'Left out, since it has no date: c.swing.yaml.',
        'More than one lesson on 2026-05-01: their order is not known.',
        'Not measured in any of them: strike height on the face.',
      ],
      [
        'With one lesson there is nothing to hold it against yet.',
        'Not measured in any of them: strike height on the face.',
      ],
    ]);
    assert.deepEqual(
      progressOf(lessons, { club: 'Driver', quantities: [] }).map(({ club }) => club),
      ['driver'],
    );
    assert.deepEqual(progressOf([], everything), []);
    for (const page of [progressPage('Ines', clubs), progressPage('<b>', [])])
      assert.doesNotMatch(page, /NaN|Infinity|undefined|<script|<b>/);
    assert.match(progressPage('Ines', []), /There are no lessons to show/);
  });

  it('draws days and intervals to scale', async () => {
    const [club] = progressOf(await lessonsOf(three), only('delivery.path'));
    const svg = svgOf(
      Timeline({
        series: club!.series[0]!,
        goal: undefined,
        span: ['2026-05-01', '2026-06-12'],
        name: 'path',
        theme: themes.light,
      }),
    );
    const point = (day: string): { x: number; y: number; low: number; high: number } => {
      const group = part(svg, `data-day="${day}"`);
      const [, x, low, high] = /M ([\d.]+) ([\d.]+) V ([\d.]+)/.exec(group)!.map(Number);
      return { x: x!, y: numberAt(group, 'cy'), low: low!, high: high! };
    };
    const [a, b, c] = Object.values(three).map((_, i) =>
      point(['2026-05-01', '2026-05-15', '2026-06-12'][i]!),
    );
    // 14 days and 42.
    assert.ok(Math.abs((b!.x - a!.x) / (c!.x - a!.x) - 14 / 42) < 0.001);
    // 2 of 5 degrees; a bar is as long as 3.92 of them.
    assert.ok(Math.abs((b!.y - a!.y) / (c!.y - a!.y) - 2 / 5) < 0.01);
    assert.ok(Math.abs((a!.low - a!.high) / (c!.y - a!.y) - 3.92 / 5) < 0.01);
    assert.match(svg, /2026-05-15: 4\.0 deg right ± 1\.0 deg\./);
  });

  it('shows what a plan asked for from its day on until the next lesson', async () => {
    const [club] = progressOf(await lessonsOf(three), only('delivery.path'));
    const [target, ...others] = club!.series[0]!.targets;
    assert.deepEqual(others, []);
    assert.deepEqual([target!.lesson.date, target!.next?.date], ['2026-05-01', '2026-05-15']);
    const span = ['2026-05-01', '2026-06-12'] as const;
    const svg = svgOf(
      Timeline({ series: club!.series[0]!, goal: undefined, span, name: 'path', theme: themes.light }),
    );
    const bar = part(svg, 'data-part="planned"');
    const at = (day: string): readonly number[] =>
      /M ([\d.]+) ([\d.]+) V ([\d.]+)/
        .exec(part(svg, `data-day="${day}"`))!
        .slice(1)
        .map(Number);
    const [first, second] = ['2026-05-01', '2026-05-15'].map(at);
    assert.ok(Math.abs(numberAt(bar, 'x') - first![0]!) < 0.1);
    assert.ok(Math.abs(numberAt(bar, 'x') + numberAt(bar, 'width') - second![0]!) < 0.1);
    // 1 degree lies 5 degrees below the 6 of the first lesson, whose interval of 3.92 degrees gives the scale.
    const degree = (first![1]! - first![2]!) / 3.92;
    const middle = (first![1]! + first![2]!) / 2;
    const height = numberAt(bar, 'y') + numberAt(bar, 'height') / 2;
    assert.ok(Math.abs(height - (middle + 5 * degree)) < 0.3, `${height} ${middle + 5 * degree}`);
    assert.match(svg, /planned on 2026-05-01: 1\.0 deg right, until 2026-05-15\./);
  });

  it('shows proofs and conflicts on the days of the lessons that decide them', async () => {
    const lessons = await lessonsOf({
      ...three,
      'b.swing.yaml': recordOf('2026-05-15', at(4, 155).replace('finish: 4 m right', 'finish: 90 m right')),
    });
    const [club] = progressOf(lessons, everything);
    const svg = svgOf(
      ProofRows({ club: club!, span: ['2026-05-01', '2026-06-12'], name: 'proofs', theme: themes.light }),
    );
    assert.equal([...svg.matchAll(/data-part="proofs"/g)].length, 1);
    assert.match(
      part(svg, 'data-part="proofs"'),
      /data-day="2026-05-15".*data-state="(not met|cannot tell)"/,
    );
    assert.match(svg, /2026-05-15: proofs of the plan of 2026-05-01 1 (not met|cannot tell), /);
    const counts = [...svg.matchAll(/data-day="([\d-]+)" data-part="conflicts"[^>]*>(\d+)</g)];
    assert.deepEqual(
      counts.map(([, day, count]) => [day, Number(count)]),
      club!.conflicts.map(({ lesson, count }) => [lesson.date, count]),
    );
    assert.equal(counts.length, 3);
  });

  it('has one place for all lessons of a day', async () => {
    const { 'a.swing.yaml': a, 'b.swing.yaml': b } = three;
    const off = b.replace('path: 4', 'face: 4 deg right, face_to_path: 20 deg left, path: 4');
    const lessons = await lessonsOf({ 'a.swing.yaml': a, 'b1.swing.yaml': b, 'b2.swing.yaml': off });
    const [club] = progressOf(lessons, everything);
    const svg = svgOf(
      ProofRows({ club: club!, span: ['2026-05-01', '2026-05-15'], name: 'proofs', theme: themes.light }),
    );
    const counts = [...svg.matchAll(/data-day="([\d-]+)" data-part="conflicts"[^>]*>([^<]+)</g)];
    const said = counts.map(([, day, count]) => `${day}: ${count}`).join('; ');
    assert.match(said, /^2026-05-01: 0; 2026-05-15: 0, [1-9]$/);
    assert.equal([...svg.matchAll(/data-part="proofs"/g)].length, 1);
  });

  it('has goals stand by what all entries say, as a plan does, and says so', async () => {
    const lessons = await lessonsOf(three);
    const [club] = progressOf(lessons, everything);
    const { subject, account } = lessons[0]!.analysis;
    const forecast = forecastOf(subject, account)!;
    assert.equal(club!.goals[0]!.points[0]!.standing.value, forecast.goals[0]!.now.value);
    assert.match(progressPage('Ines', [club!]), /Goals go by what all entries of a record together say/);
  });

  it('draws all lessons to one scale, and says which of them does not tell', async () => {
    const lessons = await lessonsOf({
      ...three,
      'd.swing.yaml': recordOf('2026-07-01', 'delivery: { path: 1 deg right }\n'),
    });
    const svg = svgOf(SmallMultiples({ lessons, goals: [], name: 'landings', theme: themes.light }));
    const place = (day: string): number =>
      numberAt(part(part(svg, `data-day="${day}"`), 'data-part="shot"'), 'cy');
    const [first, second, third] = ['2026-05-01', '2026-05-15', '2026-06-12'].map(place);
    const ahead = (carry: number, right: number): number => Math.sqrt(carry ** 2 - right ** 2);
    const metres = [ahead(150, 6), ahead(155, 4), ahead(160, 1)] as const;
    assert.ok(
      Math.abs((first! - second!) / (first! - third!) - (metres[1] - metres[0]) / (metres[2] - metres[0])) <
        0.005,
    );
    assert.match(svg, /2026-07-01: not known\./);
    assert.match(svg, /data-part="side">\d+ m right</);
    assert.doesNotMatch(svg, /NaN|Infinity|undefined/);
  });

  it('draws where goals want the ball in carry and to the side, and a carry whose side nobody knows', async () => {
    const lessons = await lessonsOf({
      'a.swing.yaml': recordOf(
        '2026-05-01',
        'flight: { carry: 120 m by radar, finish: 4 m right by radar }\ngoals: [{ carry: 110..118 m, finish: 2 m left..8 m right }]\n',
      ),
      'b.swing.yaml': recordOf('2026-06-01', 'flight: { carry: 130 m by radar }\n'),
    });
    const [club] = progressOf(lessons, everything);
    const svg = svgOf(SmallMultiples({ lessons, goals: club!.goals, name: 'landings', theme: themes.light }));
    const [first, second] = ['2026-05-01', '2026-06-01'].map((day) => part(svg, `data-day="${day}"`));
    const goal = part(first!, 'data-part="goal"');
    const shot = part(first!, 'data-part="shot"');
    // To one scale both ways: the ball is 2 m beyond the far edge and 6 m right of the left one.
    const ahead = Math.sqrt(120 ** 2 - 4 ** 2);
    const unit = (numberAt(shot, 'cx') - numberAt(goal, 'x')) / 6;
    assert.ok(Math.abs((numberAt(goal, 'y') - numberAt(shot, 'cy')) / unit - (ahead - 118)) < 0.05);
    assert.match(second!, /data-part="carry"/);
    assert.match(second!, /side not known/);
    assert.match(svg, /2026-06-01: 130 m, to which side is not known\./);
  });

  it('leaves out where the balls came down where nothing tells', async () => {
    const lessons = await lessonsOf({
      'a.swing.yaml': recordOf('2026-05-01', 'delivery: { path: 1 deg right }\n'),
    });
    assert.doesNotMatch(progressPage('Ines', progressOf(lessons, everything)), /Where the balls came down/);
    assert.match(
      progressPage('Ines', progressOf(await lessonsOf(three), everything)),
      /Where the balls came down/,
    );
  });

  it('writes days beside one another only where they have room', async () => {
    const days = ['2025-01-10', '2026-01-12', '2026-01-20', '2026-02-01', '2026-02-03'];
    const lessons = await lessonsOf(
      Object.fromEntries(
        days.map((day) => [`${day}.swing.yaml`, recordOf(day, 'delivery: { path: 1 deg right }\n')]),
      ),
    );
    const [club] = progressOf(lessons, { club: undefined, quantities: ['delivery.path'] });
    const page = progressPage('Ines', [club!]);
    const words = [...page.matchAll(/<text x="([\d.]+)"[^>]*data-part="day">([^<]+)</g)].map(
      ([, x, day]) => ({
        x: Number(x),
        half: day!.length * 3,
      }),
    );
    const timeline = words.slice(
      0,
      words.findIndex(({ x }, i) => i > 0 && x < words[i - 1]!.x),
    );
    assert.ok(timeline.length >= 2);
    for (const [i, { x, half }] of timeline.entries())
      if (i > 0) assert.ok(x - half > timeline[i - 1]!.x + timeline[i - 1]!.half, JSON.stringify(timeline));
  });
});
