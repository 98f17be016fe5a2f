// Gathers from an analysed record the shots that drag and lift can be fitted to; fits nothing.
import { combineReadings } from '../model/combine.ts';
import type { CalibrationShot, Known, SessionAir } from '../model/calibration-fit.ts';
import { priorsFor } from '../model/priors.ts';
import type { Measure } from '../measure/measure.ts';
import type { SwingRecord, WorkspaceFile } from '../record/document.ts';
import { standardUncertainty, type Registry } from '../registry/registry.ts';
import type { Analysis } from './result.ts';
import { windBearingOf } from './situation.ts';

/** Shots with ball speed, launch angle, spin and carry; a start or a tilt that is not said is level, with the quantity's own uncertainty. */
export function calibrationShotsOf({
  uri,
  document,
  subject,
  derivation,
}: Analysis): readonly CalibrationShot[] {
  if (document.kind !== 'swing' || subject.shots === undefined || derivation === undefined) return [];
  const air = airOf(document, derivation.values);
  const workspace = subject.workspace?.document;
  const { registry } = subject;
  return subject.shots.shots.flatMap(({ measures }): CalibrationShot[] => {
    const known = (key: string): Known | undefined => knownOf(`flight.${key}`, measures, workspace, registry);
    const [ballSpeed, launchAngle, spin, carry] = ['ball_speed', 'launch_angle', 'spin', 'carry'].map(known);
    if (!ballSpeed || !launchAngle || !spin || !carry) return [];
    const tilt = known('spin_tilt');
    // Without a measured tilt the curve says nothing of lift.
    const curve = tilt && known('curve');
    const apex = known('apex');
    return [
      {
        session: uri,
        air,
        launch: {
          ballSpeed,
          launchAngle,
          spin,
          start: known('start') ?? levelOf('flight.start', registry),
          spinTilt: tilt ?? levelOf('flight.spin_tilt', registry),
        },
        carry,
        ...(curve && { curve }),
        ...(apex && { apex }),
      },
    ];
  });
}

function knownOf(
  id: string,
  measures: ReadonlyMap<string, Measure>,
  workspace: WorkspaceFile | undefined,
  registry: Registry,
): Known | undefined {
  const [quantity, measure] = [registry.find(id), measures.get(id)];
  if (quantity === undefined || measure === undefined) return undefined;
  const { u } = standardUncertainty(quantity, measure, workspace?.coverage ?? 1, registry);
  return combineReadings(id, [{ value: measure.value, u, doubtful: false }]);
}

function levelOf(id: string, registry: Registry): Known {
  return { value: 0, u: registry.find(id)?.uncertainty.otherwise ?? 0.1 };
}

/** Sea level in any weather, where the record says neither altitude nor pressure: ISO 2533:1975; 150 m and 9 hPa by judgement. */
const usualPressure: Known = { value: 101325, u: 2000 };

/** What the record says of the air, and for the rest what the step of the flight assumes. */
function airOf(
  record: SwingRecord,
  values: ReadonlyMap<string, { readonly value: number; readonly u: number | null }>,
): SessionAir {
  const priors = new Map(
    priorsFor({ clubKind: undefined, windBearing: undefined }).map((prior) => [prior.id, prior]),
  );
  const known = (key: string, otherwise: Known): Known => {
    const value = values.get(`conditions.${key}`) ?? priors.get(`conditions.${key}`);
    return value === undefined || value.u === null ? otherwise : { value: value.value, u: value.u };
  };
  const bearing = windBearingOf(record);
  const still: Known = { value: 0, u: Math.SQRT2 };
  const wind = known('wind', still);
  return {
    temperature: known('temperature', { value: 288.15, u: 8 }),
    pressure: known('pressure', usualPressure),
    humidity: known('humidity', { value: 0.5, u: 0.2 }).value,
    // A wind whose direction is not known counts as still air, as in the step of the flight.
    wind: bearing === undefined && wind.value !== 0 ? { ...still, u: Math.hypot(still.u, wind.value) } : wind,
    windBearing: bearing ?? Math.PI / 4,
  };
}
