// The `draw` command writes the pictures of a record, and nothing where it cannot read one.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pictures } from '../../src/draw/pictures.tsx';
import { swingwright, withFolder } from './program.ts';

const files = { 'a.swing.yaml': 'swing: 1\ndelivery: { path: 5 deg right, face: 1 deg right }\n' };

describe('swingwright draw', () => {
  it('writes a file for each picture and names it', () => {
    withFolder(files, (at) => {
      const { code, out } = swingwright(['draw', 'a.swing.yaml', '--out', 'pictures'], at);
      const names = pictures
        .filter(({ checkpoints }) => !checkpoints)
        .map(({ name }) => `a.${name}.svg`)
        .sort();
      assert.equal(code, 0);
      assert.deepEqual(readdirSync(join(at, 'pictures')).sort(), names);
      assert.deepEqual(
        out.trim().split('\n').sort(),
        names.map((name) => `pictures/${name}`),
      );
    });
  });

  it('writes one picture in other colours', () => {
    withFolder(files, (at) => {
      const args = ['draw', 'a.swing.yaml', '--picture', 'strike-from-above', '--theme', 'contrast-dark'];
      assert.equal(swingwright(args, at).code, 0);
      const svg = readFileSync(join(at, 'a.strike-from-above.svg'), 'utf8');
      assert.match(svg, /^<\?xml .*\n<svg .*data-id="delivery.path"/s);
      assert.ok(svg.includes('#4df0e2'));
    });
  });

  it('writes figures of the checkpoints that have entries, or of the one that is asked for', () => {
    const record =
      'swing: 1\ncheckpoints: { top: { shoulder_turn: 80 deg closed }, impact: { shaft_lean: } }\n';
    withFolder({ 'a.swing.yaml': record }, (at) => {
      assert.equal(swingwright(['draw', 'a.swing.yaml', '--out', 'all'], at).code, 0);
      const figures = readdirSync(join(at, 'all')).filter((file) => file.includes('figure'));
      assert.deepEqual(figures.sort(), ['a.figure-down-the-line.top.svg', 'a.figure-face-on.top.svg']);
      const args = ['draw', 'a.swing.yaml', '--checkpoint', 'finish', '--out', 'one'];
      assert.equal(swingwright(args, at).code, 0);
      assert.deepEqual(readdirSync(join(at, 'one')).sort(), [
        'a.figure-down-the-line.finish.svg',
        'a.figure-face-on.finish.svg',
      ]);
      assert.equal(swingwright(['draw', 'a.swing.yaml', '--checkpoint', 'p4'], at).code, 2);
    });
  });

  it('ends with 2 where there is no record, or no such picture', () => {
    withFolder(files, (at) => {
      assert.equal(swingwright(['draw', 'b.swing.yaml'], at).code, 2);
      assert.equal(swingwright(['draw', 'a.swing.yaml', '--picture', 'portrait'], at).code, 2);
      assert.deepEqual(readdirSync(at), ['a.swing.yaml']);
    });
  });
});
