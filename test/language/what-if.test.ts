// What if: sliders within the windows of practice, and what follows from a change is what a plan of that change would be told.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import { forecastOf } from '../../src/analysis/plan.ts';
import { outlookWords } from '../../src/checks/forecast-words.ts';
import { whatIf, type Move, type WhatIfAnswer } from '../../src/language/what-if.ts';
import { standingNumber } from '../../src/judgement/standing-number.ts';
import type { Quantity } from '../../src/registry/quantity.ts';
import { practice, snapshotWith, yamlSamples } from '../samples.ts';
import { analysed } from './analysed.ts';
import { planFiles, planRecord } from './plan-record.ts';

const record = planRecord('');

function asked(text: string, moves: readonly Move[] = []): WhatIfAnswer {
  const answer = whatIf(analysed(text, { files: planFiles }), moves);
  assert.ok(answer);
  return answer;
}

function row({ rows }: WhatIfAnswer, title: string): WhatIfAnswer['rows'][number] {
  const found = rows.find((one) => one.title.startsWith(title));
  assert.ok(found, title);
  return found;
}

/** The number of a cell with its sign, and half of its last digit; where its spread ends in zeros, of the last digit before them. */
function shownIn(words: string, { directions }: Quantity): { value: number; half: number } | undefined {
  const [, number, decimals = '', rest] = /^(-?\d+(?:\.(\d+))?)(.*)$/.exec(words) ?? [];
  if (number === undefined) return undefined;
  const word = rest!.split(' ± ')[0]!.trim().split(' ').at(-1);
  const side = directions.find((one) => one.bearing === undefined && one.word === word)?.sign;
  const sign = side ?? (/ less\b/.test(words) ? -1 : 1);
  const zeros = / ± \d+?(0*)(?![\d.])/.exec(rest!)?.[1]?.length ?? 0;
  return { value: sign * Number(number), half: 0.5 * 10 ** (zeros - decimals.length) };
}

/** Every sample record that the model has something to go by of, with a few moves of it, each far. */
function* movedSamples(): Generator<{ path: string; analysis: Analysis; answer: WhatIfAnswer }> {
  for (const [path] of yamlSamples) {
    const analysis = analyse(practice + path, snapshotWith({}));
    const levers = whatIf(analysis, [])?.levers ?? [];
    const ends = [levers[0], ...levers.filter(({ id }) => /delivery\.(path|face|attack)$/.test(id))];
    const moves = ends.flatMap((lever): Move[] => (lever ? [{ id: lever.id, value: lever.max }] : []));
    for (const some of [...moves.map((move) => [move]), moves.slice(1)]) {
      const answer = whatIf(analysis, some);
      if (answer) yield { path: `${path} ${some.map(({ id }) => id).join(', ')}`, analysis, answer };
    }
  }
}

describe('what if', () => {
  it('moves each number of the samples from now to then, to the digits shown', () => {
    let count = 0;
    for (const { path, analysis, answer } of movedSamples())
      for (const { group, title, now, then, moved } of answer.rows) {
        if (group !== 'Swing and flight' || moved === '') continue;
        const quantity = analysis.subject.registry.quantities.find((one) => one.title === title)!;
        const [a, b, c] = [now, then, moved].map((words) => shownIn(words, quantity));
        if (!a || !b || !c) continue;
        count += 1;
        const off = Math.abs(b.value - a.value - c.value);
        assert.ok(off <= a.half + b.half + c.half + 1e-9, `${path}: ${title} ${now} → ${then}, ${moved}`);
      }
    assert.ok(count > 100, `${count}`);
  });

  it('says of now what the goals are held against, and of the entry what it says where that is another number', () => {
    let entries = 0;
    for (const { path, analysis, answer } of movedSamples()) {
      for (const { now } of forecastOf(analysis.subject, analysis.account)!.goals) {
        if (now.value === undefined) continue;
        const { id } = now.wanted.quantity;
        const standing = standingNumber(id, analysis.account!)!;
        assert.ok(Math.abs(standing.value - now.value) < 1e-9, `${path} ${id}`);
        assert.ok(Math.abs(standing.u! - now.u!) < 1e-9, `${path} ${id}`);
      }
      entries += answer.rows.filter(({ entered }) => entered !== '').length;
    }
    assert.ok(entries > 10);
    const path = 'tove/2026-04-18-seven-iron.swing.yaml';
    const rows = whatIf(analyse(practice + path, snapshotWith({})), [])!.rows;
    const curve = rows.find(({ title }) => title === 'Curve')!;
    assert.match(curve.entered, /^1 m left/);
    const goal = rows.find(({ group, title }) => group === 'Goals' && title.startsWith('Curve'))!;
    assert.ok(goal.now.startsWith(curve.now), `${goal.now} against ${curve.now}`);
  });

  it('draws now and then by the very numbers of the table, and none that was entered where that says another', () => {
    let count = 0;
    for (const { path, answer } of movedSamples()) {
      const above = answer.pictures.find(({ name }) => name === 'strike-from-above')!;
      for (const title of ['Club path', 'Face direction', 'Face to path', 'Start direction']) {
        const found = answer.rows.find((one) => one.group === 'Swing and flight' && one.title === title);
        for (const when of ['now', 'then'] as const) {
          const drawn = new RegExp(`>[^<]*\\b${title}: (\\d[^<]*?)\\. `).exec(above[when])?.[1];
          if (found === undefined || drawn === undefined) continue;
          count += found.entered === '' ? 0 : 1;
          assert.equal(drawn, found[when], `${path} ${title} ${when}`);
        }
      }
    }
    assert.ok(count > 10, `${count}`);
  });

  it('offers what a player can change and has a number, what a fault asks to change first', () => {
    const { levers, suggested } = asked(record);
    assert.equal(suggested[0], 'checkpoints.address.stance_width');
    assert.deepEqual(suggested.toSorted(), levers.map(({ id }) => id).toSorted());
    assert.ok(levers.some(({ id }) => id === 'delivery.path'));
    assert.ok(levers.every(({ id }) => !id.startsWith('flight.')));
    assert.equal(new Set(levers.map(({ id }) => id)).size, levers.length);
  });

  it('lists them in the order of the registry, with the checkpoint of each', () => {
    for (const { analysis, answer } of movedSamples()) {
      const order = analysis.subject.registry.quantities.map(({ id }) => id);
      const places = answer.levers.map(({ id }) => order.indexOf(id));
      assert.deepEqual(
        places,
        places.toSorted((a, b) => a - b),
      );
    }
    const lean = asked(record).levers.find(({ id }) => id === 'checkpoints.impact.shaft_lean')!;
    assert.deepEqual([lean.title, lean.group], ['Shaft lean at impact', 'Impact']);
  });

  it('gives each a window with the present in it, and steps that keys can go', () => {
    for (const { id, min, max, step, now } of asked(record).levers) {
      assert.ok(min <= now && now <= max, id);
      assert.ok(step > 0 && (max - min) / step <= 122 && (max - min) / step >= 10, `${id} ${step}`);
    }
  });

  it('says that nothing moves while nothing is moved', () => {
    const answer = asked(record);
    for (const { title, now, then, moved } of answer.rows) {
      assert.equal(then, now, title);
      assert.equal(moved, '', title);
    }
    assert.ok(answer.pictures.length > 0 && answer.pictures.every(({ then }) => then === ''));
  });

  it('foretells what a plan of the same changes is told, interval and all', () => {
    const plan = `plan:
  - { change: delivery.attack, to: 1 deg down }
  - { change: checkpoints.address.stance_width, to: 41 cm }
`;
    const planned = analysed(planRecord(plan), { files: planFiles });
    const answer = asked(record, [
      { id: 'delivery.attack', value: -1 },
      { id: 'checkpoints.address.stance_width', value: 41 },
    ]);
    const { whole, goals } = forecastOf(planned.subject, planned.account)!;
    for (const [id, title] of [
      ['flight.carry', 'Carry'],
      ['flight.start', 'Start direction'],
      ['delivery.low_point.ahead', 'Low point'],
    ] as const) {
      const { then, spread } = row(answer, title);
      const words = outlookWords(whole.outlooks.get(id)!);
      assert.ok(words.includes(`${then} (95 %: ${spread})`), `${words} against ${then} ${spread}`);
    }
    const start = answer.rows.find(({ group, title }) => group === 'Goals' && title.startsWith('Start'))!;
    assert.match(start.then, new RegExp(`\\(${Math.round(100 * goals[0]!.then.chance!)} %\\)$`));
  });

  it('judges stated faults anew', () => {
    const { now, then } = row(
      asked(record, [{ id: 'checkpoints.impact.lead_pressure', value: 85 }]),
      'trail-side',
    );
    assert.match(now, /^supported/);
    assert.match(then, /^contradicted/);
  });

  it('turns the windows of the goal with loft and speed, and draws then beside now', () => {
    const flown = `${record}flight: { start: 1 deg left ± 0.5 deg, curve: 9 m right ± 2 m, carry: 165 m ± 3 m }\n`;
    const answer = asked(flown, [{ id: 'delivery.club_speed', value: 30 }]);
    const { now, then } = answer.rows.find(({ group }) => group === 'Windows for the goal')!;
    assert.notEqual(then, now);
    const strike = answer.pictures.find(({ name }) => name === 'strike-from-above')!;
    assert.match(strike.then, /^<svg/);
    const ids = (svg: string): readonly string[] => [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id!);
    assert.ok(ids(strike.now).length > 0);
    assert.ok(ids(strike.then).every((id) => !ids(strike.now).includes(id)));
  });

  it('turns them alike where nothing of the flight was entered, as those of a record with that speed stand', () => {
    const windows = (text: string, moves: readonly Move[] = []): WhatIfAnswer['rows'] =>
      asked(text, moves).rows.filter(({ group }) => group === 'Windows for the goal');
    const slower = windows(record, [{ id: 'delivery.club_speed', value: 30 }]);
    const entered = windows(record.replace('club_speed: 41 m/s', 'club_speed: 30 m/s'));
    assert.equal(slower.length, 4);
    assert.match(slower[3]!.title, /^Each holds for some values of the others, not for all of them/);
    for (const words of [slower[3]!.now, slower[3]!.then])
      assert.match(words, /^face to path .*, club path .*, face dir/);
    for (const [i, { now, then }] of slower.entries()) {
      // Of a goal to both sides alike the middle is straight at any speed.
      if (i < 3) assert.notEqual(then, now);
      assert.equal(then, entered[i]!.now);
    }
  });

  it('says what a change loads that the student’s file notes as injured, and what changes for a reason do', () => {
    const files = {
      ...planFiles,
      'ansa.student.yaml': `${planFiles['ansa.student.yaml']}injuries: [{ part: lead knee }]\n`,
      'house.faults.yaml': `${planFiles['house.faults.yaml']}    cautions: [lead knee]\n`,
    };
    const stance = { id: 'checkpoints.address.stance_width', value: 41 };
    const careful = whatIf(analysed(record, { files }), [stance])!;
    assert.match(careful.cautions[0]!, /lead knee.*stop if it hurts.*physician or physiotherapist/);
    assert.match(careful.cautions[0]!, /^The change of stance width at address loads the lead knee/);
    const [helps] = careful.reasons.find(({ name }) => name === 'trail-side')!.cautions;
    assert.match(helps!, /^What helps against "trail-side" loads the lead knee/);
    assert.deepEqual(whatIf(analysed(record, { files }), [])!.cautions, []);
    assert.deepEqual(asked(record, [stance]).cautions, []);
  });

  it('takes no more changes than a plan may have, and none of what is not known', () => {
    const many = ['delivery.path', 'delivery.face', 'delivery.attack', 'delivery.club_speed'];
    const answer = asked(
      record,
      many.map((id) => ({ id, value: 20 })),
    );
    assert.equal(answer.mostMoves, 3);
    assert.match(row(answer, 'Club path').then, /^20 deg right/);
    for (const id of ['nonsense', 'delivery.nonsense', 'checkpoints.top.head'])
      assert.equal(row(asked(record, [{ id, value: 1 }]), 'Carry').moved, '');
    const absurd = asked(record, [{ id: 'delivery.club_speed', value: 1e300 }]);
    assert.doesNotMatch(JSON.stringify(absurd), /NaN|Infinity|null,/);
  });

  it('says of a goal that what is moved leads away from it, with numbers, where the finding about a plan of it would', () => {
    const goals = 'goals: [{ start: 1 deg left..1 deg right, carry: 100..250 m }]';
    const awayWith = (value: number): readonly (readonly string[])[] =>
      asked(planRecord('', goals), [{ id: 'delivery.face', value }]).reasons.map(({ away }) => away);
    const isFound = (value: number): boolean => {
      const plan = `plan: [{ change: delivery.face, to: ${value} deg right, because: start }]\n`;
      return analysed(planRecord(plan, goals), { files: planFiles }).findings.some(
        ({ code }) => code === 'plan-leads-away',
      );
    };
    const [fault, start, carry] = awayWith(9);
    assert.deepEqual([fault, carry], [[], []]);
    assert.equal(start!.length, 1);
    assert.match(
      start![0]!,
      /^Start direction 1 deg left\.\.1 deg right: now .* deg (left|right) ± .* then .* deg right ± .* \(under 1 %\)\.$/,
    );
    for (const value of [0.5, 2, 4, 6, 9])
      assert.equal(awayWith(value)[1]!.length > 0, isFound(value), `${value}`);
    assert.ok(!isFound(0.5) && isFound(9));
    assert.deepEqual(
      asked(planRecord('', goals)).reasons.map(({ away }) => away),
      [[], [], []],
    );
  });

  it('names the contact that a goal asks for, whichever it is', () => {
    const titles = (contact: string): readonly string[] =>
      asked(planRecord('', `goals: [{ contact: ${contact} }]`))
        .rows.filter(({ group }) => group === 'Goals')
        .map(({ title }) => title);
    assert.deepEqual(titles('on the rise'), ['On the rise (attack angle)', 'On the rise (low point)']);
    assert.deepEqual(titles('ball before turf'), ['Ball before turf (low point)']);
  });

  it('offers nothing that the workspace computes from others, which nobody can set', () => {
    const files = {
      ...planFiles,
      'swingwright.yaml': `swingwright: 1
derived: { delivery.half_path: { is: delivery.path / 2, title: Half of the path, like: delivery.path } }
`,
    };
    const ids = whatIf(analysed(record, { files }), [])!.levers.map(({ id }) => id);
    assert.ok(ids.includes('delivery.path') && !ids.includes('delivery.half_path'));
  });

  it('has no answer where the record says nothing that the model could go by', () => {
    assert.equal(whatIf(analysed('swing: 1\n'), []), null);
    assert.equal(whatIf(analysed('student: 1\n', { name: 'a.student.yaml' }), []), null);
  });
});
