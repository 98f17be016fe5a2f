import assert from 'node:assert/strict';
import type { Span } from '../../src/measure/measure.ts';
import type { Entry, SwingRecord } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { registryWith } from '../../src/registry/registry.ts';
import { assertMarked } from './marked.ts';

const head = 'swing: 1\nstudent: a\ndate: 2026-05-14\nclub: b\n';

function entryOf(source: string, id: string): { readonly entry: Entry; readonly text: string } {
  const document = assertMarked('swing', head + source) as SwingRecord;
  const entry = document.entries.get(id);
  assert.ok(entry, [...document.entries.keys()].join(' '));
  return { entry, text: document.text };
}

describe('an entry', () => {
  it('has the full id of its quantity', () => {
    const document = assertMarked(
      'swing',
      `${head}conditions: { wind: 3 m/s from left }
checkpoints:
  impact: { shaft_lean: 9 deg forward }
delivery:
  low_point: { ahead: 3 cm ahead }
  arc: { radius: 1.4 m }
ground: { divot: { starts: 2 cm ahead } }
`,
    ) as SwingRecord;
    assert.deepEqual(
      [...document.entries.keys()],
      [
        'conditions.wind',
        'checkpoints.impact.shaft_lean',
        'delivery.low_point.ahead',
        'delivery.arc.radius',
        'ground.divot.starts',
      ],
    );
  });

  it('in short form has every part at its place', () => {
    const { entry, text } = entryOf('flight:\n  start: 2 deg right ± 1 deg by video # x\n', 'flight.start');
    const [reading] = entry.readings;
    assert.ok(reading);
    const spans = Object.entries(reading.measure.spans) as [string, Span][];
    assert.deepEqual(
      Object.fromEntries(spans.map(([part, { start, end }]) => [part, text.slice(start, end)])),
      {
        number: '2',
        unit: 'deg',
        direction: 'right',
        stated: '1 deg',
        method: 'video',
      },
    );
    assert.ok(Math.abs(reading.measure.value - (2 * Math.PI) / 180) < 1e-12);
    assert.equal(text.slice(entry.keySpan.start, entry.keySpan.end), 'start');
    assert.equal(text.slice(entry.valueSpan.start, entry.valueSpan.end), '2 deg right ± 1 deg by video');
  });

  it('in quotes has its parts at their places', () => {
    for (const mark of ['"', "'"]) {
      const { entry, text } = entryOf(`flight:\n  carry: ${mark}171 m by radar${mark}\n`, 'flight.carry');
      const { number, method } = entry.readings[0]!.measure.spans;
      assert.equal(text.slice(number.start, number.end), '171');
      assert.equal(text.slice(method!.start, method!.end), 'radar');
    }
  });

  it('points at the whole of a value that escapes or folding part from what it says', () => {
    for (const written of ['"171\\x20m"', '"171\n    m"', '171\n    m', '>\n    171 m']) {
      const document = parseDocument('swing', `${head}flight:\n  carry: ${written}\n`) as SwingRecord;
      assert.deepEqual(document.problems, []);
      const entry = document.entries.get('flight.carry')!;
      assert.equal(entry.readings[0]?.measure.value, 171);
      assert.deepEqual(entry.readings[0].measure.spans.number, entry.valueSpan);
    }
  });

  it('has a problem at the very characters, quoted or not', () => {
    assertMarked('swing', `${head}flight:\n  carry: 171 deg by radar\n             ^^^ wrong-dimension\n`);
    assertMarked(
      'swing',
      `${head}flight:\n  carry: "171 m by radra"\n                   ^^^^^ unknown-method\n`,
    );
    assertMarked('swing', `${head}flight: { curve: -4 m left }\n                 ^^ direction-with-sign\n`);
    assertMarked(
      'swing',
      `${head}flight:\n  carry: "171 \\u0064eg"\n         ^^^^^^^^^^^^^^ wrong-dimension\n`,
    );
  });

  it('without a unit takes that of its quantity, and says which at the number', () => {
    const { entry } = entryOf(
      'delivery:\n  attack: 3.5 down\n          ^^^ bare-number\n',
      'delivery.attack',
    );
    assert.ok(Math.abs(entry.readings[0]!.measure.value + (3.5 * Math.PI) / 180) < 1e-12);
    const { problems } = parseDocument('swing', `${head}checkpoints:\n  address:\n    stance_width: 47\n`);
    assert.match(problems[0]?.expected ?? '', /`cm`/);
  });

  it('that is a plain ratio needs no unit', () => {
    entryOf('flight:\n  speed_ratio: 1.42\n', 'flight.speed_ratio');
  });

  it('that YAML takes for a number keeps its digits', () => {
    const { entry, text } = entryOf('flight:\n  carry: 170.0\n         ^^^^^ bare-number\n', 'flight.carry');
    assert.equal(entry.readings[0]?.measure.value, 170);
    assert.equal(text.slice(entry.valueSpan.start, entry.valueSpan.end), '170.0');
  });

  it('cannot be hexadecimal, octal, infinite or no number', () => {
    for (const odd of ['0x1F', '0o17', '.inf', '-.INF', '.nan']) {
      const marks = `         ${'^'.repeat(odd.length)} unreadable-measure`;
      assertMarked('swing', `${head}flight:\n  carry: ${odd}\n${marks}\n`);
      const marksInside = `                  ${'^'.repeat(odd.length)} unreadable-measure`;
      assertMarked('swing', `${head}flight:\n  carry: { value: ${odd} }\n${marksInside}\n`);
    }
  });

  it('too large for a number is a problem and no reading', () => {
    const { entry } = entryOf(
      'flight:\n  carry: 1e400\n         ^^^^^ number-out-of-range\n',
      'flight.carry',
    );
    assert.deepEqual(entry.readings, []);
  });

  it('cannot be true, or a list in a list', () => {
    assertMarked('swing', `${head}flight:\n  carry: true\n         ^^^^ wrong-shape\n`);
    assertMarked('swing', `${head}flight:\n  carry: [171 m, [1 m]]\n                 ^^^^^ wrong-shape\n`);
  });

  it('is no window', () => {
    assertMarked(
      'swing',
      `${head}flight:\n  carry: 160..170 m\n         ^^^^^^^^ window-not-allowed\n`.replace(
        '^^^^^^^^ ',
        '^^^^^^^^^^ ',
      ),
    );
  });
});

describe('the long form', () => {
  it('states value, uncertainty and method apart', () => {
    const { entry, text } = entryOf(
      `checkpoints:
  impact:
    lead_pressure:
      value: 66 %
      give_or_take: 4 %
      by: pressure mat
      note: second mat
      seen: frame 212
      doubtful: true
`,
      'checkpoints.impact.lead_pressure',
    );
    const [reading] = entry.readings;
    assert.ok(reading);
    assert.ok(Math.abs(reading.measure.value - 0.66) < 1e-12);
    assert.ok(Math.abs((reading.measure.stated ?? 0) - 0.04) < 1e-12);
    assert.equal(reading.measure.method, 'pressure mat');
    assert.equal(reading.note, 'second mat');
    assert.equal(reading.seen, 'frame 212');
    assert.equal(reading.doubtful, true);
    assert.equal(reading.form, 'long');
    const { number, stated, method } = reading.measure.spans;
    assert.equal(text.slice(number.start, number.end), '66');
    assert.equal(text.slice(stated!.start, stated!.end), '4 %');
    assert.equal(text.slice(method!.start, method!.end), 'pressure mat');
  });

  it('points at the key that is wrong', () => {
    assertMarked(
      'swing',
      `${head}flight:
  carry: { value: 171 m, give_or_take: 3 deg, by: radra }
                                         ^^^ wrong-dimension
                                                  ^^^^^ unknown-method
`,
    );
    assertMarked(
      'swing',
      `${head}flight:\n  carry: { valeu: 171 m }\n           ^^^^^ unknown-key\n  ^^^^^ no-value-yet\n`,
    );
  });

  it('tells its parts apart where one is escaped', () => {
    assertMarked(
      'swing',
      `${head}flight:
  carry: { value: "171\\x20m", by: "radr\\x61x", give_or_take: 3 deg }
                                  ^^^^^^^^^^^ unknown-method
                                                               ^^^ wrong-dimension
`,
    );
  });

  it('may still lack its value', () => {
    const { entry } = entryOf('flight:\n  carry: { by: radar }\n  ^^^^^ no-value-yet\n', 'flight.carry');
    assert.deepEqual(entry.readings, []);
    entryOf('flight:\n  carry: { value: , by: radar }\n                  | no-value-yet\n', 'flight.carry');
  });
});

describe('a list of readings', () => {
  it('may mix both forms', () => {
    const { entry, text } = entryOf(
      `delivery:
  face:
    - 1 deg right by radar
    - { value: 3 deg right, by: eye, doubtful: true }
    -
     | no-value-yet
`,
      'delivery.face',
    );
    assert.deepEqual(
      entry.readings.map(({ form, doubtful, span }) => [form, doubtful, text.slice(span.start, span.end)]),
      [
        ['short', false, '1 deg right by radar'],
        ['long', true, '{ value: 3 deg right, by: eye, doubtful: true }'],
      ],
    );
  });

  it('keeps the readable ones', () => {
    const { entry } = entryOf(
      'flight:\n  carry: [171 m, 3 deg]\n                   ^^^ wrong-dimension\n',
      'flight.carry',
    );
    assert.equal(entry.readings.length, 1);
  });
});

describe('methods of the workspace', () => {
  it('may stand after by', () => {
    const text = `${head}flight:\n  carry: 171 m by old laser\n`;
    const laser = { name: 'old laser', meaning: '', uncertainty: {} };
    assert.deepEqual(
      parseDocument('swing', text).problems.map(({ code }) => code),
      ['unknown-method'],
    );
    const document = parseDocument('swing', text, registryWith({ methods: [laser] })) as SwingRecord;
    assert.deepEqual(document.problems, []);
    assert.equal(document.entries.get('flight.carry')?.readings[0]?.measure.method, 'old laser');
  });
});
