// Tests of the check relation-does-not-hold.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, type Files } from './files.ts';

const workspace = `swingwright: 1
quantities:
  delivery.shaft_droop: { unit: deg, bounds: -5..15 deg, uncertainty: 0.5 deg }
relations:
  droop-and-lean: { says: delivery.shaft_droop ≈ 0.2 * checkpoints.impact.shaft_lean ± 0.5 deg }`;

const files = (droop: string, mark = ''): Files => ({
  'lesson.swing.yaml': `swing: 1
delivery:
  shaft_droop: [${droop} ± 0.2 deg, ${droop} ± 0.2 deg]
${mark}checkpoints:
  impact: { shaft_lean: [8 deg forward ± 0.5 deg, 8 deg forward ± 0.5 deg] }`,
  'swingwright.yaml': workspace,
});

describe('relation-does-not-hold', () => {
  it('marks the first entry that the relation joins, and links to the relation', () => {
    const told = files(
      '9 deg',
      '#              ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ warning[relation-does-not-hold]\n',
    );
    assertMarked('relation-does-not-hold', told);
    const { findings } = analyseFiles(files('9 deg'));
    const found = findings.find(({ code }) => code === 'relation-does-not-hold');
    assert.match(found?.message ?? '', /`droop-and-lean`.*expected `delivery\.shaft_droop ≈/);
    assert.ok(found?.related.some(({ uri }) => uri.endsWith('swingwright.yaml')));
  });

  it('says nothing where it holds', () => {
    assertNone('relation-does-not-hold', files('1.6 deg'));
  });
});

describe('relation-does-not-hold among computed quantities', () => {
  const workspace = (says: string): string => `swingwright: 1
quantities: { delivery.wand: { like: delivery.face } }
derived:
  delivery.gap: { like: delivery.face_to_path, is: delivery.wand - delivery.path }
  delivery.wide: { like: delivery.face_to_path, is: 2 * delivery.gap }
relations: { it: { says: ${says} } }
`;
  const lesson = (wand: number): string => `swing: 1
student: a.student.yaml
delivery:
  wand: [${wand} deg right ± 0.1 deg, ${wand} deg right ± 0.1 deg]
  path: [1 deg right ± 0.1 deg, 1 deg right ± 0.1 deg]
`;
  const files = (says: string, text: string) => ({
    'a.swing.yaml': text,
    'a.student.yaml': 'student: 1\nhand: right\n',
    'swingwright.yaml': workspace(says),
  });
  const joined = (says: string, text: string): boolean =>
    analyseFiles(files(says, text)).agreement!.entries.some(({ id }) => id === 'relation:it');

  it('takes part where what they are computed from was entered, through a definition of a definition too', () => {
    for (const says of [
      'delivery.gap ≈ 1 deg ± 0.2 deg',
      'delivery.wide ≈ 2 deg ± 0.4 deg',
      'delivery.wide ≈ delivery.gap + 1 deg ± 0.2 deg',
    ]) {
      assert.ok(joined(says, lesson(2)), says);
      assertNone('relation-does-not-hold', files(says, lesson(2)));
      const { findings } = analyseFiles(files(says, lesson(9)));
      const found = findings.find(({ code }) => code === 'relation-does-not-hold');
      assert.ok(found, says);
      // At the one entry, with a link to the other.
      const isAtWand = found.range.start.line === 3;
      const other = isAtWand ? /^Club path/ : /^Wand/;
      assert.ok(isAtWand || found.range.start.line === 4);
      assert.ok(
        found.related.some(({ message }) => other.test(message)),
        JSON.stringify(found.related),
      );
    }
  });

  it('takes part for a computed quantity of the format', () => {
    const says = 'delivery.face_to_path ≈ 0 deg ± 0.2 deg';
    const text = (face: number): string =>
      lesson(2).replaceAll('wand', 'face').replaceAll('2 deg', `${face} deg`);
    assert.ok(joined(says, text(1)));
    assertNone('relation-does-not-hold', files(says, text(1)));
    const { findings } = analyseFiles(files(says, text(9)));
    assert.ok(findings.some(({ code }) => code === 'relation-does-not-hold'));
  });

  it('has no part where nothing that it follows from was entered', () => {
    const text = 'swing: 1\nstudent: a.student.yaml\ncheckpoints: { address: { stance_width: 47 cm } }\n';
    assert.ok(!joined('delivery.gap ≈ 1 deg ± 0.2 deg', text));
  });
});
