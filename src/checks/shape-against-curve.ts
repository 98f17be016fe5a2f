// The check that holds the word for a shot's shape against its start and curve, for the player's hand, in flight and goals.
import type { Measure, Span, Window } from '../measure/measure.ts';
import type { Goal, Located } from '../record/document.ts';
import type { Shape } from '../registry/quantity.ts';
import { findShape } from '../registry/registry.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { handOf } from './handed.ts';
import { flownEvidence, sideName, straightness, straightTo, type Part } from './shape-evidence.ts';
import type { Subject } from './subject.ts';

type Hand = 'left' | 'right';

const leftHanded = 'student: 1\nhand: left';

export const shapeAgainstCurve: Check = {
  code: 'shape-against-curve',
  severity: 'warning',
  title: 'Shape does not fit start and curve',
  explanation: explain({
    found:
      'The word for the shape says one side or straight, and the start or the curve says otherwise: as entered, or as it follows from the path and the face of the club.',
    matters: `A draw curves left for a right-handed player and right for a left-handed one; without a known hand nothing is said of sides. Straight is called what starts within ${straightness.startInWords} and curves by no more than ${straightness.curveInWords}.`,
    raises: {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
flight: { shape: draw, curve: 14 yd left by radar }`,
      'mira.student.yaml': leftHanded,
    },
    accepts: {
      'lesson.swing.yaml': `swing: 1
student: mira.student.yaml
flight: { shape: draw, curve: 14 yd right by radar }`,
      'mira.student.yaml': leftHanded,
    },
    source: 'the meaning of the words in the trade; how straight is straight is common practice, no source.',
  }),
  kinds: ['swing', 'student'],
  find: (subject) => {
    const hand = handOf(subject);
    const { document } = subject;
    if (document.kind !== 'swing' && document.kind !== 'student') return [];
    const flown = document.kind === 'swing' ? flownFindings(document.shape, subject, hand) : [];
    return [...flown, ...document.goals.flatMap((goal) => goalFindings(goal, subject, hand))];
  },
};

/** 1 right, −1 left, undefined where the word says nothing of it or says straight. */
function sideOf(shape: Shape, part: Part, hand: Hand): 1 | -1 | undefined {
  const sign = shape[part];
  if (sign === undefined || sign === 0) return undefined;
  return sign > 0 === (hand === 'right') ? 1 : -1;
}

function flownFindings(
  word: Located<string> | undefined,
  subject: Subject,
  hand: Hand | undefined,
): readonly RawFinding[] {
  const shape = word && findShape(word.value);
  if (word === undefined || shape === undefined) return [];
  return (['start', 'curve'] as const).flatMap((part) => {
    if (shape[part] === 0) {
      const evidence = flownEvidence(subject, part, 'straight');
      if (evidence === undefined) return [];
      const { by, related } = evidence;
      return [{ span: word.span, message: straightSentence(word.value, part, by), related }];
    }
    if (hand === undefined) return [];
    const side = sideOf(shape, part, hand);
    const evidence = flownEvidence(subject, part, 'a side');
    if (side === undefined || evidence === undefined || evidence.side === side) return [];
    const { by, related } = evidence;
    return [{ span: word.span, message: sentence(word.value, part, side, hand, by), related }];
  });
}

function goalFindings(goal: Goal, subject: Subject, hand: Hand | undefined): readonly RawFinding[] {
  const shape = goal.shape && findShape(goal.shape.value);
  if (goal.shape === undefined || shape === undefined) return [];
  const { value: word, span } = goal.shape;
  return (['start', 'curve'] as const).flatMap((part) => {
    const wanted =
      part === 'start' ? targetOf(goal, 'start') : (targetOf(goal, 'curve') ?? impliedCurve(goal, subject));
    if (wanted === undefined) return [];
    const related = wanted.spans.map((at) => ({ uri: subject.uri, span: at, message: 'The target' }));
    const by = (side: number): string => `by the ${part} the goal sends it ${sideName(side)}`;
    if (shape[part] === 0) {
      const most = straightTo(`flight.${part}`, subject, targetOf(goal, 'carry')?.to);
      const off = wanted.from > most ? 1 : wanted.to < -most ? -1 : undefined;
      return off === undefined ? [] : [{ span, message: straightSentence(word, part, by(off)), related }];
    }
    const side = hand && sideOf(shape, part, hand);
    if (hand === undefined || side === undefined) return [];
    if (side > 0 ? wanted.to >= 0 : wanted.from <= 0) return [];
    return [{ span, message: sentence(word, part, side, hand, by(-side)), related }];
  });
}

function sentence(word: string, part: Part, side: 1 | -1, hand: Hand, by: string): string {
  const does = part === 'start' ? 'starts' : 'curves';
  const found = `Shape \`${word}\` ${does} ${sideName(side)} for a ${hand}-handed player`;
  return `${found}, but ${by}; expected a ${part} to the ${sideName(side)} or another shape.`;
}

function straightSentence(word: string, part: Part, by: string): string {
  const does = part === 'start' ? 'starts straight' : 'does not curve';
  const most =
    part === 'start'
      ? `a start within ${straightness.startInWords}`
      : `a curve of at most ${straightness.curveInWords}`;
  return `Shape \`${word}\` ${does}, but ${by}; expected ${most} or another shape.`;
}

/** In SI, positive to the right, from the least to the most. */
interface Wanted {
  readonly from: number;
  readonly to: number;
  readonly spans: readonly Span[];
}

function targetOf(goal: Goal, key: string): Wanted | undefined {
  const found = goal.targets.get(key);
  if (found === undefined) return undefined;
  return { ...ends(found.target), spans: [found.span] };
}

function ends(target: Measure | Window): { readonly from: number; readonly to: number } {
  return target.kind === 'window' ? target : { from: target.value, to: target.value };
}

/**
 * What start and finish leave for the curve: finish − carry · sin(start), a little less for slanted landings, which no sign
 * hangs on. Without any carry known, only what holds for every carry is said.
 */
function impliedCurve(goal: Goal, subject: Subject): Wanted | undefined {
  const start = targetOf(goal, 'start');
  const finish = targetOf(goal, 'finish');
  if (start === undefined || finish === undefined) return undefined;
  const flown = subject.derivation?.values.get('flight.carry')?.value;
  const carry =
    targetOf(goal, 'carry') ?? (flown === undefined ? { from: 0, to: Infinity } : { from: flown, to: flown });
  const sides = [start.from, start.to].flatMap((angle) =>
    [carry.from, carry.to].map((far) => sideways(far, angle)),
  );
  return {
    from: finish.from - Math.max(...sides),
    to: finish.to - Math.min(...sides),
    spans: [...start.spans, ...finish.spans],
  };
}

function sideways(carry: number, angle: number): number {
  return angle === 0 ? 0 : carry * Math.sin(angle);
}
