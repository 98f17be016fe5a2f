// Small invented swing records, in shape and out of it, with the place and the keyword of every error that the schema must find.
import type { SampleFile } from './sample-files.ts';

export const swings: readonly SampleFile[] = [
  {
    title: 'a full record in words, long forms and lists',
    errors: [],
    text: `
swing: 1
student: ../tomas.student.yaml
date: 2026-09-03
club: seven
template: ../templates/irons.template.yaml
faults_from: ../range.faults.yaml
conditions: { temperature: 68 °F, altitude: 40 m, humidity: 70 %, wind: 2 m/s from behind right }
checkpoints:
  address:
    stance_width: 38 cm by tape
    trail_foot_flare: 12 deg out
    ball_position: 11 cm behind
    shoulder_direction: 3 deg left
  top:
    shoulder_turn: 88 deg closed by video
    lead_wrist_bow: 6 deg cupped
    time: 0.29 s before
  impact:
    lead_shoulder: [7 cm ahead, 10 cm ahead by eye]
    shaft_lean: { value: 6 deg forward, give_or_take: 2 deg, by: video, doubtful: true, seen: "frame 118", note: glare }
delivery:
  club_speed: 34 m/s by radar
  attack: 2 deg down
  arc: { direction: 4 deg left, inclination: 61 deg }
  low_point: { ahead: 5 cm ahead, depth: 7 mm below }
ground: { divot: { starts: 1 cm ahead, length: 9 cm, direction: 5 deg left } }
strike: { across: 7 mm toward toe, height: 2 mm high }
flight: { shape: pull fade, start: 2 deg left, curve: 9 yd right, carry: 138 m, spin: 6100 }
shots:
  - { carry: 136 m, start: }
  - { flight.carry: 140 m, delivery.low_point.ahead: 4 cm ahead, across: 3 mm toward heel, shape: fade, note: gust }
faults:
  - { fault: early-lift, at: shaft_parallel_down, note: "head rises before the strike" }
misses: [heavy, { miss: slice, note: into the wind }]
goals:
  - { shape: straight, start: 0 deg, finish: -3..3 m, carry: { value: 142 m, note: the pond }, contact: turf after the ball, club: seven }
plan:
  - { change: checkpoints.address.ball_position, to: 7 cm behind, because: [early-lift], proof: divot ahead of the ball }
  - { change: checkpoints.impact.shaft_lean, to: 6..10 deg forward, because: early-lift }
predicted: { delivery.low_point.ahead: 6.1 cm ahead ± 1.4 cm by model, flight.curve: { value: 2 m right, by: belief } }
notes: windy after the fourth ball
`,
  },
  {
    title: 'a record that has only begun',
    errors: [],
    text: `
swing: 1
student:
date:
checkpoints:
  address:
    stance_width:
    ball_position: []
  impact:
delivery:
  face: { value:, by: }
  arc:
shots:
faults:
  -
goals: []
plan:
  - change:
    because: [ ]
`,
  },
  { title: 'shots in a file', errors: [], text: 'swing: 1\nshots: shots/seven.csv\n' },
  {
    title: 'a key that is misspelled, at the top and below',
    errors: [
      ' additionalProperties',
      '/delivery additionalProperties',
      '/checkpoints/top additionalProperties',
    ],
    text: `
swing: 1
deliveries: {}
delivery: { attach: 2 deg down }
checkpoints: { top: { stance_width: 40 cm } }
`,
  },
  {
    title: 'a key that the long form does not have, alone and in a list',
    errors: ['/strike/across additionalProperties', '/strike/height/1 additionalProperties'],
    text: `
swing: 1
strike:
  across: { value: 4 mm, method: eye }
  height: [2 mm low, { value: 3 mm low, method: ball mark }]
`,
  },
  {
    title: 'values of the wrong shape',
    errors: ['/date type', '/delivery type', '/flight/carry type', '/plan type'],
    text: `
swing: 1
date: 2026
delivery: fast
flight: { carry: true }
plan: stand closer
`,
  },
  {
    title: 'words that the trade or the record does not have',
    errors: ['/flight/shape enum', '/faults/0/at enum', '/shots/0/shape enum'],
    text: `
swing: 1
flight: { shape: banana }
shots: [{ shape: banana }]
faults: [{ fault: early-lift, at: middle }]
`,
  },
  {
    title: 'a checkpoint that does not exist',
    errors: ['/checkpoints additionalProperties'],
    text: 'swing: 1\ncheckpoints: { halfway: { head: 3 cm ahead } }\n',
  },
];
