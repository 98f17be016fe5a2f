// An invented lesson that uses every way of writing a value down, for tests that cut and damage it.
export const lesson = `swing: 1                                   # format version
student: ../imke.student.yaml
date: 2026-05-14
club: five hybrid                          # a name from the bag
template: ../../templates/hybrid.template.yaml
conditions: { temperature: 14 °C, altitude: 310 m, wind: 3 m/s from left }

checkpoints:
  address:
    stance_width: 47 cm by tape            # between heel centres
    lead_foot_flare: 8 deg out
    head: 4 cm behind                      # accept[outside-practice]: she sets up so
    lead_pressure: 50 %
  lead_arm_parallel_down:
    sternum: 6 cm behind ± 2 cm by video
    lead_pressure: "58 % by pressure mat"
  impact:
    lead_shoulder: 9 cm ahead
    shaft_lean: 9 deg forward
    lead_pressure: { value: 66 %, by: pressure mat, note: "second mat, after recalibration" }
    hands:
      - 9 cm ahead by video
      - 10 cm ahead by eye
    head:
      value: 4 cm behind
      by: video
      note: 'a still frame'

delivery:
  club_speed: 41 m/s by radar
  attack: 3.5 deg down
  low_point:
    ahead: 3 cm ahead
  face: [1 deg right by radar, 3 deg right by eye]    # two measurements of one thing
ground:
  divot: { starts: 2 cm ahead, length: 11 cm, depth: 6 mm }
strike: { across: 4 mm toward heel, height: 6 mm low }
flight:
  start: 1 deg right
  curve: 14 yd right
shots: [
  { carry: 171 m, start: 1 deg right },
  { carry: 170 m,
    start: 2 deg right },
]

faults:
  - { fault: trail-side-loaded, at: lead_arm_parallel_down, note: "stays back until the strike" }
  - fault: folds
    note: >
      a text
      of two lines
goals:
  - { shape: draw, start: 2 deg left, finish: 0..5 yd left, carry: 178 m }
plan:
  - change: checkpoints.address.stance_width
    to: 41 cm
    because: [trail-side-loaded]
    proof: "lead pressure over 65 % by lead_arm_parallel_down"
`;
