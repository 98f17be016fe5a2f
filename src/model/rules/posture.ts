// The steps from where the body is to the pressure under the lead foot and to the lead shoulder; knows nothing of the club.
import { balancePriors, balancePriorSource } from '../../physics/balance-priors.ts';
import { centreOfPressure, leadPressure, pendulumOf, pendulumUncertainty } from '../../physics/balance.ts';
import { centreOfMassAlongTarget, type CentreOfMass } from '../../physics/centre-of-mass.ts';
import { feetOf, halfHeel, pressureAheadOfHeel, usualFlare, type Feet } from '../../physics/feet.ts';
import { chestDepth, leadShoulderFrom, shoulderToChestUncertainty } from '../../physics/trunk.ts';
import { checkpoints, type Checkpoint } from '../../registry/quantity.ts';
import type { Context, ModelId, Rule } from '../rule.ts';

/** The steps at each checkpoint at which enough of the body was entered; what was not is left to the physics' own priors. */
export function postureRules(isEntered: (id: string) => boolean): readonly Rule[] {
  return checkpoints.flatMap((at) => [...shoulderRule(at, isEntered), ...pressureRule(at, isEntered)]);
}

function shoulderRule(at: Checkpoint, isEntered: (id: string) => boolean): readonly Rule[] {
  const inputs = [idAt(at, 'sternum'), idAt(at, 'pelvis'), idAt(at, 'shoulder_turn')];
  if (!inputs.every(isEntered)) return [];
  return [
    {
      name: `lead-shoulder-at-${at.replaceAll('_', '-')}`,
      formula: 'lead shoulder = middle of the shoulders + half their breadth · cos(turn)',
      source: 'Trunk as a line; breadth of the shoulders from Drillis & Contini 1966, in Winter',
      inputs: [...inputs, 'student.stature'],
      outputs: [idAt(at, 'lead_shoulder')],
      compute: ([sternum, pelvis, turn, stature], { bodyTable = 'winter' }) => {
        const body = { sternum: sternum!, pelvis: pelvis!, turn: turn! };
        const place = leadShoulderFrom(bodyTable, stature!, body);
        return place === undefined ? undefined : [place];
      },
      discrepancy: {
        of: ([, , turn]) => [Math.hypot(shoulderToChestUncertainty.value, chestDepth.u * Math.sin(turn!))],
        reason: `3.5 cm; ${shoulderToChestUncertainty.source}.`,
      },
    },
  ];
}

const optional = ['head', 'hands', 'lead_knee', 'shoulder_turn'] as const;
type Optional = (typeof optional)[number];

function pressureRule(at: Checkpoint, isEntered: (id: string) => boolean): readonly Rule[] {
  const width: ModelId = 'checkpoints.address.stance_width';
  const ball: ModelId = 'checkpoints.address.ball_position';
  const chest = (['sternum', 'lead_shoulder'] as const).find((key) => isEntered(idAt(at, key)));
  if (!chest || ![idAt(at, 'pelvis'), width, ball].every(isEntered)) return [];
  const further = optional.filter((key) => isEntered(idAt(at, key)));
  const flares = (['lead_foot_flare', 'trail_foot_flare'] as const).filter((key) =>
    isEntered(idAt('address', key)),
  );

  const posed = (inputs: readonly number[], { bodyTable = 'winter' }: Context): Posed | undefined => {
    const [pelvis, trunk, stanceWidth, ballPosition, stature, ...rest] = inputs;
    const of = (key: Optional): number | undefined => rest[further.indexOf(key)];
    const flare = (key: (typeof flares)[number]): number | undefined =>
      flares.includes(key) ? rest[further.length + flares.indexOf(key)] : undefined;
    const feet = feetOf({
      width: stanceWidth!,
      ballPosition: ballPosition!,
      leadFlare: flare('lead_foot_flare'),
      trailFlare: flare('trail_foot_flare'),
    });
    const k = pendulumOf(stature!)?.k;
    if (!feet || k === undefined) return undefined;
    const landmarks = {
      pelvis: pelvis!,
      [chest === 'sternum' ? 'sternum' : 'leadShoulder']: trunk!,
      head: of('head'),
      hands: of('hands'),
      leadKnee: of('lead_knee'),
      shoulderTurn: of('shoulder_turn'),
    };
    const centre = centreOfMassAlongTarget(landmarks, feet, bodyTable, stature!, at);
    return centre && { centre, feet, k };
  };

  return [
    {
      name: `pressure-at-${at.replaceAll('_', '-')}`,
      formula:
        'centre of pressure = centre of mass − k · acceleration; lead pressure = where it falls between the feet',
      source: `Winter 1995, Gait & Posture 3:193; accelerations by ${balancePriorSource}`,
      inputs: [
        idAt(at, 'pelvis'),
        idAt(at, chest),
        width,
        ball,
        'student.stature',
        ...further.map((key) => idAt(at, key)),
        ...flares.map((key) => idAt('address', key)),
      ],
      outputs: [idAt(at, 'lead_pressure')],
      compute: (inputs, context) => {
        const pose = posed(inputs, context);
        if (!pose) return undefined;
        const place = centreOfPressure(pose.centre.value, balancePriors[at].acceleration.value, pose.k);
        const share = place === undefined ? undefined : leadPressure(place, pose.feet);
        return share === undefined ? undefined : [share];
      },
      discrepancy: {
        of: (inputs, [share], context) => {
          const pose = posed(inputs, context);
          return [pose ? pressureUncertainty(at, pose, share!) : 0];
        },
        reason:
          'Acceleration of the body and what was not recorded of it, by checkpoint; sharp at address, wide in the swing, where both styles of Ball & Best 2007 fit.',
      },
    },
  ];
}

interface Posed {
  readonly centre: CentreOfMass;
  readonly feet: Feet;
  readonly k: number;
}

/** Of the share under the lead foot: centre of mass, acceleration, k, and where under each foot the force acts. */
function pressureUncertainty(at: Checkpoint, { centre, feet, k }: Posed, share: number): number {
  const { acceleration } = balancePriors[at];
  const held = Math.min(1, Math.max(0, share));
  const foot = (flare: { readonly value: number; readonly u: number }): number =>
    Math.hypot(
      halfHeel.u,
      pressureAheadOfHeel.u * Math.sin(flare.value),
      pressureAheadOfHeel.value * Math.cos(flare.value) * flare.u,
    );
  const length = Math.hypot(
    centre.u,
    k * acceleration.u,
    pendulumUncertainty.value * k * acceleration.value,
    held * foot(usualFlare.lead),
    (1 - held) * foot(usualFlare.trail),
  );
  return length / (feet.leadCentre - feet.trailCentre);
}

function idAt(at: Checkpoint, key: string): ModelId {
  return `checkpoints.${at}.${key}` as ModelId;
}
