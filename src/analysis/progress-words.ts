// How a student came along, in words: what is missing, what moved, how goals stand; the same on the command line and on a page.
import { counted } from '../measure/counted.ts';
import { nameWithin } from '../checks/agreement.ts';
import { percent } from '../checks/verdict-words.ts';
import { showValue, showWindow } from '../measure/show.ts';
import { lastNameIn } from '../record/reference.ts';
import { changeWords, sizeWords } from './comparison-words.ts';
import { dayOf, outcomeInShort } from './outcome-words.ts';
import type {
  ClubProgress,
  GoalPoint,
  GoalSeries,
  HeldPoint,
  PlannedTarget,
  ProgressPoint,
  Series,
} from './progress.ts';

/** "4 lessons from 2026-08-03 to 2026-09-28". */
export function spanWords({ lessons }: ClubProgress): string {
  const [first, last] = [lessons[0], lessons.at(-1)];
  if (first === undefined) return 'no lesson with a date';
  if (lessons.length === 1) return `1 lesson, ${dayOf(first)}`;
  return `${counted(lessons.length, 'lesson')} from ${dayOf(first)} to ${dayOf(last!)}`;
}

/** What stands in the way of more, a sentence each. */
export function gapsOf({ lessons, undated, sameDays, unmeasured }: ClubProgress): readonly string[] {
  return [
    ...(lessons.length === 1 ? ['With one lesson there is nothing to hold it against yet.'] : []),
    ...(undated.length === 0
      ? []
      : [
          `Left out, since ${undated.length === 1 ? 'it has' : 'they have'} no date: ${undated.map(({ uri }) => lastNameIn(uri)).join(', ')}.`,
        ]),
    ...(sameDays.length === 0
      ? []
      : [`More than one lesson on ${sameDays.join(', ')}: their order is not known.`]),
    ...(unmeasured.length === 0
      ? []
      : [`Not measured in any of them: ${unmeasured.map(nameWithin).join(', ')}.`]),
  ];
}

/** "3.5 cm ahead ± 2.0 cm (mean of 8 shots)". */
export function pointWords({ quantity }: Series, { value }: ProgressPoint): string {
  const origin = { entered: '', computed: ' (computed)', shots: ` (mean of ${value.shots ?? 0} shots)` }[
    value.how
  ];
  return `${showValue(quantity, value.value, value.u)}${origin}${value.isInDoubt ? ', does not fit its record' : ''}`;
}

/** "planned on 2026-08-03: 42.0 cm, until 2026-08-24". */
export function targetWords({ quantity }: Series, { lesson, next, from, to }: PlannedTarget): string {
  const asked = from === to ? showValue(quantity, from) : showWindow(quantity, from, to);
  return `planned on ${dayOf(lesson)}: ${asked}${next === undefined ? '' : `, until ${dayOf(next)}`}`;
}

/** "4.0 cm further ahead ± 2.8 cm from the first to the last, no larger than measuring it twice explains". */
export function movedWords({ quantity, change }: Series): string {
  if (change === undefined) return 'measured once';
  const size = sizeWords[change.size];
  return `${changeWords(quantity, change)} from the first to the last${size === '' ? '' : `, ${size}`}`;
}

/** "12.4 m right ± 1.9 m; inside 8 m left..8 m right with 1 %", "4 cm ahead ± 1 cm; ball before turf with 99 %". */
export function goalPointWords({ quantity }: GoalSeries, { standing }: GoalPoint): string {
  const { wanted, value, u, chance } = standing;
  const window = wanted.asked ?? `inside ${showWindow(quantity, wanted.min, wanted.max)}`;
  if (value === undefined || chance === undefined) return `not known, wanted ${window}`;
  return `${showValue(quantity, value, u)}; ${window} with ${percent(chance)}`;
}

/** "of the plan of 2026-08-03: 1 of 2 changes made, 2 of 2 proofs met". */
export function heldWords({ plan, outcome, decided }: HeldPoint): string {
  if (decided !== undefined)
    return `a later lesson: the plan of ${dayOf(plan)} was decided on ${dayOf(decided.next)}`;
  return `of the plan of ${dayOf(plan)}: ${outcomeInShort(outcome)}`;
}
