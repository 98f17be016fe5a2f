// Holds the table of checks complete and every explanation true: its examples raise, or do not raise, what it says.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checks, codes, findCheck } from '../../src/checks/table.ts';
import { analyseFiles, type Files } from './files.ts';

const folder = join(import.meta.dirname, '../../src/checks');
const block = /```yaml (\S+)\n([^]*?)\n```/g;

/** These cannot be shown in a few lines of text, so that their explanation has only the example that does not raise them. */
const beyondAnExample = new Set([
  'file-too-large',
  'unreadable-reference',
  'reference-not-known-yet',
  'too-many-findings',
  'agreement-not-judged',
]);

function examplesOf(explanation: string, heading: string): Files {
  const [, after = ''] = explanation.split(`${heading}\n`);
  const section = after.split(/\n(?:Does not:|Source:)/)[0]!;
  return Object.fromEntries([...section.matchAll(block)].map(([, name = '', text = '']) => [name, text]));
}

describe('the table of checks', () => {
  it('lists every file that holds a check, and nothing else', () => {
    const files = readdirSync(folder).filter((file) =>
      /^export const \w+(: Check)? = ((fromProblems|conflictCheck)\()?\{/m.test(
        readFileSync(join(folder, file), 'utf8'),
      ),
    );
    assert.deepEqual(files.sort(), codes.map((code) => `${code}.ts`).sort());
  });

  it('has each code once', () => {
    assert.equal(new Set(codes).size, codes.length);
  });

  it('has a test for each code', () => {
    const tests = new Set(readdirSync(import.meta.dirname));
    assert.deepEqual(
      codes.filter((code) => !tests.has(`${code}.test.ts`)),
      [],
    );
  });

  it('finds a check by its code, and none by a code that nothing has', () => {
    assert.equal(findCheck('unknown-unit')?.code, 'unknown-unit');
    assert.equal(findCheck('unknown-thing'), undefined);
  });

  for (const { code, explanation } of checks) {
    it(`explains ${code} with examples that are true, and a source`, () => {
      const raises = examplesOf(explanation, 'Raises it:');
      const accepts = examplesOf(explanation, 'Does not:');
      assert.match(explanation, /\nSource: \S/);
      if (!beyondAnExample.has(code)) {
        const found = analyseFiles(raises).findings;
        assert.ok(
          found.some((finding) => finding.code === code),
          `its example raises only ${found.map((finding) => `${finding.code}: ${finding.message}`).join('; ')}`,
        );
      }
      assert.ok(Object.keys(accepts).length > 0);
      const others = analyseFiles(accepts).findings.filter(
        (finding) => finding.code !== 'missing-key' && ['error', 'warning'].includes(finding.severity),
      );
      assert.deepEqual(others, [], 'the example that does not raise it is wrong in another way');
      assert.ok(!analyseFiles(accepts).findings.some((finding) => finding.code === code));
    });
  }

  it('writes every sentence of an explanation and every title with a capital letter', () => {
    for (const { title, explanation } of checks) {
      assert.match(title, /^[A-Z][^.]*$/);
      assert.match(explanation, /^[A-Z]/);
    }
  });
});
