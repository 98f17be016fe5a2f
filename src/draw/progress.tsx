// How a student came along as a page that stands alone: for each club time lines, goals, shots lesson by lesson, plans and conflicts; judges nothing.
import { dayOf } from '../analysis/outcome-words.ts';
import type { ClubProgress } from '../analysis/progress.ts';
import { gapsOf, goalPointWords, heldWords, movedWords, spanWords } from '../analysis/progress-words.ts';
import { loadsWords } from '../analysis/cautions.ts';
import { whatGoalsGoBy } from '../analysis/comparison-words.ts';
import { nameWithin } from '../checks/agreement.ts';
import { Head } from './number-table.tsx';
import { pageOf, ScrolledTable } from './page.tsx';
import type { Picture } from './picture.tsx';
import { ProofRows } from './proof-rows.tsx';
import { hasLandings, SmallMultiples } from './small-multiples.tsx';
import { cssTheme as theme } from './theme.ts';
import { Timeline } from './timeline.tsx';

/** The whole page as HTML text; `clubs` are those of `progressOf`. */
export function progressPage(student: string, clubs: readonly ClubProgress[]): string {
  return pageOf({
    title: `Progress of ${student}`,
    children: (
      <>
        <h1>{`Progress of ${student}`}</h1>
        {clubs.length === 0 && <p class="lead">There are no lessons to show.</p>}
        {clubs.map((club, i) => (
          <Club key={i} club={club} prefix={`club-${i + 1}`} />
        ))}
        {clubs.length > 0 && (
          <footer>
            <p>
              Bars reach 1.96 standard uncertainties to each side: in 95 of 100 cases the true value lies
              within. A round mark is an entry, a square the mean of shots, a diamond with dashes computed
              from entries. Hatching is what a goal asks for, an outlined bar what a plan asked for until the
              next lesson. In the pictures of shots an ellipse holds 95 % of the shots; a dotted one says how
              sure the place of a single flight is.
            </p>
            <p>
              Numbers describe swings; they do not say what a body can bear. If something hurts, stop, and ask
              a physician or physiotherapist.
            </p>
          </footer>
        )}
      </>
    ),
  });
}

function Club({ club, prefix }: { readonly club: ClubProgress; readonly prefix: string }): Picture {
  const { lessons, undated, series, goals, held, conflicts } = club;
  const loads = loadsWords([...lessons, ...undated].map(({ analysis }) => analysis));
  const [first, last] = [lessons[0]?.date, lessons.at(-1)?.date];
  const hasGoals = goals.length > 0 && lessons.length > 0;
  return (
    <section>
      <h2>{club.club ?? 'Without a club'}</h2>
      <p class="lead">{spanWords(club)}</p>
      {gapsOf(club).map((gap, i) => (
        <p key={i} class="soft">
          {gap}
        </p>
      ))}
      {first !== undefined && last !== undefined && (
        <div class="pictures">
          {series.map((one) => (
            <figure key={one.quantity.id}>
              <figcaption>{nameWithin(one.quantity)}</figcaption>
              <Timeline
                series={one}
                goal={goals.find(({ quantity }) => quantity.id === one.quantity.id)}
                span={[first, last]}
                name={`${prefix}-${one.quantity.id.replaceAll('.', '-')}`}
                theme={theme}
              />
              <p class="soft">{movedWords(one)}</p>
            </figure>
          ))}
        </div>
      )}
      {hasLandings(lessons) && (
        <>
          <h3>Where the balls came down</h3>
          <figure>
            <SmallMultiples lessons={lessons} goals={goals} name={`${prefix}-landings`} theme={theme} />
          </figure>
        </>
      )}
      {hasGoals && (
        <>
          <h3>Goals</h3>
          <p class="soft">{whatGoalsGoBy}</p>
          <ScrolledTable name={`Goals with ${club.club ?? 'no club'}`}>
            <Head titles={['Lesson', ...goals.map(({ quantity }) => nameWithin(quantity))]} />
            <tbody>
              {lessons.map((lesson) => (
                <tr key={lesson.uri}>
                  <th scope="row">{dayOf(lesson)}</th>
                  {goals.map((goal, i) => {
                    const point = goal.points.find((one) => one.lesson === lesson);
                    return <td key={i}>{point === undefined ? '–' : goalPointWords(goal, point)}</td>;
                  })}
                </tr>
              ))}
            </tbody>
          </ScrolledTable>
        </>
      )}
      {lessons.length > 0 && (
        <>
          <h3>Plans and conflicts</h3>
          {loads !== undefined && <p>{loads}</p>}
          <figure>
            <ProofRows club={club} span={[first!, last!]} name={`${prefix}-proofs`} theme={theme} />
          </figure>
          <ScrolledTable name={`Plans with ${club.club ?? 'no club'}`}>
            <Head titles={['Lesson', 'What became of the plan', 'Entries in conflict']} />
            <tbody>
              {conflicts.map(({ lesson, count }) => {
                const plan = held.find((one) => one.lesson === lesson);
                return (
                  <tr key={lesson.uri}>
                    <th scope="row">{dayOf(lesson)}</th>
                    <td>{plan === undefined ? '–' : heldWords(plan)}</td>
                    <td>{count === 0 ? 'none' : count}</td>
                  </tr>
                );
              })}
            </tbody>
          </ScrolledTable>
        </>
      )}
    </section>
  );
}
