import assert from 'node:assert/strict';
import { checks } from '../../src/checks/table.ts';
import { swingwright } from './program.ts';

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

  it('names the nearest code for one that does not exist, and ends with 2', () => {
    const { code, err } = swingwright(['explain', 'wrong-dimention'], here);
    assert.equal(code, 2);
    assert.match(err, /no finding code `wrong-dimention`; did you mean `wrong-dimension`\?\n$/);
  });
});
