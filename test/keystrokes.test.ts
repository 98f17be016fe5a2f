// Writing the first lesson of a student takes less than half of the keys that it takes with a general YAML language server and the project's schema.
import assert from 'node:assert/strict';
import { countKeys, ours, shortLesson } from '../build/bench/count-keys.ts';

/**
 * yaml-language-server 2.0.0 with schemas/swing.schema.json, counted by the same rules (build/bench/keystrokes.ts, which prints it
 * anew). It takes too long to be asked in a test.
 */
const general = 225;

describe('the head and the address of a lesson', () => {
  it('take less than half of the keys that a general language server asks for', async function () {
    this.timeout(30_000);
    // The most costly of the four ways that the benchmark counts.
    const first = await countKeys(shortLesson, ours(undefined, true));
    assert.ok(first < general / 2, `${first} of ${general}`);
  });

  it('take a key for each letter and few for each line where nothing is proposed', async () => {
    const none = await countKeys(shortLesson, () => Promise.resolve([]));
    const indents = shortLesson.match(/^ +/gm)!.join('').length;
    assert.ok(none <= shortLesson.length && none >= shortLesson.length - indents, String(none));
  });
});
