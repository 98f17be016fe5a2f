// Handouts of invented files and of the samples, for tests of what is made of them.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import { handoutOf, type Handout, type Health } from '../../src/analysis/handout.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import { analyseFiles, type Files } from '../checks/files.ts';
import { practice, snapshotWith, yamlSamples } from '../samples.ts';

export interface Asked {
  readonly language?: string;
  readonly health?: Health;
}

export function handoutFrom(analysis: Analysis, { language, health = 'left out' }: Asked = {}): Handout {
  const result = handoutOf(analysis, [], { language, health });
  assert.ok(result.kind === 'handout');
  return result.handout;
}

export function handoutOfFiles(files: string | Files, asked: Asked = {}): Handout {
  return handoutFrom(analyseFiles(files), asked);
}

/** Every record of the samples, by its path. */
export const sampleRecords: readonly (readonly [string, Analysis])[] = yamlSamples
  .filter(([path]) => path.endsWith('.swing.yaml'))
  .map(([path]) => [path, analyse(practice + path, snapshotWith({}))]);

/** One student with an injury, a plan of four, and a book. */
export const lesson: Readonly<Record<string, string>> = {
  'lesson.swing.yaml': `swing: 1
student: ansa.student.yaml
date: 2026-05-14
club: hybrid
faults_from: house.faults.yaml
checkpoints: { address: { stance_width: 47 cm by tape }, impact: { lead_pressure: 60 % ± 2 %, shaft_lean: 9 deg forward ± 1 deg } }
faults: [{ fault: hangs-back, at: impact, note: said with her sister Tuuli }, { fault: leans-back, at: impact }]
misses: [heavy]
goals: [{ finish: 5 m left..5 m right }]
plan:
  - { change: checkpoints.address.stance_width, to: 41 cm, because: [hangs-back], proof: checkpoints.impact.lead_pressure > 70 % }
  - { change: checkpoints.impact.shaft_lean, to: 6..8 deg forward, feel: own words, because: [hangs-back], proof: delivery.attack < -2 deg }
  - { change: checkpoints.address.ball_position, to: 6 cm behind, because: [hangs-back], proof: delivery.face - delivery.path < 4 deg }
  - { change: delivery.club_speed, to: 40 m/s, because: [hangs-back] }
`,
  'ansa.student.yaml': `student: 1
name: Ansa
hand: right
born: 2012
bag: { hybrid: { kind: hybrid } }
injuries: [{ part: lead knee, note: twisted on ice }, { part: neck, note: stiff }]
`,
  'house.faults.yaml': `faults: 1
book:
  hangs-back:
    title: Hangs back
    explanation: The weight stays behind.
    at: [impact]
    evidence: checkpoints.impact.lead_pressure < 70 %
    tends_to: [{ effect: delivery.low_point.ahead, direction: behind }]
    changes: [{ change: checkpoints.address.stance_width, by: 5 cm narrower, feel: light on the trail heel }]
    cautions: [lead knee, lower back]
    drills: [Half swings on one leg.]
  leans-back:
    title: Leans back
    evidence: checkpoints.impact.shaft_lean < 0 deg
    at: [impact]
`,
};
