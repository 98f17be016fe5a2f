import assert from 'node:assert/strict';
import { parseDocument } from '../../src/record/parse.ts';
import { assertMarked, marksOf } from './marked.ts';

const head = 'swing: 1\nstudent: a\ndate: 2026-05-14\nclub: b\n';

describe('the shape of a record', () => {
  it('has an unknown key, the nearest known one beside it', () => {
    const document = assertMarked('swing', `${head}delivery:\n  atack: 3 deg down\n  ^^^^^ unknown-key\n`);
    assert.equal(document.problems[0]?.nearest, 'attack');
    assert.equal(document.problems[0]?.found, 'the key `atack`');
  });

  it('offers at most eight of the keys that are still free there', () => {
    const document = assertMarked(
      'swing',
      `${head}delivery:\n  club_speed: 40 m/s\n  zzz: 3\n  ^^^ unknown-key\n`,
    );
    const expected = document.problems[0]?.expected ?? '';
    assert.match(expected, /^`attack`, `path`, /);
    assert.ok(!expected.includes('club_speed'));
    assert.ok(expected.split(', ').length <= 9);
  });

  it('has a quantity at a place where it does not belong, and says where it does', () => {
    const document = assertMarked(
      'swing',
      `${head}attack: 3 deg down
^^^^^^ unknown-key
checkpoints:
  impact:
    stance_width: 47 cm
    ^^^^^^^^^^^^ unknown-key
`,
    );
    assert.deepEqual(
      document.problems.map(({ expected }) => expected),
      ['it under `delivery`', 'it under `checkpoints.address`'],
    );
    assert.equal(document.kind === 'swing' && document.entries.size, 0);
  });

  it('has an unknown checkpoint: one problem, whatever stands below it', () => {
    const document = assertMarked(
      'swing',
      `${head}checkpoints:\n  adress:\n  ^^^^^^ unknown-key\n    heads: 3 cm\n`,
    );
    assert.equal(document.problems[0]?.nearest, 'address');
  });

  it('has `true`, a number or a list where a condition belongs, and says what one looks like', () => {
    for (const found of ['true', '5', '[delivery.path > 2 deg]']) {
      const { problems } = parseDocument(
        'swing',
        `${head}plan: [{ change: delivery.path, to: 1 deg right, proof: ${found} }]`,
      );
      assert.deepEqual(
        problems.map(({ code, expected }) => [code, expected]),
        [
          [
            'wrong-shape',
            'a condition on what is measured, such as `delivery.path <= 2 deg` (right, ahead and up are positive)',
          ],
        ],
      );
    }
    const { problems } = parseDocument(
      'faults',
      'faults: 1\nbook: { a: { evidence: [true, { expression: 4 }] } }',
    );
    assert.equal(problems.filter(({ expected }) => expected.startsWith('a condition')).length, 2);
  });

  it('has a word where a section belongs', () => {
    assertMarked('swing', `${head}flight: high\n#       ^^^^ wrong-shape\n`);
  });

  it('has a list where a section belongs, a section where a list belongs', () => {
    assertMarked('swing', `${head}flight: [a, b]\n#       ^^^^^^ wrong-shape\n`);
    const { problems } = assertMarked(
      'swing',
      `${head}faults:\n  fault: x\n  ^^^^^ wrong-shape\n  at: top\n`,
    );
    assert.equal(problems[0]?.found, 'a mapping (keys with values)');
    assert.equal(problems[0]?.expected, 'a list');
  });

  it('has a number where a path belongs', () => {
    const { problems } = assertMarked(
      'swing',
      'swing: 1\nstudent: 7\n#        ^ wrong-shape\ndate: 2026-05-14\nclub: b\n',
    );
    assert.equal(problems[0]?.expected, 'words');
  });

  it('has a word that is none of those known', () => {
    const document = assertMarked('swing', `${head}flight:\n  shape: drwa\n         ^^^^ unknown-word\n`);
    assert.equal(document.problems[0]?.nearest, 'draw');
    assertMarked('student', 'student: 1\nhand: lefft\n#     ^^^^^ unknown-word\n');
    assertMarked('template', 'template: 1\nclubs: hybird\n#      ^^^^^^ unknown-word\n');
    assertMarked('template', 'template: 1\nclubs: [iron, hybird]\n#             ^^^^^^ unknown-word\n');
    assertMarked(
      'workspace',
      'swingwright: 1\nseverities:\n  no-value-yet: of\n                ^^ unknown-word\n',
    );
  });

  it('has a list where one word belongs', () => {
    assertMarked('student', 'student: 1\nhand: [left]\n#     ^^^^^^ wrong-shape\n');
  });

  it('has a version that is not known', () => {
    const { problems } = assertMarked('swing', head.replace('1', '2\n#      ^ unsupported-version'));
    assert.equal(problems[0]?.expected, '`1`');
    assertMarked('workspace', 'swingwright: "1"\n#            ^^^ unsupported-version\n');
  });

  it('lacks its version', () => {
    assertMarked('swing', 'date: 2026-05-14\n^^^^ missing-key\n');
    assertMarked('student', 'name: Imke\n^^^^ missing-key\n');
  });

  it('is empty, but for white space and comments', () => {
    for (const text of ['', '\n\n', '# a note\n', '\ufeff', '---\n'])
      assert.deepEqual(marksOf(parseDocument('swing', text).problems), [
        { code: 'missing-key', start: 0, end: 0 },
      ]);
  });

  it('is no mapping', () => {
    assertMarked('swing', 'swi\n^^^ wrong-shape\n');
    assertMarked('swing', '- swing: 1\n^^^^^^^^^^ wrong-shape\n- b\n');
  });

  it('has a coverage that is no positive number', () => {
    assertMarked('workspace', 'swingwright: 1\ncoverage: 0\n#         ^ number-out-of-range\n');
    assertMarked('workspace', 'swingwright: 1\ncoverage: -.inf\n#         ^^^^^ wrong-shape\n');
    assertMarked('workspace', 'swingwright: 1\ncoverage: two\n#         ^^^ wrong-shape\n');
  });
});

describe('an empty value', () => {
  it('is a place without a value, never a wrong shape', () => {
    assertMarked(
      'swing',
      `${head}template:
#        | no-value-yet
delivery:
#        | no-value-yet
flight:
  carry:
        | no-value-yet
  shape:
        | no-value-yet
  apex: ~
        ^ no-value-yet
faults:
#      | no-value-yet
goals:
  -
   | no-value-yet
plan: [{ change: }]
#                | no-value-yet
`,
    );
  });

  it('stands between the colon and a comment', () => {
    assertMarked('swing', `${head}flight:\n  carry:   # by eye\n           | no-value-yet\n`);
  });

  it('may be a pair of brackets', () => {
    assertMarked(
      'swing',
      `${head}flight: {}\n#       ^^ no-value-yet\nfaults: []\n#       ^^ no-value-yet\n`,
    );
  });

  it('of a record is also a student, a date or a club that nobody has named yet', () => {
    const { problems } = assertMarked('swing', 'swing: 1\n^^^^^ no-value-yet\ndate: 2026-05-14\n');
    assert.equal(problems[0]?.found, 'no `student`, `club` yet');
  });

  it('of the version is no missing version', () => {
    assertMarked('student', 'student:\n#       | no-value-yet\n');
  });

  it('is an entry without readings, so that a hint can stand there', () => {
    const document = parseDocument('swing', `${head}flight:\n  carry:\n`);
    const entry = document.kind === 'swing' ? document.entries.get('flight.carry') : undefined;
    assert.deepEqual(entry?.readings, []);
    assert.deepEqual(entry?.valueSpan, { start: head.length + 16, end: head.length + 16 });
  });
});
