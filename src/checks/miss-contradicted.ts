// The check that says which of the student's misses the numbers of the record do not show.
import { normalBelow } from '../model/quantiles.ts';
import { contradictedUpTo } from '../judgement/verdict.ts';
import type { StatedMiss } from '../record/document.ts';
import { meaningOfMiss } from '../registry/meaning-of-miss.ts';
import type { Miss, Quantity } from '../registry/quantity.ts';
import { findMiss } from '../registry/registry.ts';
import { relatedEntries } from './agreement.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { handOf } from './handed.ts';
import { straightTo } from './shape-evidence.ts';
import type { Subject } from './subject.ts';
import { percent } from './verdict-words.ts';
import { lowerFirst } from '../measure/quote.ts';

const record = (curve: string): string => `swing: 1
student: rita.student.yaml
flight: { curve: ${curve}, carry: 120 m by radar }
misses: [slice]`;
const student = 'student: 1\nhand: right';

export const missContradicted: Check = {
  code: 'miss-contradicted',
  severity: 'information',
  title: 'The numbers do not show a miss',
  explanation: explain({
    found: `The student complains of a miss, and what is known of this record shows it with a probability of at most ${percent(contradictedUpTo)}.`,
    matters:
      'Either the miss came in other swings than those that were measured, or a number is off. Looked at is the first sign of the miss: for a slice a curve beyond what is called straight, for a heavy shot a low point behind the ball.',
    raises: { 'lesson.swing.yaml': record('0 m by radar'), 'rita.student.yaml': student },
    accepts: { 'lesson.swing.yaml': record('14 m right by radar'), 'rita.student.yaml': student },
    source:
      'what each miss is, in schemas/QUANTITIES.md; how straight is straight is common practice, no source; the threshold is that of contradicted faults.',
  }),
  kinds: ['swing'],
  find: (subject) =>
    subject.document.kind !== 'swing'
      ? []
      : subject.document.misses.flatMap((stated) => findingsOf(stated, subject)),
};

function findingsOf({ miss: { value: word, span } }: StatedMiss, subject: Subject): readonly RawFinding[] {
  const miss = findMiss(word);
  const sign = miss?.signs[0];
  const value = sign && subject.derivation?.values.get(sign.id);
  const quantity = sign && subject.registry.find(sign.id);
  if (miss === undefined || sign === undefined || value === undefined || quantity === undefined) return [];
  const side = sideOf(miss, sign.sign, quantity, subject);
  if (side === undefined || value.u === null || !(value.u > 0) || !isSignedFromZero(quantity)) return [];
  // What only usual swings would say speaks against nobody.
  if (value.kind === 'expected') return [];
  const beyond = quantity.id === 'flight.curve' ? straightTo(quantity.id, subject) : 0;
  const probability = normalBelow((side * value.value - beyond) / value.u);
  if (!(probability <= contradictedUpTo)) return [];
  const shown = subject.show(quantity, value.value, value.u);
  return [
    {
      span,
      message: `The numbers do not show the miss \`${miss.word}\` (probability ${percent(probability)}): found ${lowerFirst(quantity.title)} ${shown}; expected what it means, ${meaningOfMiss(miss, handOf(subject))}.`,
      related: relatedEntries(subject, value.kind === 'entered' ? [quantity.id] : value.from),
    },
  ];
}

/** As the player sees it; undefined where the hand decides and is not known. */
function sideOf(miss: Miss, sign: 1 | -1, { lateral }: Quantity, subject: Subject): 1 | -1 | undefined {
  if (!lateral || miss.absolute) return sign;
  const hand = handOf(subject);
  if (hand === undefined) return undefined;
  return hand === 'left' ? (sign === 1 ? -1 : 1) : sign;
}

/** Of a carry or a launch angle nobody can say from where on it is too little. */
function isSignedFromZero({ directions }: Quantity): boolean {
  return directions.some(({ sign }) => sign === 1) && directions.some(({ sign }) => sign === -1);
}
