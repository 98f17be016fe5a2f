// Builds the model's situation from a record, the student's file and the workspace; knows how readings are weighed, not golf.
import { combineReadings, type WeighedReading } from '../model/combine.ts';
import { bodyTableNamed } from '../model/context.ts';
import type { Calibration, Observation, Situation } from '../model/value.ts';
import type { BagClub, Entry, StudentFile, SwingRecord, WorkspaceFile } from '../record/document.ts';
import type { Own } from '../judgement/own.ts';
import { standardUncertainty, type Registry } from '../registry/registry.ts';

/** Every entry with a reading, of the record, the student and the club, as one observation in SI, and each of its readings. */
export function situationOf(
  record: SwingRecord,
  student: StudentFile | undefined,
  club: BagClub | undefined,
  workspace: WorkspaceFile | undefined,
  { registry, model }: Pick<Own, 'registry' | 'model'>,
): Situation {
  const observations = new Map<string, Observation>();
  const readings = new Map<string, readonly WeighedReading[]>();
  for (const entries of [record.entries, student?.entries, club?.entries]) {
    for (const entry of entries?.values() ?? []) {
      const weighed = readingsOf(entry, workspace, registry);
      const observation = combineReadings(entry.id, weighed);
      if (observation === undefined) continue;
      observations.set(entry.id, observation);
      readings.set(entry.id, weighed);
    }
  }
  return {
    hand: student?.hand?.value,
    clubKind: club?.kind?.value,
    windBearing: windBearingOf(record),
    observations,
    readings,
    bodyTable: bodyTableNamed(student?.bodyTable?.value),
    calibration: workspace?.calibration,
    registry,
    own: model,
  };
}

/** True where both hold the same numbers, so that the same follows from them. */
export function isSameSituation(a: Situation, b: Situation): boolean {
  if (a.hand !== b.hand || a.clubKind !== b.clubKind || a.windBearing !== b.windBearing) return false;
  if (!isSameCalibration(a.calibration, b.calibration)) return false;
  if (a.registry?.key !== b.registry?.key || a.own?.key !== b.own?.key) return false;
  if (a.bodyTable !== b.bodyTable || a.observations.size !== b.observations.size) return false;
  for (const id of a.observations.keys()) {
    if (!b.observations.has(id) || !areSameReadings(a.readings?.get(id), b.readings?.get(id))) return false;
  }
  return true;
}

function areSameReadings(a: readonly WeighedReading[] = [], b: readonly WeighedReading[] = []): boolean {
  return (
    a.length === b.length &&
    a.every((one, place) => {
      const other = b[place]!;
      return one.value === other.value && one.u === other.u && one.doubtful === other.doubtful;
    })
  );
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

function readingsOf(
  entry: Entry,
  workspace: WorkspaceFile | undefined,
  registry: Registry,
): readonly WeighedReading[] {
  return entry.readings.map((reading) => ({
    value: reading.measure.value,
    u: standardUncertainty(entry.quantity, reading.measure, workspace?.coverage ?? 1, registry).u,
    doubtful: reading.doubtful,
  }));
}

/** That of the first reading of the wind that names one; rival bearings are not averaged, since half-way is nowhere. */
export function windBearingOf(record: SwingRecord): number | undefined {
  const wind = record.entries.get('conditions.wind');
  return wind?.readings.find((reading) => reading.measure.bearing !== undefined)?.measure.bearing;
}
