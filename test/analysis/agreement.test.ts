// Through the whole analysis: directions that every coach knows, one finding for one slip, and records that lead nowhere.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { conflictKinds } from '../../src/checks/conflict-kinds.ts';
import { analyseFiles } from '../checks/files.ts';

const student = `student: 1
hand: HAND
stature: 175 cm
body_table: male
bag:
  seven: { kind: iron, loft: 33 deg, lie: 62 deg, length: 37 in, head_mass: 268 g }
`;

interface Entries {
  readonly hand?: 'left' | 'right';
  readonly address?: string;
  readonly impact?: string;
  readonly delivery?: string;
  readonly more?: string;
}

function analysed({ hand = 'right', address = '', impact = '', delivery = '', more = '' }: Entries) {
  return analyseFiles({
    'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
club: seven
checkpoints:
  address: { ${address} }
  impact: { ${impact} }
delivery: { ${delivery} }
${more}`,
    'mira.student.yaml': student.replace('HAND', hand),
  });
}

function valueIn(entries: Entries, id: string): number {
  const value = analysed(entries).derivation?.expected.get(id);
  assert.ok(value, `${id} has no value`);
  return value.value;
}

const swung = 'club_speed: 36 m/s, release_ratio: 2.3 ± 0.1, arc: { inclination: 60 deg ± 1 deg }';
const leaning = (lean: number): string =>
  `lead_shoulder: 8 cm ahead, shaft_lean: ${lean} deg forward ± 1 deg`;
const behind = (shoulder: string): string => `lead_shoulder: ${shoulder}, shaft_lean: 8 deg forward ± 1 deg`;

// Common practice, no source.
describe('signs that are known in practice', () => {
  it('an upper body further behind takes the low point back and makes the attack shallower', () => {
    const low = (at: string) => valueIn({ impact: behind(at), delivery: swung }, 'delivery.low_point.ahead');
    const attack = (at: string) => valueIn({ impact: behind(at), delivery: swung }, 'delivery.attack');
    assert.ok(low('2 cm ahead') < low('12 cm ahead'));
    assert.ok(attack('2 cm ahead') > attack('12 cm ahead'));
  });

  it('an upper body further behind takes pressure off the lead foot', () => {
    const pressure = (head: string) =>
      valueIn(
        {
          address: `stance_width: 42 cm, ball_position: 8 cm behind, pelvis: 6 cm behind, sternum: ${head}, lead_pressure: 50 %`,
        },
        'checkpoints.address.lead_pressure',
      );
    assert.ok(pressure('16 cm behind') < pressure('6 cm behind'));
  });

  it('more handle lean moves the low point ahead and takes loft off', () => {
    const at = (lean: number, id: string) => valueIn({ impact: leaning(lean), delivery: swung }, id);
    assert.ok(at(12, 'delivery.low_point.ahead') > at(4, 'delivery.low_point.ahead'));
    assert.ok(at(12, 'delivery.delivered_loft') < at(4, 'delivery.delivered_loft'));
  });

  it('a steeper strike sends the path outward, for either hand', () => {
    const path = (attack: number, hand: 'left' | 'right') =>
      valueIn(
        { hand, delivery: `attack: ${attack} deg down, arc: { direction: 0 deg, inclination: 60 deg }` },
        'delivery.path',
      );
    assert.ok(path(7, 'right') > path(2, 'right'));
    assert.ok(path(7, 'left') < path(2, 'left'));
  });

  it('a face that points right of the path curves the ball right, for either hand', () => {
    const curve = (face: string, hand: 'left' | 'right') =>
      valueIn(
        {
          hand,
          delivery: `club_speed: 36 m/s, attack: 4 deg down, path: 0 deg, face: ${face}, delivered_loft: 26 deg`,
        },
        'flight.curve',
      );
    for (const hand of ['left', 'right'] as const) {
      assert.ok(curve('3 deg right', hand) > 0);
      assert.ok(curve('3 deg left', hand) < 0);
    }
  });

  it('a thin strike is low on the face', () => {
    const height = (depth: string) =>
      valueIn(
        {
          impact: 'shaft_lean: 7 deg forward',
          delivery: `attack: 3 deg down, arc: { radius: 1.35 m, inclination: 60 deg }, low_point: { depth: ${depth} ± 1 mm }`,
          more: 'strike: { height: 0 mm }',
        },
        'strike.height',
      );
    assert.ok(height('4 mm above') < height('6 mm below'));
  });
});

const codes: ReadonlySet<string> = new Set(conflictKinds.map(({ code }) => code));
const numbers = /NaN|Infinity|undefined/;

function assertSound(text: string, name = 'lesson.swing.yaml'): ReturnType<typeof analyseFiles> {
  const analysis = analyseFiles({ [name]: text, 'mira.student.yaml': student.replace('HAND', 'left') });
  for (const { message } of analysis.findings) assert.doesNotMatch(message, numbers);
  const { derivation, agreement } = analysis;
  const values = [...(derivation?.values.values() ?? []), ...(derivation?.expected.values() ?? [])];
  for (const { id, value, u } of values)
    assert.ok(Number.isFinite(value) && (u === null || Number.isFinite(u)), `${id}: ${value} ± ${u}`);
  for (const entry of agreement?.entries ?? [])
    for (const number of [entry.implied, entry.uImplied, entry.w, entry.redundancy])
      assert.ok(number === null || Number.isFinite(number), entry.id);
  return analysis;
}

const withStudent = 'swing: 1\nstudent: mira.student.yaml\nclub: seven\n';

describe('records that lead nowhere', () => {
  it('one entry only is unchecked, and nothing is found', () => {
    const { agreement, findings } = assertSound('swing: 1\ndelivery: { attack: 4 deg down }');
    assert.deepEqual(
      agreement?.entries.map(({ verdict }) => verdict),
      ['unchecked'],
    );
    assert.ok(!findings.some(({ code }) => codes.has(code)));
  });

  it('nothing at all, and no student, give no number', () => {
    assert.equal(assertSound('swing: 1\n').derivation?.values.size, 0);
    assertSound(
      'swing: 1\nstudent: nobody.student.yaml\ndelivery: { face: 1 deg right }\nflight: { start: 9 deg left }',
    );
  });

  it('a contradiction by fifty standard uncertainties is one finding', () => {
    const { findings } = assertSound(
      'swing: 1\ndelivery: { face: 1 deg right ± 0.5 deg, path: 5 deg right ± 0.5 deg, face_to_path: 40 deg right ± 0.5 deg }',
    );
    assert.deepEqual(
      findings.filter(({ code }) => codes.has(code)).map(({ code }) => code),
      ['face-to-path-against-face'],
    );
  });

  it('zero club speed and planes that stand upright or lie flat give findings or no number', () => {
    for (const inclination of ['0 deg', '90 deg', '180 deg', '-20 deg'])
      assertSound(
        `${withStudent}delivery: { club_speed: 0 m/s, attack: 5 deg down, path: 1 deg right, face: 0 deg, arc: { inclination: ${inclination}, radius: 0 m, direction: 0 deg }, low_point: { ahead: 9 cm ahead } }
flight: { ball_speed: 50 m/s, carry: 0 m, start: 90 deg right, curve: 200 m left }`,
      );
  });

  it('every entry may be absurd', () => {
    const entries = [
      'club_speed',
      'attack',
      'path',
      'face',
      'face_to_path',
      'delivered_loft',
      'obliquity',
      'release_ratio',
    ];
    const absurd = fc.constantFrom('0', '1e9', '-1e9', '89', '-180', '1e-12', '3 ± 1e-12', '3 ± 1e12');
    const chosen = fc.dictionary(fc.constantFrom(...entries), absurd, { minKeys: 1, maxKeys: 8 });
    fc.assert(
      fc.property(chosen, absurd, absurd, (delivery, carry, radius) => {
        const lines = Object.entries(delivery).map(([key, value]) => `  ${key}: ${value}\n`);
        assertSound(
          `${withStudent}delivery:\n${lines.join('')}  arc: { radius: ${radius}, inclination: 60 }\nflight: { carry: ${carry}, start: 2 right }\n`,
        );
      }),
      { numRuns: 60 },
    );
  });
});
