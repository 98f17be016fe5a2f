// Tests of the check impossible-date.
import { assertMarked, assertNone } from './files.ts';

describe('impossible-date', () => {
  it('marks the thirtieth of February', () => {
    assertMarked(
      'impossible-date',
      `swing: 1
date: 2026-02-30
#     ^^^^^^^^^^ error[impossible-date]`,
    );
  });

  it('takes the leap day of a leap year', () => {
    assertNone(
      'impossible-date',
      `swing: 1
date: 2028-02-29`,
    );
  });
});
