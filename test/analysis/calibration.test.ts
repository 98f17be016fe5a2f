// A folder's own shots calibrate its flight, and what is written reads back and changes nothing else.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { createCache } from '../../src/analysis/cache.ts';
import { analyse } from '../../src/analysis/analyse.ts';
import { calibrateFolder, calibrationEdit, type FolderCalibration } from '../../src/analysis/calibration.ts';
import type { FileState } from '../../src/analysis/result.ts';
import type { CalibrationFit } from '../../src/model/calibration.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { applied } from '../checks/files.ts';

const samples = resolve(import.meta.dirname, '../../samples');
const folder = 'file:///practice';
const csv = readFileSync(join(samples, 'tove/shots/2026-04-18-seven-iron.csv'), 'utf8');
const columns = `shots:
  by: radar
  columns: { Flown (m): { quantity: carry, by: rangefinder }, Off line (m): { quantity: finish, by: rangefinder } }
`;
const record = `swing: 1
conditions: { temperature: 13 °C, altitude: 240 m, wind: 1.5 m/s from left by anemometer }
shots: shots.csv
`;

async function calibrated(files: Readonly<Record<string, string>>): Promise<FolderCalibration> {
  const load = (uri: string): Promise<FileState> => {
    const text = files[uri.slice(folder.length + 1)];
    return Promise.resolve(text === undefined ? { kind: 'missing' } : { kind: 'text', text });
  };
  return calibrateFolder({
    folder,
    records: Object.keys(files)
      .filter((name) => name.endsWith('.swing.yaml'))
      .map((name) => `${folder}/${name}`),
    files: new Map<string, FileState>(),
    load,
    signal: new AbortController().signal,
    cache: createCache(),
  });
}

describe('the calibration of a folder', () => {
  const practice = {
    'a.swing.yaml': record,
    'shots.csv': csv,
    'swingwright.yaml': `swingwright: 1\n${columns}`,
  };

  it('finds the multipliers that the sample was drawn with: drag 0.97, lift 1', async () => {
    const { outcome, lines } = await calibrated(practice);
    assert.ok(outcome.kind === 'fitted');
    const { drag, lift } = outcome.fit;
    assert.ok(Math.abs(drag.value - 0.97) < 2 * drag.u);
    assert.ok(Math.abs(lift!.value - 1) < 2 * lift!.u);
    assert.match(lines[0]!, /^Drag × 0\.\d{3} ± 0\.\d{3}, lift × .* from 12 shots of 1 record\.$/);
  });

  it('keeps them in the workspace file, from where the flight of each record takes them', async () => {
    const { edit, workspace, isThere } = await calibrated(practice);
    assert.deepEqual([workspace, isThere], [`${folder}/swingwright.yaml`, true]);
    const text = applied(practice['swingwright.yaml'], [edit!]);
    assert.ok(text.startsWith(practice['swingwright.yaml']));
    const files = {
      ...practice,
      'swingwright.yaml': text,
      'b.swing.yaml':
        'swing: 1\nflight: { ball_speed: 43 m/s, launch_angle: 20 deg, start: 0 deg, spin: 5300 rpm, spin_tilt: 0 deg }\n',
    };
    const snapshot = {
      file: (uri: string): FileState => {
        const found = (files as Record<string, string>)[uri.slice(folder.length + 1)];
        return found === undefined ? { kind: 'missing' } : { kind: 'text', text: found };
      },
    };
    const carry = analyse(`${folder}/b.swing.yaml`, snapshot).derivation!.values.get('flight.carry')!;
    assert.ok(carry.assumed.some(({ words }) => words.includes('as calibrated on 12 shots of your own')));
    // Once kept, the fit must come out the same: it starts from the published coefficients, not from itself.
    const [first, second] = [await calibrated(practice), await calibrated(files)];
    assert.deepEqual(second.lines, first.lines);
  });

  it('makes a workspace file where there is none', async () => {
    const named = csv.replace('Flown (m),Off line (m)', 'carry,finish');
    const { edit, isThere } = await calibrated({ 'a.swing.yaml': record, 'shots.csv': named });
    assert.equal(isThere, false);
    assert.match(edit!.text, /^swingwright: 1\ncalibration: \{ drag: .*shots: 12, .* \}\n$/);
  });

  it('says why where there are too few shots', async () => {
    const few = csv.split('\n').slice(0, 6).join('\n');
    const { lines, edit } = await calibrated({ ...practice, 'shots.csv': few });
    assert.equal(edit, undefined);
    assert.match(lines[0]!, /^Not calibrated\. Found 5 shots .*; expected at least 10\.$/);
  });

  it('leaves records to the workspace file of their own folder', async () => {
    const { lines } = await calibrated({
      ...practice,
      'sub/a.swing.yaml': record,
      'sub/shots.csv': csv,
      'sub/swingwright.yaml': practice['swingwright.yaml'],
    });
    assert.match(lines[0]!, /from 12 shots of 1 record\.$/);
    assert.match(lines.at(-1)!, /^Left out: 1 record with a workspace file of another folder\.$/);
  });
});

describe('keeping a calibration', () => {
  const fit: CalibrationFit = {
    drag: { value: 1.0414, u: 0.02 },
    lift: { value: 0.97, u: 0.03 },
    correlation: 0.851,
    shots: 48,
    ballSpeed: { from: 38.6, to: 51.2 },
    before: 5,
    after: 3,
    leftOut: 0,
  };
  const uri = `${folder}/swingwright.yaml`;
  const written =
    'calibration: { drag: 1.041 ± 0.020, lift: 0.970 ± 0.030, correlation: 0.85, shots: 48, ball_speed: 38..52 m/s }';

  it('changes nothing but the calibration, whatever stands around it', () => {
    const around = fc.constantFrom(
      'coverage: 2',
      '# words',
      'notes: "calibration: x"',
      'severities:\n  outside-practice: off',
      '',
    );
    const old = fc.constantFrom(
      undefined,
      'calibration:',
      'calibration: {}',
      'calibration: { drag: 1.2 ± 0.1, shots: 12 } # in May',
      'calibration:\n  drag: 1.2 ± 0.1\n  lift: 0.9',
    );
    fc.assert(
      fc.property(around, old, around, fc.constantFrom('\n', '\r\n'), (before, middle, after, feed) => {
        fc.pre(before !== after || before === '');
        const join = (parts: readonly string[]): string => `${parts.join('\n')}\n`.replaceAll('\n', feed);
        const head = join(['swingwright: 1', before]);
        const text = middle === undefined ? head + join([after]) : head + join([middle, after]);
        const edit = calibrationEdit(uri, text, fit)!;
        const result = applied(text, [edit]);
        assert.ok(result.startsWith(head) && result.includes(written));
        assert.ok(middle === undefined || result.endsWith(join(['', after]).replace(feed, '')));
        assert.equal(result.includes('in May'), middle?.includes('in May') ?? false);
        const document = parseDocument('workspace', result);
        assert.ok(document.kind === 'workspace');
        assert.deepEqual(document.calibration?.drag, { value: 1.041, u: 0.02 });
        assert.deepEqual(document.calibration?.ballSpeed, { from: 38, to: 52 });
        assert.deepEqual(document.problems, []);
      }),
    );
  });

  it('gives up where the file cannot take it', () => {
    assert.equal(calibrationEdit(uri, '{ swingwright: 1 }\n', fit), undefined);
    assert.equal(calibrationEdit(uri, '[1, 2]\n', fit), undefined);
  });
});
