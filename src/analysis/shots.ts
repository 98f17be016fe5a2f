// Gathers the shots of a record, from the list in it or from a file of shots, for the model to sum up; reads no file.
import type { SubjectShots } from '../checks/subject.ts';
import { summariseShots } from '../model/shots.ts';
import type { ShotColumns, SwingwrightDocument } from '../record/document.ts';
import type { Registry } from '../registry/registry.ts';
import { readShotsFile, type FileShot, type ShotsFile } from '../record/shots-file.ts';

export function shotsInFile(
  uri: string,
  text: string,
  columns: ShotColumns,
  registry: Registry,
): SubjectShots {
  const file = readShotsFile(text, columns, registry);
  return summed(uri, file.shots, file);
}

/** Undefined where the record has no list of shots. Of rival readings of one thing the first one counts. */
export function shotsInList(uri: string, document: SwingwrightDocument): SubjectShots | undefined {
  if (document.kind !== 'swing' || document.shots.length === 0) return undefined;
  const shots = document.shots.map((entries, index): FileShot => {
    const first = [...entries.values()].flatMap(({ id, readings: [reading] }) =>
      reading === undefined ? [] : [{ id, reading }],
    );
    const spans = [...entries.values()].flatMap(({ keySpan, valueSpan }) => [keySpan, valueSpan]);
    return {
      row: index + 1,
      measures: new Map(first.map(({ id, reading }) => [id, reading.measure])),
      span: {
        start: spans.reduce((least, { start }) => Math.min(least, start), document.text.length),
        end: spans.reduce((most, { end }) => Math.max(most, end), 0),
      },
    };
  });
  return summed(uri, shots, undefined);
}

function summed(uri: string, shots: readonly FileShot[], file: ShotsFile | undefined): SubjectShots {
  const values = shots.map(({ measures }) => new Map([...measures].map(([id, { value }]) => [id, value])));
  return { uri, file, shots, summary: summariseShots(values) };
}
