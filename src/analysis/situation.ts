// Builds the model's situation from a record, the student's file and the workspace; knows how readings are weighed, not golf.
import { combineReadings } from '../model/combine.ts';
import type { Calibration, Observation, Situation } from '../model/value.ts';
import type { BagClub, Entry, StudentFile, SwingRecord, WorkspaceFile } from '../record/document.ts';
import { standardUncertainty } from '../registry/registry.ts';

/**
 * Every entry with a reading, of the record, the student and the club, as one observation in SI. A right-handed player
 * stands where no student is known: checks in which the hand matters look at the student themselves.
 */
export function situationOf(
  record: SwingRecord,
  student: StudentFile | undefined,
  club: BagClub | undefined,
  workspace: WorkspaceFile | undefined,
): Situation {
  const observations = new Map<string, Observation>();
  for (const entries of [record.entries, student?.entries, club?.entries]) {
    for (const entry of entries?.values() ?? []) {
      const observation = observationOf(entry, workspace);
      if (observation !== undefined) observations.set(entry.id, observation);
    }
  }
  return {
    hand: student?.hand?.value ?? 'right',
    clubKind: club?.kind?.value,
    windBearing: windBearingOf(record),
    observations,
    calibration: workspace?.calibration,
  };
}

/** True where both hold the same numbers, so that the same follows from them. */
export function isSameSituation(a: Situation, b: Situation): boolean {
  if (a.hand !== b.hand || a.clubKind !== b.clubKind || a.windBearing !== b.windBearing) return false;
  if (!isSameCalibration(a.calibration, b.calibration)) return false;
  if (a.observations.size !== b.observations.size) return false;
  for (const [id, { value, u }] of a.observations) {
    const other = b.observations.get(id);
    if (other === undefined || other.value !== value || other.u !== u) return false;
  }
  return true;
}

function isSameCalibration(a: Calibration | undefined, b: Calibration | undefined): boolean {
  if (a === b) return true;
  if (a === undefined || b === undefined) return false;
  const numbers = ({ drag, lift, correlation, shots, ballSpeed }: Calibration): readonly unknown[] => [
    drag.value,
    drag.u,
    lift?.value,
    lift?.u,
    correlation,
    shots,
    ballSpeed?.from,
    ballSpeed?.to,
  ];
  const others = numbers(b);
  return numbers(a).every((number, index) => number === others[index]);
}

function observationOf(entry: Entry, workspace: WorkspaceFile | undefined): Observation | undefined {
  const readings = entry.readings.map((reading) => ({
    value: reading.measure.value,
    u: standardUncertainty(entry.quantity, reading.measure, workspace?.coverage ?? 1, workspace?.methods).u,
    doubtful: reading.doubtful,
  }));
  return combineReadings(entry.id, readings);
}

/** That of the first reading of the wind that names one; rival bearings are not averaged, since half-way is nowhere. */
export function windBearingOf(record: SwingRecord): number | undefined {
  const wind = record.entries.get('conditions.wind');
  return wind?.readings.find((reading) => reading.measure.bearing !== undefined)?.measure.bearing;
}
