// A workspace file is read into coverage, severities and figures of its own, and what it cannot mean is said at its place.
import assert from 'node:assert/strict';
import type { WorkspaceFile } from '../../src/record/document.ts';
import { assertMarked } from './marked.ts';

describe('a workspace file', () => {
  it('has coverage, severities and figures of its own in SI', () => {
    const workspace = assertMarked(
      'workspace',
      `swingwright: 1
coverage: 2
severities:
  no-value-yet: off
  outside-practice: warning
methods:
  video:
    uncertainty: { length: 2 cm, angle: 3 deg, temperature: 2 °C, fraction: 5 %, ratio: 0.1 }
  old laser:
    meaning: a laser of ours
`,
    ) as WorkspaceFile;
    assert.equal(workspace.coverage, 2);
    assert.deepEqual(
      [...workspace.severities].map(([code, { severity }]) => [code, severity]),
      [
        ['no-value-yet', 'off'],
        ['outside-practice', 'warning'],
      ],
    );
    const video = workspace.methods.get('video');
    assert.ok(video?.meaning);
    const figures = Object.entries(video.uncertainty).map(([dimension, { u }]) => [
      dimension,
      Number(u.toPrecision(9)),
    ]);
    assert.deepEqual(Object.fromEntries(figures), {
      length: 0.02,
      angle: Number(((3 * Math.PI) / 180).toPrecision(9)),
      // A difference of two degrees Celsius is one of two kelvin.
      temperature: 2,
      fraction: 0.05,
      ratio: 0.1,
    });
    assert.equal(workspace.methods.get('old laser')?.meaning, 'a laser of ours');
  });

  it('counts once where the coverage is left out or cannot be one', () => {
    assert.equal((assertMarked('workspace', 'swingwright: 1\n') as WorkspaceFile).coverage, 1);
  });

  it('needs units of the dimension, and more than nothing', () => {
    const workspace = assertMarked(
      'workspace',
      `swingwright: 1
methods:
  video:
    uncertainty:
      length: 2
              ^ unreadable-measure
      angle: 3 cm
               ^^ wrong-dimension
      time: 0 ms
            ^^^^ uncertainty-not-positive
      sped: 3 m/s
      ^^^^ unknown-key
      delivery.face: 3 m
                       ^ wrong-dimension
      delivery.fase: 3 deg
      ^^^^^^^^^^^^^ unknown-key
`,
    ) as WorkspaceFile;
    assert.deepEqual(workspace.methods.get('video')?.uncertainty, {});
    assert.equal(workspace.methods.get('video')?.ofQuantities, undefined);
  });

  it('may have a figure of a method for one quantity, the workspace’s own too', () => {
    const workspace = assertMarked(
      'workspace',
      `swingwright: 1
quantities: { delivery.wand: { like: delivery.face, title: Face by wand } }
methods:
  video: { uncertainty: { length: 2 cm, flight.carry: 5 m, delivery.wand: 2 deg } }
`,
    ) as WorkspaceFile;
    const figures = Object.entries(workspace.methods.get('video')?.ofQuantities ?? {});
    assert.deepEqual(
      figures.map(([id, { u }]) => [id, Number(u.toPrecision(6))]),
      [
        ['flight.carry', 5],
        ['delivery.wand', Number(((2 * Math.PI) / 180).toPrecision(6))],
      ],
    );
  });
});
