// What the workspace file says of files of shots and of the calibration of the flight.
import assert from 'node:assert/strict';
import { parseDocument } from '../../src/record/parse.ts';
import type { WorkspaceFile } from '../../src/record/document.ts';

function read(text: string): WorkspaceFile {
  const document = parseDocument('workspace', `swingwright: 1\n${text}`);
  assert.ok(document.kind === 'workspace');
  return document;
}

function problemsIn(text: string): string[] {
  const { text: whole, problems } = read(text);
  return problems.map(({ code, span }) => `${code} ${whole.slice(span.start, span.end)}`);
}

describe('the workspace file', () => {
  it('names columns by quantity, with unit and method, or to be ignored', () => {
    const { shotColumns, problems } = read(`methods: { launch tent: { meaning: ours } }
shots:
  by: launch tent
  columns:
    A: carry
    B: { quantity: flight.start, unit: deg, by: eye }
    C: ignore
`);
    assert.deepEqual(problems, []);
    assert.equal(shotColumns.by, 'launch tent');
    assert.deepEqual(
      [...shotColumns.named].map(([name, column]) =>
        column.kind === 'ignored' ? [name] : [name, column.quantity.id, column.unit, column.by],
      ),
      [['A', 'flight.carry', undefined, undefined], ['B', 'flight.start', 'deg', 'eye'], ['C']],
    );
  });

  it('says which quantity, unit or method of a column is not known', () => {
    assert.deepEqual(
      problemsIn(`shots:
  by: ear
  columns:
    A: cary
    B: { quantity: carry, unit: kg }
    C: { quantity: carry, unit: mtr, by: nose }
    D: { quantity: conditions.wind }
`),
      [
        'unknown-method ear',
        'unknown-word cary',
        'wrong-dimension kg',
        'unknown-unit mtr',
        'unknown-method nose',
        'unknown-word conditions.wind',
      ],
    );
  });

  it('reads a calibration with its uncertainties', () => {
    const { calibration, problems } = read(
      'calibration: { drag: 1.04 ± 0.02, lift: 0.97 ± 0.03, correlation: 0.8, shots: 48, ball_speed: 38..52 m/s }\n',
    );
    assert.deepEqual(problems, []);
    assert.deepEqual(
      [
        calibration!.drag,
        calibration!.lift,
        calibration!.correlation,
        calibration!.shots,
        calibration!.ballSpeed,
      ],
      [{ value: 1.04, u: 0.02 }, { value: 0.97, u: 0.03 }, 0.8, 48, { from: 38, to: 52 }],
    );
  });

  it('takes a factor without an uncertainty as known to a twentieth, and does without lift', () => {
    const { calibration } = read('calibration: { drag: 1.1 }\n');
    assert.ok(Math.abs(calibration!.drag.u - 0.055) < 1e-12);
    assert.deepEqual([calibration!.lift, calibration!.correlation], [undefined, 0]);
  });

  it('refuses factors that no ball has, and what is no number', () => {
    assert.deepEqual(problemsIn('calibration: { drag: 4 ± 0.1 }\n'), ['number-out-of-range 4 ± 0.1']);
    assert.deepEqual(problemsIn('calibration: { drag: lots }\n'), ['unreadable-measure lots']);
    assert.equal(read('calibration: { drag: lots }\n').calibration, undefined);
    assert.equal(read('calibration: { lift: 0.97 ± 0.03 }\n').calibration, undefined);
  });
});
