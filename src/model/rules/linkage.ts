// The steps from body and club by way of the two levers to the arc and the attack; knows nothing of face, ball or ground.
import { armLength, armLengthUncertainty, midGripFromEnd, midGripToHead } from '../../physics/body.ts';
import { linkageAtStrike } from '../../physics/linkage.ts';
import { constantDiscrepancy, type Rule } from '../rule.ts';

const degree = Math.PI / 180;
const drillis = 'Drillis & Contini 1966, in Winter, figure 4.1';

const lever: readonly Rule[] = [
  {
    name: 'club-lever',
    formula: 'middle of the grip to face = club length − 0.10 m',
    source: midGripFromEnd.source,
    inputs: ['club.length'],
    outputs: ['club.lever'],
    compute: ([length]) => single(midGripToHead(length!)),
    discrepancy: constantDiscrepancy([midGripFromEnd.u], `1.5 cm; ${midGripFromEnd.source}.`),
  },
  {
    name: 'linkage',
    formula:
      'tan β′ = tan β · sin i, hands at L_c · sin β′; arm and shaft turn at ω and κω: attack from v, R = |v|³/|v × a|',
    source: 'Kinematics of two levers in a plane; the double pendulum of Jorgensen, The Physics of Golf',
    requires: ['checkpoints.impact.lead_shoulder'],
    inputs: [
      'checkpoints.impact.lead_shoulder',
      'checkpoints.impact.shaft_lean',
      'delivery.arc.inclination',
      'body.arm_length',
      'club.lever',
      'delivery.club_speed',
      'delivery.release_ratio',
      'linkage.hub_along',
      'linkage.hub_up',
    ],
    outputs: ['delivery.attack', 'delivery.arc.radius'],
    compute: ([shoulder, lean, inclination, arm, club, speed, ratio, along, up]) => {
      const at = linkageAtStrike({
        shoulderAhead: shoulder!,
        shaftLean: lean!,
        inclination: inclination!,
        armLength: arm!,
        shaftLength: club!,
        clubSpeed: speed!,
        releaseRatio: ratio!,
        hub: { along: along!, up: up! },
      });
      return at && [at.attack, at.radius];
    },
    discrepancy: {
      of: (_inputs, [, radius]) => [1 * degree, 0.1 * radius!],
      reason:
        'Judgement: rates that are not constant through the strike and a bent shaft, 1° of attack, a tenth of the radius.',
    },
  },
  {
    name: 'hands-at-impact',
    formula: 'tan β′ = tan β · sin i, hands = L_c · sin β′',
    source: 'Geometry of a leaning shaft with the head at the ball',
    requires: ['checkpoints.impact.hands', 'checkpoints.impact.lead_shoulder'],
    inputs: ['checkpoints.impact.shaft_lean', 'delivery.arc.inclination', 'club.lever'],
    outputs: ['checkpoints.impact.hands'],
    compute: handsAhead,
    discrepancy: constantDiscrepancy([0.012], 'Judgement: a bent shaft, 1.2 cm at the hands.'),
    // Hands farther ahead of the ball are more lean: the shaft is rigid enough for that.
    yields: ['checkpoints.impact.shaft_lean'],
  },
  {
    name: 'hands-at-address',
    formula: 'tan β′ = tan β · sin i, hands = L_c · sin β′',
    source: 'Geometry of a leaning shaft with the head at the ball',
    requires: ['checkpoints.address.hands'],
    inputs: ['checkpoints.address.shaft_lean', 'checkpoints.address.shaft_inclination', 'club.lever'],
    outputs: ['checkpoints.address.hands'],
    compute: handsAhead,
    discrepancy: constantDiscrepancy(
      [0.02],
      'Judgement: the head is set down a little behind the ball, and not always as far.',
    ),
  },
];

/** Whether the elbow was entered decides whether the arm counts as straight. */
export function linkageRules(isEntered: (id: string) => boolean): readonly Rule[] {
  const bend = 'checkpoints.impact.lead_elbow_bend' as const;
  const arm: Rule = {
    name: 'arm-length',
    formula:
      'shoulder to grip = (0.186 + 0.146 + 0.108/2) · stature, bent at the elbow, and on to the middle of both hands',
    source: drillis,
    inputs: isEntered(bend) ? ['student.stature', bend] : ['student.stature'],
    outputs: ['body.arm_length'],
    compute: ([stature, elbow]) => single(armLength(stature!, elbow ?? 0)),
    discrepancy: constantDiscrepancy([armLengthUncertainty.value], `3 cm; ${armLengthUncertainty.source}.`),
  };
  return [arm, ...lever];
}

function handsAhead([lean, inclination, club]: readonly number[]): readonly number[] | undefined {
  if (Math.abs(lean!) >= Math.PI / 2) return undefined;
  return [club! * Math.sin(Math.atan(Math.tan(lean!) * Math.sin(inclination!)))];
}

function single(number: number | undefined): readonly number[] | undefined {
  return number === undefined ? undefined : [number];
}
