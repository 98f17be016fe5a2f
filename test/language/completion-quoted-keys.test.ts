// Keys are proposed in quotes, before their first character and between empty brackets too.
import assert from 'node:assert/strict';
import { head, labels, proposed, record, taken } from './proposals.ts';

describe('a key in quotes', () => {
  for (const [what, source, expected] of [
    ['that is left open', 'delivery:\n  "pa$0', 'delivery:\n  "path": '],
    ['that is closed', "delivery:\n  'pa$0'", "delivery:\n  'path': "],
    ['with a value', 'delivery:\n  "pa$0": 3 deg\n', 'delivery:\n  "path": 3 deg\n'],
    ['above another', 'delivery:\n  "pa$0\n  face: 3 deg\n', 'delivery:\n  "path": \n  face: 3 deg\n'],
    ['below another', 'delivery:\n  face: 3 deg\n  "pa$0', 'delivery:\n  face: 3 deg\n  "path": '],
    ['in braces', 'delivery: { "pa$0" }\n', 'delivery: { "path":  }\n'],
    ['in braces that are left open', 'delivery: { "pa$0 }\n', 'delivery: { "path":  }\n'],
    ['against its value', 'delivery: { "pa$0":3 }\n', 'delivery: { "path":3 }\n'],
  ] as const)
    it(`is proposed in its quotes, ${what}`, () => {
      assert.equal(taken(record, head + source, 'path'), head + expected);
      const { items } = proposed(record, head + source);
      const filters = items.map(({ filterText }) => filterText);
      assert.ok(
        filters.every((filter) => /^["']/.test(filter)),
        filters.join(', '),
      );
    });

  it('leaves out the keys that are there', () => {
    const found = labels(record, `${head}delivery:\n  "pa$0\n  face: 3 deg\n`);
    assert.ok(found.includes('path') && !found.includes('face'));
  });

  it('is proposed for a mapping with the line of its first key', () => {
    assert.equal(taken(record, `${head}"del$0`, 'delivery'), `${head}"delivery":\n  `);
  });
});

describe('at the first character of a key', () => {
  for (const [what, source, expected] of [
    ['in a block', 'delivery:\n  $0path: 3 deg\n', 'delivery:\n  face: 3 deg\n'],
    ['in braces', 'delivery: { $0path: 3 deg }\n', 'delivery: { face: 3 deg }\n'],
    ['half typed', 'delivery:\n  $0pa\n', 'delivery:\n  face: \n'],
    ['in quotes', 'delivery:\n  $0"path": 3 deg\n', 'delivery:\n  "face": 3 deg\n'],
  ] as const)
    it(`another is proposed in its place, ${what}`, () => {
      assert.equal(taken(record, head + source, 'face'), head + expected);
    });
});

describe('an empty place between brackets', () => {
  for (const [what, path, source, label, expected] of [
    ['of shots', record, 'shots: [$0]', 'carry', 'shots: [{ carry:  }]'],
    [
      'behind a shot',
      record,
      'shots: [{ carry: 90 m },$0]',
      'start',
      'shots: [{ carry: 90 m }, { start:  }]',
    ],
    ['of a plan', record, 'plan: [$0]', 'change', 'plan: [{ change:  }]'],
    [
      'of effects',
      'a.faults.yaml',
      'faults: 1\nbook:\n  a:\n    tends_to: [eff$0]',
      'effect',
      'faults: 1\nbook:\n  a:\n    tends_to: [{ effect:  }]',
    ],
  ] as const)
    it(`takes a key with its braces, ${what}`, () => {
      const above = path === record ? head : '';
      assert.equal(taken(path, above + source, label), above + expected);
      const plain = taken(path, above + source, label, { snippets: false });
      assert.equal(plain, above + expected.replace(':  }]', ': }]'));
    });
});
