// Tests of the check measure-not-allowed.
import { assertMarked, assertNone } from './files.ts';

describe('measure-not-allowed', () => {
  it('marks a single number in a template', () => {
    assertMarked('measure-not-allowed', {
      'irons.template.yaml': `template: 1
delivery:
  attack: 4 deg down
#         ^^^^^^^^^^ error[measure-not-allowed]`,
    });
  });

  it('takes a window there', () => {
    assertNone('measure-not-allowed', {
      'irons.template.yaml': `template: 1
delivery:
  attack: 2..6 deg down`,
    });
  });
});
