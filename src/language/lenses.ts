// The lenses of a record: what became of its plan, and of the plan before it, each leading to the other record; computes nothing itself.
import { courseOf, lastPlanOf } from '../analysis/courses.ts';
import type { Lesson } from '../analysis/lessons.ts';
import { courseInShort, lastPlanInShort } from '../analysis/outcome-words.ts';
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import type { Analysis, TextRange } from '../analysis/result.ts';
import type { Span } from '../measure/measure.ts';

export interface Lens {
  readonly range: TextRange;
  readonly title: string;
  /** The other record and the place in it; undefined where there is none to go to. */
  readonly opens: { readonly uri: string; readonly range: TextRange } | undefined;
}

const planKeys = ['plan', 'predicted'];
const measuredKeys = ['checkpoints', 'delivery', 'ground', 'strike', 'flight', 'shots'];

/** `lessons` are all of the student, the oldest first, this one among them. */
export function findLenses(analysis: Analysis, lessons: readonly Lesson[]): readonly Lens[] {
  const own = lessons.find(({ uri }) => uri === analysis.uri);
  if (own === undefined) return [];
  const course = courseOf(own, lessons);
  const last = lastPlanOf(own, lessons);
  return [
    ...(last === undefined
      ? []
      : [
          {
            range: rangeAt(analysis, measuredKeys),
            title: lastPlanInShort(last),
            opens: placeIn(last.plan, planKeys),
          },
        ]),
    ...(course === undefined
      ? []
      : [
          {
            range: rangeAt(analysis, planKeys),
            title: courseInShort(course),
            opens: course.held && placeIn(course.held.next, measuredKeys),
          },
        ]),
  ];
}

function placeIn({ uri, analysis }: Lesson, keys: readonly string[]): Lens['opens'] {
  return { uri, range: rangeAt(analysis, keys) };
}

/** The first of these keys that the record has; its first character where it has none of them. */
function rangeAt({ document }: Analysis, keys: readonly string[]): TextRange {
  const top: Span = { start: 0, end: 0 };
  const place = document.outline.find(({ name }) => keys.includes(name))?.nameSpan ?? top;
  return rangeOf(lineTableOf(document.text), place);
}
