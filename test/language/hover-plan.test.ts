// What the hover on a plan, a planned change and a goal says they lead to, and how each number is labelled.
import assert from 'node:assert/strict';
import { findHover } from '../../src/language/index.ts';
import { forecastOf } from '../../src/analysis/plan.ts';
import { marked } from '../marked.ts';
import { analysed } from './analysed.ts';
import { planFiles as files, planRecord, twoChanges } from './plan-record.ts';

function hoverAt(source: string): string {
  const { text, position } = marked(source);
  return findHover(analysed(text, { files }), position)?.contents.value ?? '';
}

function rowsOf(hover: string): string[][] {
  return hover
    .split('\n')
    .filter((line) => line.startsWith('| '))
    .slice(2)
    .map((line) =>
      line
        .replaceAll('\\', '')
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
}

const plan = planRecord(twoChanges);

describe('the hover on a plan', () => {
  it('says of a change what it leads to, now and then, with the interval and by model', () => {
    const hover = hoverAt(plan.replace('to: 1 deg down', 'to: 1 d$0eg down'));
    assert.match(hover, /Planned: 1\\\.0 deg down ± 0\\\.8 deg, in this record 3\\\.0 deg down ± 0\\\.5 deg/);
    const rows = rowsOf(hover);
    const [lowPoint] = rows;
    assert.equal(lowPoint![0], 'low point');
    // −R sin(attack)/sin i with R = 1.6 m, i = 58 deg: 9.87 cm at 3 deg down, 3.29 cm at 1 deg down; other entries pull a little.
    const [now, then] = lowPoint!.slice(1, 3).map((cell) => /^([\d.]+) cm ahead$/.exec(cell)?.[1]);
    assert.ok(Math.abs(Number(now) - 9.87) < 0.06, hover);
    assert.ok(Math.abs(Number(then) - 3.29) < 0.15, hover);
    assert.match(lowPoint![3]!, /^\d.* cm behind\.\.\d.* cm ahead$/);
    assert.ok(rows.length >= 3 && rows.every((cells) => cells[4] === 'by model'), hover);
  });

  it('labels what only a belief reaches as such', () => {
    const hover = hoverAt(plan.replace('change: checkpoints', 'change: check$0points'));
    const rows = rowsOf(hover);
    assert.equal(rows[0]![0], 'low point');
    assert.ok(rows.length > 0 && rows.every((cells) => cells[4] === 'by belief'), hover);
  });

  it('says of the key what all changes lead to together, and what becomes of the chances of the goals', () => {
    const hover = hoverAt(plan.replace('plan:', 'pl$0an:'));
    assert.match(hover, /^\*\*The plan\*\*, its 2 changes together, leads to:/);
    const { subject, account } = analysed(plan, { files });
    const chance = (value: number | undefined): string => `${Math.round(100 * value!)} %`;
    for (const { now, then } of forecastOf(subject, account)!.goals)
      assert.ok(
        hover.includes(`${now.wanted.key} ${chance(now.chance)} → ${chance(then.chance)}`),
        `${now.wanted.key} in ${hover}`,
      );
  });

  it('has at most twelve lines', () => {
    for (const place of ['pl$0an:', 'plan:\n  - { change: delivery.at$0tack']) {
      const hover = hoverAt(plan.replace(place.replace('$0', ''), place));
      const lines = hover.split('\n').filter((line) => line.trim() !== '');
      assert.ok(lines.length > 4 && lines.length <= 12, hover);
    }
  });

  it('says so where nobody knows what a change leads to', () => {
    const flare = 'plan: [{ change: checkpoints.address.stance_width, to: 50 c$0m }]\n';
    const hover = hoverAt(planRecord(flare));
    assert.match(hover, /Planned: 50/);
    assert.match(hover, /Neither the model nor a belief of the fault book knows what it leads to\./);
    assert.equal(rowsOf(hover).length, 0);
  });

  it('says what a target is where no number stands', () => {
    assert.match(hoverAt('swing: 1\nplan: [{ change: delivery.atta$0ck, to: ? }]\n'), /\*\*Attack angle\*\*/);
  });
});

describe('the hover on a goal', () => {
  it('says how it stands now and after the plan', () => {
    assert.match(
      hoverAt(plan.replace('curve: 4 m left', 'curve: 4 m l$0eft')).replaceAll('\\', ''),
      /Curve 4 m left\.\.4 m right: now \d.* m right ± .* m \(\d+ %\), then .* \(\d+ %\)\./,
    );
  });

  it('says what is taken for a single number, and by whose word', () => {
    const written = hoverAt(planRecord('', 'goals: [{ carry: 17$08 m ± 2 m }]'));
    assert.match(written, /\\\(178 m ± 2\\\.0 m, as written\\\)/);
    const read = hoverAt(planRecord('', 'goals: [{ carry: 17$08 m }]'));
    assert.match(
      read,
      /172\\\.\\\.184 m \\\(178 m ± 6 m, as exactly as it is read without an instrument\\\)/,
    );
  });

  it('says that nobody measured it, and that a shape waits for the hand', () => {
    const bare = planRecord('', 'goals: [{ contact: middle of the fa$0ce }]');
    assert.match(
      hoverAt(bare.replace(', arc: { radius: 1.6 m, inclination: 58 deg }', '')),
      /now not measured/,
    );
    const source = planRecord('', 'goals: [{ shape: dr$0aw }]');
    const { text, position } = marked(source);
    const handless = {
      ...files,
      'ansa.student.yaml': files['ansa.student.yaml'].replace('hand: right\n', ''),
    };
    const hover = findHover(analysed(text, { files: handless }), position)?.contents.value ?? '';
    assert.match(hover, /Shape draw: not held against the numbers, since nobody says which hand plays/);
  });

  it('says of the record alone how it stands where there is no plan', () => {
    const hover = hoverAt(planRecord('').replace('carry: 178 m', 'carry: 178$0 m'));
    assert.match(hover, /now \d.*%/);
    assert.doesNotMatch(hover, /then/);
  });

  it('says what a carry out of reach needs', () => {
    const hover = hoverAt(plan.replace('carry: 178 m', 'carry: 240$0 m')).replaceAll('\\', '');
    assert.match(
      hover,
      /Out of reach: carry 240 m needs [\d.]+ m\/s ± [\d.]+ m\/s of club speed; the fastest seen .* this plan gives 41\.0 m\/s/,
    );
  });

  it('speaks of the words for shape and contact too', () => {
    const words = planRecord(twoChanges, 'goals: [{ shape: draw, contact: ball before turf }]');
    assert.match(hoverAt(words.replace('draw', 'dr$0aw')), /[Ss]hape: (start direction|curve) .*now/);
    assert.match(hoverAt(words.replace('before', 'bef$0ore')), /Ball before turf \\\(low point\\\): now/);
  });

  it('says of a proof on which side it is met, before any later lesson', () => {
    const proved = (proof: string): string =>
      hoverAt(
        planRecord(`plan: [{ change: delivery.path, to: 1 deg left, because: start, proof: ${proof} }]\n`),
      );
    assert.match(proved('delivery.path > -2 d$0eg'), /^\*\*Proof\*\*: Club path under 2 deg left\\\.$/);
    assert.doesNotMatch(proved('flight.carry > 150$0 m'), /Proof/);
  });
});
