// Tests of the check change-of-outcome.
import { assertMarked, assertNone } from './files.ts';

describe('change-of-outcome', () => {
  it('marks outcomes, traces, club, weather and body', () => {
    assertMarked(
      'change-of-outcome',
      `swing: 1
plan:
  - { change: flight.carry, to: 140 m }
#             ^^^^^^^^^^^^ warning[change-of-outcome]
  - { change: club.loft, to: 30 deg }
#             ^^^^^^^^^ warning[change-of-outcome]
  - { change: conditions.wind, to: 1 m/s }
#             ^^^^^^^^^^^^^^^ warning[change-of-outcome]
  - { change: student.stature, to: 180 cm }
#             ^^^^^^^^^^^^^^^ warning[change-of-outcome]
  - { change: ground.divot.depth, to: 4 mm }
#             ^^^^^^^^^^^^^^^^^^ warning[change-of-outcome]`,
    );
  });

  it("takes what a player changes, what is not known, and what is the coach's own", () => {
    assertNone('change-of-outcome', {
      'lesson.swing.yaml':
        'swing: 1\nplan: [{ change: delivery.path, to: 1 deg }, { change: strike.height, to: 0 mm }, { change: flight.curl }, { change: checkpoints.top.shoulder_turn }, { change: flight.tempo, to: 3 deg }]\n',
      'swingwright.yaml':
        'swingwright: 1\nquantities: { flight.tempo: { title: Tempo, like: flight.start } }\n',
    });
  });
});
