// Tests of the check finish-against-curve.
import { assertMarked, assertNone } from './files.ts';

describe('finish-against-curve', () => {
  it('marks a finish on the other side', () => {
    assertMarked(
      'finish-against-curve',
      `swing: 1
flight:
  start: 1 deg right
  curve: 14 yd right
  carry: 171 m
  finish: 30 yd left
#         ^^^^^^^^^^ warning[finish-against-curve]`,
    );
  });

  it('takes a finish where start and curve put it', () => {
    assertNone(
      'finish-against-curve',
      `swing: 1
flight:
  start: 1 deg right
  curve: 14 yd right
  carry: 171 m
  finish: 17 yd right`,
    );
  });
});
