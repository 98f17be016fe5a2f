// What the coach's own judgement costs: beliefs held against physics, a plan foreseen, and the search for a proposal, for the sample
// lessons; each number of a lesson is new in each round, so that nothing is kept from before. Bundled, in one process.
import { readFileSync } from 'node:fs';
import { analyse } from '../../src/analysis/analyse.ts';
import { judgementOf } from '../../src/analysis/judge.ts';
import { forecastOf, proposalOf } from '../../src/analysis/plan.ts';
import type { Analysis, FileState } from '../../src/analysis/result.ts';
import { accountOf } from '../../src/model/account.ts';

const lessons = [
  'tove/2026-04-18-seven-iron.swing.yaml',
  'bram/2026-05-02-driver.swing.yaml',
  'odile/2026-05-16-four-hybrid.swing.yaml',
];
const [warmUp, rounds] = [10, 30];
/** Two changes that every one of the lessons can be asked about. */
const plan = `plan:
  - { change: delivery.face_to_path, to: 0 deg, because: curve, proof: delivery.face_to_path < 1 deg }
  - { change: delivery.attack, to: 2 deg down, because: finish }
`;
const practice = 'file:///practice/';
const textOf = (uri: string): FileState => {
  try {
    return { kind: 'text', text: readFileSync(uri.replace(practice, 'samples/'), 'utf8') };
  } catch {
    return { kind: 'missing' };
  }
};

function analysed(lesson: string, text: string): Analysis {
  const uri = practice + lesson;
  return analyse(uri, { file: (at) => (at === uri ? { kind: 'text', text } : textOf(at)) });
}

/** Processor time, ms, of all threads. */
function timed(run: () => unknown): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

const median = (values: readonly number[]): string =>
  values.toSorted((a, b) => a - b)[values.length >> 1]!.toFixed(1);

for (const lesson of lessons) {
  const state = textOf(practice + lesson);
  if (state.kind !== 'text') throw new Error(`no sample ${lesson}`);
  const text = state.text.includes('\nplan:') ? state.text : state.text + plan;
  const times: { claims: number[]; forecast: number[]; proposal: number[] } = {
    claims: [],
    forecast: [],
    proposal: [],
  };
  let claims = 0;
  for (let round = -warmUp; round < rounds; round++) {
    const typed = text.replace(
      /(\bball_speed: |\bclub_speed: )([\d.]+)/,
      (_, key: string, number: string) => `${key}${(Number(number) + (round + warmUp) * 0.0137).toFixed(4)}`,
    );
    const { subject, account, document } = analysed(lesson, typed);
    if (account?.outcome === undefined || document.kind !== 'swing')
      throw new Error(`no numbers in ${lesson}`);
    // The same numbers in an object of its own: nothing has been asked of it yet.
    const fresh = (): typeof account => {
      const { outcome, ...rest } = accountOf(account.situation);
      return { ...rest, outcome: outcome && { ...outcome, last: { ...outcome.last } } };
    };
    const [a, b, c] = [fresh(), fresh(), fresh()];
    const judged = timed(() => {
      claims =
        judgementOf(document, subject.faultBooks, subject.student?.document, a, subject.registry, 1)?.claims
          .length ?? 0;
    });
    const foreseen = timed(() => forecastOf(subject, b));
    const proposed = timed(() => proposalOf(subject, c, () => undefined));
    if (round === -warmUp)
      console.log(
        `${lesson}: cold: beliefs ${judged.toFixed(1)} ms, plan ${foreseen.toFixed(1)} ms, proposal ${proposed.toFixed(1)} ms`,
      );
    if (round < 0) continue;
    times.claims.push(judged);
    times.forecast.push(foreseen);
    times.proposal.push(proposed);
  }
  console.log(
    `${lesson}: warm medians: ${claims} beliefs ${median(times.claims)} ms, plan ${median(times.forecast)} ms, proposal ${median(times.proposal)} ms`,
  );
}
