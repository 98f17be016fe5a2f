// Tests of the check too-many-changes.
import { assertMarked, assertNone } from './files.ts';

const change = '  - { change: delivery.attack, to: 3 deg down, because: heavy }\n';
const head = 'swing: 1\nmisses: [heavy]\nplan:\n';

describe('too-many-changes', () => {
  it('marks the first change beyond three', () => {
    assertMarked(
      'too-many-changes',
      `${head}${change.repeat(3)}  - { change: delivery.path, to: 3 deg left, because: heavy }
#             ^^^^^^^^^^^^^ warning[too-many-changes]`,
    );
    assertNone('too-many-changes', head + change.repeat(3));
  });

  it('allows as many as the workspace says', () => {
    const workspace = { 'swingwright.yaml': 'swingwright: 1\nmost_changes: 1\n' };
    assertNone('too-many-changes', { 'lesson.swing.yaml': head + change, ...workspace });
    assertMarked('too-many-changes', {
      'lesson.swing.yaml': `${head}${change}  - { change: delivery.path, to: 3 deg left, because: heavy }
#             ^^^^^^^^^^^^^ warning[too-many-changes]`,
      ...workspace,
    });
  });
});
