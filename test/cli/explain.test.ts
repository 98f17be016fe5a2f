import assert from 'node:assert/strict';
import { checks } from '../../src/checks/table.ts';
import { swingwright, withFolder } from './program.ts';

const here = import.meta.dirname;

describe('swingwright explain', () => {
  it('prints the explanation of a code with its usual severity', () => {
    const { code, out } = swingwright(['explain', 'wrong-dimension'], here);
    const check = checks.find((candidate) => candidate.code === 'wrong-dimension')!;
    assert.equal(code, 0);
    assert.ok(out.startsWith(`wrong-dimension (error): ${check.title}`));
    assert.ok(out.includes(check.explanation.trim()));
  });

  it('lists every code where none is named', () => {
    const { code, out } = swingwright(['explain'], here);
    assert.equal(code, 0);
    assert.deepEqual(
      out
        .trim()
        .split('\n')
        .map((line) => line.split(' ')[0]),
      checks.map((check) => check.code),
    );
  });

  it('explains what the workspace here has of its own: checks, quantities, derived ones', () => {
    const workspace = `swingwright: 1
quantities: { delivery.wobble: { title: Wobble, unit: deg, bounds: 0..9 deg, uncertainty: 1 deg } }
derived: { delivery.rock: { is: 2 * delivery.wobble, like: delivery.wobble } }
checks: { much-wobble: { when: delivery.wobble > 4 deg, message: much, because: It shakes. } }
`;
    withFolder({ 'swingwright.yaml': workspace }, (folder) => {
      const check = swingwright(['explain', 'own/much-wobble'], folder);
      assert.equal(check.code, 0);
      assert.match(
        check.out,
        /^own\/much-wobble \(warning\): much wobble\n\nIt shakes\.[^]*`delivery\.wobble > 4 deg`/,
      );
      assert.match(
        swingwright(['explain', 'delivery.rock'], folder).out,
        /^Computed in this workspace as 2 \* delivery\.wobble\.$/m,
      );
      assert.match(
        swingwright(['explain', 'delivery.wobble'], folder).out,
        /^Possible: 0\.\.9 deg \(the workspace file\)\.$/m,
      );
      assert.match(swingwright(['explain'], folder).out, /^own\/much-wobble +much wobble$/m);
      assert.match(
        swingwright(['explain', 'delivery.wobbel'], folder).err,
        /did you mean `delivery\.wobble`\?/,
      );
    });
    assert.equal(swingwright(['explain', 'own/much-wobble'], here).code, 2);
  });

  it('names the nearest code for one that does not exist, and ends with 2', () => {
    const { code, err } = swingwright(['explain', 'wrong-dimention'], here);
    assert.equal(code, 2);
    assert.match(err, /no finding code `wrong-dimention`; did you mean `wrong-dimension`\?\n$/);
  });
});
