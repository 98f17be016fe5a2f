// What is made for a new practice, student and lesson raises no error and no warning, and takes values.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import { createCache } from '../../src/analysis/cache.ts';
import { fileNameOf, freeName } from '../../src/analysis/file-name.ts';
import { findLessons, type Lesson } from '../../src/analysis/lessons.ts';
import { newPractice, studentFolder } from '../../src/analysis/new-practice.ts';
import { newRecord } from '../../src/analysis/new-record.ts';
import { birthProblem, clubKindOf, newStudent, statureProblem } from '../../src/analysis/new-student.ts';
import type { NewFile } from '../../src/analysis/new-text.ts';
import type { Analysis, FileState } from '../../src/analysis/result.ts';
import { kindOf } from '../../src/record/kind.ts';
import { relativePath, resolveReference } from '../../src/record/reference.ts';

const folder = 'file:///practice';
type Texts = Map<string, string>;

const analysed = (texts: Texts, uri: string): Analysis =>
  analyse(uri, {
    file: (wanted): FileState => {
      const text = texts.get(wanted);
      return text === undefined ? { kind: 'missing' } : { kind: 'text', text };
    },
  });

const worst = (texts: Texts): readonly string[] =>
  [...texts.keys()].flatMap((uri) =>
    analysed(texts, uri)
      .findings.filter(({ severity }) => severity === 'error' || severity === 'warning')
      .map(({ code, message }) => `${uri}: ${code}: ${message}`),
  );

const practice = (): Texts =>
  new Map(newPractice(folder, 'Hollow Lane: "east"').map(({ uri, text }) => [uri, text]));

const wish = {
  name: 'Ansa',
  hand: 'left',
  stature: '171 cm by tape',
  born: undefined,
  clubs: ['driver', 'seven iron', '5 wood', '56 deg', '7'],
  injuries: [],
} as const;

const add = (texts: Texts, { uri, text }: NewFile): string => {
  assert.ok(!texts.has(uri), `${uri} is there already`);
  texts.set(uri, text);
  return uri;
};

async function nextRecord(texts: Texts, student: string, date: string, club?: string): Promise<NewFile> {
  const { document, subject } = analysed(texts, student);
  assert.ok(document.kind === 'student');
  const lessons: readonly Lesson[] = await findLessons(analysed(texts, student), {
    files: new Map<string, FileState>([...texts].map(([uri, text]) => [uri, { kind: 'text', text }])),
    load: () => Promise.resolve({ kind: 'missing' }),
    list: () => Promise.resolve([...texts.keys()]),
    signal: { throwIfAborted: () => undefined },
    cache: createCache(),
  });
  const files = [...texts.keys()];
  return newRecord({ student, document, lessons, date, club, registry: subject.registry, files });
}

const studentIn = (texts: Texts, given: Partial<Parameters<typeof newStudent>[0]> = {}): string =>
  add(texts, newStudent({ ...wish, ...given }, studentFolder(folder, 'ansa'), []));

describe('a new practice', () => {
  it('raises nothing, with a student and a first record in it', async () => {
    const texts = practice();
    const student = studentIn(texts);
    assert.ok(analysed(texts, student).subject.workspace !== undefined);
    add(texts, await nextRecord(texts, student, '2026-05-14', 'seven iron'));
    assert.deepEqual(worst(texts), []);
    assert.equal(texts.size, 6);
    for (const uri of texts.keys()) assert.ok(kindOf(uri) !== undefined, uri);
  });

  it('gives every club its kind and what is usual for it', () => {
    const texts = practice();
    const { document } = analysed(texts, studentIn(texts));
    assert.ok(document.kind === 'student');
    const bag = [...document.bag].map(([name, { kind, entries }]) => [name, kind?.value, entries.size]);
    assert.deepEqual(bag, [
      ['driver', 'driver', 2],
      ['seven iron', 'iron', 2],
      ['5 wood', 'fairway', 2],
      ['56 deg', 'wedge', 2],
      ['7', 'iron', 2],
    ]);
    assert.ok(document.bag.get('driver')!.entries.get('club.loft')!.readings[0]!.measure.estimate);
  });
});

describe('a new student', () => {
  for (const name of ["Zoë O'Hara", '山田 花子', 'null', 'Ål: #1 "x" \\', 'नेहा', '  a\n b ', '- x', '12'])
    it(`may be called ${JSON.stringify(name)}`, () => {
      const texts = practice();
      const { document } = analysed(texts, studentIn(texts, { name }));
      assert.ok(document.kind === 'student');
      assert.equal(document.name?.value, name.replace(/\s+/g, ' ').trim());
      assert.deepEqual(worst(texts), []);
    });

  it('is typed on at the first thing that is missing', () => {
    const { text, cursor } = newStudent({ ...wish, stature: undefined }, folder, []);
    assert.ok(text.slice(0, cursor).endsWith('stature: '));
    const typed = `${text.slice(0, cursor)}1.71 m${text.slice(cursor)}`;
    const { document } = analysed(new Map([['file:///a.student.yaml', typed]]), 'file:///a.student.yaml');
    assert.ok(document.kind === 'student');
    assert.equal(document.entries.get('student.stature')?.readings[0]?.measure.value, 1.71);
  });

  it('brings the reminder where health is noted, and where a record is that of a minor', async () => {
    const texts = practice();
    const student = studentIn(texts, { born: '2012', injuries: ['lower back'] });
    const record = add(texts, await nextRecord(texts, student, '2026-05-14'));
    for (const uri of [student, record]) {
      const codes = analysed(texts, uri).findings.map(({ code }) => code);
      assert.ok(codes.includes('consent-and-privacy'), uri);
    }
    assert.deepEqual(worst(texts), []);
  });

  it('is told what is wrong with an answer', () => {
    assert.equal(statureProblem('171 cm'), undefined);
    assert.equal(statureProblem('5.6 ft'), undefined);
    for (const text of ['', 'tall', '171 kg', '9 m', '170..180 cm'])
      assert.match(statureProblem(text)!, /expected/);
    assert.equal(birthProblem('2012'), undefined);
    assert.equal(birthProblem('2012-02-29'), undefined);
    assert.match(birthProblem('2013-02-29')!, /expected/);
  });

  it('has clubs of the kind that their names tell', () => {
    const kinds = [
      '3 wood',
      '1 wood',
      '4h',
      'four hybrid',
      'sw',
      'gap wedge',
      '9 iron',
      'driver',
      'putting stick',
    ];
    assert.deepEqual(kinds.map(clubKindOf), [
      'fairway',
      'driver',
      'hybrid',
      'hybrid',
      'wedge',
      'wedge',
      'iron',
      'driver',
      'iron',
    ]);
  });
});

describe('names of files', () => {
  it('come from any words', () => {
    const names = ["Zoë O'Hara", '山田 花子', 'Łódź', 'नेहा', '김 민', 'CON', '../..', '', '...', '٣ نور'];
    assert.deepEqual(
      names.map((name) => fileNameOf(name, 'student')),
      [
        'zoe-o-hara',
        '山田-花子',
        'lodz',
        'नेहा',
        '김-민',
        'con-student',
        'student',
        'student',
        'student',
        '٣-نور',
      ],
    );
    assert.ok([...fileNameOf('a'.repeat(500), 'student')].length < 60);
  });

  it('are free, whatever the letter case', () => {
    assert.equal(freeName('ansa', '.student.yaml', []), 'ansa.student.yaml');
    assert.equal(freeName('ansa', '.x', ['Ansa.x', 'ansa-2.x']), 'ansa-3.x');
  });

  it('lead from one file to another and back', () => {
    for (const [from, to] of [
      ['file:///a/b/c.yaml', 'file:///a/d/e.yaml'],
      ['file:///a/b.yaml', 'file:///a/b/c.yaml'],
      ['file:///a/b.yaml', 'file:///a/c.yaml'],
      ['file:///x%20y/b.yaml', 'file:///%E5%B1%B1/c.yaml'],
    ] as const)
      assert.equal(resolveReference(from, relativePath(from, to)!), to);
    assert.equal(relativePath('file:///a', 'untitled:b'), undefined);
  });
});

const first = `swing: 1
student: ansa.student.yaml
date: 2026-05-14
club: seven iron
template: ../../templates/iron.template.yaml
faults_from: ../../house.faults.yaml
checkpoints:
  impact:
    shaft_lean: 7 deg forward by video
  address:
    stance_width: 41 cm by tape
delivery: { club_speed: 33 m/s by radar }
goals: # agreed with her
  - { shape: draw, carry: 120 m }
plan:
  - change: checkpoints.address.ball_position
    to: 7 cm behind
    because: [carry]
    proof: checkpoints.lead_arm_parallel_down.lead_pressure > 65 %
`;

describe('the next record of a student', () => {
  async function made(date = '2026-06-01', club?: string): Promise<{ texts: Texts; record: NewFile }> {
    const texts = practice();
    const student = studentIn(texts);
    texts.set(`${folder}/students/ansa/2026-05-14-seven-iron.swing.yaml`, first);
    const record = await nextRecord(texts, student, date, club);
    add(texts, record);
    return { texts, record };
  }

  it('carries over student, club, template, book and goals, and asks for what is usual and for the proofs', async () => {
    const { texts, record } = await made();
    assert.equal(record.uri, `${folder}/students/ansa/2026-06-01-seven-iron.swing.yaml`);
    assert.deepEqual(worst(texts), []);
    const { document, subject } = analysed(texts, record.uri);
    assert.ok(document.kind === 'swing');
    assert.equal(document.date?.value, '2026-06-01');
    assert.equal(document.club?.value, 'seven iron');
    assert.ok(subject.student && subject.club && subject.template && subject.faultBooks.length === 1);
    assert.equal(document.goals.length, 1);
    assert.match(record.text, /^goals: # agreed with her$/m);
    assert.deepEqual(
      [...document.entries.keys()],
      [
        'checkpoints.address.stance_width',
        'checkpoints.address.ball_position',
        'checkpoints.lead_arm_parallel_down.lead_pressure',
        'checkpoints.impact.shaft_lean',
        'delivery.club_speed',
      ],
    );
    assert.ok([...document.entries.values()].every(({ readings }) => readings.length === 0));
    assert.match(
      record.text,
      /^# Planned on 2026-05-14: checkpoints.address.ball_position to 7 cm behind; proof: /m,
    );
    assert.deepEqual(document.plan, []);
  });

  it('is typed on at what the plan asks for', async () => {
    const { texts, record } = await made();
    assert.ok(record.text.slice(0, record.cursor).endsWith('ball_position: '));
    const typed =
      `${record.text.slice(0, record.cursor)}7 cm behind by tape${record.text.slice(record.cursor)}`
        .replace('lead_pressure:', 'lead_pressure: 70 %')
        .replace('shaft_lean:', 'shaft_lean: 6 deg forward')
        .replace('club_speed:', 'club_speed: 33 m/s by radar')
        .replace('stance_width:', 'stance_width: 41 cm');
    texts.set(record.uri, typed);
    assert.deepEqual(worst(texts), []);
    assert.equal(
      analysed(texts, record.uri).account?.situation.observations.get('checkpoints.address.ball_position')
        ?.value,
      -0.07,
    );
  });

  it('gets a name of its own on the same day', async () => {
    const { record } = await made('2026-05-14');
    assert.equal(record.uri.split('/').at(-1), '2026-05-14-seven-iron-2.swing.yaml');
  });

  it('takes no template and no plan of another club along', async () => {
    const { texts, record } = await made('2026-06-01', 'driver');
    const { document } = analysed(texts, record.uri);
    assert.ok(document.kind === 'swing');
    assert.match(document.template?.value ?? '', /driver\.template\.yaml$/);
    assert.doesNotMatch(record.text, /Planned/);
    assert.deepEqual(worst(texts), []);
  });
});
