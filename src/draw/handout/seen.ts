// What of a lesson's faults and misses stands on a handout: what was seen, and what causes what; in words of its language.
import type { Handout } from '../../analysis/handout.ts';
import { mirroredNumber } from '../../model/mirror.ts';
import type { Fault } from '../../record/document.ts';
import { most, shortened, someOf } from './shortened.ts';
import type { Speech } from './speech.ts';

export interface Seen {
  readonly saw: readonly { readonly title: string; readonly text: string | undefined }[];
  /** In the place of faults, where none is told. */
  readonly sawOtherwise: string | undefined;
  /** A sentence each: faults that nobody can look up, misses, and those without a cause. */
  readonly remarks: readonly string[];
  /** From cause to miss, each a few words. */
  readonly chains: readonly (readonly string[])[];
}

export function seenIn(handout: Handout, speech: Speech): Seen {
  const saw = sawOf(handout, speech);
  const { document } = handout.analysis;
  const stated = document.kind === 'swing' ? document.faults : [];
  const unknown = stated.filter(({ fault }) => handout.verdicts?.faults.has(fault.value) !== true);
  const isAllUnknown = stated.length > 0 && unknown.length === stated.length;
  return {
    saw,
    sawOtherwise:
      saw.length > 0 || isAllUnknown
        ? undefined
        : speech.say(stated.length === 0 ? 'sawNothing' : 'sawContradicted'),
    remarks: [
      ...unknownWords(
        unknown.map(({ fault }) => fault.value),
        speech,
      ),
      ...missesOf(handout, speech),
    ],
    chains: chainsOf(handout, speech),
  };
}

export function titleOf({ title, id }: Fault): string {
  return shortened(title ?? id.value, most.title);
}

/** What the numbers speak against is between coach and record; a student is told what stands. */
function standing({ verdicts }: Handout) {
  return (verdicts?.stated ?? []).filter(({ verdict }) => verdict !== 'contradicted');
}

/** What helps against a fault is told against those that stand alone. */
export function isStanding({ verdicts }: Pick<Handout, 'verdicts'>, { id }: Fault): boolean {
  return verdicts?.contradicted.has(id.value) !== true;
}

function sawOf(handout: Handout, { checkpoint }: Speech): Seen['saw'] {
  return standing(handout)
    .slice(0, most.faults)
    .map(({ fault, at }) => ({
      title: at === undefined ? titleOf(fault) : `${titleOf(fault)} (${checkpoint(at)})`,
      text: fault.explanation && shortened(fault.explanation, most.explanation),
    }));
}

function unknownWords(ids: readonly string[], { say }: Speech): readonly string[] {
  const names = [...new Set(ids)].map((id) => shortened(id, most.title));
  return names.length === 0 ? [] : [say('sawUnknown', { names: someOf(names, most.faults, say) })];
}

/** Where no fault is stated at all, none can explain a miss, and that is said already. */
function missesOf({ analysis, verdicts }: Handout, { say, word }: Speech): readonly string[] {
  const { document } = analysis;
  if (document.kind !== 'swing' || document.misses.length === 0) return [];
  const named = (ids: readonly string[]): string =>
    someOf(
      [...new Set(ids)].map((id) => shortened(word('misses', id), most.word)),
      most.misses,
      say,
    );
  const unexplained = (verdicts?.misses ?? []).filter(({ by }) => by.length === 0).map(({ miss }) => miss);
  return [
    `${say('misses')}: ${named(document.misses.map(({ miss }) => miss.value))}`,
    ...(document.faults.length === 0 || unexplained.length === 0
      ? []
      : [say('unexplained', { names: named(unexplained) })]),
  ];
}

/** Fault, what it does to a number, what comes of it; a fault that explains no miss ends with what it does. */
function chainsOf(handout: Handout, speech: Speech): Seen['chains'] {
  const faults = new Map(standing(handout).map(({ fault }) => [fault.id.value, fault]));
  const misses = handout.verdicts?.misses ?? [];
  const chains = misses.flatMap(({ miss, by }) =>
    by.flatMap(({ fault: id, way }) => {
      const through = [id, ...way].map((one) => faults.get(one));
      if (through.some((one) => one === undefined)) return [];
      const last = through.at(-1)!;
      const effect = effectTo(last, handout, speech);
      return [
        [
          ...through.map((one) => titleOf(one!)),
          ...(effect === undefined ? [] : [effect]),
          speech.word('misses', miss),
        ],
      ];
    }),
  );
  const explained = new Set(misses.flatMap(({ by }) => by.flatMap(({ fault, way }) => [fault, ...way])));
  const others = [...faults.values()]
    .filter(({ id }) => !explained.has(id.value))
    .flatMap((fault) => {
      const effect = effectTo(fault, handout, speech);
      return effect === undefined ? [] : [[titleOf(fault), effect]];
    });
  return [...chains, ...others].slice(0, most.chains);
}

/** "Low point: further behind": the first thing that the fault is believed to do, as this player sees left and right. */
function effectTo(fault: Fault, { analysis }: Handout, { say, title, word }: Speech): string | undefined {
  const effect = fault.tendsTo.find(({ quantity, sign }) => quantity !== undefined && sign !== undefined);
  const { quantity, sign } = effect ?? {};
  if (quantity === undefined || sign === undefined) return undefined;
  const { registry, student } = analysis.subject;
  const turned = mirroredNumber(quantity.id, sign, { hand: student?.document.hand?.value, registry });
  const own = quantity.directions.find(
    ({ sign: way, bearing }) => bearing === undefined && way === Math.sign(turned),
  );
  const name = title(quantity);
  return own === undefined
    ? say('effectInSize', { name, way: say(turned > 0 ? 'more' : 'less') })
    : say('effect', { name, way: word('directions', own.word) });
}
