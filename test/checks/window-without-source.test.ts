// Tests of the check window-without-source.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('window-without-source', () => {
  it('marks the key of a window that does not say where it comes from', () => {
    assertMarked('window-without-source', {
      'iron.template.yaml': `template: 1
delivery:
  attack: 2..6 deg down
# ^^^^^^ hint[window-without-source]
  path: { window: 1..3 deg right, strict: firm }
# ^^^^ hint[window-without-source]`,
    });
  });

  it('takes one that does, and one that is still to come', () => {
    assertNone('window-without-source', {
      'iron.template.yaml':
        'template: 1\ndelivery:\n  attack: { window: 2..6 deg down, source: common practice }\n  path:',
    });
  });

  it('writes common practice where the coach says so', () => {
    assertFixedTo(
      'window-without-source',
      { 'iron.template.yaml': 'template: 1\ndelivery:\n  attack: 2..6 deg down # brush' },
      'template: 1\ndelivery:\n  attack: { window: 2..6 deg down, source: common practice } # brush',
    );
  });
});
