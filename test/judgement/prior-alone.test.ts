// A goal of which only usual swings speak is not known: a prior alone is nobody's number.
import assert from 'node:assert/strict';
import { forecastOf } from '../../src/analysis/plan.ts';
import { hasEntryBefore } from '../../src/model/entry-before.ts';
import { analyseFiles } from '../checks/files.ts';

const analysis = (rest: string) =>
  analyseFiles({
    'a.swing.yaml': `swing: 1\nstudent: r.student.yaml\nclub: seven iron\nconditions: { temperature: 20 °C }\n${rest}`,
    'r.student.yaml': 'student: 1\nhand: right\nbag: { seven iron: { kind: iron, loft: 34 deg } }\n',
  });
const delivery =
  'delivery: { club_speed: 34 m/s by radar, path: 0 deg by radar, face: 0 deg by radar, attack: 4 deg down by radar }\n';
const valuesOf = (rest: string) => {
  const { subject, account } = analysis(rest);
  return new Map(forecastOf(subject, account)!.goals.map(({ now }) => [now.wanted.quantity.id, now.value]));
};

describe('a number that is a prior alone', () => {
  it('does not stand for a goal of which nothing was entered', () => {
    const values = valuesOf(`${delivery}goals: [{ contact: middle of the face }]\n`);
    assert.equal(values.get('strike.across'), undefined);
  });

  it('gives way to what was entered, and to what follows from it with assumptions', () => {
    const struck = valuesOf(
      `${delivery}strike: { across: 4 mm toward toe }\ngoals: [{ contact: middle of the face, finish: 0 m }]\n`,
    );
    assert.ok(Math.abs(struck.get('strike.across')!) > 1e-3);
    assert.notEqual(struck.get('flight.finish'), undefined);
  });

  it('is told apart by what lies before it, and the weather does not count', () => {
    const { account } = analysis(delivery);
    assert.equal(hasEntryBefore(account!, 'flight.carry'), true);
    assert.equal(hasEntryBefore(account!, 'strike.across'), false);
    assert.equal(hasEntryBefore(account!, 'no.such'), false);
  });
});
