// `check --reviews` fails on what a colleague asked and nobody answered.
import assert from 'node:assert/strict';
import { swingwright, withFolder } from './program.ts';
import { lesson, name } from './reviews.ts';

describe('swingwright check --reviews', () => {
  const review = (state: string, more = ''): string =>
    `review: 1\nof: a.swing.yaml\nthreads:\n  - { id: r1, about: delivery.face, state: ${state}, author: Ida, text: Sure? }\n${more}`;

  it('fails on an open remark, in every format, whichever file is named', () =>
    withFolder({ [name]: lesson, 'a.review.yaml': review('open') }, (folder) => {
      for (const path of ['.', name, 'a.review.yaml']) {
        assert.equal(swingwright(['check', path], folder).code, 0);
        const lines = swingwright(['check', path, '--reviews', '--format', 'lines'], folder);
        assert.equal(lines.code, 1);
        assert.match(lines.out, /^a\.swing\.yaml:4:3: error: .*`Ida`: `Sure\?`.*\[open-remark\]$/m);
      }
      for (const format of ['json', 'sarif', 'junit', 'badge', 'text'])
        assert.equal(swingwright(['check', '.', '--reviews', '--format', format], folder).code, 1);
      assert.match(
        swingwright(['check', '.', '--reviews', '--format', 'sarif'], folder).out,
        /"level": "error"/,
      );
    }));

  it('fails on one in a review of another name too, and on none that is answered or settled', () => {
    withFolder({ [name]: lesson, 'by-ida.review.yaml': review('open') }, (folder) => {
      const { code, out } = swingwright(['check', name, '--reviews', '--format', 'lines'], folder);
      assert.equal(code, 1);
      assert.match(out, /^by-ida\.review\.yaml:4:\d+: error/m);
    });
    for (const state of ['answered', 'settled'])
      withFolder({ [name]: lesson, 'a.review.yaml': review(state) }, (folder) =>
        assert.equal(swingwright(['check', '.', '--reviews'], folder).code, 0),
      );
  });
});
