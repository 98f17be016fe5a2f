// Shared copies: nobody is found in them, whatever was written where, and the numbers stay what they were.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import type { Practice } from '../../src/analysis/lessons.ts';
import { settle } from '../../src/analysis/settle.ts';
import { privateParts, treatments } from '../../src/analysis/share-parts.ts';
import { formatWords } from '../../src/analysis/format-words.ts';
import { kindOf } from '../../src/record/kind.ts';
import { methods } from '../../src/registry/generated.ts';
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

/** Words that nobody else writes at each place of each kind of file, with days and numbers in words among them. */
function plantedPractice(): ReadonlyMap<string, string> {
  return files({
    'qzxdir/2019-05-14-qzxfile.swing.yaml': `# qzxa
swing: 1
student: qzxstem.student.yaml
date: 2019-05-14
club: Qzxclub 60th birthday 14 May
template: qzxt.template.yaml
faults_from: qzxb.faults.yaml
shots: qzxs-14-May.csv
qzxkey: qzxb
checkpoints:
  address: { stance_width: { value: 41 cm, by: tape, note: qzxc, seen: qzxd }, ball_position: 9 cm behind by qzxcam }
  impact: { shaft_lean: 7 deg forward by qzxe, hands: qzxf 8 cm, qzxg: 3 cm }
  qzxh: { hands: 8 cm }
delivery:
  club_speed: 33.2 m/s by radar qzxi
  attack: 15 deg down # accept[outside-practice]: qzxj
  face: [&qzxk 1 deg right by radar, ~2 deg right by eye, qzxl]
  path: { value: qzxm, by: qzxn }
  qzxwand: 2 deg qzxward
flight: { carry: qzxo, start: 2 deg rigth qzxp }
faults:
  - { fault: qzxdrop, at: impact, note: qzxq }
  - { fault: qzxr, at: qzxs }
  - qzxt
misses: [heavy, { miss: slice, note: qzxu }, qzxv, heavy as qzxw saw 14 May]
goals: [{ shape: draw, carry: 130 m, club: qzxx, note: qzxy }, { shape: qzxz, contact: qzxaa, proof: qzxab }]
plan:
  - { change: checkpoints.address.stance_width, to: 41 cm, because: [qzxdrop, qzxac], proof: qzxad > 3, note: qzxae, feel: qzxaf, drill: qzxag }
  - { change: checkpoints.address.stance_width, to: as qzxah did on 14 May }
  - { change: qzxai, to: 14.5.2019 qzxaj, when: qzxak }
predicted: [{ of: delivery.path, value: 1 deg right, by: qzxal }, { of: qzxam, value: 3 deg }]
notes: |
  qzxan on 14 May
`,
    'qzxdir/qzxstem.student.yaml': `student: 1
name: Qzxann Qzxlee
hand: qzxao
stature: 168 cm by qzxap
born: 2019-02-03
mass: qzxaq
sex: qzxar
bag:
  driver (gift of Qzxas 14 May): { kind: driver, loft: 10 deg by qzxcam, lie: qzxat, note: qzxau }
  qzxav: { kind: qzxaw, qzxax: qzxay }
injuries: [{ part: qzxaz, since: 14 May, note: qzxba }]
goals: [{ shape: draw, club: qzxbb, note: qzxbc }]
notes: qzxbd
`,
    'qzxdir/qzxt.template.yaml': `template: 1
title: qzxbe
clubs: [iron, qzxbf]
delivery:
  attack: { window: 2..6 deg down, strict: firm, source: as agreed with Qzxbg on 13.5.2019 }
  path: { window: qzxbh, strict: qzxbi, source: qzxbj, note: qzxbk }
`,
    'qzxdir/qzxb.faults.yaml': `faults: 1
title: qzxbl
book:
  qzxdrop:
    title: Seen first by Qzxbm on 12.5.2019
    explanation: qzxbn
    evidence: [checkpoints.impact.shaft_lean < 0 deg, { expression: delivery.qzxwand > 3 deg, weight: 2, note: qzxbo }, qzxbp > 3]
    at: [impact, qzxbq]
    tends_to: [{ effect: delivery.low_point.ahead, direction: behind, size: 1 cm, note: qzxbr }, { effect: qzxbs, direction: qzxbt, size: qzxbu }]
    changes: [{ change: checkpoints.address.stance_width, by: qzxbv, when: qzxbw, feel: qzxbx }]
    cautions: [lead knee, qzxby]
    drills: [qzxbz]
`,
    'qzxdir/qzxs-14-May.csv': 'carry [m],Qzxcol,note\n120,qzxca,qzxcb\n121 by qzxcam,1,14 May\nqzxcc,2,x\n',
    'swingwright.yaml': `swingwright: 1
language: qzxcd
severities: { qzxce: off, qzxfar: hint, outside-practice: qzxcf }
methods:
  qzxcam: { meaning: qzxcg, uncertainty: { length: 2 cm, angle: 3 deg } }
  cam lent by Qzxch 14 May: { uncertainty: { angle: 1 deg } }
shots: { by: radar, columns: { Qzxcol: { quantity: flight.finish, unit: m } } }
quantities:
  delivery.qzxwand: { title: Wand of qzxci, meaning: qzxcj, from: qzxck, to: qzxcl, unit: deg, bounds: -30..30 deg, practice: -9..9 deg, directions: { qzxward: positive, qzxcm: negative }, uncertainty: 1 deg }
  delivery.qzxbroken: { like: qzxcn, unit: qzxco }
show: { length: yd, qzxcp: qzxcq }
checks:
  qzxfar: { when: delivery.qzxwand > 3 deg, message: "Qzxcr says {delivery.qzxwand} on 14 May.", severity: information }
relations:
  qzxrel: { says: delivery.qzxwand ≈ delivery.face ± 1 deg, because: qzxcs said }
notes: qzxct
`,
  });
}

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

  it('holds no word of a coach, wherever one can stand, and is found fault with as before', async () => {
    const planted = plantedPractice();
    const words = [...[...planted.values()].join('\n').matchAll(/[Qq]zx[a-z]+|1[23]\.5\.2019|14 May/g)].map(
      ([word]) => word,
    );
    assert.ok(new Set(words).size > 50);
    const copies = await copiesOf(planted, { days: 40 });
    assert.doesNotMatch(written(copies), /qzx|2019-0[25]|\.2019|may/iu);
    const codesOf = async (texts: ReadonlyMap<string, string>): Promise<readonly string[]> => {
      const found: string[] = [];
      for (const uri of texts.keys()) {
        if (kindOf(uri) === undefined) continue;
        const { files, load, signal } = practiceOf(texts);
        const { findings } = await settle(uri, files, load, signal);
        found.push(...findings.map(({ code }) => code));
      }
      return [...new Set(found)].sort();
    };
    const after = await codesOf(new Map(copies.map(({ path, text }) => [`share:/${path}`, text])));
    const before = await codesOf(planted);
    // What needs a value that was left out, and what a comment accepted.
    const hanging = ['missing-key', 'no-value-yet', 'outside-practice'];
    assert.deepEqual(
      after.filter((code) => ![...before, ...hanging].includes(code)),
      [],
    );
    for (const code of ['unknown-fault', 'unknown-reason', 'unknown-club', 'unknown-code'])
      assert.deepEqual([code, before.includes(code), after.includes(code)], [code, true, true]);
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

describe('the table of what is private', () => {
  /** Values under these keys are measurements, words that the format checks, ids or expressions. */
  const harmless: Readonly<Record<string, readonly string[]>> = {
    swing: [
      'club',
      'shape',
      'fault',
      'at',
      'misses',
      'miss',
      'contact',
      'change',
      'to',
      'because',
      'proof',
      'by',
    ],
    student: ['hand', 'kind', 'shape', 'contact', 'club', 'part', 'side', 'body_table', 'by'],
    template: ['clubs', 'strict', 'window'],
    faults: [
      'at',
      'evidence',
      'expression',
      'effect',
      'direction',
      'size',
      'of',
      'change',
      'to',
      'by',
      'when',
      'cautions',
    ],
    workspace: [
      'like',
      'unit',
      'bounds',
      'practice',
      'otherwise',
      'at',
      'is',
      'says',
      'when',
      'severity',
      'by',
      'drag',
      'lift',
      'ball_speed',
      'uncertainty',
      'show',
      'severities',
      'quantity',
      'directions',
    ],
  };

  for (const [kind, table] of Object.entries(treatments))
    it(`knows every key of ${kind} files that may hold words`, () => {
      const schema = JSON.parse(
        readFileSync(join(import.meta.dirname, `../../schemas/${kind}.schema.json`), 'utf8'),
      ) as Schema;
      const keys = wordKeys(schema, schema, '', new Set());
      const figures = ['value', 'give_or_take', ...methods.map(({ name }) => name)];
      const unknown = [...keys].filter(
        (key) =>
          !key.startsWith('(') &&
          !figures.includes(key) &&
          !Object.hasOwn(table, key) &&
          !Object.hasOwn(table, `/${key}`) &&
          !harmless[kind]!.includes(key),
      );
      assert.deepEqual(unknown, []);
      assert.ok(keys.size > 3);
    });
});

interface Schema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly allOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: Schema | boolean;
  readonly items?: Schema;
  readonly definitions?: Readonly<Record<string, Schema>>;
}

/** Keys whose value may be words; those of measurements (by their definition) and of tables by method or dimension aside. */
function wordKeys(node: Schema, root: Schema, key: string, found: Set<string>): Set<string> {
  const name = node.$ref?.split('/').at(-1);
  const isMeasure = name !== undefined && /^(?:measure|target|window|written-.*)$/.test(name);
  if (isMeasure) {
    // The long form holds words of its own; it is looked at once.
    const seen = `(${name})`;
    if (!found.has(seen)) {
      found.add(seen);
      wordKeys(root.definitions![name]!, root, '', found);
    }
    return found;
  }
  for (const part of node.allOf ?? []) wordKeys(part, root, key, found);
  if ([node.type].flat().includes('string') && key !== '') found.add(key);
  for (const [below, schema] of Object.entries(node.properties ?? {})) wordKeys(schema, root, below, found);
  if (typeof node.additionalProperties === 'object') wordKeys(node.additionalProperties, root, key, found);
  if (node.items) wordKeys(node.items, root, key, found);
  return found;
}
