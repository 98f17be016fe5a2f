// The check that says which stated fault the numbers speak against.
import type { StatedVerdict } from '../judgement/judgement.ts';
import { contradictedUpTo, type JudgedLine } from '../judgement/verdict.ts';
import { relatedEntries } from './agreement.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';
import { mirroredWords, numbersOf, percent, placeWords } from './verdict-words.ts';

const book = `faults: 1
book:
  late-weight:
    title: Weight comes late
    at: impact
    evidence: checkpoints.impact.lead_pressure < 65 %`;

export const faultContradicted: Check = {
  code: 'fault-contradicted',
  severity: 'warning',
  title: 'The numbers speak against a stated fault',
  explanation: explain({
    found: `The record states a fault whose evidence holds with a probability of at most ${percent(contradictedUpTo)}.`,
    matters:
      'Either the fault is not there, or one of the numbers is off, or the fault book asks for the wrong evidence. The probability comes from the fit of all entries; of several lines of evidence it is the mean by weight.',
    raises: {
      'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
checkpoints:
  impact:
    lead_pressure: 82 % by pressure mat
faults:
  - { fault: late-weight, at: impact }`,
      'house.faults.yaml': book,
    },
    accepts: {
      'lesson.swing.yaml': `swing: 1
faults_from: house.faults.yaml
checkpoints:
  impact:
    lead_pressure: 58 % by pressure mat
faults:
  - { fault: late-weight, at: impact }`,
      'house.faults.yaml': book,
    },
    source:
      'propagation of uncertainty, JCGM 100:2008 and JCGM 101:2008; the threshold is a judgement: a coach who saw the fault is told otherwise only at nine to one.',
  }),
  kinds: ['swing'],
  find: (subject) =>
    (subject.judgement?.stated ?? [])
      .filter(({ verdict, isSeenHere }) => verdict === 'contradicted' && isSeenHere)
      .map((one) => findingOf(one, subject)),
};

function findingOf(one: StatedVerdict, subject: Subject): RawFinding {
  const against = one.lines.filter(({ probability }) => probability !== undefined && probability < 0.5);
  const said = against.map(
    (line) =>
      `${numbersOf(line)}, where the fault book expects \`${line.evidence.expression.value}\`${mirroredWords(line)}`,
  );
  const found = `\`${one.fault.id.value}\`${placeWords(one.at)} does not fit the numbers (probability ${percent(one.probability!)})`;
  return {
    span: one.stated.fault.span,
    message: `${found}: ${said.join('; ')}.`,
    related: [
      ...relatedEntries(subject, idsOf(against, subject)),
      ...against.map(({ evidence }) => ({
        uri: one.uri,
        span: evidence.expression.span,
        message: 'The evidence in the fault book',
      })),
    ],
  };
}

/** The entries that speak: those of a computed quantity are the ones that it came from. */
function idsOf(lines: readonly JudgedLine[], { derivation }: Subject): readonly string[] {
  const ids = lines.flatMap(({ values }) =>
    values.flatMap(({ quantity: { id } }) => derivation?.values.get(id)?.from ?? []),
  );
  return [...new Set(ids)];
}
