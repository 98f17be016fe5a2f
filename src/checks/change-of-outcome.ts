// The check that says which planned change is of something that no player changes directly: an outcome, the club, the weather, the body.
import { quote } from '../measure/quote.ts';
import type { Section } from '../registry/quantity.ts';
import { builtIn } from '../registry/registry.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const record = (change: string): string => `swing: 1
misses: [short]
plan: [{ change: ${change}, because: short }]`;

/** What the thing is instead; the sections of what a player does are not in it. */
const others: Readonly<Partial<Record<Section, string>>> = {
  flight: 'an outcome of the swing',
  ground: 'a trace of the swing',
  conditions: 'no part of the swing',
  club: 'a matter of the club',
  student: "a matter of the student's body",
};

export const changeOfOutcome: Check = {
  code: 'change-of-outcome',
  severity: 'warning',
  title: 'A change of what nobody changes directly',
  explanation: explain({
    found: 'The plan changes what the ball does, the club, the weather or the body.',
    matters:
      'A player can change setup, movement, delivery and strike, and the rest follows from these or stays. What the ball should do is a goal; another club is another record.',
    raises: { 'lesson.swing.yaml': record('flight.carry, to: 150 m') },
    accepts: { 'lesson.swing.yaml': record('delivery.club_speed, to: 38 m/s') },
    source: "judgement; a workspace's own quantities are the coach's affair.",
  }),
  kinds: ['swing'],
  find: ({ document, registry, own }) => {
    if (document.kind !== 'swing') return [];
    return document.plan.flatMap(({ change }) => {
      const quantity = change && registry.find(change.value);
      const what = quantity && builtIn.find(quantity.id) && others[quantity.section];
      if (change === undefined || what === undefined || own.derived.has(change.value)) return [];
      return [
        {
          span: change.span,
          message: `Found a change of ${quote(change.value)}, which is ${what}; expected a change of setup, movement, delivery or strike.`,
        },
      ];
    });
  },
};
