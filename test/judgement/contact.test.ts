// What a goal wants of the strike: a known word, judged where the record says anything of it.
import assert from 'node:assert/strict';
import { forecastOf } from '../../src/analysis/plan.ts';
import { contacts } from '../../src/registry/generated.ts';
import { builtIn, findContact } from '../../src/registry/registry.ts';
import { analyseFiles, assertFixedTo, assertMarked, assertNone } from '../checks/files.ts';

const record = (contact: string, delivery: string, hand = 'right') => ({
  'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
club: hybrid
delivery: { club_speed: 41 m/s ± 0.5 m/s, ${delivery} }
${contact === 'middle of the face' ? 'strike: { across: 2 mm toward toe ± 2 mm, height: 3 mm high ± 2 mm }' : ''}
goals: [{ contact: ${contact} }]`,
  'ansa.student.yaml': `student: 1
hand: ${hand}
bag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }`,
});

function chances(contact: string, delivery: string, hand?: string): Readonly<Record<string, number>> {
  const { subject, account } = analyseFiles(record(contact, delivery, hand));
  const { goals } = forecastOf(subject, account)!;
  return Object.fromEntries(goals.map(({ now }) => [now.wanted.quantity.id, now.chance!]));
}

const descending = 'low_point: { ahead: 8 cm ahead ± 2 cm, depth: 5 mm below ± 2 mm }';
const rising =
  'attack: 4 deg up ± 0.5 deg, low_point: { ahead: 8 cm behind ± 2 cm, depth: 20 mm above ± 5 mm }';

describe('the contact that is wanted', () => {
  it('is marked where it is no known word, and the nearest is offered', () => {
    assertMarked(
      'unknown-word',
      `swing: 1
goals:
  - { contact: ball befor turf }
#              ^^^^^^^^^^^^^^^ error[unknown-word]`,
    );
    assertFixedTo(
      'unknown-word',
      'swing: 1\ngoals: [{ contact: ball befor turf }] # as ever\n',
      'swing: 1\ngoals: [{ contact: ball before turf }] # as ever\n',
    );
    assertMarked('unknown-word', {
      'ansa.student.yaml': `student: 1
goals: [{ contact: nicely }]
#                  ^^^^^^ error[unknown-word]`,
    });
  });

  it('is taken in every word that is known', () => {
    for (const word of contacts.flatMap((contact) => [contact.word, ...contact.also]))
      assertNone('unknown-word', `swing: 1\ngoals: [{ contact: ${word} }]`);
  });

  it('means windows of quantities that there are, inside their bounds', () => {
    for (const { windows } of contacts)
      for (const { id, min, max } of windows) {
        const { bounds } = builtIn.find(id)!;
        assert.ok((min ?? bounds.min) < (max ?? bounds.max), id);
        assert.ok((min ?? bounds.min) >= bounds.min && (max ?? bounds.max) <= bounds.max, id);
      }
    assert.equal(findContact('ball first'), findContact('ball before turf'));
    assert.equal(findContact('constructor'), undefined);
  });

  it('is held against the low point, the attack, the depth and the spot on the face', () => {
    const first = chances('ball before turf', descending)['delivery.low_point.ahead']!;
    // 8 cm with an uncertainty of at most 2 cm: Φ(4).
    assert.ok(first > 0.999);
    assert.ok(chances('turf after the ball', rising)['delivery.low_point.ahead']! < 0.001);
    const up = chances('on the rise', rising);
    assert.ok(up['delivery.attack']! > 0.999 && up['delivery.low_point.ahead']! > 0.999);
    assert.ok(
      chances('no turf', 'low_point: { depth: 3 mm above ± 1 mm }')['delivery.low_point.depth']! > 0.95,
    );
    assert.ok(chances('no turf', descending)['delivery.low_point.depth']! < 0.05);
  });

  it('is the same for either hand', () => {
    for (const { word } of contacts) {
      const [right, left] = [chances(word, descending), chances(word, descending, 'left')];
      assert.deepEqual(Object.keys(right), Object.keys(left));
      for (const [id, chance] of Object.entries(right)) assert.equal(chance, left[id], id);
    }
    const middle = chances('middle of the face', descending);
    assert.ok(middle['strike.across']! > 0.999 && middle['strike.height']! > 0.99);
  });
});
