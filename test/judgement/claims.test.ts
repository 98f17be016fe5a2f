// What physics says of a belief is what the same plan would be told: the face is kept while the path moves.
import assert from 'node:assert/strict';
import { forecastOf } from '../../src/analysis/plan.ts';
import type { Claim } from '../../src/judgement/claims.ts';
import { analyseFiles } from '../checks/files.ts';

const deg = Math.PI / 180;

const files = (tendsTo: string, evidence = 'delivery.path < -3 deg'): Record<string, string> => ({
  'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
club: seven iron
faults_from: house.faults.yaml
delivery: { club_speed: 36 m/s, attack: 1 deg down by radar, path: 6 deg left ± 0.05 deg, face: 1 deg left by radar, low_point: { ahead: 1 cm ahead by video } }
flight: { start: 2 deg left by radar, curve: 13 m right by radar, carry: 140 m by radar }
faults: [{ fault: from-outside }]
plan: [{ change: delivery.path, to: 5 deg left ± 0.001 deg, because: [finish] }]
goals: [{ finish: 0 m }]`,
  'ansa.student.yaml':
    'student: 1\nhand: right\nbag: { seven iron: { kind: iron, loft: 32 deg, length: 37 in, head_mass: 270 g } }',
  'house.faults.yaml': `faults: 1
book:
  from-outside:
    evidence: ${evidence}
    tends_to: [${tendsTo}]`,
});

const effects = (...rest: readonly string[]): string => rest.map((one) => `{ effect: ${one} }`).join(', ');

function claimsIn(tendsTo: string, evidence?: string): readonly Claim[] {
  return analyseFiles(files(tendsTo, evidence)).subject.judgement!.claims;
}

describe('a claim', () => {
  const onPath = effects(
    'flight.start, direction: left, size: 0.2 deg per deg',
    'flight.finish, direction: right, size: 1.5 m per deg',
    'flight.curve, direction: right, size: 2 m per deg',
  );

  it('of the path keeps the face, and says what a plan of it is told', () => {
    const analysis = analyseFiles(files(onPath));
    const { outlooks } = forecastOf(analysis.subject, analysis.account)!.whole;
    for (const { quantity, toward, over, physics } of analysis.subject.judgement!.claims) {
      assert.ok(Math.abs(over - deg) < 1e-12 && toward === -1);
      const planned = outlooks.get(quantity.id)!.difference!;
      // The plan goes about a degree to the right and the claim one to the left.
      assert.ok(
        Math.abs(physics.amount! + planned) < 0.15 * Math.abs(planned),
        `${quantity.id}: ${physics.amount} ${planned}`,
      );
    }
  });

  it('of the path that bends the ball to the other side is not opposed by physics', () => {
    assert.deepEqual(
      claimsIn(onPath).map(({ physics }) => physics.answer),
      ['agrees', 'agrees', 'agrees'],
    );
    const { findings } = analyseFiles(files(onPath));
    assert.ok(!findings.some(({ code }) => code === 'belief-against-physics'));
  });

  it('of the face, while the path moves, is for the coach to say', () => {
    for (const { physics } of claimsIn(
      effects('delivery.face, direction: left', 'delivery.face_to_path, direction: left'),
    ))
      assert.equal(physics.reason, 'the model keeps the face where it points while the path moves');
  });

  it('whose cause is the quantity that it changes says that it is the same', () => {
    const [same] = claimsIn(
      effects('delivery.low_point.ahead, direction: behind'),
      'delivery.low_point.ahead < 3 cm',
    );
    assert.equal(same!.physics.reason, 'the evidence is of the same quantity as the effect');
    const [neither] = claimsIn(effects('flight.curve, direction: right'), 'abs(delivery.path) > 3 deg');
    assert.equal(neither!.physics.reason, 'the evidence names no quantity that goes one way');
  });
});
