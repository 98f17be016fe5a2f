// Whatever a coach wrote wherever in a practice, nothing of it is in a shared copy.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { settle } from '../../src/analysis/settle.ts';
import { kindOf } from '../../src/record/kind.ts';
import { copiesOf, files, practiceOf, written } from './shared-copies.ts';

describe('a shared copy', () => {
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

  it('holds nothing that was planted in comments, keys, names of files, references, notes and days, however written', async () => {
    const word = fc.string({
      unit: fc.constantFrom(...'bdgklmnprstvzaeiouñøЖ李'),
      minLength: 7,
      maxLength: 12,
    });
    const day = fc.date({ min: new Date('1990-01-01'), max: new Date('2025-12-28'), noInvalidDate: true });
    await fc.assert(
      fc.asyncProperty(word, word, word, day, async (first, last, secret, date) => {
        fc.pre(new Set([first, last, secret]).size === 3);
        const [iso = ''] = date.toISOString().split('T');
        const [year = '', month = '', dayOfMonth = ''] = iso.split('-');
        const days = [
          iso,
          `${dayOfMonth}.${month}.${year}`,
          `${month}/${dayOfMonth}/${year}`,
          `${year}/${month}/${dayOfMonth}`,
          `${year}${month}${dayOfMonth}`,
          `${iso}T10:00:00Z`,
          `${Number(dayOfMonth)} May ${year}`,
        ];
        const named = `${first} ${last}`;
        const all = `${named} ${secret} ${days.join(' ')}`;
        const copies = await copiesOf(planted({ first, last, secret, iso, named, all }), { days: -12_345 });
        const told = written(copies);
        assert.ok(copies.length === 6, told);
        assert.match(told, /carry: 150 m/);
        for (const part of [first, last, secret, ...days])
          assert.ok(!told.normalize('NFC').toLowerCase().includes(part.toLowerCase()), `${part} in\n${told}`);
      }),
      { numRuns: 40 },
    );
  });
});

interface Planted {
  readonly first: string;
  readonly last: string;
  /** Words that are nobody's name. */
  readonly secret: string;
  readonly iso: string;
  readonly named: string;
  readonly all: string;
}

/** A practice with all of this wherever a coach may write something. */
function planted({ first, last, secret, iso, named, all }: Planted): ReadonlyMap<string, string> {
  const texts = {
    [`${first}/${iso}-${last}.swing.yaml`]: `# ${all}
swing: 1
student: ../${last}/${first}-${iso}.student.yaml # ${all}
date: ${iso}
club: ${first}'s hybrid
template: ../${first}.template.yaml
faults_from: ../${last}-${iso}.faults.yaml
shots: "${first} ${iso}.csv"
notes: |
  ${all}
  # ${all}
${secret}: ${all}
"${all}": { ${secret}: 1 }
checkpoints:
  address: { stance_width: { value: 47 cm, note: "${all}", seen: "${all}" } }
  ${secret}: { head: 3 cm ahead }
delivery:
  path: 2 deg right # accept[unusual]: ${all}
  attack: ${all}
  ${secret}: 3 deg # ${all}
flight: { carry: 150 m } # ${all}
faults: [{ fault: ${first}-hangs-back, note: "${all}", ${secret}: "${all}" }]
misses: [{ miss: slice, note: "${all}" }]
goals: [{ carry: 160 m, note: "${all}" }]
plan: [{ change: delivery.attack, to: 4 deg down, because: [${first}-hangs-back], note: "${all}", feel: "${all}" }]
# ${all}
`,
    [`${last}/${first}-${iso}.student.yaml`]: `student: 1
name: ${named} # ${all}
born: ${iso}
hand: left
bag: { "${first}'s hybrid": { kind: hybrid, loft: 22 deg, note: "${all}" } }
injuries: [{ part: lead knee, since: ${iso}, note: "${all}" }]
notes: "${all}"
${secret}: "${all}"
`,
    [`${first}.template.yaml`]: `template: 1
title: "${all}"
clubs: [hybrid]
notes: "${all}"
delivery: { path: { window: 1 deg left..1 deg right, source: "${all}", note: "${all}" } }
`,
    [`${last}-${iso}.faults.yaml`]: `faults: 1
title: "${all}"
book:
  ${first}-hangs-back:
    title: "${all}"
    explanation: "${all}"
    evidence: delivery.attack > 0 deg # ${all}
    drills: ["${all}"]
    notes: "${all}"
    ${secret}: "${all}"
`,
    [`${first}/${first} ${iso}.csv`]: `carry [m],${secret},"${all}"\n150,"${all}",${iso}\n152,${secret},"${first}"\n`,
    'swingwright.yaml': `# ${all}
swingwright: 1
notes: "${all}"
shots: { columns: { ${secret}: ignore, "${all}": ignore } }
methods: { ${first}-phone: { meaning: "${all}", uncertainty: { angle: 2 deg } } }
quantities:
  delivery.face_of: { like: delivery.face, title: "${all}", meaning: "${all}", from: "${all}", to: "${all}" }
relations: { held: { says: delivery.face_of ≈ delivery.face ± 1 deg, because: "${all}" } }
`,
    [`${first}/${iso}-${last}.review.yaml`]: `review: 1\nof: ${iso}-${last}.swing.yaml\nthreads: [{ id: r1, about: delivery.path, author: ${named}, text: "${all}" }]\n`,
  };
  const path = (name: string): string => name.split('/').map(encodeURIComponent).join('/');
  return files(Object.fromEntries(Object.entries(texts).map(([name, text]) => [path(name), text])));
}

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
