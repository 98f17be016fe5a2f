// Tests of what an analysis wants, uses and follows, and that no URI or text makes it throw.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { analyse } from '../../src/analysis/analyse.ts';
import { createCache, forget } from '../../src/analysis/cache.ts';
import type { FileState } from '../../src/analysis/result.ts';
import { analyseFiles, applied, codesOf, folder, uriOf } from '../checks/files.ts';

const lesson = `swing: 1
student: mira.student.yaml
club: hybrid
template: irons.template.yaml
faults_from: house.faults.yaml
conditions: { temperature: 14 °C, wind: 3 m/s from left }
checkpoints:
  address: { stance_width: 47 cm by tape, lead_pressure: 50 % }
  impact: { shaft_lean: 9 deg forward, lead_pressure: { value: 66 %, by: pressure mat, note: "again" } }
delivery:
  club_speed: 41 m/s by radar
  attack: 3.5 deg down
  path: 5 deg right # accept[path-against-arc]: measured twice
  face: [1 deg right by radar, 12 deg right by radar]
  low_point: { ahead: 9 cm behind }
  arc: { radius: 1.6 m, inclination: 60 deg }
flight: { start: 1 deg right, curve: 14 yd right, carry: 171 m, finish: 40 yd left, shape: draw }
faults:
  - { fault: low-hand, at: impact }
goals:
  - { shape: draw, start: 2 deg left, finish: 5..0 yd left, carry: 178 m }
`;
const files = {
  'lesson.swing.yaml': lesson,
  'mira.student.yaml': 'student: 1\nhand: left\nbag:\n  hybrid: { kind: hybrid, loft: 22 deg }\n',
  'house.faults.yaml': 'faults: 1\nbook:\n  low-hands: { title: Low hands }\n',
  'irons.template.yaml': 'template: 1\ndelivery: { attack: 2..6 deg down }\n',
};
const uri = uriOf('lesson.swing.yaml');

function firstOf(name: string, others: Readonly<Record<string, string>>): Record<string, string> {
  return { [name]: others[name]!, ...others };
}

function missing(): FileState {
  return { kind: 'missing' };
}

describe('analyse', () => {
  it('wants first the file itself', () => {
    const analysis = analyse(uri, { file: () => undefined });
    assert.deepEqual(analysis.wanted, [uri]);
    assert.deepEqual(analysis.used, [uri]);
    assert.deepEqual(analysis.findings, []);
  });

  it('wants the workspaces above and the files that it refers to, and finds nothing wrong with them yet', () => {
    const text = 'swing: 1\nstudent: ../mira.student.yaml\nshots: shots.csv';
    const state = { kind: 'text', text } as const;
    const analysis = analyse(uri, { file: (asked) => (asked === uri ? state : undefined) });
    assert.deepEqual(analysis.wanted, [
      'file:///lessons/2026/swingwright.yaml',
      'file:///lessons/swingwright.yaml',
      'file:///swingwright.yaml',
      'file:///lessons/mira.student.yaml',
      'file:///lessons/2026/shots.csv',
      'file:///lessons/2026/lesson.review.yaml',
    ]);
    assert.deepEqual(codesOf(analysis), []);
  });

  it('uses the nearest workspace and does not look above it', () => {
    const { used, subject } = analyseFiles({ ...files, 'swingwright.yaml': 'swingwright: 1' });
    assert.equal(used[0], uri);
    assert.ok(used.includes('file:///lessons/2026/swingwright.yaml'));
    assert.ok(!used.includes('file:///lessons/swingwright.yaml'));
    assert.equal(subject.workspace?.uri, 'file:///lessons/2026/swingwright.yaml');
  });

  it('uses the files that are missing as well, for they may be written yet', () => {
    const { used } = analyseFiles('swing: 1\nstudent: nobody.student.yaml');
    assert.ok(used.includes(uriOf('nobody.student.yaml')));
    assert.ok(used.includes('file:///swingwright.yaml'));
  });

  it('gives an analysis with nothing for a file of unknown kind and for one that is missing', () => {
    for (const asked of [uriOf('notes.txt'), uri, 'untitled:Untitled-1', 'not a uri', '']) {
      const { findings, wanted, derivation } = analyse(asked, { file: missing });
      assert.deepEqual({ findings, wanted, derivation }, { findings: [], wanted: [], derivation: undefined });
    }
    assert.deepEqual(analyse(uriOf('notes.txt'), { file: () => undefined }).wanted, []);
  });

  it('derives for a record and for no other kind of file', () => {
    assert.equal(analyseFiles(files).derivation?.values.get('delivery.club_speed')?.value, 41);
    assert.equal(analyseFiles({ 'mira.student.yaml': 'student: 1' }).derivation, undefined);
  });

  it('combines the readings of an entry and takes the student and the club along', () => {
    const values = analyseFiles(files).derivation!.values;
    assert.equal(values.get('club.loft')?.kind, 'entered');
    const face = values.get('delivery.face')!;
    assert.ok(Math.abs((face.value * 180) / Math.PI - 6.5) < 1e-9);
  });

  it('sorts what it finds by place', () => {
    const starts = analyseFiles(files).findings.map(
      ({ range }) => range.start.line * 1000 + range.start.character,
    );
    assert.deepEqual(
      starts,
      [...starts].sort((a, b) => a - b),
    );
  });

  it('gives the same lines and characters with either line break', () => {
    const windows = { ...files, 'lesson.swing.yaml': lesson.replaceAll('\n', '\r\n') };
    const places = (analysis: ReturnType<typeof analyseFiles>) =>
      analysis.findings.map(({ code, range }) => ({ code, range }));
    const found = places(analyseFiles(files));
    assert.ok(found.length >= 5, `only ${found.length}`);
    assert.deepEqual(places(analyseFiles(windows)), found);
  });

  it('keeps the parts of what did not change, and gives the same with and without a cache', () => {
    const cache = createCache();
    const first = analyseFiles(files, cache);
    assert.equal(analyseFiles(files, cache), first);
    const changed = { ...files, 'house.faults.yaml': 'faults: 1\nbook:\n  low-hand: { title: Low hands }\n' };
    const second = analyseFiles(changed, cache);
    assert.equal(second.document, first.document);
    assert.equal(second.derivation, first.derivation);
    assert.deepEqual(second.findings, analyseFiles(changed).findings);
    assert.notDeepEqual(second.findings, first.findings);
  });

  it('derives anew when a number, the hand or the club changes, and not when a comment does', () => {
    const cache = createCache();
    const first = analyseFiles(files, cache).derivation;
    const withLesson = (text: string) =>
      analyseFiles({ ...files, 'lesson.swing.yaml': text }, cache).derivation;
    assert.equal(withLesson(`${lesson}# later\n`), first);
    assert.notEqual(withLesson(lesson.replace('41 m/s', '42 m/s')), first);
    const second = withLesson(lesson);
    for (const change of [
      ['left', 'right'],
      ['22 deg', '23 deg'],
      ['kind: hybrid', 'kind: iron'],
    ] as const) {
      const student = files['mira.student.yaml'].replace(change[0], change[1]);
      assert.notEqual(analyseFiles({ ...files, 'mira.student.yaml': student }, cache).derivation, second);
    }
  });

  it('lets go of what it kept of a file', () => {
    const cache = createCache();
    analyseFiles(files, cache);
    for (const name of Object.keys(files)) forget(cache, uriOf(name));
    assert.equal(cache.analysed.size + cache.accounts.size + cache.parsed.size, 0);
  });

  it('never throws, and stays within the text, whatever is cut out of a file or put into it', () => {
    const all: Readonly<Record<string, string>> = {
      ...files,
      'swingwright.yaml':
        'swingwright: 1\ncoverage: 2\nseverities: { bare-number: off }\nmethods:\n  cart: { meaning: a cart, uncertainty: { speed: 1 m/s } }\n',
      'mira.review.yaml': 'review: 1\nof: lesson.swing.yaml\n',
    };
    const bits = ['', ' ', '\n', ':', '[', '{', '}', '"', '#', '- ', '±', '-', '..', '9e999', '&a *a', '\t'];
    const puts = fc.constantFrom(...bits, '# accept[x]', '# accept[no-value-yet, bare-number]: y');
    const edit = fc.record({ at: fc.nat(1000), cut: fc.nat(30), put: puts });
    const name = fc.constantFrom('lesson.swing.yaml', 'lesson.swing.yaml', ...Object.keys(all));
    fc.assert(
      fc.property(name, fc.array(edit, { minLength: 1, maxLength: 4 }), (changed, edits) => {
        const text = edits.reduce(
          (done, { at, cut, put }) =>
            done.slice(0, at % (done.length + 1)) + put + done.slice((at % (done.length + 1)) + cut),
          all[changed]!,
        );
        analyseFiles({ ...all, [changed]: text });
        const lines = text.split(/\r\n|\n|\r/);
        for (const { range, message } of analyseFiles(firstOf(changed, { ...all, [changed]: text }))
          .findings) {
          assert.ok(
            range.end.line < lines.length && range.start.character <= lines[range.start.line]!.length,
          );
          assert.doesNotMatch(message, /NaN|Infinity|undefined|null/);
        }
      }),
      { numRuns: 250 },
    );
  });

  it('offers only fixes that leave the rest as it was and a text that can still be read', () => {
    const slips = ['cn', 'dwon', 'rdar', '5..0 yd left', '-3 deg left', '41', '= 3', '7 kg'];
    const edit = fc.record({
      at: fc.constantFrom(...[...lesson.matchAll(/\d+ \w+/g)].map(({ index }) => index)),
      put: fc.constantFrom(...slips),
    });
    fc.assert(
      fc.property(edit, ({ at, put }) => {
        const text = lesson.slice(0, at) + put + lesson.slice(at).replace(/^\d+ \w+/, '');
        const before = analyseFiles({ ...files, 'lesson.swing.yaml': text });
        for (const { code, range, fixes } of before.findings) {
          for (const fix of fixes) {
            assert.ok(fix.edits.every((one) => one.uri === folder + 'lesson.swing.yaml'));
            const fixed = applied(text, fix.edits);
            const after = analyseFiles({ ...files, 'lesson.swing.yaml': fixed });
            const here = after.findings.filter(
              (found) => found.code === code && found.range.start.line === range.start.line,
            );
            const were = before.findings.filter(
              (found) => found.code === code && found.range.start.line === range.start.line,
            );
            assert.ok(
              here.length < were.length,
              `${fix.title} left ${code} in ${fixed.split('\n')[range.start.line]}`,
            );
            assert.ok(!after.findings.some((found) => found.code === 'yaml-syntax'));
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});
