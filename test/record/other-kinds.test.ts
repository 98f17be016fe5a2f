// Students' files, templates, fault books and reviews are read into what they say, and what they cannot mean is said at its place.
import assert from 'node:assert/strict';
import type { FaultFile, ReviewFile, StudentFile, TemplateFile } from '../../src/record/document.ts';
import { assertMarked } from './marked.ts';

describe("a student's file", () => {
  const source = `student: 1
name: Imke
born: 1988
hand: left
stature: 171 cm
mass: 66 kg by scale
body_table: female
bag:
  five hybrid: { kind: hybrid, loft: 25 deg, lie: 59.5 deg, length: 39.5 in, head_mass: 240 g }
  7:
    kind: iron
    loft: 32 deg
goals:
  - { shape: fade, carry: 120..130 m }
injuries:
  - { part: trail wrist, since: 2026-03, note: sore after mats }
`;
  const student = assertMarked('student', source) as StudentFile;

  it('has name, hand and table', () => {
    assert.equal(student.name?.value, 'Imke');
    assert.equal(student.hand?.value, 'left');
    assert.equal(student.bodyTable?.value, 'female');
  });

  it('has entries of the student', () => {
    assert.deepEqual([...student.entries.keys()], ['student.stature', 'student.mass']);
  });

  it('has a bag of clubs by their names', () => {
    assert.deepEqual([...student.bag.keys()], ['five hybrid', '7']);
    const hybrid = student.bag.get('five hybrid')!;
    assert.equal(hybrid.kind?.value, 'hybrid');
    assert.deepEqual([...hybrid.entries.keys()], ['club.loft', 'club.lie', 'club.length', 'club.head_mass']);
    assert.equal(source.slice(hybrid.name.span.start, hybrid.name.span.end), 'five hybrid');
  });

  it('has goals', () => {
    assert.equal(student.goals[0]?.targets.get('carry')?.target.kind, 'window');
  });

  it('has a birth and injuries with their place', () => {
    assert.equal(student.born?.value, '1988');
    assert.deepEqual(
      student.injuries.map(({ part, place, note }) => [part.value, place?.side, place?.part.name, note]),
      [['trail wrist', 'trail', 'wrist', 'sore after mats']],
    );
    const other = assertMarked(
      'student',
      'student: 1\nborn: 1988-02-30\n      ^^^^^^^^^^ impossible-date\ninjuries: [{ part: knees, side: left }]\n',
    ) as StudentFile;
    assert.equal(other.born, undefined);
    assert.equal(other.injuries[0]?.place?.side, 'left');
  });

  it('with an unknown hand has none', () => {
    const other = assertMarked('student', 'student: 1\nhand: both\n#     ^^^^ unknown-word\n') as StudentFile;
    assert.equal(other.hand, undefined);
  });
});

describe('a template', () => {
  it('has windows by full id, alone or in a mapping', () => {
    const template = assertMarked(
      'template',
      `template: 1
title: From the turf
clubs: [hybrid, fairway]
checkpoints:
  impact:
    shaft_lean: 2..8 deg forward
delivery:
  low_point: { ahead: { window: 2..8 cm ahead, strict: firm, source: common practice } }
`,
    ) as TemplateFile;
    assert.equal(template.title, 'From the turf');
    assert.deepEqual(
      template.clubs.map(({ value }) => value),
      ['hybrid', 'fairway'],
    );
    assert.deepEqual(
      [...template.windows.keys()],
      ['checkpoints.impact.shaft_lean', 'delivery.low_point.ahead'],
    );
    const { window } = template.windows.get('delivery.low_point.ahead')!;
    assert.ok(Math.abs(window.from - 0.02) < 1e-12 && Math.abs(window.to - 0.08) < 1e-12);
  });

  it('may be for one kind of club', () => {
    const template = assertMarked('template', 'template: 1\nclubs: iron\n') as TemplateFile;
    assert.deepEqual(
      template.clubs.map(({ value }) => value),
      ['iron'],
    );
  });

  it('takes no single number', () => {
    assertMarked(
      'template',
      'template: 1\ndelivery:\n  path: 2 deg right\n        ^^^^^^^^^^^ measure-not-allowed\n',
    );
  });

  it('says where a window has no unit', () => {
    assertMarked(
      'template',
      'template: 1\ncheckpoints:\n  address:\n    stance_width: 36..50\n                  ^^^^^^ bare-number\n',
    );
  });

  it('may still lack a window', () => {
    assertMarked('template', 'template: 1\ndelivery:\n  path: { strict: firm }\n  ^^^^ no-value-yet\n');
  });
});

describe('a fault book', () => {
  it('has faults by name, and may extend another', () => {
    const book = assertMarked(
      'faults',
      `faults: 1
extends: ../base.faults.yaml
book:
  folds:
    title: Lead arm folds
    evidence: checkpoints.impact.lead_elbow_bend > 20 deg
    tends_to: [{ effect: strike.height, direction: low, size: 2 mm }]
    changes: [{ change: checkpoints.impact.lead_elbow_bend, by: 10 deg less }]
  empty:
        | no-value-yet
`,
    ) as FaultFile;
    assert.equal(book.extends?.value, '../base.faults.yaml');
    assert.deepEqual(
      [...book.faults].map(([id, { title }]) => [id, title]),
      [
        ['folds', 'Lead arm folds'],
        ['empty', undefined],
      ],
    );
  });

  it('speaks of quantities by their full ids', () => {
    const book = assertMarked(
      'faults',
      `faults: 1
book:
  folds:
    tends_to: [{ effect: strike.hight }]
                         ^^^^^^^^^^^^ unknown-word
    changes: [{ change: lead_elbow_bend }]
                        ^^^^^^^^^^^^^^^ unknown-word
`,
    );
    assert.equal(book.problems[0]?.nearest, 'strike.height');
    assert.match(book.problems[1]?.nearest ?? '', /\.lead_elbow_bend$/);
  });

  const whole = `faults: 1
book:
  folds:
    explanation: The elbow gives way.
    at: [impact, finish]
    evidence:
      - checkpoints.impact.lead_elbow_bend > 20 deg
      - { expression: "strike.height < -4 mm", weight: 0.5 }
      - { expression: flight.carry < 90 m, weight: -1 }
                                                   ^^ number-out-of-range
    tends_to:
      - { effect: strike.height, direction: low, size: 2 mm }
      - { effect: flight.carry, direction: less }
      - { effect: strike.across, direction: low }
                                            ^^^ unknown-direction
    changes: [{ change: checkpoints.impact.lead_elbow_bend, by: 10 deg less, when: downswing }]
    cautions: [lead elbow, elbw]
                           ^^^^ unknown-body-part
    drills: [Slow swings., Slower ones.]
`;

  it('has evidence with weights, effects with signs, changes, cautions and drills', () => {
    const fault = (assertMarked('faults', whole) as FaultFile).faults.get('folds')!;
    assert.equal(fault.explanation, 'The elbow gives way.');
    assert.deepEqual(
      fault.at.map(({ value }) => value),
      ['impact', 'finish'],
    );
    assert.deepEqual(
      fault.evidence.map(({ expression, weight }) => [expression.value, weight]),
      [
        ['checkpoints.impact.lead_elbow_bend > 20 deg', 1],
        ['strike.height < -4 mm', 0.5],
        ['flight.carry < 90 m', 1],
      ],
    );
    assert.deepEqual(
      fault.tendsTo.map(({ quantity, sign, size, sizeWords }) => [
        quantity?.id,
        sign,
        size?.amount,
        sizeWords,
      ]),
      [
        ['strike.height', -1, 0.002, '2 mm'],
        ['flight.carry', -1, undefined, undefined],
        ['strike.across', undefined, undefined, undefined],
      ],
    );
    assert.deepEqual(
      fault.changes.map(({ quantity, byWords, when }) => [quantity?.key, byWords, when]),
      [['lead_elbow_bend', '10 deg less', 'downswing']],
    );
    assert.deepEqual(
      fault.cautions.map(({ place }) => [place?.side, place?.part.name]),
      [
        ['lead', 'elbow'],
        [undefined, undefined],
      ],
    );
    assert.deepEqual(fault.drills, ['Slow swings.', 'Slower ones.']);
  });

  it('places an expression inside its quotes', () => {
    const { text, faults } = assertMarked('faults', whole) as FaultFile;
    const { span } = faults.get('folds')!.evidence[1]!.expression;
    assert.equal(text.slice(span.start, span.end), 'strike.height < -4 mm');
  });
});

describe('a review', () => {
  it('names the record that it is about', () => {
    const review = assertMarked(
      'review',
      'review: 1\nof: 2026-05-14.swing.yaml\nthreads:\n  - { about: delivery.path, state: opne }\n                                   ^^^^ unknown-word\n',
    ) as ReviewFile;
    assert.equal(review.of?.value, '2026-05-14.swing.yaml');
    assert.equal(review.problems[0]?.nearest, 'open');
  });
});
