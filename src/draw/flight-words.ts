// What is said of a flight's picture: whose the computed place is, and all that is drawn, to who cannot see it; knows no shape.
import type { ComputedFlight } from '../analysis/flight-path.ts';
import type { Analysis } from '../analysis/result.ts';
import { lowerFirst, upperFirst } from '../measure/quote.ts';
import { showValue, showWindow } from '../measure/show.ts';
import type { Interval } from '../model/windows.ts';
import type { Value } from '../model/value.ts';
import type { Registry } from '../registry/registry.ts';
import type { Scene } from './flight-scene.ts';
import { sayingOf, type Saying } from './known.ts';

/** Whose numbers the computed way is drawn by. */
export function whose({ by }: ComputedFlight): string {
  return by === 'others' ? 'by the other entries' : 'by all entries together';
}

/** With where the way leads: "110 m ± 23 m, 6 m right ± 5 m". */
export function computedSaying(computed: ComputedFlight, registry: Registry): Saying {
  const { carry, finish } = computed;
  const numbers = [carry, finish].flatMap((value) => (value ? [sayingOf(value, registry).number] : []));
  return { name: whose(computed), number: numbers.join(', ') };
}

/** A computed finish beside another one says whose it is too. */
export function numberSaying(value: Value, { computed, expected }: Scene, registry: Registry): Saying {
  const { name, number } = sayingOf(value, registry);
  const isRival = expected !== undefined && computed.by === 'others' && value.id === 'flight.finish';
  return { name: isRival && value.kind !== 'entered' ? `${name}, by all entries` : name, number };
}

/** "wind 3.0 m/s from left". */
export function windWords({ from, speed }: NonNullable<Scene['wind']>, registry: Registry): string {
  const quantity = registry.find('conditions.wind');
  if (quantity === undefined) return 'wind';
  const word = quantity.directions.find(({ bearing }) => bearing === from)?.word ?? '';
  return `wind ${showValue(quantity, speed)} ${word}`.trimEnd();
}

/** Whatever is drawn besides the numbers of the flight itself. */
export function besidesSayings(scene: Scene, { subject: { registry } }: Analysis): readonly Saying[] {
  const { computed, expected, path, goals, shots, ellipse, wind } = scene;
  const interval = (id: string, window: Interval | undefined): readonly string[] => {
    const quantity = registry.find(id);
    return window && quantity
      ? [`${lowerFirst(quantity.title)} ${showWindow(quantity, window.min, window.max)}`]
      : [];
  };
  return [
    ...(expected
      ? [
          {
            ...computedSaying(computed, registry),
            name: upperFirst(`${whose(computed)}${path ? ', dashed' : ''}`),
          },
        ]
      : []),
    ...goals.map(({ name, carry, finish }) => ({
      name: name === undefined ? 'Goal, hatched' : `Goal, hatched, ${name}`,
      number: [...interval('flight.carry', carry), ...interval('flight.finish', finish)].join(', '),
    })),
    ...(shots.length === 0 ? [] : [{ name: 'Shots drawn', number: shotsWords(shots) }]),
    ...(ellipse ? [{ name: 'Ellipse', number: spreadWords(ellipse) }] : []),
    ...(wind ? [{ name: 'Arrow', number: windWords(wind, registry) }] : []),
  ];
}

/** "12, 1 of them left out: far from the others". */
function shotsWords(shots: Scene['shots']): string {
  const far = shots.filter(({ isFar }) => isFar).length;
  return far === 0 ? String(shots.length) : `${shots.length}, ${far} of them left out: far from the others`;
}

export function spreadWords({ count }: NonNullable<Scene['ellipse']>): string {
  return `95 % of shots that spread as these ${count}`;
}
