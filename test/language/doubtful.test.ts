// A reading is marked doubtful, and the doubt taken back: its mark comes and goes, and every other word stays.
import assert from 'node:assert/strict';
import { rewritesAt } from '../../src/language/rewrites.ts';
import { applied } from '../checks/files.ts';
import { marked } from '../marked.ts';
import { analysed } from './analysed.ts';

/** The text after the rewrite with this title; undefined where it is not offered. */
function after(source: string, title: string): string | undefined {
  const { text, position } = marked(`swing: 1\n${source}`);
  const found = rewritesAt(analysed(text), { start: position, end: position });
  const rewrite = found.find((one) => one.title === title);
  return (
    rewrite &&
    applied(
      text,
      rewrite.edits.map((edit) => ({ uri: '', ...edit })),
    ).slice('swing: 1\n'.length)
  );
}

describe('marking doubtful', () => {
  it('keeps every word of a reading in each form', () => {
    for (const [before, expected] of [
      [
        'delivery:\n  path: 3 deg left$0 # c\n',
        'delivery:\n  path: { value: 3 deg left, doubtful: true } # c\n',
      ],
      [
        'delivery: { path: { value: 3$0, note: "a, b" } }\n',
        'delivery: { path: { value: 3, note: "a, b", doubtful: true } }\n',
      ],
      [
        'delivery:\n  path:\n    value: 3 deg left$0\n    note: wet # n\n  face: 0 deg\n',
        'delivery:\n  path:\n    value: 3 deg left\n    note: wet # n\n    doubtful: true\n  face: 0 deg\n',
      ],
      [
        'delivery: { path: { value: 3$0, doubtful: false } }\n',
        'delivery: { path: { value: 3, doubtful: true } }\n',
      ],
      ['flight: { carry: 120m$0 }\n', 'flight: { carry: { value: 120 m, doubtful: true } }\n'],
      ['delivery:\n  path: 2°$0\n', 'delivery:\n  path: { value: 2 °, doubtful: true }\n'],
    ] as const)
      assert.equal(after(before, 'Mark it doubtful'), expected);
    assert.equal(
      after('delivery: { path: { value: 3$0, doubtful: true } }\n', 'Mark it doubtful'),
      undefined,
    );
  });
});

describe('taking a doubt back', () => {
  for (const [before, expected] of [
    [
      'delivery: { path: { value: 3 deg left$0, doubtful: true } }\n',
      'delivery: { path: { value: 3 deg left } }\n',
    ],
    [
      'delivery:\n  path: { doubtful: true, value: 3 deg left$0 }\n',
      'delivery:\n  path: { value: 3 deg left }\n',
    ],
    [
      'delivery:\n  path: { value: 3 deg left$0, doubtful: true, note: wet }\n',
      'delivery:\n  path: { value: 3 deg left, note: wet }\n',
    ],
    [
      'delivery:\n  path:\n    value: 3 deg left$0 # v\n    doubtful: true\n    note: wet\n',
      'delivery:\n  path:\n    value: 3 deg left # v\n    note: wet\n',
    ],
    [
      'delivery:\r\n  path:\r\n    doubtful: true\r\n    value: 3 deg left$0',
      'delivery:\r\n  path:\r\n    value: 3 deg left',
    ],
  ] as const)
    it(`takes the key out of ${JSON.stringify(before)}`, () => {
      assert.equal(after(before, 'Mark it no longer doubtful'), expected);
    });

  it('takes the sign of an estimate away', () => {
    assert.equal(
      after('delivery:\n  path: ~ 3 deg left$0 by eye\n', 'Mark it no estimate'),
      'delivery:\n  path: 3 deg left by eye\n',
    );
    assert.equal(
      after('delivery: { path: { value: "~3 deg left"$0, by: eye } }\n', 'Mark it no estimate'),
      'delivery: { path: { value: "3 deg left", by: eye } }\n',
    );
  });

  it('is not offered where there is no doubt, or where a comment would go with it', () => {
    for (const source of [
      'delivery:\n  path: 3 deg left$0\n',
      'delivery: { path: { value: 3 deg left$0, doubtful: false } }\n',
      'delivery:\n  path:\n    value: 3 deg left$0\n    doubtful: true # a gust\n',
    ])
      for (const title of ['Mark it no longer doubtful', 'Mark it no estimate'])
        assert.equal(after(source, title), undefined, source);
  });
});
