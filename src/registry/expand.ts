// Unfolds the generated rows, of which one may stand for nine checkpoints, into quantities; knows no single quantity.
import { checkpoints } from './quantity.ts';
import type { Checkpoint, Quantity, Range, RangeByClub, Section } from './quantity.ts';

/** Everything that a quantity is, wherever it stands. `path` is the id below the section (and below the checkpoint). */
export interface QuantityRow extends Omit<
  Quantity,
  'id' | 'section' | 'checkpoint' | 'key' | 'practice' | 'practiceByClub' | 'bounds'
> {
  readonly path: string;
  readonly bounds: Range;
}

export interface PlainRow extends QuantityRow {
  readonly section: Exclude<Section, 'checkpoints'>;
  readonly practice: Range | undefined;
  readonly practiceByClub?: RangeByClub;
}

export interface CheckpointRow extends QuantityRow {
  readonly at: readonly Checkpoint[];
  readonly practiceAt: Readonly<Partial<Record<Checkpoint, Range>>>;
  readonly practiceByClubAt?: Readonly<Partial<Record<Checkpoint, RangeByClub>>>;
  /** Only where a checkpoint's bounds differ from the row's. */
  readonly boundsAt: Readonly<Partial<Record<Checkpoint, Range>>>;
}

/** Checkpoint by checkpoint in their order, then section by section, each in the order of the rows. */
export function expand(
  checkpointRows: readonly CheckpointRow[],
  plainRows: readonly PlainRow[],
): readonly Quantity[] {
  return [
    ...checkpoints.flatMap((checkpoint) =>
      checkpointRows.filter((row) => row.at.includes(checkpoint)).map((row) => atCheckpoint(row, checkpoint)),
    ),
    ...plainRows.map(plain),
  ];
}

function atCheckpoint(row: CheckpointRow, checkpoint: Checkpoint): Quantity {
  return {
    ...shared(row),
    id: `checkpoints.${checkpoint}.${row.path}`,
    section: 'checkpoints',
    checkpoint,
    practice: row.practiceAt[checkpoint],
    practiceByClub: row.practiceByClubAt?.[checkpoint],
    bounds: row.boundsAt[checkpoint] ?? row.bounds,
  };
}

function plain(row: PlainRow): Quantity {
  return {
    ...shared(row),
    id: `${row.section}.${row.path}`,
    section: row.section,
    practice: row.practice,
    practiceByClub: row.practiceByClub,
    bounds: row.bounds,
  };
}

function shared(
  row: QuantityRow,
): Omit<Quantity, 'id' | 'section' | 'practice' | 'practiceByClub' | 'bounds'> {
  const { path, title, meaning, from, to, dimension, unit, decimals, directions, lateral, uncertainty } = row;
  const key = path.slice(path.lastIndexOf('.') + 1);
  return { key, title, meaning, from, to, dimension, unit, decimals, directions, lateral, uncertainty };
}
