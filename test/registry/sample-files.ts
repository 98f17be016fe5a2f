// Small invented files of each kind, in shape and out of it, with the place and the keyword of every error that the schema must find.
import { swings } from './sample-swings.ts';

export type Kind = 'swing' | 'student' | 'template' | 'faults' | 'review' | 'workspace';

export interface SampleFile {
  readonly title: string;
  readonly text: string;
  /** "instancePath keyword" of each; empty where the file is in shape. */
  readonly errors: readonly string[];
}

const students: readonly SampleFile[] = [
  {
    title: 'a full student',
    errors: [],
    text: `
student: 1
name: Tomas
born: 1971
hand: right
stature: 183 cm
mass: { value: 84 kg, by: scale }
body_table: winter
bag:
  seven: { kind: iron, loft: 32 deg, lie: 62 deg by loft and lie gauge, length: 37 in, head_mass: 272 g, note: bent 1 deg upright }
  "gap wedge": { kind: wedge, loft: 50 deg }
goals: [{ carry: 140..150 m, club: seven }]
injuries: [{ part: lower back, side: both, since: 2019, note: "stiff in the morning" }]
notes:
`,
  },
  {
    title: 'an unknown hand, kind of club and side',
    errors: ['/hand enum', '/bag/seven/kind enum', '/injuries/0/side enum'],
    text: `
student: 1
hand: both
bag: { seven: { kind: spoon } }
injuries: [{ part: knee, side: front }]
`,
  },
  {
    title: 'a club with a misspelled key',
    errors: ['/bag/seven additionalProperties'],
    text: 'student: 1\nbag: { seven: { lofts: 32 deg } }\n',
  },
];

const templates: readonly SampleFile[] = [
  {
    title: 'a full template',
    errors: [],
    text: `
template: 1
title: Irons off turf
clubs: [iron, wedge]
checkpoints:
  impact:
    shaft_lean: 5..11 deg forward
    lead_pressure: { window: 65..90 %, strict: gentle, source: common practice, note: two styles }
delivery: { low_point: { ahead: 4..11 cm ahead } }
ground: { divot: { starts: 0..3 cm ahead } }
strike: { height: }
flight: { start: -2..2 deg }
`,
  },
  { title: 'a template for one kind of club', errors: [], text: 'template: 1\nclubs: driver\n' },
  {
    title: 'an unknown strictness, kind of club and key',
    errors: ['/delivery/attack/strict enum', '/clubs/1 enum', '/flight additionalProperties'],
    text: `
template: 1
clubs: [iron, spoon]
delivery: { attack: { window: 1..4 deg down, strict: severe } }
flight: { height: 20..30 m }
`,
  },
];

const faults: readonly SampleFile[] = [
  {
    title: 'a full fault book',
    errors: [],
    text: `
faults: 1
title: Range faults
extends: house.faults.yaml
book:
  early-lift:
    title: Rises before the strike
    explanation: The head and the chest rise while the club comes down.
    at: [shaft_parallel_down, impact]
    evidence:
      - checkpoints.impact.head_height > 4 cm
      - { expression: strike.height < -4 mm, weight: 0.5 }
    tends_to: [{ effect: delivery.low_point.depth, direction: above, size: 5 mm per 3 cm }]
    changes: [{ change: checkpoints.address.forward_bend, by: 4 deg, when: setup }]
    cautions: [lower back]
    drills: [Head against a wall, slow swings.]
  flat-start: { evidence: checkpoints.takeaway.hand_depth > 8 cm, at: takeaway }
  later:
`,
  },
  {
    title: 'an unknown checkpoint, time of change and key',
    errors: [
      '/book/early-lift/at/0 enum',
      '/book/early-lift/changes/0/when enum',
      '/book/early-lift additionalProperties',
    ],
    text: `
faults: 1
book:
  early-lift: { at: [middle], changes: [{ change: flight.carry, when: later }], cause: fear }
`,
  },
  {
    title: 'a checkpoint in a word that does not exist',
    errors: ['/book/early-lift/at pattern'],
    text: 'faults: 1\nbook: { early-lift: { at: middle } }\n',
  },
];

const reviews: readonly SampleFile[] = [
  {
    title: 'a full review',
    errors: [],
    text: `
review: 1
of: 2026-09-03-seven.swing.yaml
threads:
  - id: 1
    about: checkpoints.impact.shaft_lean
    value: 6 deg forward
    author: Ines
    time: 2026-09-04T09:10:00Z
    state: open
    text: Was the camera square to the target line?
    replies: [{ author: Karl, time: 2026-09-04T18:00:00Z, text: Two degrees off. }]
`,
  },
  {
    title: 'an unknown state and a key that a reply does not have',
    errors: ['/threads/0/state enum', '/threads/0/replies/0 additionalProperties'],
    text: 'review: 1\nthreads: [{ state: done, replies: [{ title: x }] }]\n',
  },
];

const workspaces: readonly SampleFile[] = [
  {
    title: 'a full workspace',
    errors: [],
    text: `
swingwright: 1
coverage: 2
severities: { no-value-yet: off, bare-number: information, missing-key: }
methods:
  video: { uncertainty: { angle: 2 deg, length: 1.5 cm, delivery.face: 3 deg } }
  "chalk line": { meaning: a line on the floor, uncertainty: { length: 1 cm } }
`,
  },
  {
    title: 'a coverage that is not positive, an unknown loudness, a figure that is none and one of nothing',
    errors: [
      '/coverage exclusiveMinimum',
      '/severities/bare-number enum',
      '/methods/video/uncertainty/angle type',
      '/methods/eye/uncertainty additionalProperties',
    ],
    text: `
swingwright: 1
coverage: 0
severities: { bare-number: loud }
methods: { video: { uncertainty: { angle: [2 deg] } }, eye: { uncertainty: { angel: 2 deg } } }
`,
  },
];

export const files: Readonly<Record<Kind, readonly SampleFile[]>> = {
  swing: swings,
  student: students,
  template: templates,
  faults,
  review: reviews,
  workspace: workspaces,
};
