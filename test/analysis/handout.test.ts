// What a handout tells: of the record alone, at most three changes, and nothing of health that nobody asked for.
import assert from 'node:assert/strict';
import { handoutFileName } from '../../src/analysis/handout-name.ts';
import { handoutOf } from '../../src/analysis/handout.ts';
import { analyseFiles } from '../checks/files.ts';
import { handoutFrom, handoutOfFiles, lesson, sampleRecords } from './handouts.ts';

describe('a handout', () => {
  it('has three changes at most, each with drills and what to feel, and counts the others', () => {
    const { changes, furtherChanges } = handoutOfFiles(lesson);
    assert.deepEqual(
      changes.map(({ quantity, feel, drills }) => [quantity.key, feel, drills]),
      [
        ['stance_width', 'light on the trail heel', ['Half swings on one leg.']],
        ['shaft_lean', 'own words', ['Half swings on one leg.']],
        ['ball_position', 'light on the trail heel', ['Half swings on one leg.']],
      ],
    );
    assert.equal(furtherChanges, 1);
  });

  it('foresees nothing but what it shows', () => {
    const alone = {
      ...lesson,
      'lesson.swing.yaml': lesson['lesson.swing.yaml']!.replace(/^ {2}- .*club_speed.*\n/m, ''),
    };
    assert.notEqual(alone['lesson.swing.yaml'], lesson['lesson.swing.yaml']);
    const [all, three] = [handoutOfFiles(lesson), handoutOfFiles(alone)];
    assert.ok(three.outlooks.length > 0);
    const told = ({ outlooks, goals, proofs }: typeof all) => ({
      outlooks: outlooks.map(({ outlook: { quantity, value } }) => [quantity.id, value]),
      goals: goals.map(({ then }) => then.chance),
      proofs,
    });
    assert.deepEqual(told(all), told(three));
  });

  it('starts what it foresees from where its goals stand', () => {
    const [, sample] = sampleRecords.find(([path]) => path === 'runa/2026-08-03-six-iron.swing.yaml')!;
    const { outlooks, goals } = handoutFrom(sample);
    const both = goals.flatMap(({ now }) => {
      const same = outlooks.find(({ outlook }) => outlook.quantity.id === now.wanted.quantity.id);
      return same === undefined ? [] : [[now.value, same.now?.value]];
    });
    assert.ok(both.length >= 3);
    for (const [one, other] of both) assert.ok(Math.abs(one! - other!) < 1e-9);
  });

  it('starts each change from the entry, but from what all entries say where the two are apart', () => {
    const torn = `swing: 1
student: ansa.student.yaml
club: hybrid
delivery: { club_speed: 38 m/s by radar, path: 4 deg right by eye, face: 3 deg left by eye }
flight: { start: 1 deg left by radar, curve: 8 m right by radar, carry: 120 m by radar }
plan: [{ change: delivery.path, to: 0 deg }]
`;
    const startOf = (record: string): readonly (number | undefined)[] => {
      const [change] = handoutOfFiles({ ...lesson, 'lesson.swing.yaml': record }).changes;
      const drawn = change?.present.derivation?.values.get('delivery.path');
      return [change?.now?.value, drawn?.value].map((angle) => angle && (angle * 180) / Math.PI);
    };
    const [said, drawn] = startOf(torn);
    assert.ok(said! < 0 && said === drawn, `${said} ${drawn}`);
    const [entered] = startOf(torn.replace(/^flight.*\n/m, ''));
    assert.ok(Math.abs(entered! - 4) < 1e-9, `${entered}`);
  });

  it('has fewer where the workspace says so', () => {
    const files = { ...lesson, 'swingwright.yaml': 'swingwright: 1\nmost_changes: 1\n' };
    assert.equal(handoutOfFiles(files).changes.length, 1);
    assert.equal(handoutOfFiles(files).furtherChanges, 3);
  });

  it('names the parts that a change loads whatever is noted, and an injury only where it was asked for', () => {
    const loads = handoutOfFiles(lesson).changes[0]!.loads.map(({ part }) => part.value);
    assert.deepEqual(loads, ['lead knee', 'lower back']);
    assert.deepEqual(handoutOfFiles(lesson).injuries, []);
    const { injuries } = handoutOfFiles(lesson, { health: 'named' });
    assert.deepEqual(
      injuries.map(({ part }) => part.value),
      ['lead knee'],
    );
  });

  it('takes the language that was asked for, then that of record, student and workspace, then English', () => {
    const record = 'swing: 1\nstudent: a.student.yaml\n';
    const files = {
      'lesson.swing.yaml': record,
      'a.student.yaml': 'student: 1\n',
      'swingwright.yaml': 'swingwright: 1\nlanguage: de\n',
    };
    assert.equal(handoutOfFiles(record).language, 'en');
    assert.equal(handoutOfFiles(files).language, 'de');
    assert.equal(handoutOfFiles({ ...files, 'a.student.yaml': 'student: 1\nlanguage: en\n' }).language, 'en');
    assert.equal(handoutOfFiles({ ...files, 'lesson.swing.yaml': `${record}language: en\n` }).language, 'en');
    assert.equal(handoutOfFiles(record, { language: 'de' }).language, 'de');
  });

  it('says which languages there are where it has no words of one', () => {
    const result = handoutOf(analyseFiles('swing: 1\nlanguage: fr\n'), [], {
      language: undefined,
      health: 'left out',
    });
    assert.deepEqual(result, {
      kind: 'refused',
      words: 'Found the language `fr`; expected one of `en`, `de`.',
    });
  });

  it('is of a record', () => {
    const result = handoutOf(analyseFiles({ 'a.student.yaml': 'student: 1\n' }), [], {
      language: undefined,
      health: 'left out',
    });
    assert.equal(result.kind, 'refused');
  });

  it('says what is missing where there is little', () => {
    assert.deepEqual(handoutOfFiles('').gaps, [
      'student',
      'date',
      'club',
      'numbers',
      'faults',
      'goals',
      'plan',
    ]);
    assert.ok(!handoutOfFiles('swing: 1\ndelivery: { attack: 4 deg down }\n').gaps.includes('numbers'));
  });

  it('knows who is under eighteen on that day', () => {
    assert.equal(handoutOfFiles(lesson).isMinor, true);
    const student = lesson['ansa.student.yaml']!.replace('2012', '2001');
    assert.equal(handoutOfFiles({ ...lesson, 'ansa.student.yaml': student }).isMinor, false);
  });

  it('names its file so that no name leads elsewhere', () => {
    const named = (name: string): string => {
      const student = `student: 1\nname: ${JSON.stringify(name)}\n`;
      return handoutFileName(handoutOfFiles({ ...lesson, 'ansa.student.yaml': student }), 'student', 'pdf');
    };
    assert.equal(named('Ansa'), 'ansa-2026-05-14-student.pdf');
    assert.equal(named('../../etc/passwd'), 'etc-passwd-2026-05-14-student.pdf');
    assert.equal(named('\u202e<b>'), 'b-2026-05-14-student.pdf');
    assert.equal(handoutFileName(handoutOfFiles(''), 'file', 'html'), 'lesson-file.html');
  });
});
