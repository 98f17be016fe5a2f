// A plan is held against what was measured: changes, proofs and predictions, where the truth of generated lessons is known.
import assert from 'node:assert/strict';
import { analysed } from '../language/analysed.ts';
import { measuredOf } from '../../src/judgement/measured.ts';
import { judgeOutcome, saysAnything, type Outcome } from '../../src/judgement/outcome.ts';
import { builtIn } from '../../src/registry/registry.ts';

const students = {
  'left.student.yaml': 'student: 1\nhand: left\nbag: { hybrid: { kind: hybrid } }\n',
  'right.student.yaml': 'student: 1\nhand: right\nbag: { hybrid: { kind: hybrid } }\n',
};

function analysisOf(rest: string, hand: 'left' | 'right' = 'right') {
  const analysis = analysed(
    `swing: 1\nstudent: ${hand}.student.yaml\ndate: 2026-05-14\nclub: hybrid\n${rest}`,
    {
      files: students,
    },
  );
  assert.equal(analysis.document.kind, 'swing');
  const record = analysis.document as typeof analysis.document & { kind: 'swing' };
  return { record, measured: measuredOf(analysis.account!, analysis.subject.shots?.summary) };
}

function outcomeOf(
  plan: string,
  next: string,
  { hand = 'right', coverage = 1 }: { hand?: 'left' | 'right'; coverage?: number } = {},
): Outcome {
  const { record, measured } = analysisOf(plan, hand);
  return judgeOutcome(
    { plan: record.plan, predicted: record.predicted, measured, coverage, registry: builtIn },
    analysisOf(next, hand).measured,
  );
}

describe('changes', () => {
  const wide = 'checkpoints: { address: { stance_width: 50 cm ± 1 cm } }\n';
  const to = (target: string): string =>
    `${wide}plan: [{ change: checkpoints.address.stance_width, to: ${target} }]\n`;
  const now = (text: string): string => `checkpoints: { address: { stance_width: ${text} ± 1 cm } }\n`;
  const state = (plan: string, next: string): string | undefined => outcomeOf(plan, next).changes[0]?.state;

  it('are made, made in part, gone too far or not made, by what was measured before and after', () => {
    assert.equal(state(to('40 cm'), now('41 cm')), 'made');
    assert.equal(state(to('40 cm'), now('45 cm')), 'in part');
    assert.equal(state(to('40 cm'), now('35 cm')), 'too far');
    assert.equal(state(to('40 cm'), now('50 cm')), 'not made');
    assert.equal(state(to('40 cm'), now('55 cm')), 'not made');
    assert.equal(outcomeOf(to('40 cm'), now('45 cm')).changes[0]?.share, 0.5);
  });

  it('may end anywhere in a window', () => {
    assert.equal(state(to('36..42 cm'), now('37 cm')), 'made');
    assert.equal(state(to('36..42 cm'), now('46 cm')), 'in part');
    assert.equal(state(to('36..42 cm'), now('30 cm')), 'too far');
    assert.equal(state(to('48..52 cm'), now('51 cm')), 'made');
    assert.equal(state(to('48..52 cm'), now('60 cm')), 'too far');
  });

  it('cannot be told where the measurement fits what was before as well', () => {
    assert.equal(state(to('48 cm'), now('49 cm')), 'cannot tell');
  });

  it('are not measured where the next lesson says nothing of them', () => {
    const outcome = outcomeOf(to('40 cm'), 'delivery: { path: 1 deg right }\n');
    assert.equal(outcome.changes[0]?.state, 'not measured');
    assert.equal(saysAnything(outcome), false);
  });

  it('need no value from before to be there', () => {
    const plan = 'plan: [{ change: checkpoints.address.stance_width, to: 40 cm }]\n';
    assert.equal(state(plan, now('41 cm')), 'made');
    assert.equal(state(plan, now('45 cm')), 'not made');
  });
});

describe('proofs', () => {
  const proof = (expression: string): string => `plan: [{ proof: "${expression}" }]\n`;
  const judged = (expression: string, next: string, hand?: 'left' | 'right') =>
    outcomeOf(proof(expression), next, hand === undefined ? {} : { hand }).proofs[0]!;

  it('are met or not, with a probability', () => {
    const next = 'delivery: { path: 3 deg right ± 1 deg }\n';
    const met = judged('delivery.path < 4 deg', next);
    assert.equal(met.state, 'met');
    // Φ(1), from a table: 0.8413.
    assert.ok(Math.abs(met.probability! - 0.8413) < 1e-4);
    assert.equal(judged('delivery.path < 1 deg', next).state, 'not met');
  });

  it('cannot be told between the limits of a verdict', () => {
    const next = 'delivery: { path: 3 deg right ± 1 deg }\n';
    // Φ(0.84) = 0.7995 and Φ(−1.28) = 0.1003, from a table.
    const states = ['3.85', '3.83', '3', '1.73', '1.7'].map(
      (limit) => judged(`delivery.path < ${limit} deg`, next).state,
    );
    assert.deepEqual(states, ['met', 'cannot tell', 'cannot tell', 'cannot tell', 'not met']);
  });

  it('take left and right as the player sees them, for both hands', () => {
    const next = 'delivery: { path: 3 deg left ± 1 deg }\n';
    assert.equal(judged('delivery.path < 0 deg', next, 'left').state, 'met');
    assert.equal(judged('delivery.path < 0 deg', next, 'right').state, 'met');
  });

  it('are judged by what follows from entries alone', () => {
    const next = 'delivery: { path: 3 deg left ± 1 deg, face: 1 deg right ± 1 deg }\n';
    const { state, values } = judged('delivery.face_to_path > 2 deg', next, 'left');
    assert.deepEqual([state, values[0]?.value.how], ['met', 'computed']);
    // 4 deg with √2 deg: d/u = 1.414, Φ from a table: 0.9214.
    assert.ok(Math.abs(judged('delivery.face_to_path > 2 deg', next).probability! - 0.9214) < 2e-3);
  });

  it('know that what is computed hangs together with the entries that it came from', () => {
    // face − (face − path) is the path, whose uncertainty is 1 deg and not √(1² + √2²) deg.
    const next = 'delivery: { path: 3 deg left ± 1 deg, face: 1 deg right ± 1 deg }\n';
    const { probability } = judged('delivery.face - delivery.face_to_path < -2 deg', next);
    assert.ok(Math.abs(probability! - 0.8413) < 0.02, String(probability));
  });

  it('are not measured by what only usual swings would say', () => {
    const next = 'delivery: { club_speed: 41 m/s, attack: 3 deg down }\n';
    const { state, missing, probability } = judged('delivery.low_point.ahead > 2 cm', next);
    assert.deepEqual(
      [state, probability, missing.map(({ id }) => id)],
      ['not measured', undefined, ['delivery.low_point.ahead']],
    );
  });

  it('take the mean of four shots or more', () => {
    const shots = (count: number): string =>
      `shots: [${Array.from({ length: count }, (_, i) => `{ carry: ${170 + (i % 3)} m }`).join(', ')}]\n`;
    assert.equal(judged('flight.carry > 165 m', shots(3)).state, 'not measured');
    const { state, values } = judged('flight.carry > 165 m', shots(6));
    assert.deepEqual([state, values[0]?.value.how, values[0]?.value.shots], ['met', 'shots', 6]);
  });

  it('that cannot be read are said to be so, whatever stands there', () => {
    const hostile = [
      'lead pressure over 65 %',
      'cos.constructor(1)',
      'f(x)=x',
      '',
      '(((((',
      'delivery.path',
      '1 < ',
      '__proto__ < 1',
    ];
    for (const text of hostile)
      assert.ok(
        ['unreadable', undefined].includes(
          outcomeOf(proof(text), 'delivery: { path: 1 deg right }\n').proofs[0]?.state,
        ),
        text,
      );
  });

  it('whose number cannot be told are not measured', () => {
    assert.equal(
      judged('delivery.path / (0 * 1 deg) > 2', 'delivery: { path: 1 deg right }\n').state,
      'not measured',
    );
  });
});

describe('predictions', () => {
  const path = 'predicted: { delivery.path: 2 deg right ± 1 deg by belief }\n';
  const came = (text: string): string => `delivery: { path: ${text} }\n`;

  it('are inside where the difference is below 1.96 of its standard uncertainty', () => {
    const inside = outcomeOf(path, came('4.7 deg right ± 1 deg')).predictions[0]!;
    assert.deepEqual([inside.state, inside.origin], ['inside', 'belief']);
    assert.ok(Math.abs(inside.u! - Math.SQRT2 * (Math.PI / 180)) < 1e-12);
    assert.equal(outcomeOf(path, came('4.8 deg right ± 1 deg')).predictions[0]?.state, 'outside');
    assert.equal(
      outcomeOf(path, came('2 deg left ± 1 deg'), { hand: 'left' }).predictions[0]?.state,
      'outside',
    );
  });

  it('read ± as the workspace covers it', () => {
    assert.equal(
      outcomeOf(path, came('4.7 deg right ± 1 deg'), { coverage: 2 }).predictions[0]?.state,
      'outside',
    );
  });

  it('are not measured where nothing was entered, nor follows from entries', () => {
    assert.equal(outcomeOf(path, 'delivery: { face: 1 deg right }\n').predictions[0]?.state, 'not measured');
    const low = 'predicted: { delivery.low_point.ahead: 5 cm ahead ± 2 cm by model }\n';
    assert.equal(
      outcomeOf(low, 'delivery: { club_speed: 41 m/s, attack: 3 deg down }\n').predictions[0]?.state,
      'not measured',
    );
  });

  it('are not tested where a change was not made, and say where it was made in part', () => {
    const plan = `checkpoints: { address: { stance_width: 50 cm ± 1 cm } }\n${path}plan: [{ change: checkpoints.address.stance_width, to: 40 cm }]\n`;
    const next = (width: string): string =>
      `checkpoints: { address: { stance_width: ${width} ± 1 cm } }\n${came('2 deg right ± 1 deg')}`;
    const of = (width: string): readonly unknown[] => {
      const { followed, predictions } = outcomeOf(plan, next(width));
      return [followed, predictions[0]?.state];
    };
    assert.deepEqual(of('50 cm'), ['not at all', 'not tested']);
    assert.deepEqual(of('45 cm'), ['in part', 'inside']);
    assert.deepEqual(of('40 cm'), ['as planned', 'inside']);
    assert.deepEqual([outcomeOf(plan, came('2 deg right')).followed], ['not known']);
  });

  it('have no interval without ±', () => {
    const bare = 'predicted: { delivery.path: 2 deg right by model }\n';
    assert.equal(outcomeOf(bare, came('2 deg right')).predictions[0]?.state, 'no interval');
  });

  it('need no plan, and a plan needs none', () => {
    assert.equal(outcomeOf(path, came('2 deg right')).changes.length, 0);
    assert.equal(
      outcomeOf('plan: [{ proof: delivery.path > 0 deg }]\n', came('2 deg right')).predictions.length,
      0,
    );
    assert.equal(saysAnything(outcomeOf('notes: none\n', came('2 deg right'))), false);
  });
});
