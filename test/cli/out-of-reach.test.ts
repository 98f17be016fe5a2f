// What no face and path that are seen bring is said to be so by `plan`, proposed or not, and by `derive`.
import assert from 'node:assert/strict';
import { swingwright, withFolder } from './program.ts';

const files = {
  'ansa.student.yaml':
    'student: 1\nhand: right\nbag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }\n',
  'far.swing.yaml': `swing: 1
student: ansa.student.yaml
club: hybrid
checkpoints: { impact: { shaft_lean: 5 deg forward ± 2 deg } }
delivery: { club_speed: 41 m/s ± 0.5 m/s, attack: 3 deg down ± 0.5 deg, path: 3 deg left ± 0.5 deg, face: 0 deg ± 0.5 deg }
goals: [{ start: 25 deg right, curve: 0..5 m right }]
`,
};

interface GoalsJson {
  readonly goals: readonly {
    readonly goal: string;
    readonly outOfReach: boolean;
    readonly clubSpeedNeeded: number | null;
    readonly faceNeeded: {
      readonly id: string;
      readonly unit: string;
      readonly min: number;
      readonly max: number;
      readonly seen: { readonly min: number; readonly max: number };
    } | null;
  }[];
}

describe('a goal that no face and path seen bring', () => {
  it('is said to be out of reach by `plan`, proposed or not', () => {
    withFolder(files, (folder) => {
      for (const args of [
        ['plan', 'far.swing.yaml'],
        ['plan', 'far.swing.yaml', '--propose'],
      ])
        assert.match(
          swingwright(args, folder).out,
          /^ {4}out of reach: start direction 23\.\.27 deg right beside the rest of the goal needs face direction .* seen with a hybrid is 15 deg left\.\.15 deg right/m,
        );
      const { out } = swingwright(['plan', 'far.swing.yaml', '--format', 'json'], folder);
      const [start, curve] = (JSON.parse(out) as GoalsJson).goals;
      const { id, unit, min, max, seen } = start!.faceNeeded!;
      assert.deepEqual([id, unit, seen], ['delivery.face', 'deg', { min: -15, max: 15 }]);
      assert.ok(min > 22 && max < 28 && min < max);
      assert.deepEqual([start!.outOfReach, start!.clubSpeedNeeded], [true, null]);
      assert.deepEqual([curve!.outOfReach, curve!.faceNeeded], [false, null]);
    });
  });

  it('has windows in `derive` that are said to lie beyond what is seen', () => {
    withFolder(files, (folder) => {
      const { out } = swingwright(['derive', 'far.swing.yaml'], folder);
      assert.match(
        out,
        /^ {4}beyond what is seen with a hybrid: delivery\.face 15 deg left\.\.15 deg right$/m,
      );
      assert.match(
        out,
        /^ {4}beyond what is seen with a hybrid: delivery\.path 18 deg left\.\.18 deg right$/m,
      );
    });
  });
});
