// A left-hander's record in a mirror is found to have what the right-hander's has, line by line: numbers, faults, goals and plans.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import '../seed.ts';
import { analyseFiles, type Files } from './files.ts';
import { forecastOf } from '../../src/analysis/plan.ts';
import { builtIn } from '../../src/registry/registry.ts';

const book = `faults: 1
book:
  open-face:
    evidence: delivery.face - delivery.path > 4 deg
    tends_to:
      - { effect: delivery.face_to_path, direction: right }
      - { effect: flight.curve, direction: right, size: 4 m per deg, of: delivery.face }
    changes: [{ change: checkpoints.address.stance_direction, by: 3 deg left }]
  out-to-in:
    evidence: [delivery.path < -3 deg, 'checkpoints.address.shoulder_direction < -4 deg']
    tends_to: [{ effect: delivery.path, direction: left, size: 2 deg }]
    changes: [{ change: delivery.path, by: 3 deg right }]
`;
const template = `template: 1
delivery: { path: 2 deg left..4 deg right, face: 1 deg left..3 deg right }
flight: { start: 0..3 deg right, curve: 8 m left..2 m right }
`;

type Side = 'left' | 'right';

interface Numbers {
  readonly path: number;
  readonly face: number;
  readonly stance: number;
  readonly start: number;
  readonly curve: number;
  readonly finish: number;
  readonly arc: number;
  readonly wind: number;
  readonly across: number;
  readonly goal: number;
  readonly planned: number;
  readonly asked: number;
  readonly shape: string;
}

const anyNumbers: fc.Arbitrary<Numbers> = fc.record({
  path: tenths(-12, 12),
  face: tenths(-12, 12),
  stance: tenths(-12, 12),
  start: tenths(-12, 12),
  curve: tenths(-40, 40),
  finish: tenths(-40, 40),
  arc: tenths(-12, 12),
  wind: tenths(0, 8),
  across: tenths(-20, 20),
  goal: tenths(-10, 10),
  planned: tenths(-8, 8),
  asked: tenths(-8, 8),
  shape: fc.constantFrom('draw', 'fade', 'push draw', 'slice', 'straight', 'pull hook'),
});

function tenths(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
}

/** As this player says it; written anew here, not taken from the model. */
function filesFor(hand: Side, n: Numbers): Files {
  const turn = hand === 'right' ? 1 : -1;
  const side = (value: number): Side => (value * turn < 0 ? 'left' : 'right');
  const at = (value: number, unit: string): string => `${Math.abs(value)} ${unit} ${side(value)}`;
  const signed = (value: number): string => String(value * turn + 0);
  return {
    'lesson.swing.yaml': `swing: 1
student: a.student.yaml
club: hybrid
template: a.template.yaml
faults_from: a.faults.yaml
conditions: { wind: ${n.wind} m/s from ${side(1)} }
checkpoints:
  address:
    stance_direction: ${at(n.stance, 'deg')}
    shoulder_direction: ${at(n.stance + 1, 'deg')}
  impact: { shaft_lean: 5 deg forward ± 2 deg }
delivery:
  club_speed: 41 m/s ± 0.5 m/s
  attack: 3 deg down ± 0.5 deg
  path: ${at(n.path, 'deg')} ± 0.7 deg
  face: ${at(n.face, 'deg')} ± 0.7 deg
  arc: { direction: ${at(n.arc, 'deg')} ± 1 deg, inclination: 58 deg ± 1 deg, radius: 1.5 m }
strike: { across: ${Math.abs(n.across)} mm toward ${n.across < 0 ? 'heel' : 'toe'} }
flight:
  shape: ${n.shape}
  start: ${at(n.start, 'deg')}
  curve: ${at(n.curve, 'm')}
  finish: ${at(n.finish, 'm')}
  carry: 168 m
faults:
  - fault: open-face
  - fault: out-to-in
misses:
  - slice
  - pull
  - ${side(1)}
goals:
  - shape: draw
    start: ${at(n.goal, 'deg')}
    finish: ${at(n.goal * 2, 'm')}
plan:
  - change: checkpoints.address.stance_direction
    to: ${at(n.planned, 'deg')}
    because: open-face
    proof: delivery.path ${hand === 'right' ? '>' : '<'} ${signed(n.asked)} deg
  - change: delivery.path
    to: ${at(n.planned, 'deg')} ± 1 deg
    because: out-to-in
    proof: delivery.face ${hand === 'right' ? '<' : '>'} ${signed(n.asked)} deg
`,
    'a.student.yaml': `student: 1\nhand: ${hand}\nbag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }\n`,
    'a.faults.yaml': book,
    'a.template.yaml': template,
  };
}

describe('a record in a mirror', () => {
  it('has the same findings on the same lines, each with as many edits and related places', () => {
    fc.assert(
      fc.property(anyNumbers, (numbers) => {
        const [right, left] = (['right', 'left'] as const).map((hand) =>
          analyseFiles(filesFor(hand, numbers)).findings.map(({ code, severity, range, related, fixes }) => [
            range.start.line,
            code,
            severity,
            related.length,
            fixes.length,
          ]),
        );
        assert.ok(right!.length > 0);
        assert.deepEqual(left!.sort(), right!.sort());
      }),
      { numRuns: 60 },
    );
  });

  it('has the same verdicts, chances of goals and predictions, left and right changing places', () => {
    fc.assert(
      fc.property(anyNumbers, (numbers) => {
        const [right, left] = (['right', 'left'] as const).map((hand) => {
          const { subject, account } = analyseFiles(filesFor(hand, numbers));
          return { verdicts: subject.judgement!.stated, forecast: forecastOf(subject, account)! };
        });
        assertClose(
          left!.verdicts.map(({ probability }) => probability ?? -1),
          right!.verdicts.map(({ probability }) => probability ?? -1),
        );
        assertClose(
          left!.forecast.goals.flatMap(({ now, then }) => [now.chance ?? -1, then.chance ?? -1]),
          right!.forecast.goals.flatMap(({ now, then }) => [now.chance ?? -1, then.chance ?? -1]),
        );
        const [mine, yours] = [left!.forecast.whole.outlooks, right!.forecast.whole.outlooks];
        assert.deepEqual([...mine.keys()], [...yours.keys()]);
        for (const [id, { value, u, difference, origin }] of mine) {
          const other = yours.get(id)!;
          const turn = builtIn.find(id)!.lateral ? -1 : 1;
          assert.equal(origin, other.origin, id);
          assertClose(
            [value ?? 0, u ?? -1, difference ?? 0],
            [turn * (other.value ?? 0), other.u ?? -1, turn * (other.difference ?? 0)],
          );
        }
      }),
      { numRuns: 40 },
    );
  });
});

function assertClose(some: readonly number[], others: readonly number[]): void {
  assert.equal(some.length, others.length);
  for (const [i, one] of some.entries())
    assert.ok(Math.abs(one - others[i]!) <= 1e-6 * (1 + Math.abs(one)), `${one} and ${others[i]}`);
}
