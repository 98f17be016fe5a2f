// What is proposed at each kind of place of each kind of file, in which order, and how the text reads once it is taken.
import assert from 'node:assert/strict';
import { parseDocument } from '../../src/record/parse.ts';
import { contacts } from '../../src/registry/generated.ts';
import type { SwingRecord } from '../../src/record/document.ts';
import { earlier, head, labels, proposed, record, taken, written } from './proposals.ts';

describe('keys', () => {
  it('are those that the mapping lacks', () => {
    const found = labels(record, `${head}flight:\n  carry: 120 m\n  $0\n  start: 1 deg right\n`);
    assert.ok(found.includes('curve'));
    assert.ok(!found.includes('carry') && !found.includes('start') && !found.includes('attack'));
  });

  it('come at a checkpoint in the order in which the template asks for them', () => {
    const found = labels(record, `${head}checkpoints:\n  address:\n    $0`);
    assert.deepEqual(found.slice(0, 3), ['stance_width', 'ball_position', 'lead_pressure']);
  });

  it('go on with what would show a stated fault and what a proof needs', () => {
    const found = labels(
      record,
      `${head}checkpoints:\n  impact:\n    $0\nfaults:\n  - { fault: stands-up, at: impact }\nplan:\n  - proof: checkpoints.impact.hands > 3 cm\n`,
    );
    assert.deepEqual(found.slice(0, 4), ['shaft_lean', 'lead_pressure', 'forward_bend', 'hands']);
  });

  it('go on with what was measured the last time', () => {
    const found = labels(record, `${head}checkpoints:\n  address:\n    $0`, { earlier });
    assert.deepEqual(found.slice(3, 6), ['lead_foot_flare', 'trail_foot_flare', 'stance_direction']);
  });

  it('are checkpoints in their order, the next that is asked for being chosen', () => {
    const { items } = proposed(record, `${head}checkpoints:\n  address:\n    head: 3 cm ahead\n  $0`);
    const known = items.filter(({ insertTextFormat }) => insertTextFormat === 1);
    assert.deepEqual(known.map(({ label }) => label).slice(0, 3), [
      'takeaway',
      'lead_arm_parallel_back',
      'top',
    ]);
    assert.deepEqual(
      items.filter(({ preselect }) => preselect).map(({ label }) => label),
      ['lead_arm_parallel_down'],
    );
  });

  it('say what they mean', () => {
    const { items } = proposed(record, `${head}delivery:\n  $0`);
    const attack = items.find(({ label }) => label === 'attack')!;
    assert.match(attack.detail!, /^Angle of attack|^Attack/);
    assert.match(attack.documentation!.value, /club head/);
  });

  it('stand with a colon and a space, on the right column, and nothing more', () => {
    assert.equal(
      taken(record, 'swing: 1\ncheckpoints:\n  top:\n    shou$0', 'shoulder_turn'),
      'swing: 1\ncheckpoints:\n  top:\n    shoulder_turn: ',
    );
    assert.equal(taken(record, 'swing: 1\nstrike: { $0 }', 'height'), 'swing: 1\nstrike: { height:  }');
    assert.equal(
      taken(record, 'swing: 1\nstrike: { across: 3 mm,$0 }', 'height'),
      'swing: 1\nstrike: { across: 3 mm, height:  }',
    );
  });

  it('take the colon, the value and the comment that are there', () => {
    assert.equal(
      taken(record, 'swing: 1\ndelivery:\n  fac$0: 3 deg right # seen\n', 'face'),
      'swing: 1\ndelivery:\n  face: 3 deg right # seen\n',
    );
    assert.equal(
      taken(record, 'swing: 1\ndelivery:\n  fac$0 3 deg right\n', 'face'),
      'swing: 1\ndelivery:\n  face: 3 deg right\n',
    );
    assert.equal(
      taken(record, 'swing: 1\ndelivery:\n  fac$0 # seen\n', 'face'),
      'swing: 1\ndelivery:\n  face:  # seen\n',
    );
  });

  it('that hold others lead to their first line, ended as the file ends lines', () => {
    assert.equal(
      taken(record, 'swing: 1\r\ncheckpoints:\r\n  im$0', 'impact'),
      'swing: 1\r\ncheckpoints:\r\n  impact:\r\n    ',
    );
  });

  it('of an item come with its dash where there is none yet', () => {
    assert.equal(taken(record, 'swing: 1\nfaults:\n  $0', 'fault'), 'swing: 1\nfaults:\n  - fault: ');
    assert.equal(taken(record, 'swing: 1\nfaults:\n  -$0', 'fault'), 'swing: 1\nfaults:\n  - fault: ');
  });

  it('of the long form are proposed below a quantity', () => {
    assert.deepEqual(labels(record, 'swing: 1\ndelivery:\n  face: { value: 3 deg right, $0 }'), [
      'give_or_take',
      'by',
      'note',
      'doubtful',
      'seen',
    ]);
  });

  it('of the workspace are methods, dimensions and codes of findings', () => {
    assert.ok(labels('swingwright.yaml', 'swingwright: 1\nmethods:\n  $0').includes('pressure mat'));
    assert.ok(
      labels('swingwright.yaml', 'swingwright: 1\nmethods:\n  tape:\n    uncertainty: { $0 }').includes(
        'length',
      ),
    );
    assert.ok(
      labels('swingwright.yaml', 'swingwright: 1\nseverities:\n  out$0').includes('outside-practice'),
    );
  });
});

describe('words', () => {
  it('are the clubs of the bag', () =>
    assert.deepEqual(labels(record, `${head.replace('seven iron', '$0')}`), ['seven iron', 'five hybrid']));
  it('are the faults of the book with their titles, those not stated first', () => {
    const { items } = proposed(record, `${head}faults:\n  - { fault: stands-up, at: impact }\n  - fault: $0`);
    assert.equal(items.at(-1)!.label, 'stands-up');
    assert.equal(
      items.find(({ label }) => label === 'handle-trails')?.detail,
      'Handle behind the head at the strike',
    );
  });
  it('are the checkpoints at which the fault is seen first', () =>
    assert.equal(labels(record, `${head}faults:\n  - fault: stands-up\n    at: $0`)[0], 'impact'));
  it('are misses, shapes and kinds of club', () => {
    assert.ok(labels(record, `${head}misses: [heavy, $0]`).includes('slice'));
    assert.ok(labels(record, `${head}flight: { shape: $0 }`).includes('push draw'));
    assert.deepEqual(
      labels(record, `${head}goals: [{ contact: $0 }]`),
      contacts.map(({ word }) => word),
    );
    assert.ok(labels('tove/a.student.yaml', 'student: 1\nbag:\n  x: { kind: $0 }').includes('wedge'));
  });
  it('are parts of the body', () =>
    assert.ok(labels('tove/a.student.yaml', 'student: 1\ninjuries:\n  - part: $0').includes('lead wrist')));
  it('are the direction words of the effect that is named beside', () =>
    assert.deepEqual(
      labels(
        'a.faults.yaml',
        'faults: 1\nbook:\n  a:\n    tends_to:\n      - { effect: delivery.attack, direction: $0 }',
      ).slice(0, 6),
      ['up', 'down', 'shallower', 'steeper', 'more', 'less'],
    ));
  it('are the severities in the workspace', () =>
    assert.deepEqual(labels('swingwright.yaml', 'swingwright: 1\nseverities: { outside-bounds: $0 }'), [
      'error',
      'warning',
      'information',
      'hint',
      'off',
    ]));
  it('are the day of today for a date', () =>
    assert.deepEqual(labels(record, 'swing: 1\ndate: $0'), ['2026-05-30']));
  it('are codes in a comment, those found on the line first', () => {
    const source = `${head}delivery:\n  attack: 15 deg down # accept[$0`;
    assert.equal(labels(record, source)[0], 'outside-practice');
    assert.match(taken(record, source, 'outside-practice'), /# accept\[outside-practice\]: $/);
  });
  it('are none in notes and comments', () => {
    assert.deepEqual(labels(record, `${head}notes: he $0`), []);
    assert.deepEqual(labels(record, `${head}# he $0`), []);
    assert.deepEqual(labels(record, `${head}delivery: { face: { value: 3 deg right, note: "he s$0" } }`), []);
  });
});

describe('references', () => {
  it('are files of the kind, relative, the nearest first', () => {
    assert.deepEqual(labels(record, 'swing: 1\nstudent: $0'), [
      'tove.student.yaml',
      '../bram/bram.student.yaml',
      '../odile/odile.student.yaml',
      '../runa/runa.student.yaml',
    ]);
  });
  it('are the template for this kind of club first', () =>
    assert.equal(
      labels(record, `${head.replace('../templates/iron.template.yaml', '$0')}`)[0],
      '../templates/iron.template.yaml',
    ));
  it('are files of shots', () =>
    assert.deepEqual(labels(record, `${head}shots: $0`), ['shots/2026-04-18-seven-iron.csv']));
  it('are records for a review', () =>
    assert.ok(
      labels('tove/a.review.yaml', 'review: 1\nof: $0').includes('2026-04-18-seven-iron.swing.yaml'),
    ));
  it('take the place of the whole path', () =>
    assert.equal(
      taken(record, 'swing: 1\nstudent: ../br$0am/x.student.yaml\n', 'tove.student.yaml'),
      'swing: 1\nstudent: tove.student.yaml\n',
    ));
});

describe('expressions', () => {
  it('begin with a quantity, those that are asked for first, or a function', () => {
    const found = labels(record, `${head}plan:\n  - proof: $0`);
    assert.equal(found[0], 'checkpoints.address.lead_pressure');
    assert.ok(found.includes('delivery.attack') && found.includes('hypot'));
  });
  it('go on with a comparison, and a number with the unit of what stands before', () => {
    assert.ok(
      labels('a.faults.yaml', 'faults: 1\nbook:\n  a:\n    evidence: delivery.attack $0').includes('<'),
    );
    assert.equal(
      labels('a.faults.yaml', 'faults: 1\nbook:\n  a:\n    evidence: delivery.attack < 4 $0')[0],
      'deg',
    );
  });
});

describe('snippets', () => {
  it('are left out for editors that do not know them', () => {
    assert.ok(labels(record, `${head}faults:\n  - $0`).includes('a fault'));
    assert.ok(!labels(record, `${head}faults:\n  - $0`, { snippets: false }).includes('a fault'));
  });

  it('make a record that the reader finds nothing wrong with but what is not filled in', () => {
    const text = taken(record, '$0', 'new record', { earlier });
    const document = parseDocument('swing', text) as SwingRecord;
    assert.equal(document.student?.value, 'tove.student.yaml');
    assert.equal(document.date?.value, '2026-05-30');
    assert.match(text, /\n {4}stance_width: {2}cm by tape\n/);
    const numbered = text.replace(/: ("?) (?=\S)/g, ': $11 ');
    const problems = parseDocument('swing', numbered).problems.map(({ code, found }) => `${code} ${found}`);
    assert.deepEqual(problems, []);
  });

  it('make a record that is indented as the one before it', () => {
    const wide = parseDocument(
      'swing',
      earlier.text.replace(/^ +/gm, (white) => white.repeat(2)),
    ) as SwingRecord;
    const text = taken(record, '$0', 'new record', { earlier: wide });
    assert.match(text, /\n {4}address:\n {8}stance_width: /);
    assert.doesNotMatch(text, /\n(?: {4})* {1,3}\S/);
  });

  it('make a checkpoint with the entries that the template asks for', () => {
    const text = taken(record, `${head}checkpoints:\n  imp$0`, 'impact with its entries');
    assert.match(text, /\n {2}impact:\n {4}shaft_lean: {2}deg forward\n {4}lead_pressure: " %"$/);
  });

  it('go from number to number, then to the directions, each of which is offered once', () => {
    const turned = parseDocument(
      'swing',
      'swing: 1\ncheckpoints: { impact: { shaft_lean: 3 deg back, lead_shoulder: 2 cm ahead by video, hands: 1 cm behind } }\n',
    ) as SwingRecord;
    const { text, items } = proposed(record, `${head}checkpoints:\n  imp$0`, { earlier: turned });
    const form = items.find(({ label }) => label === 'impact with its entries')!;
    const stops = [...form.textEdit.newText.matchAll(/\$\{(\d+)([:|])([^}]*)\}/g)].toSorted(
      (a, b) => Number(a[1]) - Number(b[1]),
    );
    const signs = stops.map(([, , sign]) => sign).join('');
    assert.match(signs, /^::+\|+$/);
    for (const [, , sign, words] of stops) if (sign === '|') assert.equal(words!.split(',').length, 2, words);
    const passedBy = parseDocument('swing', written(text, form)).problems;
    assert.deepEqual([...new Set(passedBy.map(({ code }) => code))], ['no-value-yet']);
  });

  for (const [what, path, source, label] of [
    ['a fault', record, `${head}faults:\n  - $0`, 'a fault'],
    ['a change', record, `${head}plan:\n  - $0`, 'a change'],
    ['a goal', record, `${head}goals:\n  - $0`, 'a goal'],
    ['the long form', record, `${head}delivery:\n  face: $0`, 'the long form'],
    ['a window', 'templates/a.template.yaml', 'template: 1\ndelivery:\n  attack: $0', 'a window'],
    ['a fault of a book', 'a.faults.yaml', 'faults: 1\nbook:\n  $0', 'a fault'],
    ['a club', 'tove/a.student.yaml', 'student: 1\nbag:\n  $0', 'a club'],
  ] as const)
    it(`make ${what} that reads well as it stands`, () => {
      const kind =
        path === record
          ? 'swing'
          : path.includes('template')
            ? 'template'
            : path.includes('student')
              ? 'student'
              : 'faults';
      const { problems } = parseDocument(kind, taken(path, source, label));
      assert.deepEqual(
        problems
          .filter(
            ({ code }) => code !== 'no-value-yet' && code !== 'missing-key' && code !== 'missing-direction',
          )
          .map(({ code, found }) => `${code} ${found}`),
        [],
      );
    });
});
