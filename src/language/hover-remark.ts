// The hover on what a remark of a review is about, and on the value that stood there: what the record says now, and how far the remark has come.
import { counted } from '../measure/counted.ts';
import type { Analysis } from '../analysis/result.ts';
import { collapseSpaces, harmless } from '../measure/quote.ts';
import { remarkStandings, type RemarkStanding } from '../record/remark-standing.ts';
import { repliesInOrder, stateOf, type RemarkState } from '../record/remark.ts';
import { titleOf } from './hover-entry.ts';
import type { Remark } from './hover.ts';
import { code, escapeMarkdown } from './markdown.ts';
import { holds } from './places.ts';

/** A value in a hover is cut here: a whole list may have been remarked on. */
const longest = 120;

export function hoverOnRemark({ document, subject }: Analysis, offset: number): Remark | undefined {
  if (document.kind !== 'review') return undefined;
  const at = document.remarks.findIndex(({ about, value }) =>
    [about, value].some((word) => word !== undefined && holds(word.span, offset)),
  );
  const remark = document.remarks[at];
  const word = [remark?.value, remark?.about].find((one) => one !== undefined && holds(one.span, offset));
  if (remark === undefined || word === undefined) return undefined;
  const { record, registry } = subject;
  const about = remark.about?.value ?? '';
  const quantity = registry.find(about);
  const title = quantity === undefined ? `**${code(cut(about))}**` : titleOf(quantity);
  const head = about === '' ? '**The record**' : title;
  if (record === undefined)
    return {
      span: word.span,
      lines: [
        head,
        'Found no record where `of` points; expected the one that this review is of.',
        stateLine(stateOf(remark), remark),
      ],
    };
  const standing = remarkStandings(document, record.document, registry)[at]!;
  return { span: word.span, lines: [head, ...valueLines(standing), stateLine(standing.state, remark)] };
}

function valueLines(standing: RemarkStanding): readonly string[] {
  const { remark, anchor, then, now, isChanged, isTaken, suggestion } = standing;
  if (anchor === undefined)
    return remark.about === undefined
      ? []
      : ['Found no such entry in the record; expected one that it has, or the remark settled.'];
  const says =
    now === undefined || now === '' ? 'No value stands there now' : `The record says ${code(cut(now))}`;
  const since =
    then === undefined
      ? '.'
      : isChanged
        ? `; it said ${code(cut(then))} when the remark was made.`
        : ', as it did when the remark was made.';
  const offer = isTaken
    ? ['That is what was suggested.']
    : suggestion === undefined
      ? []
      : [`Suggested is ${code(cut(suggestion))}.`];
  return [says + since, ...offer];
}

function stateLine(state: RemarkState, remark: RemarkStanding['remark']): string {
  const replies = repliesInOrder(remark);
  const last = replies.at(-1);
  const words =
    last === undefined ? `by ${whoWords(remark.author)}` : `last word by ${whoWords(last.author)}`;
  const count = replies.length === 0 ? '' : `, ${counted(replies.length, 'reply', 'replies')}`;
  return `_${state}_${count}, ${words}`;
}

function whoWords(name: string | undefined): string {
  return name === undefined || name.trim() === '' ? 'somebody' : escapeMarkdown(cut(name));
}

function cut(text: string): string {
  const letters = [...collapseSpaces(harmless(text))];
  return letters.length <= longest ? letters.join('') : `${letters.slice(0, longest).join('')}…`;
}
