// Builds the files of a new practice: settings, templates, a fault book; each stands on its own and says what to change. Writes nothing.
import { newFile, yamlWords, type NewFile } from './new-text.ts';

/** In `folder` (a URI without a slash at its end); whoever writes them leaves alone what is there. */
export function newPractice(folder: string, name: string): readonly NewFile[] {
  const title = yamlWords(name);
  return [
    newFile(`${folder}/swingwright.yaml`, settings(title)),
    newFile(`${folder}/house.faults.yaml`, faultBook(title)),
    newFile(`${folder}/templates/iron.template.yaml`, iron),
    newFile(`${folder}/templates/driver.template.yaml`, driver),
  ];
}

/** Where a new student's file goes: a folder for each, named like the file. */
export function studentFolder(practice: string, fileName: string): string {
  return `${practice}/students/${encodeURIComponent(fileName)}`;
}

function settings(title: string): string {
  return `# How this folder is checked: ${title}
swingwright: 1
coverage: 1 # a written ± is one standard uncertainty; 2 where you write twice that
methods:
  video:
    meaning: write here how you film, and how sure you are of what you read off
    uncertainty: { length: 2 cm, angle: 3 deg }
`;
}

function faultBook(title: string): string {
  return `# What you call a fault, and what would show it. Written as for a right-handed player; mirrored for a left-handed one.
# In evidence, numbers are positive right, ahead, up, forward and closed.
faults: 1
title: ${title}
book:
  weight-stays-back:
    title: Weight stays back
    explanation: Too little of the weight is over the lead foot when the club comes down.
    evidence:
      - checkpoints.lead_arm_parallel_down.lead_pressure < 60 %
      - checkpoints.impact.lead_pressure < 70 %
    at: [lead_arm_parallel_down, impact]
    tends_to:
      - { effect: delivery.low_point.ahead, direction: behind }
    cautions: [lead knee, lower back]
  handle-behind:
    title: Handle behind at the strike
    explanation: The head of the club has passed the hands when it meets the ball.
    evidence: checkpoints.impact.shaft_lean < 0 deg
    at: [impact]
    tends_to:
      - { effect: delivery.delivered_loft, direction: more }
    cautions: [lead wrist]
  face-open-to-path:
    title: Face open to the path
    explanation: The face points well to the right of where the head is going.
    evidence: delivery.face - delivery.path > 4 deg
    tends_to:
      - { effect: flight.curve, direction: right }
`;
}

const iron = `# What you teach toward with an iron from the turf. Common practice to begin with: make the windows your own.
template: 1
title: Iron from the turf
clubs: [iron]
checkpoints:
  address:
    stance_width: { window: 30..45 cm, strict: gentle, source: common practice }
    ball_position: { window: 5..12 cm behind, strict: gentle, source: common practice }
  impact:
    shaft_lean: { window: 4..12 deg forward, strict: firm, source: common practice }
    lead_pressure: { window: 75..95 %, strict: firm, source: common practice }
delivery:
  attack: { window: 2..6 deg down, strict: firm, source: common practice }
  low_point: { ahead: { window: 5..12 cm ahead, strict: firm, source: common practice } }
`;

const driver = `# What you teach toward with a driver from the tee. Common practice to begin with: make the windows your own.
template: 1
title: Driver from the tee
clubs: [driver]
checkpoints:
  address:
    stance_width: { window: 42..58 cm, strict: gentle, source: common practice }
    ball_position: { window: 3 cm behind..4 cm ahead, strict: gentle, source: common practice }
  impact:
    lead_pressure: { window: 60..95 %, strict: gentle, source: common practice }
delivery:
  attack: { window: 0..5 deg up, strict: firm, source: common practice }
`;
