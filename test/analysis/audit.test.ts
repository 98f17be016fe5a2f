// An audit: how each entry was measured, who checks it, what leans on it, and what twice the doubt would change.
import assert from 'node:assert/strict';
import { auditCells, auditColumns, auditRemarks } from '../../src/analysis/audit-words.ts';
import { auditOf, type Audit } from '../../src/analysis/audit.ts';
import { analyse } from '../../src/analysis/analyse.ts';
import { practice, snapshotWith, yamlSamples } from '../samples.ts';
import { analyseFiles } from '../checks/files.ts';

const student = 'student: 1\nhand: right\nbag: { seven iron: { kind: iron, loft: 33 deg ± 1 deg } }\n';
const record = (rest: string): string => `swing: 1\nstudent: s.student.yaml\nclub: seven iron\n${rest}`;

function audited(rest: string): {
  readonly audit: Audit;
  readonly analysis: ReturnType<typeof analyseFiles>;
} {
  const analysis = analyseFiles({ 'a.swing.yaml': record(rest), 's.student.yaml': student });
  const audit = auditOf(analysis);
  assert.ok(audit);
  return { audit, analysis };
}

const rowOf = ({ rows }: Audit, id: string, reading = 0) => {
  const row = rows.find((one) => one.quantity.id === id && one.reading === reading);
  assert.ok(row, id);
  return row;
};

describe('an audit', () => {
  it('says where each uncertainty comes from, and which entries are guesses', () => {
    const { audit } = audited(
      'delivery:\n  face: 1 deg right by radar\n  path: 2 deg right ± 1 deg\n  attack: 3 deg down\n  club_speed: ~33 m/s by radar\n  delivered_loft: 28 deg by eye\n',
    );
    const said = ['face', 'path', 'attack', 'club_speed', 'delivered_loft'].map((key) => {
      const { origin, method, isGuess } = rowOf(audit, `delivery.${key}`);
      return [key, origin, method, isGuess];
    });
    assert.deepEqual(said, [
      ['face', 'method', 'radar', false],
      ['path', 'stated', undefined, false],
      ['attack', 'quantity', undefined, true],
      ['club_speed', 'method', 'radar', true],
      ['delivered_loft', 'method', 'eye', true],
    ]);
  });

  it('has the student and the club in it, each in its own file', () => {
    const { audit } = audited('flight: { carry: 130 m }\n');
    assert.match(rowOf(audit, 'club.loft').uri, /s\.student\.yaml$/);
    assert.match(rowOf(audit, 'flight.carry').uri, /a\.swing\.yaml$/);
    assert.equal(rowOf(audit, 'flight.carry').range.start.line, 3);
  });

  it('holds rival readings against one another, as far apart as their uncertainties allow', () => {
    const { audit } = audited('delivery: { face: [1 deg right ± 0.6 deg, 3 deg right ± 0.8 deg] }\n');
    const { second } = rowOf(audit, 'delivery.face');
    // (1 − 3)/√(0.6² + 0.8²): JCGM 100:2008, 5.1.2.
    assert.ok(Math.abs(second!.apart + 2) < 1e-9);
    assert.ok(Math.abs(rowOf(audit, 'delivery.face', 1).second!.apart - 2) < 1e-9);
    assert.equal(
      rowOf(audited('delivery: { face: 1 deg right }\n').audit, 'delivery.face').second,
      undefined,
    );
  });

  it('shares out the uncertainty of what the goals are about', () => {
    // Face-to-path is face less path, so that variances add: 1/(1 + 4) and 4/(1 + 4).
    const { audit } = audited(
      'delivery: { face: 1 deg right ± 1 deg, path: 4 deg right ± 2 deg }\ngoals: [{ carry: 130 m }]\n',
    );
    assert.equal(audit.fromGoals, true);
    const free = audited('delivery: { face: 1 deg right ± 1 deg, path: 4 deg right ± 2 deg }\n').audit;
    assert.equal(free.fromGoals, false);
    const share = (key: string): number =>
      rowOf(free, `delivery.${key}`).shares.get('delivery.face_to_path')!;
    assert.ok(Math.abs(share('face') - 0.2) < 0.01 && Math.abs(share('path') - 0.8) < 0.01);
  });

  it('says that goals could not be read rather than that there are none', () => {
    const said = (goals: string): string => {
      const { audit, analysis } = audited(`delivery: { face: 1 deg right, path: 2 deg right }\n${goals}`);
      return auditRemarks(audit, analysis)[0]!;
    };
    assert.match(said('goals: [{ cary: 130 m }]\n'), /since the goals name nothing for this club/);
    assert.match(said(''), /since there are no goals/);
  });

  it('gives each of several readings the part that its uncertainty lets it have', () => {
    // In a weighted mean weights go by 1/u², so that shares of its variance do: 1/1² to 1/2² is 4 to 1.
    const { audit } = audited(
      'delivery: { face: [1 deg right ± 1 deg, 2 deg right ± 2 deg], path: 4 deg right ± 2 deg }\n',
    );
    const [one, other] = [0, 1].map((reading) =>
      rowOf(audit, 'delivery.face', reading).shares.get('delivery.face_to_path')!,
    );
    assert.ok(one! > 0.1 && Math.abs(one! / other! - 4) < 1e-9, `${one} and ${other}`);
  });

  it('names guesses that a conclusion leans on and that nobody checks', () => {
    const { audit, analysis } = audited(
      'delivery: { face: 1 deg right by radar, path: ~4 deg right by eye }\n',
    );
    assert.deepEqual(
      audit.leanedOn.map(({ quantity }) => quantity.id),
      ['delivery.path'],
    );
    assert.ok(auditRemarks(audit, analysis).some((words) => /nobody checks: Club path/.test(words)));
    const measured = audited('delivery: { face: 1 deg right by radar, path: 4 deg right by radar }\n');
    assert.deepEqual(measured.audit.leanedOn, []);
  });

  it('says what the verdict would be at twice the uncertainty', () => {
    const rest = (u: number): string =>
      `delivery: { face: 1 deg right ± ${u} deg, path: 4 deg right ± ${u} deg, face_to_path: 2 deg right ± ${u} deg }\n`;
    const { audit, analysis } = audited(rest(0.7));
    const conflicts = audit.rows.filter(({ judged }) => judged?.verdict === 'conflict');
    assert.ok(conflicts.length > 0);
    const twice = analyseFiles({
      'a.swing.yaml': record(rest(1.4)),
      's.student.yaml': student.replace('± 1', '± 2'),
    });
    for (const row of audit.rows) {
      const then = twice.agreement!.entries.find(
        ({ id, reading }) => id === row.quantity.id && reading === row.reading,
      );
      assert.equal(row.verdictAtTwice, then?.verdict, row.quantity.id);
    }
    assert.equal(
      auditRemarks(audit, analysis).some((words) => words.startsWith('Would fit if')),
      true,
    );
  });

  it('is told of every sample without a gap, and of nothing but records', () => {
    for (const [path] of yamlSamples) {
      const uri = practice + path;
      const analysis = analyse(uri, snapshotWith({}));
      const audit = auditOf(analysis);
      assert.equal(audit !== undefined, path.endsWith('.swing.yaml'), path);
      for (const row of audit?.rows ?? []) {
        const cells = auditCells(row, analysis);
        assert.deepEqual(Object.keys(cells), Object.keys(auditColumns));
        assert.doesNotMatch(Object.values(cells).join(), /NaN|undefined|Infinity/);
        const sum = [...row.shares.values()];
        assert.ok(sum.every((share) => share >= 0 && share <= 1));
      }
    }
    assert.equal(auditOf(analyseFiles({ 'a.swing.yaml': '' }))?.rows.length, 0);
  });
});
