// A fault or a club gets its new name everywhere, and nothing else changes; what cannot be renamed is told in a sentence.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import '../seed.ts';
import { applyEdits, rename } from '../../src/analysis/renaming.ts';
import { findRename, findRenamed, prepareRename } from '../../src/language/index.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { cardsIn, cursorAt, lessons, practice, shown, type Cursor } from './practice.ts';

/** The files that change, as they read afterwards; or why not. */
function renamed({ analysis, position, files }: Cursor, to: string): Record<string, string> | string {
  const renaming = rename(findRenamed(analysis, position), to, cardsIn(files));
  if (renaming.kind === 'refused') return renaming.reason;
  return Object.fromEntries(renaming.files.map((file) => [file.uri.replace(lessons, ''), applyEdits(file)]));
}

function refusalIn(answer: Record<string, string> | string): string {
  return typeof answer === 'string' ? answer : `no refusal, but ${Object.keys(answer).join()}`;
}

describe('renaming a fault', () => {
  it('changes the books that extend one another, and the records and plans that lead to them', () => {
    const changed = renamed(cursorAt('a.swing.yaml', 'weight-back', 'because'), 'stays-back');
    const expected = ['house.faults.yaml', 'base.faults.yaml', 'a.swing.yaml', 'b.swing.yaml'];
    assert.deepEqual(
      changed,
      Object.fromEntries(
        expected.map((name) => [name, practice[name]!.replaceAll('weight-back', 'stays-back')]),
      ),
    );
  });

  it('leaves the same name in another book alone', () => {
    const changed = renamed(cursorAt('other.faults.yaml', 'weight-back'), 'stays-back');
    assert.deepEqual(Object.keys(changed), ['other.faults.yaml', 'c.swing.yaml']);
  });

  it('refuses a name that is taken in any of the books', () => {
    assert.equal(
      renamed(cursorAt('a.swing.yaml', 'weight-back'), 'handle-trails'),
      '`handle-trails` stands in `base.faults.yaml` already; expected a name that no other fault has.',
    );
    assert.match(
      refusalIn(renamed(cursorAt('base.faults.yaml', 'handle-trails'), 'weight-back')),
      /stands in `house\.faults\.yaml` already/,
    );
  });

  it('refuses a fault that stands in no book', () => {
    const files = {
      ...practice,
      'a.swing.yaml': practice['a.swing.yaml']!.replace('fault: weight-back', 'fault: unheard-of'),
    };
    assert.match(
      refusalIn(renamed(cursorAt('a.swing.yaml', 'unheard-of', '', files), 'x')),
      /^`unheard-of` stands in no fault book/,
    );
  });
});

describe('renaming a club', () => {
  it('changes the bag, the goals and the records of that student, within quotes where there are some', () => {
    const changed = renamed(cursorAt('b.swing.yaml', 'seven iron'), 'blade');
    const expected = ['mira.student.yaml', 'b.swing.yaml'];
    assert.deepEqual(
      changed,
      Object.fromEntries(expected.map((name) => [name, practice[name]!.replaceAll('seven iron', 'blade')])),
    );
  });

  it('writes quotes where YAML would take the name for something else', () => {
    for (const name of [
      '7',
      '4: hybrid',
      'true',
      '- rough',
      '#1',
      'a, b',
      '{x}',
      '1e3',
      'say "hi"',
      "pro's # 2",
      'null',
      '5 wood',
      'Übungsschläger',
      'back\\slash',
      '*star',
      '!tag',
      '0x1f',
      '~',
      '2026-01-01',
    ]) {
      const changed = renamed(cursorAt('mira.student.yaml', 'seven iron'), name);
      assert.ok(typeof changed === 'object', `${name}: ${refusalIn(changed)}`);
      const student = parseDocument('student', changed['mira.student.yaml']!);
      const record = parseDocument('swing', changed['b.swing.yaml']!);
      assert.ok(student.kind === 'student' && record.kind === 'swing');
      assert.deepEqual([...student.bag.keys()], ['hybrid', name]);
      assert.equal(student.goals[0]?.club?.value, name);
      assert.equal(record.club?.value, name);
    }
    assert.match(
      (renamed(cursorAt('mira.student.yaml', 'seven iron'), '5 wood') as Record<string, string>)[
        'mira.student.yaml'
      ]!,
      /^ {2}5 wood: /m,
    );
  });

  it('refuses one that is in the bag, none, one that cannot be seen and one that is too long', () => {
    const at = cursorAt('mira.student.yaml', 'seven iron');
    assert.equal(
      renamed(at, ' hybrid '),
      "`hybrid` is in the student's bag already; expected a name that no other club has.",
    );
    assert.equal(renamed(at, '  '), 'Nothing was typed; expected the new name.');
    assert.match(refusalIn(renamed(at, 'a\nb')), /cannot be seen/);
    assert.match(refusalIn(renamed(at, 'a\u0000b')), /cannot be seen/);
    assert.equal(renamed(at, 'x'.repeat(81)), 'The new name has 81 characters; expected at most 80.');
  });

  it('changes nothing where the name stays', () => {
    assert.deepEqual(renamed(cursorAt('mira.student.yaml', 'seven iron'), ' seven  iron '), {});
  });

  it('changes aliases and escaped names as well, or refuses, but never breaks a file', () => {
    const bag = practice['mira.student.yaml']!;
    const record = 'swing: 1\nstudent: mira.student.yaml\n';
    const club = (text: string) =>
      renamed(
        cursorAt('mira.student.yaml', 'hybrid', '', {
          'mira.student.yaml': bag,
          'x.swing.yaml': record + text,
        }),
        'utility',
      );
    const read = (changed: ReturnType<typeof club>) => (changed as Record<string, string>)['x.swing.yaml'];
    assert.equal(read(club('club: "h\\x79brid" # c\n')), `${record}club: "utility" # c\n`);
    assert.equal(read(club('notes: &h hybrid\nclub: *h\n')), `${record}notes: &h hybrid\nclub: utility\n`);
    assert.match(
      refusalIn(club('club: |-\n  hybrid\ndate: 2026-05-05\n')),
      /^`hybrid` cannot be replaced in `x\.swing\.yaml`/,
    );
  });

  it('changes no byte but those of the name, whatever it is', () => {
    const at = cursorAt('mira.student.yaml', 'seven iron');
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 20 }), (name) => {
        const changed = renamed(at, name);
        if (typeof changed === 'string') return;
        for (const [file, text] of Object.entries(changed)) {
          const parts = practice[file]!.split('seven iron');
          let from = 0;
          for (const part of parts) {
            const found = text.indexOf(part.replace(/^"|"$/g, ''), from);
            assert.ok(found >= from, `${file}: ${text}`);
            from = found;
          }
          const student = parseDocument(file.includes('student') ? 'student' : 'swing', text);
          if (student.kind === 'student') assert.equal(student.bag.size, 2);
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('what stands at the cursor', () => {
  const prepared = ({ analysis, position, files }: Cursor): string => {
    const place = prepareRename(analysis, findRenamed(analysis, position), cardsIn(files));
    return 'refused' in place
      ? place.refused
      : `${shown(analysis.uri, place.range, files)} = ${place.placeholder}`;
  };

  it('is the exact name, quotes aside', () => {
    assert.equal(prepared(cursorAt('b.swing.yaml', 'seven iron')), 'b.swing.yaml:4: seven iron = seven iron');
    assert.equal(
      prepared(cursorAt('b.swing.yaml', 'weight-back')),
      'b.swing.yaml:6: weight-back = weight-back',
    );
  });

  it('is refused with a reason where it is no fault and no club', () => {
    assert.match(prepared(cursorAt('a.swing.yaml', 'seen')), /^Only faults, clubs and a workspace.s own/);
    assert.match(
      prepared(cursorAt('a.swing.yaml', 'lead_pressure')),
      /^`checkpoints\.impact\.lead_pressure` is a quantity of the format/,
    );
    assert.match(prepared(cursorAt('a.swing.yaml', 'heavy')), /^`heavy` is a word of the trade/);
    assert.match(
      prepared(cursorAt('a.swing.yaml', 'iron.template')),
      /^A file is renamed where files are listed/,
    );
  });

  it('comes with the version of each open file', () => {
    const { analysis, position } = cursorAt('b.swing.yaml', 'seven iron');
    const edit = findRename(findRenamed(analysis, position), 'blade', cardsIn(), (uri) =>
      uri.endsWith('b.swing.yaml') ? 7 : null,
    );
    assert.ok('documentChanges' in edit);
    assert.deepEqual(
      edit.documentChanges.map(({ textDocument: { uri, version }, edits }) => [
        uri.replace(lessons, ''),
        version,
        edits.length,
      ]),
      [
        ['mira.student.yaml', null, 2],
        ['b.swing.yaml', 7, 1],
      ],
    );
  });
});
