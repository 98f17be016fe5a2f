// Shared copies: nobody is found in them, whatever was written where, and the numbers stay what they were.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { Practice } from '../../src/analysis/lessons.ts';
import { settle } from '../../src/analysis/settle.ts';
import { privateParts } from '../../src/analysis/share-parts.ts';
import { formatWords } from '../../src/analysis/format-words.ts';
import { samples } from '../samples.ts';
import { copiesOf, files, never, practiceOf, shareAll, written } from './shared-copies.ts';
import { findQuantity } from '../../src/registry/registry.ts';

const lesson = `swing: 1
student: ZOE.student.yaml
date: 2026-05-14
club: Zoë's hybrid
notes: she came late
faults_from: zoe.faults.yaml
shots: zoe-2026-05-14.csv
checkpoints:
  address: { stance_width: { value: 47.0 cm, by: tape, note: shoes off, seen: frame 12 of zoe.mov } }
delivery:
  attack: 3.5 deg down ± 1 deg # Zoë was tired
  path: 4 deg right by zoes-phone
  face: &zoe 1 deg right
faults: [{ fault: zoes-hang-back, note: as in April }]
unknown_key: she said so
plan:
  - { change: delivery.attack, to: 4 deg down, because: [zoes-hang-back], note: slowly }
`;
const zoe = files({
  'zoe/2026-05-14.swing.yaml': lesson,
  'zoe/ZOE.student.yaml': `student: 1
name: Zoë Ferreira-Lund
hand: left
born: 2011-02-03
bag: { "Zoë's hybrid": { kind: hybrid, loft: 22 deg, note: her mother's } }
injuries: [{ part: trail wrist, since: 2026-03, note: sore after mats }]
`,
  'zoe/zoe.faults.yaml': `faults: 1
title: The Ferreira book
book:
  zoes-hang-back:
    title: Hangs back as Zoë does
    explanation: first seen with Zoë
    evidence: delivery.attack > 0 deg
`,
  'zoe/zoe-2026-05-14.csv': 'carry [yd],Remark\n150,Zoë laughed\n152.50,second\n',
  'other.student.yaml': 'student: 1\nname: Ingrid\n',
  'swingwright.yaml': `swingwright: 1
methods: { zoes-phone: { meaning: held by Ingrid, uncertainty: { angle: 2 deg } } }
quantities:
  delivery.zoe_face: { like: delivery.face, title: Face as Ingrid sees it }
`,
});

describe('a shared copy', () => {
  it('of every sample holds no name, day, note, injury or comment of theirs', async () => {
    const all = [...samples.values()].join('\n');
    const told = written(await copiesOf(samples, { days: -1234 }));
    const names = [...all.matchAll(/^name: (.+)$/gm)].map(([, name]) => name!);
    const notes = [...all.matchAll(/note: ("[^"]+"|[^,}\n]+)/g)].map(([, note]) =>
      note!.replaceAll('"', '').trim(),
    );
    const days = [...all.matchAll(/\d{4}-\d{2}-\d{2}/g)].map(([day]) => day);
    const since = [...all.matchAll(/since: (\S+?),/g)].map(([, day]) => day!);
    const comments = [...all.matchAll(/(?:^|\s)# (.+)$/gm)].map(([, comment]) => comment!);
    assert.ok(
      names.length >= 4 &&
        notes.length >= 5 &&
        days.length >= 5 &&
        since.length >= 2 &&
        comments.length >= 10,
    );
    for (const words of [...names, ...notes, ...days, ...since, ...comments, 'Hollow Lane'])
      assert.ok(!told.toLowerCase().includes(words.toLowerCase()), words);
  });

  it('says the same numbers as the original', async () => {
    const copies = await copiesOf(samples);
    const texts = new Map(copies.map(({ path, text }) => [`share:/${path}`, text]));
    const [before, after] = [practiceOf(samples), practiceOf(texts)];
    const valuesOf = async (uri: string, practice: Practice) => {
      const { derivation } = await settle(uri, practice.files, practice.load, never);
      return [...(derivation?.values ?? [])]
        .filter(([id]) => findQuantity(id) !== undefined)
        .map(([id, { value, u, kind }]) => [id, value, u, kind] as const);
    };
    const originals = [...samples.keys()].filter((uri) => uri.endsWith('.swing.yaml')).sort();
    const shared = copies.filter(({ path }) => path.endsWith('.swing.yaml'));
    assert.equal(shared.length, originals.length);
    let compared = 0;
    for (const [i, { path }] of shared.entries()) {
      const [own, copy] = [await valuesOf(originals[i]!, before), await valuesOf(`share:/${path}`, after)];
      assert.deepEqual(
        copy.map(([id, , , kind]) => [id, kind]),
        own.map(([id, , , kind]) => [id, kind]),
        path,
      );
      for (const [j, [id, value, u]] of own.entries()) {
        assert.ok(Math.abs(copy[j]![1] - value) <= 1e-6 * Math.abs(value) + 1e-9, `${path} ${id}`);
        assert.ok(Math.abs((copy[j]![2] ?? 0) - (u ?? 0)) <= 1e-6 * Math.abs(u ?? 0) + 1e-9, `${path} ${id}`);
        compared += 1;
      }
    }
    assert.ok(compared > 100);
  });

  it('takes a name out of clubs, faults, methods, ids, titles, tables and the names of files', async () => {
    const copies = await copiesOf(zoe);
    const told = written(copies);
    assert.doesNotMatch(
      told,
      /zo[eë]|ferreira|lund|ingrid|2026-05|2011|sore|laughed|late|mother|frame 12|April|slowly|hang-back/iu,
    );
    const record = copies.find(({ path }) => path.endsWith('.swing.yaml'))!;
    assert.equal(record.path, 'player1/2026-02-03-club-1.swing.yaml');
    assert.match(record.text, /^club: club 1$/m);
    assert.match(record.text, /fault: fault-1/);
    assert.match(record.text, /because: \[ fault-1 \]/);
    assert.match(record.text, /path: 4 deg right by method-1/);
    assert.match(record.text, /value: 47\.0 cm|stance_width: \{ value: 47\.0 cm, by: tape \}/);
    assert.doesNotMatch(record.text, /unknown_key|&|#/);
    assert.match(told, /name: Player 1\n/);
    assert.match(told, /delivery\.own_1: \{ like: delivery\.face, title: Own 1 \}/);
    assert.match(told, /fault-1: \{ title: Fault 1,/);
    assert.match(told, /flight\.carry\n150 yd\n152\.5 yd\n/);
  });

  it('keeps the names that a coach gave where that is asked for, without those of people', async () => {
    const copies = await copiesOf(zoe, { keep: new Set(['names']) });
    const record = copies.find(({ path }) => path.endsWith('.swing.yaml'))!;
    assert.equal(record.path, 'player1/2026-02-03-player1-s-hybrid.swing.yaml');
    assert.match(record.text, /^club: player1's hybrid$/m);
    assert.match(record.text, /fault: player1s-hang-back/);
    assert.match(record.text, /path: 4 deg right by player1s-phone/);
    assert.match(written(copies), /delivery\.player1_face/);
    assert.doesNotMatch(written(copies), /zo[eë]|ferreira|lund|ingrid/iu);
  });

  it('is refused where the days would stay what they are', async () => {
    const result = await shareAll(zoe, { days: 0 });
    assert.ok(result.kind === 'refused');
    assert.match(result.reason, /expected a number of days other than 0/);
  });

  it('leads from file to file, and the copies are read without a complaint of their own', async () => {
    const copies = await copiesOf(zoe);
    const practice = practiceOf(new Map(copies.map(({ path, text }) => [`share:/${path}`, text])));
    const { path } = copies.find((copy) => copy.path.endsWith('.swing.yaml'))!;
    const { subject, findings } = await settle(`share:/${path}`, practice.files, practice.load, never);
    assert.equal(subject.student?.document.hand?.value, 'left');
    assert.equal(subject.club?.kind?.value, 'hybrid');
    assert.equal(subject.faultBooks.length, 1);
    assert.equal(subject.shots?.shots.length, 2);
    assert.deepEqual(
      findings.filter(({ severity }) => severity === 'error').map(({ code, message }) => [code, message]),
      [],
    );
  });

  it('keeps what is asked for, without names and days', async () => {
    const told = written(await copiesOf(zoe, { keep: new Set(privateParts) }));
    assert.match(told, /note: sore after mats/);
    assert.match(told, /since: 2025-12/);
    assert.match(told, /born: 2010-10-26/);
    assert.match(told, /explanation: first seen with player1/);
    assert.match(told, /notes: she came late/);
    assert.doesNotMatch(told, /zo[eë]|ferreira|ingrid/iu);
  });

  it('keeps how old a student was on the day', async () => {
    const told = written(await copiesOf(zoe, { keep: new Set(['birth']), days: 377 }));
    const [day, born] = ['date', 'born'].map((key) =>
      Date.parse(new RegExp(`${key}: (\\S+)`).exec(told)![1]!),
    );
    assert.equal(day! - born!, Date.parse('2026-05-14') - Date.parse('2011-02-03'));
  });

  it('counts what it left out', async () => {
    const result = await shareAll(zoe);
    assert.ok(result.kind === 'shared');
    assert.deepEqual(Object.fromEntries(result.leftOut), {
      comments: 1,
      birth: 1,
      health: 1,
      notes: 6,
      texts: 3,
      unread: 1,
    });
  });

  it('holds no name, whatever the name is and wherever it stands', async () => {
    const letters = fc.string({
      unit: fc.constantFrom(...'abcdefgijklmnoprstuvwzäéøñКат李'),
      minLength: 3,
      maxLength: 8,
    });
    await fc.assert(
      fc.asyncProperty(letters, letters, async (first, last) => {
        fc.pre(![first, last].some((part) => formatWords.has(part.toLowerCase())));
        fc.pre(!'playersomebodytitleunder'.includes(first) && !'playersomebodytitleunder'.includes(last));
        const name = `${first[0]!.toUpperCase()}${first.slice(1)} ${last}`;
        const told = written(
          await copiesOf(
            files({
              'a.swing.yaml': `swing: 1\nstudent: s.student.yaml\ndate: 2026-01-02\nclub: the ${first} club\nnotes: ${name}\nflight: { carry: 150 m } # ${name}\n`,
              's.student.yaml': `student: 1\nname: ${name}\nbag: { the ${first} club: { kind: iron, note: ${last} } }\n`,
              'swingwright.yaml': `swingwright: 1\nquantities: { delivery.other: { like: delivery.face, title: under ${last.toUpperCase()} } }\n`,
            }),
          ),
        );
        for (const part of [first, last])
          assert.doesNotMatch(told, new RegExp(`(?<![\\p{L}\\p{M}])${part}(?![\\p{L}\\p{M}])`, 'iu'));
      }),
      { numRuns: 60 },
    );
  });

  it('is refused where a file cannot be read to its end, or the records are of two practices', async () => {
    const broken = await shareAll(files({ 'a.swing.yaml': 'swing: 1\nclub: "open\n' }));
    assert.ok(broken.kind === 'refused');
    assert.match(broken.reason, /`a\.swing\.yaml` cannot be read to its end .*expected/s);
    const two = await shareAll(
      files({
        'a/l.swing.yaml': 'swing: 1\n',
        'b/l.swing.yaml': 'swing: 1\n',
        'a/swingwright.yaml': 'swingwright: 1\n',
        'b/swingwright.yaml': 'swingwright: 1\n',
      }),
    );
    assert.ok(two.kind === 'refused');
    assert.match(two.reason, /one practice/);
    assert.equal((await shareAll(new Map())).kind, 'refused');
  });
});
