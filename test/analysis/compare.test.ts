// What two records say other than each other: numbers against their uncertainties, verdicts, findings, plans; not how they are written.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { parse, stringify } from 'yaml';
import { analyse } from '../../src/analysis/analyse.ts';
import {
  compareRecords,
  compareWithTemplate,
  isRecord,
  type RecordAnalysis,
} from '../../src/analysis/compare.ts';
import type { Comparison, QuantityChange } from '../../src/analysis/comparison.ts';
import { changeWords, figureWords, summaryOf } from '../../src/analysis/comparison-words.ts';
import { differenceOf } from '../../src/analysis/compare-numbers.ts';
import { analysed, student } from '../language/analysed.ts';
import { practice, samples, snapshotWith, yamlSamples } from '../samples.ts';

const files = { 'mira.student.yaml': student };
const head = 'swing: 1\nstudent: mira.student.yaml\nclub: hybrid\n';

function record(text: string): RecordAnalysis {
  const analysis = analysed(head + text, { files });
  assert.ok(isRecord(analysis));
  return analysis;
}

function sample(path: string, text = samples.get(practice + path)!): RecordAnalysis {
  const analysis = analyse(practice + path, snapshotWith({ [practice + path]: text }));
  assert.ok(isRecord(analysis));
  return analysis;
}

function compared(first: string, second: string): Comparison {
  return compareRecords(record(first), record(second));
}

const shortOf = ({ quantity, state, difference: { size } }: QuantityChange): string =>
  `${quantity.id} ${state} ${size}`;
const swings = yamlSamples.flatMap(([path]) => (path.endsWith('.swing.yaml') ? [path] : []));

describe('a comparison of two records', () => {
  // JCGM 100:2008 (GUM), 5.1.2, eq. 10 for y = x₂ − x₁: u² = u₁² + u₂²; k = 1.96 for 95 % of a normal distribution (its table G.1).
  it('calls a difference larger from 1.96 of its standard uncertainty on', () => {
    const figure = (value: number, u: number) => ({ value, u });
    assert.deepEqual(differenceOf(figure(10, 3), figure(20, 4)), { value: 10, u: 5, size: 'larger' });
    assert.equal(differenceOf(figure(10, 3), figure(10 + 1.96 * 5 - 1e-9, 4)).size, 'within');
    assert.equal(differenceOf(figure(10, 3), figure(10 + 1.96 * 5 + 1e-9, 4)).size, 'larger');
    assert.equal(differenceOf({ value: 1, u: null }, figure(2, 1)).size, 'not known');
    assert.equal(differenceOf(undefined, figure(2, 1)).size, 'not known');
  });

  // Two arrows at a right angle, 3 and 4 long, are 5 apart (Euclid, Elements I.47).
  it('holds winds from different sides against one another as arrows', () => {
    const wind = (words: string) => `conditions: { wind: ${words} ± 0.5 m/s }\n`;
    const [change] = compared(wind('3 m/s from left'), wind('4 m/s from ahead')).entries;
    assert.ok(Math.abs(change!.difference.value! - 5) < 1e-9);
    assert.equal(change!.difference.size, 'larger');
    assert.equal(figureWords(change!.quantity, change!.before), '3.0 m/s ± 0.5 m/s from left');
    assert.equal(changeWords(change!.quantity, change!.difference), '5.0 m/s apart ± 0.7 m/s');
  });

  it('tells entries that are new, gone or changed, and what else of them changed', () => {
    const { entries, sameEntries } = compared(
      'delivery: { path: 5 deg right ± 1 deg, face: 1 deg right by radar, attack: 3 deg down }\nstrike: { height: 2 mm low }\n',
      'delivery: { path: 1 deg right ± 1 deg, face: 1 deg right by camera, attack: 3 deg down }\nground: { divot: { depth: 5 mm } }\n',
    );
    assert.deepEqual(entries.map(shortOf), [
      'delivery.path changed larger',
      'delivery.face changed within',
      'ground.divot.depth new not known',
      'strike.height gone within',
    ]);
    assert.deepEqual(
      entries.find(({ quantity }) => quantity.id === 'delivery.face')!.aspects.includes('method'),
      true,
    );
    // What a record no longer enters may still be computed: then the two are told apart by kind.
    assert.equal(entries.at(-1)!.after?.kind, 'expected');
    // The attack, and what the student's file says.
    assert.ok(sameEntries >= 5);
  });

  it('names three of the words that a signature stands under, and counts the others', () => {
    const told = (note: string): string =>
      `faults: [${['a', 'b', 'c', 'd', 'e'].map((fault) => `{ fault: ${fault}, note: ${note} }`).join(', ')}]\n`;
    const [words = ''] = summaryOf(compared(told('x'), told('y'))).slice(-1);
    assert.match(words, /(?:[^,]+ differs, ){3}and 2 more\.$/);
  });

  it('takes the same number in another unit, form or order for the same', () => {
    const { isSame } = compared(
      'delivery: { path: 5 deg right, club_speed: 41 m/s }\ncheckpoints: { address: { stance_width: 40 cm by tape } }\n',
      '# as before\ncheckpoints:\n  address:\n    stance_width: { value: 400 mm, by: tape }\ndelivery:\n  club_speed: 147.6 km/h\n  path: 5.0 ° right\n',
    );
    assert.equal(isSame, true);
  });

  it('finds what was found anew and what no longer is, wherever the key stands', () => {
    const { findings } = compared(
      'delivery: { attack: 30 deg down }\nflight: { carry: 400 m }\n',
      'flight: { carry: 500 m }\ncheckpoints: { address: { stance_width: 3 deg } }\n',
    );
    const said = findings.map(({ state, finding: { code } }) => `${state} ${code}`);
    assert.ok(said.includes('new wrong-dimension'), said.join());
    assert.ok(
      said.some((one) => one.startsWith('gone outside-')),
      said.join(),
    );
    assert.ok(
      !findings.some(({ finding }) => finding.message.includes('500 m')),
      'the same finding with another number',
    );
  });

  it('tells of faults what the numbers of both records say', () => {
    const [first, second] = ['03', '24'].map((day) => sample(`runa/2026-08-${day}-six-iron.swing.yaml`));
    const { faults, misses, goals, plan, held, entries } = compareRecords(first!, second!);
    assert.deepEqual(
      faults.map(({ fault, state, before, after }) => [fault, state, before?.verdict, after?.verdict]),
      [
        ['face-left-open', 'changed', 'supported', 'cannot tell'],
        ['trail-side-loaded', 'gone', 'supported', 'contradicted'],
      ],
    );
    assert.deepEqual(misses, [{ miss: 'heavy', state: 'gone' }]);
    assert.ok(goals.length === 3 && goals.every(({ state }) => state === 'same'));
    assert.equal(plan.length, 2);
    assert.equal(held?.plan, 'first');
    assert.deepEqual(
      held.outcome.predictions.flatMap(({ state, entry }) => (state === 'outside' ? [entry.id] : [])),
      ['flight.curve'],
    );
    // 49 cm and 42 cm by tape, 0.7 cm each by the table of methods: 7.0 cm of √2 · 0.7 cm.
    const width = entries.find(({ quantity }) => quantity.id === 'checkpoints.address.stance_width')!;
    assert.ok(Math.abs(width.difference.value! + 0.07) < 1e-12);
    assert.ok(Math.abs(width.difference.u! - Math.SQRT2 * width.before!.u!) < 1e-12);
  });

  it('holds no plan of another student or club, nor of the same day', () => {
    const plan =
      'date: 2026-05-01\nplan: [{ change: delivery.path, to: 1 deg right }]\ndelivery: { path: 4 deg right }\n';
    const other = 'date: 2026-05-08\ndelivery: { path: 1 deg right }\n';
    assert.ok(compared(plan, other).held);
    assert.equal(compared(plan, other.replace('08', '01')).held, undefined);
    const driver = analysed(`swing: 1\nstudent: mira.student.yaml\nclub: driver\n${other}`, { files });
    assert.ok(isRecord(driver));
    assert.equal(compareRecords(record(plan), driver).held, undefined);
  });

  it('compares means of shots with the uncertainty of a mean of few', () => {
    const shots = (carries: readonly number[]): string =>
      `shots: [${carries.map((carry) => `{ carry: ${carry} m }`).join(', ')}]\n`;
    const { shots: changes } = compared(shots([150, 152, 148, 150, 150]), shots([160, 162, 158, 160, 160]));
    const carry = changes.find(({ quantity }) => quantity.id === 'flight.carry')!;
    assert.ok(Math.abs(carry.difference.value! - 10) < 1e-9);
    // s = √2, n = 5: u = √(4/2) · √2/√5 = 0.894 m of each mean (JCGM 101:2008, 6.4.9.4).
    assert.ok(Math.abs(carry.difference.u! - Math.SQRT2 * Math.sqrt(2) * Math.sqrt(2 / 5)) < 1e-9);
    assert.equal(carry.difference.size, 'larger');
  });

  it('finds no change between a record and itself', () => {
    for (const path of swings) {
      const one = compareRecords(
        sample(path),
        sample(path, `# read again\n${samples.get(practice + path)!}`),
      );
      assert.equal(one.isSame, true, `${path}: ${summaryOf(one).join(' ')}`);
    }
  });

  it('says the opposite when the two change places', () => {
    const mirrored = { new: 'gone', gone: 'new', changed: 'changed' } as const;
    fc.assert(
      fc.property(fc.constantFrom(...swings), fc.constantFrom(...swings), (one, other) => {
        const [there, back] = [
          compareRecords(sample(one), sample(other)),
          compareRecords(sample(other), sample(one)),
        ];
        assert.deepEqual(
          there.entries.map(({ quantity: { id }, state, difference: { value, size, isTurned } }) => [
            id,
            mirrored[state],
            isTurned ? value : negated(value),
            size,
          ]),
          back.entries.map(({ quantity: { id }, state, difference: { value, size } }) => [
            id,
            state,
            value,
            size,
          ]),
        );
        assert.deepEqual(
          there.computed.map(({ quantity: { id }, state }) => [id, mirrored[state]]),
          back.computed.map(({ quantity: { id }, state }) => [id, state]),
        );
        const found = ({ findings }: Comparison, state: string): readonly string[] =>
          findings
            .filter((change) => change.state === state)
            .map(({ finding }) => finding.message)
            .sort();
        assert.deepEqual(found(there, 'new'), found(back, 'gone'));
        assert.deepEqual(
          there.faults.map(({ fault, state }) => [fault, mirrored[state]]),
          back.faults.map(({ fault, state }) => [fault, state]),
        );
        assert.equal(there.isSame, back.isSame);
      }),
      { numRuns: 12 },
    );
  });

  it('takes moved keys, other brackets and lost comments for no change', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...swings),
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        fc.boolean(),
        (path, chances, flow) => {
          // A comment that accepts a finding is no lost comment like others.
          const text = samples.get(practice + path)!.replace(/ # accept\[.*/g, '');
          const before = sample(path, text);
          if (before.findings.some(({ severity, code }) => severity === 'error' || code === 'unknown-key'))
            return;
          const moved = stringify(shuffled(parse(text, { schema: 'failsafe' }), chances), {
            collectionStyle: flow ? 'flow' : 'block',
            defaultKeyType: 'PLAIN',
            schema: 'failsafe',
            lineWidth: 0,
          });
          const change = compareRecords(before, sample(path, moved));
          assert.equal(
            change.isSame,
            true,
            `${path}: ${summaryOf(change).join(' ')}\n${JSON.stringify(change.findings, null, 1)}\n${moved}`,
          );
        },
      ),
      { numRuns: 20 },
    );
  });
});

describe('a record against a template', () => {
  it('says of each window where the number of the record stands', () => {
    const template = analysed(
      'template: 1\ntitle: House\nclubs: [hybrid]\ndelivery:\n  path: 0..2 deg right\n  attack: { window: 2..4 deg down, strict: firm }\n  face: -1..1 deg\n',
      {
        name: 'a.template.yaml',
      },
    );
    const found = compareWithTemplate(
      record('delivery: { path: 5 deg right ± 1 deg, attack: 3 deg down ± 1 deg }\n'),
      template,
    )!;
    assert.deepEqual(
      found.rows.map(({ window, state, outsideBy }) => [
        window.quantity.id,
        state,
        outsideBy === undefined ? undefined : Math.round(outsideBy),
      ]),
      [
        ['delivery.path', 'outside', 3],
        ['delivery.attack', 'inside', 0],
        ['delivery.face', 'not known', undefined],
      ],
    );
    assert.equal(found.isForOtherClub, false);
    assert.equal(compareWithTemplate(record(''), record('')), undefined);
  });
});

function negated(value: number | undefined): number | undefined {
  return value === undefined ? undefined : 0 - value;
}

/** Keys of maps in another order; lists stay as they are, since the order of readings and changes may say something to a reader. */
function shuffled(value: unknown, chances: Iterator<number>): unknown {
  if (Array.isArray(value)) return value.map((one) => shuffled(one, chances));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .map(([key, one]) => [chances.next().value as number, key, one] as const)
      .sort(([a], [b]) => a - b)
      .map(([, key, one]) => [key, shuffled(one, chances)]),
  );
}
