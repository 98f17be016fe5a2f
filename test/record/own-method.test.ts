// Names of own methods, decimals and titles that would be read as something else, or as nothing, are said at their place.
import assert from 'node:assert/strict';
import { parseDocument } from '../../src/record/parse.ts';

function problemsIn(text: string): readonly string[] {
  return parseDocument('workspace', `swingwright: 1\n${text}\n`).problems.map(
    ({ code, span, found, expected }) =>
      `${code} ${`swingwright: 1\n${text}\n`.slice(span.start, span.end)}: ${found} / ${expected}`,
  );
}

describe('a method of a workspace', () => {
  for (const name of [
    '""',
    'by wand',
    'a ± b',
    'a +- b',
    'deg',
    'right',
    '7 up',
    '3',
    '" "',
    '"my: cam"',
    '"a, b"',
    '"[x] cam"',
    '"{x}"',
  ])
    it(`is not called ${name}`, () => {
      const problems = problemsIn(`methods: { ${name}: { uncertainty: { angle: 1 deg } } }`);
      assert.equal(problems.length, 1);
      assert.match(problems[0]!, /^unknown-word /);
      assert.ok(problems[0]!.includes(`${name}: `), problems[0]);
    });

  for (const name of ['laser', '3d camera', 'laser (two beams)', 'radar', "coach's eye", 'wand-and-eye'])
    it(`may be called ${name}`, () => {
      assert.deepEqual(problemsIn(`methods: { ${name}: { uncertainty: { angle: 1 deg } } }`), []);
    });
});

describe('an own quantity', () => {
  it('has a whole number of decimals', () => {
    const problems = problemsIn('quantities: { delivery.wand: { like: delivery.face, decimals: 1.5 } }');
    assert.equal(problems.length, 1);
    assert.match(problems[0]!, /1\.5.* \/ a whole number$/);
  });

  it('has a title with something in it, or none', () => {
    for (const title of ['""', '" "']) {
      const problems = problemsIn(`quantities: { delivery.wand: { like: delivery.face, title: ${title} } }`);
      assert.equal(problems.length, 1, title);
      assert.match(problems[0]!, /title/);
    }
    assert.deepEqual(problemsIn('quantities: { delivery.wand: { like: delivery.face, title: Wand } }'), []);
  });
});
