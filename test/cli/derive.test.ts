import assert from 'node:assert/strict';
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
