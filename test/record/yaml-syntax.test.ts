import assert from 'node:assert/strict';
import type { SwingRecord } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { assertMarked } from './marked.ts';

const head = 'swing: 1\nstudent: a\ndate: 2026-05-14\nclub: b\n';

function assertRead(source: string, ...ids: readonly string[]): void {
  const document = assertMarked('swing', head + source) as SwingRecord;
  const read = [...document.entries.values()]
    .filter(({ readings }) => readings.length > 0)
    .map(({ id }) => id);
  assert.deepEqual(read, ids);
}

describe('what YAML cannot read', () => {
  it('is a key without a colon, and the line below keeps its value', () => {
    assertRead(
      `delivery:
  attack: 3 deg down
  pat
  ^^^ yaml-syntax
  face: 5 deg right
`,
      'delivery.attack',
      'delivery.face',
    );
  });

  it('is a key without a colon at the end of its section', () => {
    assertRead(
      `delivery:
  attack: 3 deg down
  pat
  ^^^ yaml-syntax
flight:
  carry: 150 m
`,
      'delivery.attack',
      'flight.carry',
    );
  });

  it('is a section without a colon, which is known by its beginning', () => {
    assertRead(
      `checkpoints:
  imp
  ^^^ yaml-syntax
    shaft_lean: 9 deg forward
deliver
#^^^^^^ yaml-syntax
  attack: 3 deg down
`.replace('#^^^^^^ ', '^^^^^^^ '),
      'checkpoints.impact.shaft_lean',
      'delivery.attack',
    );
  });

  it('is an open bracket, and its entries are read', () => {
    assertRead(
      `strike: { across: 4 mm toward heel, height: 6 mm low
        ^ yaml-syntax
flight:
  carry: 150 m
`,
      'strike.across',
      'strike.height',
      'flight.carry',
    );
  });

  it('is an open bracket of several lines', () => {
    assertRead(
      `delivery: {
  attack: 3 deg down,
  path: 2 deg right
flight:
  carry: 150 m
`.replace('delivery: {\n', 'delivery: {\n          ^ yaml-syntax\n'),
      'delivery.attack',
      'delivery.path',
      'flight.carry',
    );
  });

  it('is an open quote, which does not swallow the rest', () => {
    assertRead(
      `delivery:
  attack: "3 deg down
          ^^^^^^^^^^^ yaml-syntax
  path: 2 deg right
`,
      'delivery.path',
    );
  });

  it('is an open quote although another follows', () => {
    assertRead(
      `notes: "to be
#      ^^^^^^ yaml-syntax
delivery:
  path: "2 deg right"
`,
      'delivery.path',
    );
  });

  it('is a second colon in a plain value', () => {
    assertRead(
      `notes: pain: none
#      ^^^^^^^^^^ yaml-syntax
delivery:
  path: 2 deg right
`,
      'delivery.path',
    );
  });

  it('is a tab at the start of a line', () => {
    assertRead(
      `delivery:\n\tattack: 3 deg down\n^ yaml-syntax\n\tpath: 2 deg right\n`,
      'delivery.attack',
      'delivery.path',
    );
  });

  it('is a line too far in', () => {
    assertRead(
      `delivery:
  attack: 3 deg down
    path: 2 deg right
    ^^^^^ yaml-syntax
  face: 1 deg left
`,
      'delivery.attack',
      'delivery.face',
    );
  });

  it('is a line between two columns', () => {
    assertRead(
      `delivery:
    attack: 3 deg down
  path: 2 deg right
  ^^^^^ yaml-syntax
flight:
  carry: 150 m
`,
      'delivery.attack',
      'flight.carry',
    );
  });

  it('is something behind a whole value', () => {
    assertRead(
      `delivery:\n  attack: "3 deg down" by\n                       ^^ yaml-syntax\n`,
      'delivery.attack',
    );
    assertRead(
      `delivery: { attack: 3 deg down } by\n                                 ^^ yaml-syntax\n`,
      'delivery.attack',
    );
  });

  it('is a stray bracket', () => {
    assertRead(`}\n^ yaml-syntax\nflight:\n  carry: 150 m\n`, 'flight.carry');
    assertRead(`flight:\n  carry: ]\n         ^ yaml-syntax\n  start: 1 deg left\n`, 'flight.start');
  });

  it('is an unknown escape', () => {
    assertRead('notes: "a \\q"\n#         ^^ yaml-syntax\nflight:\n  carry: 150 m\n', 'flight.carry');
  });

  it('is a value that starts with a reserved character', () => {
    assertRead('notes: @x\n#      ^ yaml-syntax\nflight:\n  carry: 150 m\n', 'flight.carry');
  });

  it('is a comment that touches the value', () => {
    assertRead('flight:\n  carry: "150 m"#x\n                ^^ yaml-syntax\n', 'flight.carry');
  });

  it('is a list for a key', () => {
    assertRead('[a, b]: c\n^^^^^^ yaml-syntax\nflight:\n  carry: 150 m\n', 'flight.carry');
  });

  it('is a second document', () => {
    assertMarked('swing', 'swing: 1\nstudent: a\ndate: 2026-05-14\nclub: b\n---\n^^^ yaml-syntax\nclub: c\n');
  });

  it('is not a first document with its marker', () => {
    assertMarked('swing', '---\nswing: 1\nstudent: a\ndate: 2026-05-14\nclub: b\n...\n');
  });

  it('is two lines, each with its own problem', () => {
    assertRead(
      `delivery:
  att
  ^^^ yaml-syntax
  path: 2 deg right
flight:
  carry: 150 m
  sta
  ^^^ yaml-syntax
  apex: 20 m
`,
      'delivery.path',
      'flight.carry',
      'flight.apex',
    );
  });

  it('hides no key: nothing is said to be missing', () => {
    assertMarked('swing', 'swin\n^^^^ yaml-syntax\nclub: b\n');
  });

  it('says what was found and expected in words of our own', () => {
    const [problem] = parseDocument('swing', `${head}flight:\n  apex: 20 m\n  car\n`).problems;
    assert.equal(problem?.found, '`car` without a colon');
    assert.match(problem?.expected ?? '', /a key, a colon and a value/);
  });
});

describe('a key that stands twice', () => {
  it('is a problem at the second place that points to the first, which counts', () => {
    const document = assertMarked(
      'swing',
      `${head}delivery:
  path: 2 deg right
  path: 3 deg right
  ^^^^ duplicate-key
`,
    ) as SwingRecord;
    const [problem] = document.problems;
    const first = document.text.indexOf('path');
    assert.deepEqual(
      problem?.related?.map(({ span }) => span),
      [{ start: first, end: first + 4 }],
    );
    assert.equal(document.entries.get('delivery.path')?.readings[0]?.measure.spans.number.start, first + 6);
  });

  it('is found in brackets, and where one of the two is quoted', () => {
    assertMarked(
      'swing',
      `${head}strike: { height: 1 mm low, "height": 2 mm low }\n                            ^^^^^^^^ duplicate-key\n`,
    );
  });

  it('may be called <<, which means nothing here', () => {
    assertMarked('swing', `${head}flight:\n  <<: { carry: 1 m }\n  ^^ unknown-key\n`);
  });
});

describe('places in the text', () => {
  const place = (text: string, id: string): string => {
    const document = parseDocument('swing', text);
    const entry = document.kind === 'swing' ? document.entries.get(id) : undefined;
    const spans = entry?.readings[0]?.measure.spans;
    assert.ok(spans?.unit);
    assert.deepEqual(document.problems, []);
    return text.slice(spans.number.start, spans.unit.end);
  };

  it('count a byte order mark', () => {
    assert.equal(place(`\ufeff${head}flight:\n  carry: 171 m\n`, 'flight.carry'), '171 m');
  });

  it('count both characters of CRLF', () => {
    assert.equal(
      place(`${head}flight:\n  apex: 20 m # x\n  carry: 171 m\n`.replaceAll('\n', '\r\n'), 'flight.carry'),
      '171 m',
    );
  });

  it('count tabs between values and before comments', () => {
    assert.equal(place(`${head}flight:\n  carry:\t171 m\t# x\n`, 'flight.carry'), '171 m');
  });

  it('count UTF-16 units behind names of any script', () => {
    assert.equal(
      place(
        `swing: 1\nstudent: 花🏌️/ä.student.yaml\ndate: 2026-05-14\nclub: éß\nflight: { carry: 171 m }\n`,
        'flight.carry',
      ),
      '171 m',
    );
  });
});
