// What stands on a handout, part by part, in words of its language and with its pictures; one for page and print, which only set it.
import type { Gap, Handout, HandoutChange } from '../../analysis/handout.ts';
import type { Picture } from '../picture.tsx';
import type { Theme } from '../theme.ts';
import { ChangePicture } from './change-picture.tsx';
import { flightPicture } from './flight-picture.tsx';
import { impossibleOf, measuredOf, type Measured } from './measured.tsx';
import { sectionsForFile, type Table } from './file-tables.ts';
import { isStanding, seenIn, titleOf, type Seen } from './seen.ts';
import { most, shortened, someOf } from './shortened.ts';
import { speechIn, type Speech } from './speech.ts';
import { isOutside } from '../../registry/registry.ts';

export type Audience = 'student' | 'file';

/** A picture in the colours of whoever sets the page. */
export type Drawing = (theme: Theme) => Picture;

export interface Card {
  readonly number: number;
  readonly title: string;
  readonly step: string;
  readonly why: string | undefined;
  /** Undefined where no swing can be so. */
  readonly picture: Drawing | undefined;
  readonly feel: string | undefined;
  readonly drills: readonly string[];
}

export interface Content extends Seen {
  readonly speech: Speech;
  readonly audience: Audience;
  readonly title: string;
  /** Day, club. */
  readonly facts: readonly string[];
  readonly wish: readonly string[];
  /** Numbers of the lesson that cannot all be right, and those that no swing can have. */
  readonly doubts: readonly string[];
  readonly flight: Drawing | undefined;
  readonly changesTitle: string;
  readonly cards: readonly Card[];
  readonly further: string | undefined;
  /** In the place of cards, where there are none. */
  readonly measured: Measured | undefined;
  readonly measureNext: readonly string[];
  readonly care: readonly string[];
  readonly gaps: string | undefined;
  /** Of the version for the file alone. */
  readonly tables: readonly Table[];
}

export function contentOf(handout: Handout, audience: Audience): Content {
  const speech = speechIn(handout.language, audience);
  const { say, day } = speech;
  const { name, date, club } = handout;
  const hasFlight = isDrawn(handout, speech);
  const measured = measuredOf(handout, speech, hasFlight);
  const cards = handout.changes.map((change, i) => cardOf(change, i + 1, handout, audience, speech));
  return {
    speech,
    audience,
    title: name === undefined ? say('lesson') : shortened(name, most.name),
    facts: [
      date === undefined ? say('noDate') : say('lessonOn', { date: day(date) }),
      ...(club === undefined ? [] : [shortened(club, most.name)]),
      ...(audience === 'file' ? [say('file')] : []),
    ],
    wish: wishesOf(handout, speech),
    ...seenIn(handout, speech),
    doubts: [...doubtsOf(handout, speech), ...(measured === undefined ? impossibleOf(handout, speech) : [])],
    flight: hasFlight ? (theme) => flightPicture(handout, speech, theme)! : undefined,
    changesTitle: say((['noChange', 'oneChange', 'twoChanges', 'threeChanges'] as const)[cards.length]!),
    cards,
    further: furtherOf(handout, speech),
    measured,
    measureNext: nextOf(handout, speech),
    care: careOf(handout, audience, speech),
    gaps: gapsOf(handout, audience, speech),
    tables: audience === 'file' ? sectionsForFile(handout, speech) : [],
  };
}

function isDrawn(handout: Handout, speech: Speech): boolean {
  const nothing = Object.fromEntries(
    ['ink', 'paper', 'soft', 'faint', 'entered', 'expected', 'taught', 'goal', 'alert'].map((of) => [
      of,
      'none',
    ]),
  );
  return flightPicture(handout, speech, nothing as unknown as Theme) !== null;
}

/** Which numbers the others speak against, without blame; what to make of it is for the coach. */
function doubtsOf({ conflicts, analysis }: Handout, { say, placed }: Speech): readonly string[] {
  const { registry } = analysis.subject;
  const names = [...new Set(conflicts.map(({ id }) => id))].flatMap((id) => {
    const quantity = registry.find(id);
    return quantity === undefined ? [] : [shortened(placed(quantity), most.title)];
  });
  if (names.length === 0) return [];
  return [say(names.length === 1 ? 'doubt' : 'doubts', { names: someOf(names, most.doubts, say, '; ') })];
}

/** How much of the plan stands here. */
function furtherOf({ changes, furtherChanges: rest }: Handout, { say }: Speech): string | undefined {
  if (rest === 0) return undefined;
  return say(rest === 1 ? 'furtherOne' : 'further', {
    all: String(changes.length + rest),
    shown: String(changes.length),
    rest: String(rest),
  });
}

function wishesOf(
  { goals, shapes: asked }: Handout,
  { say, title, round, window, word }: Speech,
): Content['wish'] {
  const shapes = asked.map((shape) => word('shapes', shape));
  const numbers = goals
    .filter(({ now }) => now.wanted.key !== 'shape')
    .map(({ now: { wanted } }) => {
      const { quantity, min, max, asked, single } = wanted;
      if (asked !== undefined) return word('contacts', asked);
      const range = window(quantity, min, max);
      const enough = single && say('enough', { value: round(quantity, single.value), window: range });
      return `${title(quantity)} ${enough ?? range}`;
    });
  return [...new Set([...shapes.slice(0, 2).map((shape) => shortened(shape, most.word)), ...numbers])].slice(
    0,
    most.wishes,
  );
}

function cardOf(
  change: HandoutChange,
  number: number,
  { verdicts }: Handout,
  audience: Audience,
  speech: Speech,
): Card {
  const { quantity, now, present: analysis, aim, feel, drills } = change;
  const isDrawable = [now?.value, aim?.from, aim?.to].every(
    (value) => value === undefined || !isOutside(value, quantity.bounds),
  );
  const faults = change.faults.filter((fault) => isStanding({ verdicts }, fault));
  const { say, placed, round, window } = speech;
  const to = aim && window(quantity, aim.from, aim.to);
  return {
    number,
    title: shortened(placed(quantity), most.title),
    step:
      to === undefined
        ? ''
        : now === undefined
          ? say('toOnly', { to })
          : say('fromTo', { from: round(quantity, now.value), to }),
    why: faults.length === 0 ? undefined : faults.slice(0, 2).map(titleOf).join('; '),
    picture: isDrawable
      ? (theme) => (
          <ChangePicture {...{ change, analysis, speech, theme }} name={`handout-change-${number}`} />
        )
      : undefined,
    feel: feel && shortened(feel, most.feel),
    drills: drills.slice(0, audience === 'file' ? 2 : 1).map((drill) => shortened(drill, most.drill)),
  };
}

function nextOf({ proofs, analysis, next }: Handout, { proof, placed }: Speech): readonly string[] {
  const { registry } = analysis.subject;
  const agreed = proofs.map((text) => shortened(proof(text, registry), most.proof));
  const further = next
    .filter(({ reason, quantity: { id } }) => reason === 'goals' && !proofs.some((text) => text.includes(id)))
    .slice(0, agreed.length > 0 ? 2 : 3)
    .map(({ quantity }) => placed(quantity));
  return [...new Set([...agreed, ...further])].slice(0, most.next);
}

/** Parts that changes load are named to everybody, so that nothing is told of who has which injury. */
function careOf(
  { changes, injuries, isMinor }: Handout,
  audience: Audience,
  { say, part }: Speech,
): readonly string[] {
  const byParts = new Map<string, string[]>();
  for (const [i, { loads: parts }] of changes.entries()) {
    const names = parts
      .slice(0, most.parts)
      .map((one) => shortened(part(one.part.value, one.place), most.word));
    if (names.length > 0)
      byParts.set(names.join(', '), [...(byParts.get(names.join(', ')) ?? []), String(i + 1)]);
  }
  const loads = [...byParts].map(([parts, numbers]) =>
    numbers.length === 1
      ? say('careLoads', { number: numbers[0]!, parts })
      : say('careLoadsSeveral', { numbers: numbers.join(', '), parts }),
  );
  const noted = injuries.map(({ part: { value }, place, note }) => {
    const name = shortened(part(value, place), most.word);
    return note === undefined ? name : `${name} (${shortened(note, most.note)})`;
  });
  return [
    ...loads,
    ...(noted.length === 0 ? [] : [say('careNoted', { notes: noted.slice(0, most.parts).join('; ') })]),
    say('careGeneral'),
    ...(isMinor && audience === 'file' ? [say('careMinor')] : []),
  ];
}

/** A student is told only of what leaves the page without sense; the file of everything. */
function gapsOf({ gaps }: Handout, audience: Audience, { say }: Speech): string | undefined {
  const told: readonly Gap[] = audience === 'file' ? gaps : gaps.filter((gap) => essential.includes(gap));
  return told.length === 0
    ? undefined
    : `${say('incomplete')}: ${told.map((gap) => say(`gap.${gap}`)).join(', ')}.`;
}

/** What has no heading of its own that says so. */
const essential: readonly Gap[] = ['student', 'club', 'numbers'];
