// Which plan is open at a lesson: one rule for what is held against it, what is measured next and what a new record asks for.
import assert from 'node:assert/strict';
import { lastPlanOf } from '../../src/analysis/courses.ts';
import { nextEntriesOf } from '../../src/analysis/next-entries.ts';
import { openPlanOf } from '../../src/analysis/open-plan.ts';
import { clubOf } from '../../src/analysis/same-club.ts';
import { lessonsOf, nameOf, recordOf } from './practice.ts';

const plan = 'plan: [{ change: checkpoints.address.stance_width, to: 41 cm }]\n';
const measured = 'delivery: { path: 1 deg left ± 1 deg }\n';

const texts = {
  'first.swing.yaml': recordOf('2026-05-01', plan, { club: 'old hybrid' }),
  'driver.swing.yaml': recordOf('2026-05-10', plan, { club: 'driver' }),
  'sameday.swing.yaml': recordOf('2026-05-01', measured, { club: 'Old  Hybrid' }),
  'now.swing.yaml': recordOf('2026-06-02', measured),
  'undated.swing.yaml': recordOf(undefined, measured),
};

describe('the open plan', () => {
  it('is that of the last earlier lesson with the same club, whatever the bag calls it', async () => {
    const lessons = await lessonsOf(texts);
    const open = lessons.map((lesson) => {
      const found = openPlanOf(lessons, { date: lesson.date, club: clubOf(lesson) });
      return [nameOf(lesson), nameOf(found?.from)];
    });
    assert.deepEqual(Object.fromEntries(open), {
      first: undefined,
      sameday: undefined,
      driver: undefined,
      now: 'first',
      undated: undefined,
    });
  });

  it('is the same one for what is held against it and for what is measured next', async () => {
    const lessons = await lessonsOf(texts);
    for (const lesson of lessons) {
      const found = openPlanOf(lessons, { date: lesson.date, club: clubOf(lesson) });
      assert.equal(lastPlanOf(lesson, lessons)?.plan, found?.from, nameOf(lesson));
      const asked = nextEntriesOf(lesson.analysis, lessons).some(
        ({ reason, quantity }) => reason === 'proof' && quantity.id === 'checkpoints.address.stance_width',
      );
      assert.equal(asked, found !== undefined, nameOf(lesson));
    }
  });
});
