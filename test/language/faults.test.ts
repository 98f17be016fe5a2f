// What an editor says of stated faults, of misses and of fault books: hovers and hints.
import assert from 'node:assert/strict';
import { findHints, findHover, wantsLessons } from '../../src/language/index.ts';
import { marked } from '../marked.ts';
import { analysed, everywhere, student } from './analysed.ts';

const files = {
  'mira.student.yaml': student,
  'house.faults.yaml': `faults: 1
extends: base.faults.yaml
book:
  weight-back:
    title: Weight stays back
    explanation: The club reaches the ground too early.
    at: impact
    evidence: checkpoints.impact.lead_pressure < 70 %
    tends_to: [{ effect: checkpoints.impact.shaft_lean, direction: backward, size: 1 deg }]
  handle-trails:
    title: Handle trails
    evidence: checkpoints.impact.shaft_lean < 0 deg
    tends_to: [{ effect: delivery.delivered_loft, direction: more }]
  open-face: { tends_to: [{ effect: flight.curve, direction: right }] }
`,
  'base.faults.yaml': 'faults: 1\nbook: { weight-back: { title: Another } }\n',
};

const record = `swing: 1
student: mira.student.yaml
faults_from: house.faults.yaml
checkpoints:
  impact: { lead_pressure: 65 % ± 4 %, shaft_lean: }
faults:
  - { fault: weight-back, at: impact } # seen
  - { fault: handle-trails }
  - { fault: weight-back, at: top }
misses: [high, slice]
`;

function hoverAt(word: string, text = record, name = 'a.swing.yaml'): string {
  const at = marked(text.replace(word, `${word.slice(0, 2)}$0${word.slice(2)}`));
  return findHover(analysed(at.text, { name, files }), at.position)?.contents.value ?? '';
}

describe('a hover on a stated fault', () => {
  it('gives title, place, verdict, probability, explanation and the evidence with its numbers', () => {
    const [prose = '', table = ''] = hoverAt('weight-back').split('\n\n');
    const lines = prose.split('  \n');
    // (70 − 65)/4 = 1.25 standard uncertainties: Φ = 0.894.
    assert.equal(lines[0], '**Weight stays back** at impact: supported (89 %)');
    assert.equal(lines[1], 'The club reaches the ground too early\\.');
    assert.equal(
      lines[2],
      '`checkpoints.impact.lead_pressure < 70 %`: 89 % (pressure in the lead foot at impact 65 % ± 4 %)',
    );
    // (70 − 65) %, for the size is that of the fault as a whole; the model does not lead from pressure to lean.
    assert.equal(
      table,
      `| Tends to change | Belief | Physics |
| --- | --- | --- |
| shaft lean at impact, when pressure in the lead foot at impact changes by 5 points less | 1\\.0 deg backward | no say: the model of this record does not reach it |`,
    );
    assert.ok(lines.includes('Explains the miss `high`.'));
    assert.ok(lines.includes('A fault from `house.faults.yaml`.'));
  });

  it('has a column for the other records of the student where they were looked for', () => {
    const lesson = (lean: number, pressure: number): string =>
      `swing: 1\nstudent: mira.student.yaml\ncheckpoints: { impact: { lead_pressure: ${pressure} % ± 2 %, shaft_lean: ${lean} deg forward ± 0.5 deg } }\n`;
    const numbers = [
      [1, 60],
      [3, 70],
      [5, 80],
      [7, 90],
    ] as const;
    const lessons = numbers.map(([lean, pressure], i) => {
      const analysis = analysed(lesson(lean, pressure), { name: `${i}.swing.yaml`, files });
      return { uri: analysis.uri, date: undefined, club: undefined, analysis };
    });
    const at = marked(record.replace('weight-back', 'we$0ight-back'));
    const now = analysed(at.text, { files });
    assert.ok(wantsLessons(now, at.position));
    assert.ok(!wantsLessons(now, { line: 0, character: 0 }));
    const hover = findHover(now, at.position, undefined, lessons)!.contents.value;
    const [heads, , row] = hover.split('\n\n')[1]!.split('\n');
    assert.equal(heads, '| Tends to change | Belief | Physics | History |');
    // The points lie on a line: 2 deg for 10 %.
    assert.match(row!, /\| agrees: 1\\\.00 deg backward ± 0\\\.1\d deg, as believed \|$/);
    assert.ok(hover.split('\n').length <= 13);
  });

  it('says once what all effects have in common, so that the table stays low', () => {
    const book = files['house.faults.yaml'].replace(
      /tends_to: \[\{ effect: delivery.delivered_loft, direction: more \}\]/,
      'tends_to: [{ effect: delivery.delivered_loft, direction: more }, { effect: delivery.low_point.depth, direction: above }]',
    );
    const at = marked(
      record
        .replace('shaft_lean: }', 'shaft_lean: 2 deg forward }')
        .replace('handle-trails', 'han$0dle-trails'),
    );
    const now = analysed(at.text, { files: { ...files, 'house.faults.yaml': book } });
    const [, ...blocks] = findHover(now, at.position, undefined, [])!.contents.value.split('\n\n');
    assert.equal(blocks[0], 'When shaft lean at impact changes by 1\\.0 deg backward:');
    assert.match(
      blocks[1]!,
      /^\| Tends to change \| Belief \| Physics \|\n.*\n\| delivered loft \| more \| .*\n\| depth of the low point \| above \| /,
    );
    assert.match(blocks[2]!, /^History has no say: no other record /);
    assert.equal(blocks.length, 3);
  });

  it('says what is missing and what it is a consequence of', () => {
    const hover = hoverAt('handle-trails');
    assert.match(hover, /cannot tell \(no shaft lean at impact\)/);
    assert.match(hover, /A consequence of `weight-back`\./);
  });

  it('says that the book does not see it at this place', () => {
    const text = record.replace('  - { fault: weight-back, at: impact } # seen\n', '');
    assert.match(hoverAt('weight-back', text), /at top: the fault book does not see it there/);
  });
});

describe('a hover on a miss', () => {
  it('says what it is and what explains it, the nearest cause first', () => {
    const lines = hoverAt('high').split('  \n');
    assert.deepEqual(lines, [
      '**High**: flies too high',
      'Explained by `handle-trails`.',
      'Explained by `weight-back`, through `handle-trails`.',
    ]);
  });

  it('says that nothing does, and what of the book would', () => {
    assert.match(hoverAt('slice'), /No stated fault explains it\..*`open-face`/s);
  });
});

describe('a hover in a fault book', () => {
  const text = files['house.faults.yaml'];
  const name = 'house.faults.yaml';

  it('says what a quantity in an expression means and which way is positive', () => {
    const hover = hoverAt('checkpoints.impact.shaft_lean <', text, name);
    assert.match(hover, /^\*\*Shaft lean\*\* at impact/);
    assert.match(hover, /In an expression it is positive forward and negative backward\./);
  });

  it('says of what is left and right that it is as for a right-handed player', () => {
    assert.match(
      hoverAt('flight.curve', text, name),
      /positive right and negative left, as for a right-handed player/,
    );
  });

  it('says that a fault takes the place of another one', () => {
    assert.match(
      hoverAt('weight-back', text, name),
      /Takes the place of the fault of this name in `base\.faults\.yaml`\./,
    );
  });
});

describe('hints of faults', () => {
  it('stand behind each stated fault that the book can see, whatever is written there', () => {
    const switches = {
      units: false,
      faceToPath: false,
      lowPoint: false,
      flight: false,
      shots: false,
      windows: false,
      faults: true,
    };
    const hints = findHints(analysed(record, { files }), everywhere, switches);
    assert.deepEqual(
      hints.map(({ position, label }) => [position.line, label]),
      [
        [6, 'supported (89 %)'],
        [7, 'cannot tell'],
      ],
    );
    assert.equal(hints[0]!.position.character, '  - { fault: weight-back, at: impact } # seen'.length);
  });
});
