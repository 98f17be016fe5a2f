import assert from 'node:assert/strict';
import type { AgreementJson } from '../../src/cli/agreement.ts';
import type { ShotsJson } from '../../src/cli/shots.ts';
import { cleanRecord, student, swingwright, withFolder } from './program.ts';

interface DerivedJson {
  readonly format: number;
  readonly file: string;
  readonly quantities: Readonly<
    Record<
      string,
      {
        readonly value: number;
        readonly u: number | null;
        readonly unit: string;
        readonly shown: string;
        readonly kind: string;
        readonly from: readonly string[];
        readonly interval?: readonly [number, number];
      }
    >
  >;
  readonly findings: readonly unknown[];
}

const practice = { 'ansa.student.yaml': student, 'clean.swing.yaml': cleanRecord };

describe('swingwright derive', () => {
  it('gives each quantity in its shown unit and sign, entered or derived, with the entries behind it', () => {
    withFolder(practice, (folder) => {
      const { code, out } = swingwright(['derive', 'clean.swing.yaml', '--format', 'json'], folder);
      const json = JSON.parse(out) as DerivedJson;
      assert.equal(code, 0);
      assert.deepEqual([json.format, json.file, json.findings], [1, 'clean.swing.yaml', []]);
      const { 'delivery.face_to_path': faceToPath, 'delivery.face': face } = json.quantities;
      assert.deepEqual(Object.keys(faceToPath!), ['value', 'u', 'unit', 'shown', 'kind', 'from']);
      assert.deepEqual(
        [face!.value, face!.unit, face!.kind, face!.from],
        [-1, 'deg', 'entered', ['delivery.face']],
      );
      assert.deepEqual(
        [faceToPath!.value, faceToPath!.unit, faceToPath!.kind, faceToPath!.from],
        [-3, 'deg', 'derived', ['delivery.face', 'delivery.path']],
      );
      // Radar gives 1° for the path and 1.2° for the face; together √(1² + 1.2²).
      assert.ok(Math.abs(faceToPath!.u! - Math.hypot(1, 1.2)) < 1e-9);
      assert.match(faceToPath!.shown, /^3\.0 deg left ± 1\.6 deg$/);
    });
  });

  it('says in text what was entered, what follows and what is missing for the rest', () => {
    withFolder(practice, (folder) => {
      const { out } = swingwright(['derive', 'clean.swing.yaml'], folder);
      assert.match(out, /^Entered$[^]*^ {2}delivery\.face +1\.0 deg left ± 1\.2 deg$/m);
      assert.match(
        out,
        /^Computed\n {2}delivery\.face_to_path +3\.0 deg left ± 1\.6 deg +from delivery\.face, delivery\.path$/m,
      );
      assert.match(
        out,
        /^Not computed$[^]*^ {2}delivery\.attack and .* would give .*delivery\.low_point\.ahead/m,
      );
    });
  });

  it('gives what only all entries together say as expected, with the interval of 95 %', () => {
    const record = `swing: 1
student: ansa.student.yaml
date: 2026-03-07
club: eight iron
checkpoints: { impact: { lead_shoulder: 12 cm ahead ± 1 cm, shaft_lean: 8 deg forward ± 1 deg } }
delivery: { club_speed: 34 m/s by radar, release_ratio: 2.2 ± 0.1, arc: { inclination: 60 deg ± 1 deg } }
`;
    withFolder({ 'ansa.student.yaml': student, 'levers.swing.yaml': record }, (folder) => {
      const { out } = swingwright(['derive', 'levers.swing.yaml', '--format', 'json'], folder);
      const attack = (JSON.parse(out) as DerivedJson).quantities['delivery.attack']!;
      const [low, high] = attack.interval!;
      assert.equal(attack.kind, 'expected');
      assert.ok(attack.from.includes('checkpoints.impact.lead_shoulder'));
      assert.ok(Math.abs((low + high) / 2 - attack.value) < 1e-9);
      assert.ok(Math.abs((high - low) / 2 - 1.959964 * attack.u!) < 1e-9);
    });
  });

  it('ends with 2 for a file that is not there or is no record', () => {
    withFolder(practice, (folder) => {
      const absent = swingwright(['derive', 'other.swing.yaml'], folder);
      assert.deepEqual([absent.code, absent.out], [2, '']);
      assert.match(absent.err, /cannot read `other\.swing\.yaml`: there is no such file/);
      const wrongKind = swingwright(['derive', 'ansa.student.yaml'], folder);
      assert.equal(wrongKind.code, 2);
      assert.match(wrongKind.err, /is not a swing record; expected a file that ends in `\.swing\.yaml`/);
    });
  });
});

describe('swingwright derive, of a record with shots', () => {
  const files = {
    'a.swing.yaml': 'swing: 1\nshots: a.csv\n',
    'a.csv': 'carry,finish\n168,3 right\n171,6 right\n165,1 left\n169,2 right\n64,0\n166,4 right\n',
  };

  it('gives count, mean, spread, ellipse and the rows that lie far out as JSON', () => {
    withFolder(files, (folder) => {
      const { out } = swingwright(['derive', 'a.swing.yaml', '--format', 'json'], folder);
      const { shots } = JSON.parse(out) as { shots: ShotsJson };
      assert.deepEqual([shots.count, shots.used, shots.outliers, shots.typical], [6, 5, [5], 1]);
      const carry = shots.quantities['flight.carry']!;
      assert.deepEqual([carry.count, carry.mean, carry.unit], [5, 167.8, 'm']);
      assert.ok(Math.abs(carry.sd! - Math.sqrt(22.8 / 4)) < 1e-9);
      assert.ok(Math.abs(carry.u! - Math.sqrt(22.8 / 20)) < 1e-9);
      assert.ok(shots.ellipse!.semiAxes[0] > shots.ellipse!.semiAxes[1]);
    });
  });

  it('prints a block of shots, and none where there are none', () => {
    withFolder({ ...files, 'b.swing.yaml': 'swing: 1\n' }, (folder) => {
      const { out } = swingwright(['derive', 'a.swing.yaml'], folder);
      assert.match(out, /^Shots\n {2}flight\.carry +167\.8 m ± 2\.4 m +mean and spread of 5$/m);
      assert.match(out, /^ {2}far from the others and left out: 5$/m);
      assert.doesNotMatch(swingwright(['derive', 'b.swing.yaml'], folder).out, /Shots/);
    });
  });
});

describe('swingwright derive, of how a record agrees', () => {
  const record = (faceToPath: string, more = '') =>
    `swing: 1\ndelivery:\n  face: 1 deg right ± 0.5 deg\n  path: 5 deg right ± 0.5 deg\n  face_to_path: ${faceToPath} ± 0.5 deg\n${more}`;
  interface Json {
    readonly quantities: Readonly<
      Record<string, { readonly kind: string; readonly from: readonly string[] }>
    >;
    readonly agreement: AgreementJson;
  }
  const jsonOf = (files: Record<string, string>): Json =>
    withFolder(
      files,
      (folder) => JSON.parse(swingwright(['derive', 'a.swing.yaml', '--format', 'json'], folder).out) as Json,
    );

  it('gives each entry with what the others imply, in shown units', () => {
    const { agreement } = jsonOf({ 'a.swing.yaml': record('4 deg left') });
    assert.deepEqual(Object.keys(agreement), ['status', 'chi2', 'dof', 'p', 'threshold', 'entries']);
    const entry = agreement.entries.find(({ id }) => id === 'delivery.face_to_path')!;
    assert.deepEqual([entry.value, entry.unit, entry.verdict], [-4, 'deg', 'fits']);
    assert.ok(Math.abs(entry.implied! + 4) < 0.1 && Math.abs(entry.u_implied! - Math.SQRT1_2) < 0.02);
    assert.ok(agreement.p > 0.9 && Math.abs(entry.w!) < 0.2);
  });

  it('says in text whether the entries agree, and which do not', () => {
    withFolder({ 'a.swing.yaml': record('4 deg left'), 'b.swing.yaml': record('4 deg right') }, (folder) => {
      assert.match(
        swingwright(['derive', 'a.swing.yaml'], folder).out,
        /^Agreement\n {2}3 entries, 3 checked; they agree \(p 0\.\d\d\)$/m,
      );
      assert.match(
        swingwright(['derive', 'b.swing.yaml'], folder).out,
        /^ {2}3 entries, 3 checked; they do not agree \(p below 0\.001\)\n {2}delivery\.\w+ .* does not fit; the others say /m,
      );
    });
  });

  it('calls expected what only all entries together give', () => {
    const lesson = `swing: 1
student: b.student.yaml
club: seven
checkpoints: { impact: { lead_shoulder: 8 cm ahead ± 1 cm, shaft_lean: 8 deg forward ± 1 deg } }
delivery: { club_speed: 36 m/s, release_ratio: 2.2 ± 0.1, arc: { inclination: 60 deg ± 1 deg } }
`;
    const bag =
      'student: 1\nhand: right\nstature: 175 cm\nbag:\n  seven: { kind: iron, loft: 33 deg, lie: 62 deg, length: 37 in }\n';
    const files = { 'a.swing.yaml': lesson, 'b.student.yaml': bag };
    const attack = jsonOf(files).quantities['delivery.attack']!;
    assert.equal(attack.kind, 'expected');
    assert.ok(attack.from.includes('checkpoints.impact.lead_shoulder'));
    withFolder(files, (folder) => {
      const { out } = swingwright(['derive', 'a.swing.yaml'], folder);
      assert.match(out, /^Expected from all entries together\n[^]*^ {2}delivery\.attack +\d\.\d deg down/m);
    });
  });

  it('asks for what a coach can measure, and never in a circle', () => {
    const delivery =
      'swing: 1\nstudent: b.student.yaml\nclub: h\ncheckpoints: { impact: { shaft_lean: 2 deg forward } }\n';
    const lesson = `${delivery}delivery: { club_speed: 34 m/s, attack: 1 deg down, path: 3 deg right }\n`;
    const bag = 'student: 1\nhand: right\nbag:\n  h: { kind: hybrid, loft: 22 deg, lie: 59 deg }\n';
    withFolder({ 'a.swing.yaml': lesson, 'b.student.yaml': bag }, (folder) => {
      const { out } = swingwright(['derive', 'a.swing.yaml'], folder);
      assert.match(out, /^ {2}delivery\.face would give .*flight\.carry/m);
      assert.doesNotMatch(out, /(speed_ratio|face_to_path|ball_speed).* would give/);
    });
  });

  it('says that no number comes out where all is there but the model has no answer', () => {
    const lesson = `swing: 1
student: b.student.yaml
club: h
delivery: { club_speed: 0 m/s, attack: 1 deg down, path: 3 deg right, face: 0 deg, delivered_loft: 20 deg }
`;
    const bag = 'student: 1\nhand: right\nbag:\n  h: { kind: hybrid, loft: 22 deg, lie: 59 deg }\n';
    withFolder({ 'a.swing.yaml': lesson, 'b.student.yaml': bag }, (folder) => {
      const { out } = swingwright(['derive', 'a.swing.yaml'], folder);
      assert.match(out, /^ {2}no number comes out of what is entered for .*flight\.carry/m);
    });
  });

  it('says which face goes with which path, and why a goal has no windows', () => {
    const record = (goals: string): string => `swing: 1
student: ansa.student.yaml
club: eight iron
delivery: { club_speed: 36 m/s, attack: 3 deg down, path: 1 deg left, face: 1 deg right }
checkpoints: { impact: { shaft_lean: 6 deg forward } }
goals: [${goals}]
`;
    const files = {
      ...practice,
      'two.swing.yaml': record('{ start: 1 deg left..1 deg right, finish: 4 m left..4 m right }'),
      'one.swing.yaml': record('{ start: 1 deg left }'),
      'bare.swing.yaml': 'swing: 1\ngoals: [{ shape: draw }]\ndelivery: { path: 1 deg left }\n',
    };
    withFolder(files, (folder) => {
      const outOf = (name: string): string => swingwright(['derive', name], folder).out;
      assert.match(
        outOf('two.swing.yaml'),
        /their middles go together: delivery\.face_to_path .*, delivery\.path .*, delivery\.face /,
      );
      assert.match(
        outOf('one.swing.yaml'),
        /asks for no face and path that can be told: it takes a curve, a shape, or both a start and a finish/,
      );
      assert.match(
        outOf('bare.swing.yaml'),
        /\(shape\) asks for no face and path that can be told: which hand plays/,
      );
    });
  });

  it('shows the windows that the flight allows and that a goal asks for, as the editor does', () => {
    const record = `swing: 1
student: ansa.student.yaml
club: eight iron
delivery: { club_speed: 36 m/s, attack: 3 deg down, path: 1 deg left, face: 1 deg right }
checkpoints: { impact: { shaft_lean: 6 deg forward } }
flight: { start: 1 deg right, curve: 5 m right, ball_speed: 47 m/s }
goals: [{ curve: 4 m left..4 m right, start: 1 deg left..1 deg right }]
`;
    withFolder({ ...practice, 'lesson.swing.yaml': record }, (folder) => {
      const { out } = swingwright(['derive', 'lesson.swing.yaml', '--format', 'json'], folder);
      const { windows } = JSON.parse(out) as {
        readonly windows: {
          readonly flight: Readonly<
            Record<string, { min: number; max: number; value: number; unit: string }>
          >;
          readonly goals: readonly {
            readonly goal: readonly string[];
            readonly windows: Readonly<Record<string, { min: number; max: number; unit: string }>>;
          }[];
        };
      };
      const flown = windows.flight['delivery.face_to_path']!;
      assert.ok(flown.min < flown.value && flown.value < flown.max && flown.value > 0, JSON.stringify(flown));
      assert.equal(flown.unit, 'deg');
      assert.deepEqual(windows.goals[0]!.goal, ['curve', 'start']);
      // A window of the curve on both sides is one of face-to-path on both sides.
      const asked = windows.goals[0]!.windows['delivery.face_to_path']!;
      assert.ok(asked.min < 0 && asked.max > 0, JSON.stringify(asked));
      const text = swingwright(['derive', 'lesson.swing.yaml'], folder).out;
      assert.match(
        text,
        /^Windows\n {2}the flight allows delivery\.face_to_path .*\.\..* \(95 %\), most likely /m,
      );
      assert.match(text, /^ {2}the goal \(curve, start\) asks for delivery\.face_to_path /m);
    });
  });
});
