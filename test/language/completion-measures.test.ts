// Behind a number and a space its units, directions, `±` and methods are proposed wherever a measurement may be written, and what is taken reads well.
import assert from 'node:assert/strict';
import { kindOf } from '../../src/record/kind.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { practice } from '../samples.ts';
import { proposed, written } from './proposals.ts';

const swing = `swing: 1
student: tove.student.yaml
date: 2026-05-30
club: seven iron
`;
const change = 'faults: 1\nbook:\n  a:\n    changes:\n';
const effect = `faults: 1
book:
  a:
    evidence: [checkpoints.impact.lead_pressure < 70 %]
    tends_to:
`;

/** A place for a measure: the file, the text around `¤`, and what a coach would write there, word by word. */
const places: readonly (readonly [what: string, path: string, around: string, words: readonly string[]])[] = [
  ...(
    [
      ['behind a key', 'delivery:\n  face: ¤\n'],
      ['in quotes', 'delivery:\n  face: "¤"\n'],
      ['before a comment', 'delivery:\n  face: ¤ # seen twice\n'],
      ['in a list in brackets', 'delivery:\n  face: [2 deg left by eye, ¤]\n'],
      ['in the first item of a list', 'delivery:\n  face:\n    - ¤\n'],
      ['in a list on the column of its key', 'delivery:\n  face:\n  - ¤\n'],
      ['in a later item', 'delivery:\n  face:\n    - 2 deg left by eye\n    - ¤\n'],
      [
        'between items and keys',
        'delivery:\n  face:\n    - 2 deg left\n    - ¤\n    - 1 deg left\n  path: 3 deg right\n',
      ],
      ['in an item before a comment', 'delivery:\n  face:\n    - ¤ # seen twice\n'],
      ['in an item in quotes', "delivery:\n  face:\n    - '¤'\n"],
      ['in the long form', 'delivery:\n  face: { value: ¤ }\n'],
      ['in the long form on lines', 'delivery:\n  face:\n    value: ¤\n'],
      ['in the long form in a list in brackets', 'delivery:\n  face: [{ value: ¤ }]\n'],
      ['in the long form of an item', 'delivery:\n  face:\n    - { value: ¤ }\n'],
      ['in the long form of an item on lines', 'delivery:\n  face:\n    - value: ¤\n      note: again\n'],
    ] as const
  ).map(
    ([what, around]) =>
      [
        what,
        'tove/new.swing.yaml',
        swing + around,
        ['1.5', 'deg', 'right', '±', '0.5', 'deg', 'by radar'],
      ] as const,
  ),
  ...(
    [
      ['in the uncertainty of the long form', 'delivery:\n  face: { value: 1 deg right, give_or_take: ¤ }\n'],
      [
        'in the uncertainty of the long form on lines',
        'delivery:\n  face:\n    - value: 1 deg right\n      give_or_take: ¤\n      by: radar\n',
      ],
    ] as const
  ).map(([what, around]) => [what, 'tove/new.swing.yaml', swing + around, ['0.5', 'deg']] as const),
  [
    'in a shot',
    'tove/new.swing.yaml',
    `${swing}shots:\n  - carry: 120 m\n    start: ¤\n`,
    ['1', 'deg', 'right'],
  ],
  ['in a shot in brackets', 'tove/new.swing.yaml', `${swing}shots: [{ start: ¤ }]\n`, ['1', 'deg', 'right']],
  ['in a goal', 'tove/new.swing.yaml', `${swing}goals:\n  - finish: ¤\n`, ['0..5', 'm', 'left']],
  [
    'in what a change aims at',
    'tove/new.swing.yaml',
    `${swing}plan:\n  - change: delivery.path\n    to: ¤\n`,
    ['1', 'deg', 'right'],
  ],
  [
    'in what a change aims at, its quantity below',
    'tove/new.swing.yaml',
    `${swing}plan:\n  - to: ¤\n    change: delivery.path\n`,
    ['1', 'deg', 'right'],
  ],
  [
    'of the student',
    'tove/new.student.yaml',
    'student: 1\nhand: right\nstature: ¤\n',
    ['171', 'cm', 'by tape'],
  ],
  [
    'of a club',
    'tove/new.student.yaml',
    'student: 1\nhand: right\nbag:\n  x:\n    kind: iron\n    loft: ¤\n',
    ['31', 'deg'],
  ],
  [
    'in a window',
    'templates/a.template.yaml',
    'template: 1\ndelivery:\n  attack: ¤\n',
    ['2..6', 'deg', 'down'],
  ],
  [
    'in a window of the long form',
    'templates/a.template.yaml',
    'template: 1\ndelivery:\n  attack:\n    window: ¤\n',
    ['2..6', 'deg', 'down'],
  ],
  [
    'in how far a change of a fault book goes',
    'a.faults.yaml',
    `${change}      - change: checkpoints.address.stance_width\n        by: ¤\n`,
    ['5', 'cm', 'narrower', '±', '1', 'cm'],
  ],
  [
    'in how far a change in brackets goes',
    'a.faults.yaml',
    `${change}      - { change: delivery.attack, by: ¤ }\n`,
    ['2', 'deg', 'shallower'],
  ],
  [
    'in how far a change of a share goes',
    'a.faults.yaml',
    `${change}      - change: checkpoints.impact.lead_pressure\n        by: ¤\n`,
    ['10', '%', 'more'],
  ],
  [
    'in how far a change of a bend goes',
    'a.faults.yaml',
    `${change}      - change: checkpoints.top.lead_wrist_bow\n        by: ¤\n`,
    ['10', 'deg', 'more bowed'],
  ],
  [
    'in how large an effect is',
    'a.faults.yaml',
    `${effect}      - { effect: delivery.attack, direction: up, size: ¤ }\n`,
    ['1', 'deg', 'per', '5', '%', '±', '0.5', 'deg'],
  ],
  [
    'in how large an effect is, on lines',
    'a.faults.yaml',
    `${effect}      - effect: delivery.attack\n        direction: up\n        size: ¤\n`,
    ['1', 'deg', '±', '0.5', 'deg', 'per', '5', '%'],
  ],
];

describe('behind a number and a space', () => {
  for (const [what, path, around, words] of places)
    it(`units, directions and methods are proposed ${what}`, () => {
      let said = words[0]!;
      for (const word of words.slice(1)) {
        if (/^\d/.test(word)) {
          said += ` ${word}`;
          continue;
        }
        const { text, items } = proposed(path, around.replace('¤', `${said} $0`));
        const item = items.find(({ label }) => label === word);
        assert.ok(
          item,
          `${word} behind "${said} " is not among ${items.map(({ label }) => label).join(', ')}`,
        );
        assert.equal(written(text, item), around.replace('¤', `${said} ${item.textEdit.newText}`));
        // Half of the word is enough, and is what is written over.
        const half = proposed(path, around.replace('¤', `${said} ${word.slice(0, -1)}$0`));
        const again = half.items.find(({ label }) => label === word || `by ${label}` === word);
        assert.ok(again, `${word} behind "${said} ${word.slice(0, -1)}"`);
        assert.equal(written(half.text, again), written(text, item));
        said += ` ${word}`;
      }
      const { problems } = parseDocument(kindOf(practice + path)!, around.replace('¤', said));
      assert.deepEqual(problems, []);
    });

  it('no direction goes with a number below zero', () => {
    const labels = proposed('tove/new.swing.yaml', `${swing}delivery:\n  face: -1 deg $0`).items.map(
      ({ label }) => label,
    );
    assert.ok(!labels.includes('right'));
    assert.ok(labels.includes('by radar'));
  });

  it('nothing is said twice that stands beside in the long form', () => {
    const labels = proposed(
      'tove/new.swing.yaml',
      `${swing}delivery:\n  face:\n    value: 1 deg right $0\n    by: radar\n    give_or_take: 1 deg\n`,
    ).items.map(({ label }) => label);
    assert.deepEqual(labels, []);
  });

  it('a second word of a name is proposed, too', () => {
    const { text, items } = proposed(
      'tove/new.swing.yaml',
      'swing: 1\nstudent: tove.student.yaml\nclub: seven $0',
    );
    const item = items.find(({ label }) => label === 'seven iron')!;
    assert.match(written(text, item), /\nclub: seven iron$/);
  });
});
