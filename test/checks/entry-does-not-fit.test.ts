// Tests of the check entry-does-not-fit, and of what holds of every conflict: said once, never on what nothing checks, mendable.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { conflictKinds } from '../../src/checks/conflict-kinds.ts';
import { analyseFiles, applied, assertMarked, assertNone, messageOf } from './files.ts';

const student = `student: 1
hand: right
stature: 175 cm ± 1 cm
bag:
  seven: { kind: iron, loft: 33 deg ± 0.5 deg, lie: 62 deg, length: 37 in ± 0.2 in, head_mass: 268 g }`;

const lesson = (attack: string, more = '') => `swing: 1
student: mira.student.yaml
club: seven
checkpoints:
  impact: { lead_shoulder: 8 cm ahead ± 1 cm, shaft_lean: 8 deg forward ± 1 deg }
delivery:
  club_speed: 36 m/s by radar
  attack: ${attack}
  release_ratio: 2.2 ± 0.1
  arc: { inclination: 60 deg ± 1 deg, radius: 1.3 m ± 3 cm }
ground: { divot: { starts: 1 cm ahead ± 1 cm, length: 15 cm ± 1 cm } }${more}`;

const files = (attack: string, more = '') => ({
  'lesson.swing.yaml': lesson(attack, more),
  'mira.student.yaml': student,
});

const codes = new Set(conflictKinds.map(({ code }) => code));
const conflictsIn = (analysis: ReturnType<typeof analyseFiles>) =>
  analysis.findings.filter(({ code }) => codes.has(code));

describe('entry-does-not-fit', () => {
  it('marks the entry that the others outvote', () => {
    const analysis = assertMarked('entry-does-not-fit', {
      'lesson.swing.yaml': lesson('6 deg up ± 0.5 deg').replace(
        '± 0.5 deg\n',
        '± 0.5 deg\n#         ^^^^^^^^^^^^^^^^^^ warning[entry-does-not-fit]\n',
      ),
      'mira.student.yaml': student,
    });
    assert.match(
      messageOf(analysis, 'entry-does-not-fit'),
      /^Attack angle 6\.0 deg up does not fit: .+ together say \d\.\d deg down ± \d\.\d deg\.$/,
    );
    assert.ok(analysis.findings.find(({ code }) => code === 'entry-does-not-fit')!.related.length > 1);
  });

  it('says nothing of one that fits', () => {
    assertNone('entry-does-not-fit', files('4 deg down ± 0.5 deg'));
  });

  it('never blames what nothing else checks', () => {
    const { agreement, findings } = analyseFiles(
      'swing: 1\ndelivery: { attack: 9 deg up, club_speed: 52 m/s }',
    );
    assert.ok(agreement!.entries.every(({ verdict }) => verdict === 'unchecked'));
    assert.deepEqual(
      findings.filter(({ code }) => codes.has(code)),
      [],
    );
  });

  it('says each misfit once, whatever the entry', () => {
    const analysis = analyseFiles(files('6 deg up ± 0.5 deg', '\nflight: { ball_speed: 70 m/s by radar }'));
    const places = conflictsIn(analysis).map(({ range }) => JSON.stringify(range.start));
    assert.equal(new Set(places).size, places.length);
    assert.equal(
      conflictsIn(analysis).length,
      2,
      conflictsIn(analysis)
        .map(({ message }) => message)
        .join('\n'),
    );
  });

  it('points to the club where an entry of the bag fits worst', () => {
    const bag = student.replace('loft: 33 deg ± 0.5 deg', 'loft: 55 deg ± 3 deg');
    const text = lesson('4 deg down ± 0.5 deg')
      .replace(
        '  release_ratio',
        '  delivered_loft: 26 deg ± 0.5 deg\n  face: 0 deg ± 0.5 deg\n  arc: { direction: 0 deg ± 0.5 deg, inclination: 60 deg ± 1 deg }\n  release_ratio',
      )
      .replace(/\n {2}arc: \{ inclination: 60 deg ± 1 deg, radius.*\}\n/, '\n');
    const { findings } = analyseFiles({ 'lesson.swing.yaml': text, 'mira.student.yaml': bag });
    const found = findings.find(({ message }) => message.startsWith('Loft of the club'));
    assert.equal(found?.range.start.line, 2, findings.map(({ message }) => message).join('\n'));
    assert.ok(found?.related.some(({ uri }) => uri.endsWith('mira.student.yaml')));
  });

  it('is gone after “Mark it doubtful” wherever that is offered', () => {
    let offered = 0;
    const attack = fc.double({ min: -2, max: 12, noNaN: true }).map((up) => Math.round(10 * up) / 10);
    fc.assert(
      fc.property(attack, (up) => {
        const all = files(`${Math.abs(up)} deg ${up < 0 ? 'down' : 'up'} ± 0.5 deg`);
        for (const { code, range, fixes } of conflictsIn(analyseFiles(all))) {
          for (const fix of fixes.filter(({ title }) => title === 'Mark it doubtful')) {
            offered += 1;
            const text = applied(all['lesson.swing.yaml'], fix.edits);
            const after = analyseFiles({ ...all, 'lesson.swing.yaml': text });
            assert.ok(
              !after.findings.some(
                (other) => other.code === code && other.range.start.line === range.start.line,
              ),
              `${up}: ${after.findings.map(({ message }) => message).join('\n')}`,
            );
          }
        }
      }),
      { numRuns: 60 },
    );
    assert.ok(offered > 5, `${offered}`);
  });
});
