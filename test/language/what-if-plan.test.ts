// What was tried goes into the plan as the smallest edit: all else stays to the letter, and the reader finds what was meant.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { compileExpression } from '../../src/judgement/expression.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { toSI } from '../../src/measure/units.ts';
import { lineTableOf } from '../../src/analysis/positions.ts';
import { whatIfEdits } from '../../src/language/what-if-plan.ts';
import { whatIf, type Lever, type Move } from '../../src/language/what-if.ts';
import { analysed } from './analysed.ts';
import { planFiles, planRecord } from './plan-record.ts';

const path: Move = { id: 'delivery.path', value: -1 };
const stance: Move = { id: 'checkpoints.address.stance_width', value: 41 };

function written(plan: string, moves: readonly Move[], because: readonly string[] = []): string {
  return edited(planRecord(plan), moves, because).slice(planRecord('').length);
}

function edited(text: string, moves: readonly Move[], because: readonly string[] = []): string {
  const { starts } = lineTableOf(text);
  return (whatIfEdits(analysed(text, { files: planFiles }), moves, because) ?? [])
    .map(({ range: { start, end }, newText }) => ({
      from: starts[start.line]! + start.character,
      to: starts[end.line]! + end.character,
      newText,
    }))
    .sort((a, b) => b.from - a.from)
    .reduce((done, { from, to, newText }) => done.slice(0, from) + newText + done.slice(to), text);
}

const pathItem = `  - change: delivery.path
    to: 1.0 deg left
    because: [trail-side]
    proof: delivery.path > -2 deg
`;

describe('writing what was tried as a plan', () => {
  it('adds a plan where there is none, with the proof that follows', () => {
    assert.equal(written('', [path], ['trail-side']), `plan:\n${pathItem}`);
  });

  it('adds an item behind the last one, in the same way of writing', () => {
    const block = 'plan:\n- change: delivery.attack # first\n  to: 1 deg down\n# the end\n';
    const item = pathItem.replaceAll(/^ {2}/gm, '');
    assert.equal(
      written(block, [path], ['trail-side']),
      `plan:\n- change: delivery.attack # first\n  to: 1 deg down\n${item}# the end\n`,
    );
    const flow = 'plan: [{ change: delivery.attack, to: 1 deg down }] # here\n';
    assert.equal(
      written(flow, [path]),
      'plan: [{ change: delivery.attack, to: 1 deg down }, { change: delivery.path, to: 1.0 deg left, proof: delivery.path > -2 deg }] # here\n',
    );
  });

  it('adds it behind a last line without an end, and with the ends of lines that the file has', () => {
    const open = 'plan:\n  - { change: delivery.attack, to: 1 deg down }';
    assert.equal(written(open, [path], ['trail-side']), `${open}\n${pathItem.trimEnd()}`);
    const text = planRecord('plan:\n  - { change: delivery.attack, to: 1 deg down }\n').replaceAll(
      '\n',
      '\r\n',
    );
    assert.equal(edited(text, [path], ['trail-side']), text + pathItem.replaceAll('\n', '\r\n'));
  });

  it('puts the number in the place of the number where the quantity is planned already', () => {
    const plan = `plan:
  - change: checkpoints.address.stance_width # narrower
    to: 44 cm
    because: [trail-side]
`;
    assert.equal(written(plan, [stance]), plan.replace('44 cm', '41 cm'));
    assert.equal(written(plan, [stance, path], ['trail-side']), plan.replace('44 cm', '41 cm') + pathItem);
  });

  it('puts the proof that follows in the place of the one that followed from the number before', () => {
    const [before, now] = [written('', [path]), written('', [{ id: path.id, value: 1 }])];
    assert.match(now, /proof: delivery.path > -1 deg/);
    assert.equal(written(before, [{ id: path.id, value: 1 }]), now);
    const own = before.replace(/proof: .*/, 'proof: delivery.path > -2.5 deg');
    assert.match(written(own, [{ id: path.id, value: 1 }]), /proof: delivery.path > -2.5 deg\n/);
  });

  it('says to what where a change was planned without', () => {
    const block = 'plan:\n  - change: checkpoints.address.stance_width\n    because: [trail-side]\n';
    assert.equal(
      written(block, [stance]),
      'plan:\n  - change: checkpoints.address.stance_width\n    to: 41 cm\n    because: [trail-side]\n',
    );
    assert.equal(
      written('plan: [{ change: checkpoints.address.stance_width }]\n', [stance]),
      'plan: [{ change: checkpoints.address.stance_width, to: 41 cm }]\n',
    );
  });

  it('tells a plan that says so already from one that nothing can be added to', () => {
    const editsOf = (plan: string): unknown =>
      whatIfEdits(analysed(planRecord(plan), { files: planFiles }), [path], []);
    assert.deepEqual(editsOf(`plan:\n${pathItem}`), []);
    assert.deepEqual(editsOf('plan: [{ change: delivery.path, to: 1 deg left }]\n'), []);
    assert.equal(editsOf('plan: [{ change: \n'), undefined);
  });

  it('writes nothing where nothing was moved', () => {
    assert.equal(written('', []), '');
  });
});

/** A record whose entries do not agree: the attack says one thing, the low point and the divot another. */
function disagreeing(attack: number, lowPoint: number, path: number, faceToPath: number): string {
  return `swing: 1
student: ansa.student.yaml
club: hybrid
checkpoints: { impact: { shaft_lean: 10 deg forward, hands: 6 cm ahead } }
delivery: { path: ${side(path)}, face: 3 deg left, face_to_path: ${side(faceToPath)}, attack: ${attack} deg up, low_point: { ahead: ${lowPoint} cm ahead }, arc: { radius: 1.4 m } }
flight: { start: 5 deg left, curve: 20 m right, launch_angle: 18 deg }
`.replaceAll(/: -(\d+) deg up/g, ': $1 deg down');
}

function side(degrees: number): string {
  return `${Math.abs(degrees)} deg ${degrees < 0 ? 'left' : 'right'}`;
}

describe('the proof of what was tried', () => {
  const proofIn = (text: string): string | undefined => /proof: (.*)/.exec(text)?.[1];
  /** Above zero where a number in the unit shown meets it. */
  const marginOf = (proof: string, { id, unit }: Lever): ((value: number) => number) => {
    const { expression } = compileExpression(proof, builtIn);
    assert.deepEqual(
      expression?.quantities.map((quantity) => quantity.id),
      [id],
    );
    return (value) => expression.margin!([toSI(value, unit)]);
  };

  it('is counted from what all entries say, as the slider is', () => {
    const text = disagreeing(-4, 6, 7, -10);
    const lever = whatIf(analysed(text, { files: planFiles }), [])!.levers.find(
      ({ id }) => id === 'delivery.attack',
    )!;
    assert.ok(lever.now > -3.4 && lever.now < -1.5, `${lever.now}`);
    const proof = proofIn(edited(text, [{ id: lever.id, value: lever.now - 1 }]))!;
    assert.match(proof, /^delivery\.attack < -/);
  });

  it('is never met by the number that the slider starts from, and always by the aim', () => {
    const number = fc.integer({ min: -8, max: 8 });
    fc.assert(
      fc.property(number, number, number, number, fc.nat(), fc.nat(), (a, low, path, ftp, which, where) => {
        const text = disagreeing(a, Math.abs(low), path, ftp);
        const levers = whatIf(analysed(text, { files: planFiles }), [])?.levers ?? [];
        const lever = levers[which % levers.length];
        if (lever === undefined) return;
        const { min, step, decimals, max } = lever;
        const steps = Math.round((max - min) / step);
        const value = Number((min + (where % (steps + 1)) * step).toFixed(decimals));
        const proof = proofIn(edited(text, [{ id: lever.id, value }]));
        if (proof === undefined) return assert.ok(Math.abs(value - lever.now) <= step, 'a way without proof');
        const margin = marginOf(proof, lever);
        assert.ok(margin(lever.now) < 0, `${proof} is met by now, ${lever.now}`);
        assert.ok(margin(value) > 0, `${proof} is not met by the aim, ${value}`);
        const way = Math.sign(value - lever.now);
        assert.ok(margin(value + way * step) > margin(value), `${proof} points against ${value}`);
      }),
      { numRuns: 40 },
    );
  });
});
