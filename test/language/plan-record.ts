// A record with goals and a plan that model and belief both speak of, for tests of what an editor is told of plans.

/** Beside which the record stands. */
export const planFiles = {
  'ansa.student.yaml': `student: 1
hand: right
bag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }
`,
  'house.faults.yaml': `faults: 1
book:
  trail-side:
    evidence: checkpoints.impact.lead_pressure < 70 %
    tends_to:
      - { effect: delivery.low_point.ahead, direction: behind, size: 1 cm ± 0.5 cm }
      - { effect: delivery.face_to_path, direction: right, size: 1 deg }
    changes: [{ change: checkpoints.address.stance_width, by: 5 cm narrower }]
`,
};

export const twoChanges = `plan:
  - { change: delivery.attack, to: 1 deg down, because: trail-side }
  - { change: checkpoints.address.stance_width, to: 41 cm, because: trail-side }
`;

const usualGoals =
  'goals: [{ start: 1 deg left..1 deg right, curve: 4 m left..4 m right, carry: 178 m ± 2 m }]';

/** Ends with the plan that is given. */
export function planRecord(plan: string, goals: string = usualGoals): string {
  return `swing: 1
student: ansa.student.yaml
club: hybrid
faults_from: house.faults.yaml
checkpoints: { address: { stance_width: 46 cm }, impact: { shaft_lean: 5 deg forward ± 2 deg, lead_pressure: 60 % } }
delivery: { club_speed: 41 m/s ± 0.5 m/s, attack: 3 deg down ± 0.5 deg, path: 3 deg left ± 0.5 deg, face: 0 deg ± 0.5 deg, arc: { radius: 1.6 m, inclination: 58 deg } }
faults: [{ fault: trail-side }]
${goals}
${plan}`;
}
