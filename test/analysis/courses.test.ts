// The next lesson of the same student with the same club decides a plan, whatever else lies between.
import assert from 'node:assert/strict';
import { courseOf, lastPlanOf, type Course } from '../../src/analysis/courses.ts';
import { courseInShort } from '../../src/analysis/outcome-words.ts';
import { lessonsOf, nameOf, recordOf } from './practice.ts';

const plan = `checkpoints: { impact: { lead_pressure: 60 % ± 3 % } }
plan: [{ change: checkpoints.impact.lead_pressure, to: 75 %, proof: delivery.path < 2 deg }]
`;
const measured =
  'checkpoints: { impact: { lead_pressure: 76 % ± 3 % } }\ndelivery: { path: 1 deg left ± 1 deg }\n';
const aside = 'checkpoints: { top: { shoulder_turn: 90 deg closed ± 2 deg } }\n';

async function course(texts: Readonly<Record<string, string>>, of = 'plan'): Promise<Course> {
  const lessons = await lessonsOf(named(texts));
  return courseOf(
    lessons.find((lesson) => nameOf(lesson) === of)!,
    lessons,
  )!;
}

function named(texts: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries(texts).map(([name, text]) => [`${name}.swing.yaml`, text]));
}

describe('the course of a plan', () => {
  const first = recordOf('2026-05-14', plan);

  it('is held against the first later lesson with the same club', async () => {
    const { state, held, isLast } = await course({
      plan: first,
      before: recordOf('2026-05-01', measured),
      driver: recordOf('2026-05-20', measured, { club: 'driver' }),
      next: recordOf('2026-06-02', measured),
      later: recordOf('2026-06-20', measured),
    });
    assert.deepEqual([state, nameOf(held?.next), isLast], ['held', 'next', true]);
    assert.equal(held?.outcome.proofs[0]?.state, 'met');
  });

  it('passes a lesson that measured nothing of it, and says so', async () => {
    const found = await course({
      plan: first,
      aside: recordOf('2026-05-20', aside),
      empty: recordOf('2026-05-21', 'notes: rain\n'),
      next: recordOf('2026-06-02', measured),
    });
    assert.deepEqual([found.silent.map(nameOf), nameOf(found.held?.next)], [['aside'], 'next']);
    assert.equal(
      courseInShort(found),
      '2026-05-20 measured nothing of it; next lesson 2026-06-02: 1 of 1 change made, 1 of 1 proof met',
    );
  });

  it('is open while there is no later lesson with the club, and names the one with another', async () => {
    const found = await course({ plan: first, driver: recordOf('2026-05-20', measured, { club: 'driver' }) });
    assert.equal(found.state, 'open');
    assert.equal(
      courseInShort(found),
      'No later lesson with `hybrid` yet; the next one, 2026-05-20, is with `driver`',
    );
  });

  it('follows a club that has got another name in the bag', async () => {
    const found = await course({
      plan: recordOf('2026-05-14', plan, { club: 'old hybrid' }),
      next: recordOf('2026-06-02', measured),
    });
    assert.equal(nameOf(found.held?.next), 'next');
    const strange = await course({
      plan: recordOf('2026-05-14', plan, { club: 'gone' }),
      next: recordOf('2026-06-02', measured),
    });
    assert.equal(strange.state, 'open');
  });

  it('takes lessons without a club together', async () => {
    const found = await course({
      plan: recordOf('2026-05-14', plan, { club: '' }),
      hybrid: recordOf('2026-05-20', measured),
      next: recordOf('2026-06-02', measured, { club: '' }),
    });
    assert.equal(nameOf(found.held?.next), 'next');
  });

  it('gives way to a later plan, whose own lesson still decides it', async () => {
    const found = await course({
      plan: first,
      next: recordOf('2026-06-02', `${measured}plan: [{ change: delivery.path, to: 0 deg }]\n`),
    });
    assert.deepEqual([nameOf(found.held?.next), found.isLast], ['next', false]);
    const replaced = await course({
      plan: first,
      next: recordOf('2026-06-02', `${aside}plan: [{ change: delivery.path, to: 0 deg }]\n`),
      later: recordOf('2026-06-20', measured),
    });
    assert.deepEqual([replaced.state, replaced.held], ['replaced', undefined]);
  });

  it('says that lessons of one day, or without a date, have no order', async () => {
    const found = await course({ plan: first, other: recordOf('2026-05-14', measured) });
    assert.equal(courseInShort(found), 'No later lesson with `hybrid` yet; one of the same day has no order');
    const undated = await course({ plan: recordOf(undefined, plan), next: recordOf('2026-06-02', measured) });
    assert.equal(courseInShort(undated), 'No date: nobody can tell which lesson comes next');
    const next = await course({ plan: first, next: recordOf(undefined, measured) });
    assert.equal(next.state, 'open');
  });

  it('is told in later lessons by the last plan before them', async () => {
    const lessons = await lessonsOf(
      named({
        plan: first,
        next: recordOf('2026-06-02', measured),
        second: recordOf(
          '2026-06-10',
          `${aside}predicted: { delivery.path: 3 deg right ± 1 deg by belief }\n`,
        ),
        last: recordOf('2026-06-20', measured),
      }),
    );
    const before = (name: string): string | undefined =>
      nameOf(
        lastPlanOf(
          lessons.find((lesson) => nameOf(lesson) === name)!,
          lessons,
        )?.plan,
      );
    assert.deepEqual(['plan', 'next', 'second', 'last'].map(before), [undefined, 'plan', 'plan', 'second']);
  });
});
