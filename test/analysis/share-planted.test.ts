// Whatever a coach wrote wherever in a practice, nothing of it is in a shared copy.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { copiesOf, files, written } from './shared-copies.ts';

describe('a shared copy', () => {
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
        const numeric = [
          iso,
          `${dayOfMonth}.${month}.${year}`,
          `${month}/${dayOfMonth}/${year}`,
          `${year}/${month}/${dayOfMonth}`,
          `${year}${month}${dayOfMonth}`,
          `${iso}T10:00:00Z`,
        ];
        // A day in words may stand in a note and nowhere else.
        const days = [...numeric, `${Number(dayOfMonth)} May ${year}`];
        const named = `${first} ${last}`;
        const all = `${named} ${secret} ${days.join(' ')}`;
        const copies = await copiesOf(
          planted({ first, last, secret, iso, named, dated: numeric.join(' '), all }),
          { days: -12_345 },
        );
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
  /** Words that are nobody's name: they may stand only where nothing is copied. */
  readonly secret: string;
  readonly iso: string;
  readonly named: string;
  /** Days in numbers, which may stand in titles. */
  readonly dated: string;
  readonly all: string;
}

/** A practice with all of this wherever a coach may write something. */
function planted({ first, last, secret, iso, named, dated, all }: Planted): ReadonlyMap<string, string> {
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
delivery: { path: { window: 1 deg left..1 deg right, source: "${named} ${dated}", note: "${all}" } }
`,
    [`${last}-${iso}.faults.yaml`]: `faults: 1
title: "${all}"
book:
  ${first}-hangs-back:
    title: as ${named} does since ${dated}
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
  delivery.face_of: { like: delivery.face, title: as ${named} sees it since ${dated}, meaning: "${all}", from: "${all}", to: "${all}" }
relations: { held: { says: delivery.face_of ≈ delivery.face ± 1 deg, because: "${all}" } }
`,
    [`${first}/${iso}-${last}.review.yaml`]: `review: 1\nof: ${iso}-${last}.swing.yaml\nthreads: [{ id: r1, about: delivery.path, author: ${named}, text: "${all}" }]\n`,
  };
  const path = (name: string): string => name.split('/').map(encodeURIComponent).join('/');
  return files(Object.fromEntries(Object.entries(texts).map(([name, text]) => [path(name), text])));
}
