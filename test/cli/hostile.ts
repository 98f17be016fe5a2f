// A practice whose every name, title, note and file name holds what could steer a terminal, a page or a spreadsheet; for tests.

/** A formula, an escape sequence that colours and one that writes a title, markup, turned writing, quotes, a bell, line breaks. */
export const hostile =
  '=1+1 \u001b[31mred\u001b]0;t\u0007 <script>alert(1)</script> <b>x</b> \u202eabc\u2066 "q" \'q\' `q`\n\u009b2J @SUM(1)\r\nend';
/** The same without line breaks and slashes, for the name of a file. */
export const hostileName = '=x\u001b[31m<b>\u202e"q"';

const said = JSON.stringify(hostile);
const key = JSON.stringify(hostile.replaceAll('\n', ' ').replaceAll('\r', ' '));

const record = (date: string, path: number): string => `swing: 1
student: s.student.yaml
date: ${date}
club: ${key}
template: t.template.yaml
faults_from: h.faults.yaml
notes: ${said}
checkpoints:
  address: { stance_width: { value: 47 cm, by: tape, note: ${said} } }
  impact: { shaft_lean: 5 deg forward, lead_pressure: 66 % by ${JSON.stringify('eye')} }
delivery:
  club_speed: 41 m/s by radar
  attack: 3 deg down
  path: { value: ${path} deg right, by: radar, note: ${said}, seen: ${said} }
  face: [1 deg right by radar, 9 deg left by radar]
flight: { start: 1 deg right, curve: 14 yd right, carry: 171 m }
faults:
  - { fault: ${key}, at: impact, note: ${said} }
  - { fault: ${said} }
misses: [slice, ${said}]
goals:
  - { shape: draw, carry: 178 m, note: ${said} }
plan:
  - change: delivery.path
    to: 1 deg right
    because: [${key}]
    proof: "delivery.path < 2 deg"
    feel: ${said}
    drills: [${said}]
    note: ${said}
${key}: ${said}
`;

export const files: Readonly<Record<string, string>> = {
  'swingwright.yaml': `swingwright: 1
methods: { ${JSON.stringify('=cam <b>')}: { meaning: ${said}, uncertainty: { angle: 1 deg } } }
quantities:
  delivery.wobble: { title: ${said}, meaning: ${said}, from: ${said}, to: ${said}, like: delivery.path }
checks:
  odd: { when: delivery.path > 0 deg, at: delivery.path, message: ${said}, title: ${said} }
relations:
  alike: { says: delivery.wobble = delivery.path, title: ${said}, source: ${said} }
`,
  's.student.yaml': `student: 1
name: ${said}
hand: right
stature: 171 cm
mass: 66 kg
bag:
  ${key}: { kind: hybrid, loft: 22 deg, lie: 59 deg, length: 40 in, head_mass: 230 g, note: ${said} }
injuries: [{ part: lead wrist, note: ${said} }]
goals: [{ finish: 0..5 yd left, note: ${said} }]
`,
  't.template.yaml': `template: 1
title: ${said}
delivery: { path: { window: 0..1 deg right, source: ${said}, note: ${said} } }
`,
  'h.faults.yaml': `faults: 1
title: ${said}
book:
  ${key}:
    title: ${said}
    explanation: ${said}
    source: ${said}
    evidence: [delivery.path > 1 deg]
    tends_to: [{ effect: flight.curve, direction: right, note: ${said} }]
    changes: [{ change: delivery.path, to: 1 deg right, feel: ${said}, drills: [${said}], note: ${said} }]
`,
  'a.swing.yaml': record('2026-05-14', 5),
  'b.swing.yaml': record('2026-05-21', 3),
  [`${hostileName}.swing.yaml`]: record('2026-05-28', 2),
  'a.review.yaml': `review: 1
of: a.swing.yaml
threads:
  - { id: ${said}, about: delivery.path, value: ${said}, author: ${said}, time: ${said}, text: ${said}, suggests: ${said} }
  - { id: r2, about: ${said}, author: ${said}, time: "2026-06-02T10:00:00Z", text: ${said}, replies: [{ author: ${said}, text: ${said} }] }
sign_offs: [{ by: ${said}, time: ${said}, hash: ${said} }]
`,
};
