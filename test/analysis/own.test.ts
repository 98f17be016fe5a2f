// Tests of what a workspace adds of its own: quantities, derived ones, relations, checks and shown units, in one record.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { createCache } from '../../src/analysis/cache.ts';
import { explainedOf } from '../../src/analysis/explained.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import { findHover } from '../../src/language/index.ts';
import { showValue } from '../../src/measure/show.ts';
import { analyseFiles, codesOf } from '../checks/files.ts';

const workspace = `swingwright: 1
quantities:
  delivery.wand: { like: delivery.face, title: Face by wand, uncertainty: 1 deg }
  checkpoints.rib_turn: { like: checkpoints.shoulder_turn, at: [top, impact] }
derived:
  delivery.doubled: { like: delivery.face_to_path, is: 2 * (delivery.wand - delivery.path) }
  delivery.redoubled: { like: delivery.face_to_path, is: 2 * delivery.doubled }
relations:
  wand-and-face: { says: delivery.wand ≈ delivery.face + 1 deg ± 0.3 deg }
checks:
  wand-far-right:
    when: delivery.wand > 3 deg
    message: The wand says {delivery.wand}, path {delivery.path}, loft {delivery.delivered_loft}.
    severity: error
show: { flight.carry: yd, speed: km/h }
`;
const student = 'student: 1\nhand: right';
const lesson = `swing: 1
student: mira.student.yaml
delivery:
  wand: 4 deg right ± 0.4 deg
  path: 1 deg right ± 0.3 deg
`;
const all = (text: string, own = workspace): Analysis =>
  analyseFiles({ 'lesson.swing.yaml': text, 'mira.student.yaml': student, 'swingwright.yaml': own });
const degree = Math.PI / 180;

describe('what a workspace has of its own', () => {
  it('is read without a finding', () => {
    assert.deepEqual(codesOf(analyseFiles({ 'swingwright.yaml': workspace })), []);
  });

  it('gives a derived quantity with its first-order uncertainty, also through another one', () => {
    const { derivation } = all(lesson, workspace.replace(/relations:\n.*\n/, ''));
    const doubled = derivation!.values.get('delivery.doubled')!;
    assert.ok(Math.abs(doubled.value - 6 * degree) < 1e-9);
    // JCGM 100:2008, eq. 10: u² = Σ (slope · u)².
    assert.ok(Math.abs(doubled.u! - 2 * Math.hypot(0.4, 0.3) * degree) < 1e-9);
    assert.deepEqual([...doubled.from].sort(), ['delivery.path', 'delivery.wand']);
    assert.ok(Math.abs(derivation!.values.get('delivery.redoubled')!.value - 12 * degree) < 1e-9);
  });

  it('gives no number beyond the bounds of a derived quantity, and says that none comes out', () => {
    const own = `swingwright: 1
derived:
  delivery.slope: { is: delivery.path / (delivery.face - 1 deg), unit: ratio, bounds: -5..5 }
  delivery.thousand: { is: delivery.path * 1000, unit: deg, bounds: -5..5 deg }
  delivery.twice: { is: delivery.path * 2, unit: deg, bounds: -50..50 deg }
checks:
  steep: { when: delivery.slope > 4, message: 'slope {delivery.slope}' }
`;
    const analysis = all('swing: 1\ndelivery: { path: 2 deg right, face: 1 deg right }\n', own);
    const { values, expected, missing } = analysis.derivation!;
    for (const id of ['delivery.slope', 'delivery.thousand']) {
      assert.deepEqual([values.has(id), expected.has(id)], [false, false], id);
      assert.deepEqual(missing.get(id)?.needs, [], id);
    }
    assert.ok(values.has('delivery.twice') && !missing.has('delivery.twice'));
    assert.ok(!codesOf(analysis).includes('own/steep'));
    const near = all(
      'swing: 1\ndelivery: { path: 2 deg right ± 0.1 deg, face: 1.5 deg right ± 0.1 deg }\n',
      own,
    );
    assert.ok(Math.abs(near.derivation!.values.get('delivery.slope')!.value - 4) < 0.5);
  });

  it('mirrors what is lateral for a left-handed player', () => {
    const left = analyseFiles({
      'lesson.swing.yaml': lesson,
      'mira.student.yaml': 'student: 1\nhand: left',
      'swingwright.yaml': workspace,
    });
    assert.ok(Math.abs(left.derivation!.values.get('delivery.doubled')!.value - 6 * degree) < 0.01);
  });

  it('lets a relation say what nobody entered, and names it where the number came from', () => {
    const { derivation } = all(lesson);
    const face = derivation!.values.get('delivery.face')!;
    assert.equal(face.kind, 'expected');
    // A window of practice pulls a little.
    assert.ok(Math.abs(face.value - 3 * degree) < 0.05 * degree);
    assert.ok(Math.abs(face.u! - Math.hypot(0.4, 0.3) * degree) < 0.02 * degree);
    assert.ok(face.from.includes('relation:wand-and-face'));
  });

  it('holds entries against each other through a relation, and names it in the conflict', () => {
    const told = all(`${lesson}  face: [9 deg left ± 0.2 deg, 9 deg left ± 0.2 deg]\n`);
    const off = told.agreement!.conflicts.map(({ id }) => id);
    assert.ok(off.length > 0);
    const words = told.findings.flatMap(({ message, related }) => [
      message,
      ...related.map((one) => one.message),
    ]);
    assert.ok(words.some((one) => one.includes('wand-and-face') || one.includes('The relation')));
  });

  it('explains a value by the expression and by the relation', () => {
    const formulas = explainedOf(all(lesson), 'delivery.doubled')!.steps.map(({ formula }) => formula);
    assert.ok(formulas.includes('delivery.doubled = 2 * (delivery.wand - delivery.path)'));
  });

  it('raises an own check with its values filled in, which a comment or a severity may turn off', () => {
    const own = ({ findings }: Analysis) => findings.filter(({ code }) => code === 'own/wand-far-right');
    const [found] = own(all(lesson));
    assert.equal(found?.severity, 'error');
    assert.equal(
      found.message,
      'The wand says 4.0 deg right ± 0.4 deg, path 1.0 deg right ± 0.3 deg, loft no value.',
    );
    assert.deepEqual(found.range.start, { line: 3, character: 8 });
    assert.deepEqual(own(all(lesson.replace('4 deg', '2 deg'))), []);
    assert.deepEqual(
      own(all(lesson.replace('± 0.4 deg', '± 0.4 deg # accept[own/wand-far-right]: a reason'))),
      [],
    );
    assert.deepEqual(own(all(lesson, `${workspace}severities: { own/wand-far-right: off }\n`)), []);
    assert.deepEqual(
      codesOf(analyseFiles({ 'swingwright.yaml': `${workspace}severities: { own/wand-far-right: off }\n` })),
      [],
    );
  });

  it('cannot tell, and says nothing, while a value of the check is missing', () => {
    assert.deepEqual(
      codesOf(all('swing: 1\nstudent: mira.student.yaml\ndelivery:\n  path: 1 deg right\n')).filter((code) =>
        code.startsWith('own/'),
      ),
      [],
    );
  });

  it('shows values in the chosen unit and reads bare numbers as before', () => {
    const { document } = all('swing: 1\nflight: { carry: 150 }\ndelivery: { club_speed: 40 m/s }\n');
    assert.ok(document.kind === 'swing');
    const [carry, speed] = ['flight.carry', 'delivery.club_speed'].map((id) => document.entries.get(id)!);
    assert.equal(carry!.readings[0]?.measure.value, 150);
    assert.equal(showValue(carry!.quantity, 150), '164 yd');
    assert.match(showValue(speed!.quantity, 40), /^144(\.0)? km\/h$/);
  });

  it('takes an own key like a known one, with its hover, and says which one a slip is near to', () => {
    const told = all(
      'swing: 1\ncheckpoints:\n  top: { rib_turn: 80 deg closed }\n  finish: { rib_turn: 3 deg }\ndelivery:\n  wnad: 3 deg\n',
    );
    const unknown = told.findings.filter(({ code }) => code === 'unknown-key');
    assert.equal(unknown.length, 2);
    assert.match(unknown[0]!.message, /checkpoints\.top/);
    assert.match(unknown[1]!.message, /perhaps meant as `wand`/);
    const text = JSON.stringify(findHover(told, { line: 2, character: 10 }));
    assert.match(text, /\*\*Rib turn\*\* at top: 80/);
  });

  it('keeps two workspaces apart that know an id and do not', () => {
    const cache = createCache();
    const analysed = (own: string) =>
      analyseFiles(
        { 'lesson.swing.yaml': lesson, 'mira.student.yaml': student, 'swingwright.yaml': own },
        cache,
      );
    for (let round = 0; round < 2; round++) {
      assert.ok(!codesOf(analysed(workspace)).includes('unknown-key'));
      assert.ok(codesOf(analysed('swingwright: 1')).includes('unknown-key'));
    }
  });

  it('marks in the workspace file what cannot be read, each at its place', () => {
    const bad = `swingwright: 1
quantities:
  delivery.a: { unit: dge, bounds: 0..1 deg, uncertainty: 1 deg }
  delivery.b: { like: delivery.fase }
  delivry.c: { like: delivery.face }
  checkpoints.d: { like: delivery.face }
  delivery.e: { unit: deg }
derived:
  delivery.f: { like: delivery.face, is: delivery.club_speed + 1 m/s }
  delivery.g: { like: delivery.face, is: delivery.nothing }
  delivery.h: { like: delivery.face }
relations:
  i: { says: delivery.face ≈ delivery.club_speed ± 1 deg }
  j: { says: delivery.face ≈ delivery.path ± 1 m }
  k: { says: delivery.face ≈ delivery.path ± 0 deg }
  l: { says: delivery.face }
checks:
  m: { when: delivery.face, message: "{delivery.fase}" }
  N_o: { when: delivery.face > 1 deg, message: far right }
show: { carry: yd, flight.carry: kg }
`;
    const found = analyseFiles({ 'swingwright.yaml': bad }).findings.map(
      ({ code, range }) => `${range.start.line} ${code}`,
    );
    for (const wanted of [
      '2 unknown-unit',
      '3 unknown-word',
      '4 unknown-word',
      '5 missing-key',
      '6 missing-key',
      '8 dimensions-do-not-match',
      '9 unknown-quantity',
      '10 missing-key',
      '12 dimensions-do-not-match',
      '13 dimensions-do-not-match',
      '14 uncertainty-not-positive',
      '15 unreadable-expression',
      '17 unreadable-expression',
      '17 unknown-quantity',
      '18 unknown-word',
      '19 unknown-word',
      '19 wrong-dimension',
    ])
      assert.ok(found.includes(wanted), `${wanted} in ${found.join(', ')}`);
  });

  it('never throws, whatever is typed there', () => {
    const piece = fc.constantFrom(...workspace.split(/(?<=[\s,{}:])/));
    fc.assert(
      fc.property(fc.nat(workspace.length), fc.array(piece, { maxLength: 6 }), (at, typed) => {
        all(lesson, workspace.slice(0, at) + typed.join(''));
        analyseFiles({ 'swingwright.yaml': workspace.slice(0, at) + typed.join('') + workspace.slice(at) });
      }),
      { numRuns: 60 },
    );
  });
});
