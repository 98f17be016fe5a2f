// Holds the windows of path and face to the flight that they come from, for both hands.
import assert from 'node:assert/strict';
import { derive } from '../../src/model/derive.ts';
import { windowsForGoal, windowsFromFlight } from '../../src/model/windows.ts';
import type { Situation } from '../../src/model/value.ts';
import { degree, everything, situationOf } from './situations.ts';

const all: Situation = {
  hand: 'right',
  clubKind: 'hybrid',
  windBearing: undefined,
  observations: everything,
};

function leftHanded(situation: Situation): Situation {
  const lateral = /path$|face$|direction$|start$|tilt$|curve$|finish$/;
  const observations = [...situation.observations].map(
    ([id, o]) => [id, lateral.test(id) ? { ...o, value: -o.value } : o] as const,
  );
  return { ...situation, hand: 'left', observations: new Map(observations) };
}

describe('the windows from the flight', () => {
  it('do not change with the coach’s own entries of path and face', () => {
    const observations = new Map(everything);
    for (const id of ['delivery.path', 'delivery.face', 'delivery.face_to_path'])
      observations.set(id, { id, value: 0.2, u: 0.001 });
    const [one, other] = [windowsFromFlight(all), windowsFromFlight({ ...all, observations })];
    for (const [id, { value }] of one) assert.ok(Math.abs(value - other.get(id)!.value) < 1e-3, id);
  });

  it('are empty where nothing of the flight was entered', () => {
    const situation = situationOf(['delivery.club_speed', 'club.loft', 'delivery.path', 'delivery.face']);
    assert.equal(windowsFromFlight(situation).size, 0);
  });

  it('hold the delivery that the flight was computed from', () => {
    const delivered = situationOf([
      'delivery.club_speed',
      'delivery.attack',
      'delivery.path',
      'delivery.face',
      'delivery.delivered_loft',
      'strike.across',
      'strike.height',
    ]);
    const { values } = derive(delivered);
    const observations = new Map(delivered.observations);
    for (const id of [
      'flight.start',
      'flight.curve',
      'flight.carry',
      'flight.spin_tilt',
      'flight.launch_angle',
    ])
      observations.set(id, { id, value: values.get(id)!.value, u: everything.get(id)!.u });
    for (const id of ['delivery.path', 'delivery.face']) observations.delete(id);
    const windows = windowsFromFlight({ ...delivered, observations });
    for (const id of ['delivery.path', 'delivery.face', 'delivery.face_to_path'] as const) {
      const window = windows.get(id)!;
      const truth = values.get(id)!.value;
      assert.ok(Math.abs(window.value - truth) < 0.5 * window.u, `${id}: ${window.value}, not ${truth}`);
    }
  });

  it('are mirrored for a left-hander', () => {
    const [right, left] = [windowsFromFlight(all), windowsFromFlight(leftHanded(all))];
    for (const [id, { value }] of right) {
      const sign = id === 'delivery.obliquity' ? 1 : -1;
      assert.ok(Math.abs(left.get(id)!.value - sign * value) < 1e-9, id);
    }
  });
});

describe('the windows for a goal', () => {
  const goal = { start: { min: degree, max: 2 * degree }, finish: { min: -3, max: 0 } };

  it('lie between face and path as practice has it: the face near the start, the path beyond it for a draw', () => {
    const windows = windowsForGoal(all, goal);
    const [path, face, between] = (['delivery.path', 'delivery.face', 'delivery.face_to_path'] as const).map(
      (id) => windows.get(id)!,
    );
    assert.ok(face!.min < 1.5 * degree && face!.max > 0);
    assert.ok(path!.min > face!.min && path!.max > face!.max);
    assert.ok(between!.max < 0);
  });

  it('name the face and path of the middle of the goal, as the model itself has them', () => {
    const windows = windowsForGoal(all, goal);
    const middle = windowsForGoal(all, {
      start: { min: 1.5 * degree, max: 1.5 * degree },
      finish: { min: -1.5, max: -1.5 },
    });
    for (const [id, { min }] of middle) assert.ok(Math.abs(windows.get(id)!.middle - min) < 0.1 * degree, id);
    assert.equal(middle.size, 3);
  });

  it('are mirrored for a left-hander, whose draw curves to the right', () => {
    const shape = { start: undefined, curve: -1, large: false } as const;
    const right = windowsForGoal(all, { shape }).get('delivery.face_to_path')!;
    const left = windowsForGoal(leftHanded(all), { shape }).get('delivery.face_to_path')!;
    assert.ok(Math.abs(left.min + right.max) < 1e-9 && Math.abs(left.max + right.min) < 1e-9);
    assert.ok(right.max < 0);
  });

  it('ask for more curve of a shape where more carry is wanted', () => {
    const shape = { start: undefined, curve: -1, large: false } as const;
    const of = (carry: number) =>
      windowsForGoal(all, { shape, carry: { min: carry, max: carry } }).get('delivery.face_to_path')!;
    assert.ok(of(200).min < of(120).min && of(200).max < of(120).max);
  });

  it('give face-to-path alone where only the curve is wanted', () => {
    assert.deepEqual(
      [...windowsForGoal(all, { curve: { min: -12, max: -6 } }).keys()],
      ['delivery.face_to_path'],
    );
  });

  it('are empty without a club speed, without a goal, and for what cannot be reached', () => {
    assert.equal(windowsForGoal(situationOf(['delivery.delivered_loft']), goal).size, 0);
    assert.equal(windowsForGoal(all, {}).size, 0);
    assert.equal(windowsForGoal(all, { start: { min: 0, max: 0 }, curve: { min: 500, max: 600 } }).size, 0);
  });
});
