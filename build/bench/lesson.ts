// A lesson of twenty values, whose keys are counted; holds its text alone.

/** A lesson of twenty values. */
export const lesson = `swing: 1
student: tove.student.yaml
date: 2026-05-30
club: seven iron
template: ../templates/iron.template.yaml
faults_from: ../house.faults.yaml
checkpoints:
  address:
    stance_width: 43 cm by tape
    lead_foot_flare: 15 deg out by alignment stick
    ball_position: 8 cm behind by tape
    lead_pressure: 53 % by pressure mat
  top:
    shoulder_turn: 90 deg closed by motion capture
    lead_pressure: 28 % by pressure mat
  lead_arm_parallel_down:
    sternum: 5 cm behind by video
    lead_pressure: 71 % by pressure mat
  impact:
    lead_shoulder: 10 cm ahead by video
    shaft_lean: 8 deg forward by video
    lead_pressure: 83 % by pressure mat
delivery:
  club_speed: 33.6 m/s by radar
  attack: 4.4 deg down by radar
  path: 0.5 deg right by radar
  face: 0.2 deg right by radar
flight:
  shape: draw
  ball_speed: 44.1 m/s by radar
  launch_angle: 20.1 deg by radar
  start: 0.4 deg right by radar
  carry: 124 m by rangefinder
  finish: 2 m left
`;
