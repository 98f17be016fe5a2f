// Tests of the check entries-do-not-agree.
import assert from 'node:assert/strict';
import { analyseFiles, assertNone } from './files.ts';

const several = `swing: 1
delivery:
  club_speed: 40 m/s ± 0.5 m/s
  path: 4 deg right ± 0.5 deg
  face: 1 deg right ± 0.5 deg
  face_to_path: 5.4 deg left ± 0.5 deg
flight:
  ball_speed: 56 m/s ± 0.5 m/s
  speed_ratio: 1.46 ± 0.01
  start: 1 deg right ± 0.3 deg
  carry: 150 m ± 2 m
  curve: 5 m right ± 1 m
  finish: 12 m right ± 1 m
`;

describe('entries-do-not-agree', () => {
  it('speaks once, on the first line, where several small misfits come together', () => {
    const { findings } = analyseFiles(several);
    const found = findings.filter(({ code }) => code === 'entries-do-not-agree');
    assert.deepEqual(
      found.map(({ range }) => range),
      [{ start: { line: 0, character: 0 }, end: { line: 0, character: 8 } }],
    );
  });

  it('is silent where one entry stands out and is named', () => {
    const one = several.replace('5.4 deg left', '25 deg left');
    assertNone('entries-do-not-agree', one);
    assert.ok(analyseFiles(one).findings.some(({ code }) => code === 'face-to-path-against-face'));
  });

  it('is silent where the uncertainties allow for the differences', () => {
    assertNone(
      'entries-do-not-agree',
      several.replaceAll(/± ([\d.]+)/g, (_, u: string) => `± ${3 * Number(u)}`),
    );
  });
});
