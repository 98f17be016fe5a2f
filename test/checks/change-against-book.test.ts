// Tests of the check change-against-book.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf, type Files } from './files.ts';

const files = (
  plan: string,
  change = 'change: checkpoints.address.stance_width, by: 5 cm narrower',
  hand = 'hand: right',
): Files => ({
  'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
faults_from: house.faults.yaml
checkpoints: { address: { stance_width: 46 cm, stance_direction: 2 deg right } }
faults: [{ fault: trail-side }]
plan:
${plan}`,
  'ansa.student.yaml': `student: 1\n${hand}`,
  'house.faults.yaml': `faults: 1\nbook:\n  trail-side: { changes: [{ ${change} }] }`,
});
const stance = (to: string): string =>
  `  - { change: checkpoints.address.stance_width, to: ${to}, because: trail-side }`;
const direction = (to: string): string =>
  `  - { change: checkpoints.address.stance_direction, to: ${to}, because: trail-side }`;

describe('change-against-book', () => {
  it('marks what is to become wider where the book asks for narrower', () => {
    const analysis = assertMarked(
      'change-against-book',
      files(`${stance('52 cm')}
#                                                   ^^^^^ warning[change-against-book]`),
    );
    assert.equal(
      messageOf(analysis, 'change-against-book'),
      'Stance width goes wider from 46 cm; against `trail-side` the fault book asks for `5 cm narrower`.',
    );
    const finding = analysis.findings.find(({ code }) => code === 'change-against-book');
    assert.ok(finding!.related[0]!.uri.endsWith('house.faults.yaml'));
  });

  it('marks a window all of which lies on the wrong side, and none that holds what is there', () => {
    assert.match(messageOf(analyseFiles(files(stance('48..52 cm'))), 'change-against-book'), /goes wider/);
    assertNone('change-against-book', files(stance('44..52 cm')));
  });

  it('takes a change the way of the book, one for another reason, and one of another quantity', () => {
    assertNone('change-against-book', files(stance('41 cm')));
    assertNone('change-against-book', files(stance('52 cm').replace('trail-side', 'carry')));
    assertNone('change-against-book', files('  - { change: delivery.path, to: 0 deg, because: trail-side }'));
    assertNone('change-against-book', files(stance('')));
  });

  it('holds a value of the book against it, and is content where the book asks for either way', () => {
    const to = 'change: checkpoints.address.stance_width, to: 40..42 cm';
    assert.match(messageOf(analyseFiles(files(stance('48 cm'), to)), 'change-against-book'), /`40\.\.42 cm`/);
    assertNone('change-against-book', files(stance('43 cm'), to));
    const both = `${to} }, { change: checkpoints.address.stance_width, by: 5 cm wider`;
    assertNone('change-against-book', files(stance('48 cm'), both));
  });

  it('is mirrored for a left-handed player, and says nothing of sides while the hand is not known', () => {
    const left = 'change: checkpoints.address.stance_direction, by: 3 deg left';
    const isFound = (to: string, hand: string): boolean =>
      messageOf(analyseFiles(files(direction(to), left, hand)), 'change-against-book') !== '';
    assert.deepEqual(
      ['hand: right', 'hand: left', 'hand:'].map((hand) => [
        isFound('5 deg right', hand),
        isFound('1 deg left', hand),
      ]),
      [
        [true, false],
        [false, true],
        [false, false],
      ],
    );
  });
});
