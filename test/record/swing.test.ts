import assert from 'node:assert/strict';
import type { SwingRecord } from '../../src/record/document.ts';
import { lesson } from './lesson.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { assertMarked } from './marked.ts';

const head = 'swing: 1\nstudent: a\ndate: 2026-05-14\nclub: b\n';
const whole = parseDocument('swing', lesson) as SwingRecord;

describe('a swing record', () => {
  it('names its files, its day and its club', () => {
    assert.equal(whole.student?.value, '../imke.student.yaml');
    assert.equal(whole.date?.value, '2026-05-14');
    assert.equal(whole.club?.value, 'five hybrid');
    assert.equal(whole.template?.value, '../../templates/hybrid.template.yaml');
    assert.equal(whole.faultsFrom, undefined);
    assert.equal(whole.shotsFile, undefined);
  });

  it('has its shots in a list, by short key or by full id', () => {
    const document = assertMarked(
      'swing',
      `${head}shots:
  - { carry: 171 m, path: 2 deg right, height: 3 mm low, shape: draw, note: thin }
  - { flight.carry: 165 m, low_point.ahead: 2 cm ahead }
`,
    ) as SwingRecord;
    assert.deepEqual(
      document.shots.map((shot) => [...shot.keys()]),
      [
        ['flight.carry', 'delivery.path', 'strike.height'],
        ['flight.carry', 'delivery.low_point.ahead'],
      ],
    );
    assert.equal(document.shotsFile, undefined);
  });

  it('or in a file', () => {
    const document = assertMarked('swing', `${head}shots: shots/a.csv\n`) as SwingRecord;
    assert.equal(document.shotsFile?.value, 'shots/a.csv');
    assert.deepEqual(document.shots, []);
  });

  it('states faults', () => {
    assert.deepEqual(
      whole.faults.map(({ fault, at, note }) => [fault.value, at?.value, note]),
      [
        ['trail-side-loaded', 'lead_arm_parallel_down', 'stays back until the strike'],
        ['folds', undefined, 'a text of two lines\n'],
      ],
    );
  });

  it('has misses, in words or with a note', () => {
    const document = assertMarked(
      'swing',
      `${head}misses:
  - thin
  - { miss: slice, note: into the wind }
  - slise
    ^^^^^ unknown-word
`,
    ) as SwingRecord;
    assert.deepEqual(
      document.misses.map(({ miss, note }) => [miss.value, note]),
      [
        ['thin', undefined],
        ['slice', 'into the wind'],
        ['slise', undefined],
      ],
    );
    assert.equal(document.problems[0]?.nearest, 'slice');
  });

  it('has goals: numbers and windows of the flight', () => {
    const [goal] = whole.goals;
    assert.ok(goal);
    assert.equal(goal.shape?.value, 'draw');
    assert.deepEqual(
      [...goal.targets].map(([key, { target }]) => [key, target.kind]),
      [
        ['start', 'measure'],
        ['finish', 'window'],
        ['carry', 'measure'],
      ],
    );
    const { span, keySpan } = goal.targets.get('finish')!;
    assert.equal(lesson.slice(span.start, span.end), '0..5 yd left');
    assert.equal(lesson.slice(keySpan.start, keySpan.end), 'finish');
  });

  it('may explain a goal in the long form', () => {
    const document = assertMarked(
      'swing',
      `${head}goals:\n  - { carry: { value: 170..180 m, note: over the ditch } }\n`,
    ) as SwingRecord;
    assert.equal(document.goals[0]?.targets.get('carry')?.target.kind, 'window');
  });

  it('has a plan whose targets are read as the quantity that they change', () => {
    const [change] = whole.plan;
    assert.ok(change);
    assert.equal(change.change?.value, 'checkpoints.address.stance_width');
    assert.ok(change.to?.target.kind === 'measure' && Math.abs(change.to.target.value - 0.41) < 1e-12);
    assert.deepEqual(
      change.because.map(({ value }) => value),
      ['trail-side-loaded'],
    );
    assert.match(change.proof?.value ?? '', /^lead pressure/);
  });

  it('may give one reason without a list', () => {
    const document = assertMarked(
      'swing',
      `${head}plan:\n  - change: delivery.attack\n    to: 2..4 deg down\n    because: folds\n`,
    ) as SwingRecord;
    assert.deepEqual(
      document.plan[0]?.because.map(({ value }) => value),
      ['folds'],
    );
    assert.equal(document.plan[0]?.to?.target.kind, 'window');
  });

  it('plans to change something that is no quantity: the nearest is named', () => {
    const document = assertMarked(
      'swing',
      `${head}plan:\n  - { change: stance_width, to: 41 cm }\n              ^^^^^^^^^^^^ unknown-word\n`,
    );
    assert.equal(document.problems[0]?.nearest, 'checkpoints.address.stance_width');
    const near = assertMarked(
      'swing',
      `${head}plan:\n  - { change: delivery.atack }\n              ^^^^^^^^^^^^^^ unknown-word\n`,
    );
    assert.equal(near.problems[0]?.nearest, 'delivery.attack');
  });

  it('predicts quantities by their full ids, and says where each comes from', () => {
    const document = assertMarked(
      'swing',
      `${head}predicted:
  delivery.low_point.ahead: 6.1 cm ahead ± 1.4 cm by model
  flight.curve: 2 m right ± 3 m by belief
  flight.cary: 170 m
  ^^^^^^^^^^^ unknown-word
  delivery.attack: 3 deg down by radar
                                 ^^^^^ unknown-method
`,
    ) as SwingRecord;
    assert.deepEqual(
      [...document.predicted].map(([id, { readings }]) => [id, readings[0]?.measure.method]),
      [
        ['delivery.low_point.ahead', 'model'],
        ['flight.curve', 'belief'],
        ['delivery.attack', undefined],
      ],
    );
    const stated = document.predicted.get('delivery.low_point.ahead')?.readings[0]?.measure.stated;
    assert.ok(Math.abs(stated! - 0.014) < 1e-12);
    assert.equal(document.entries.size, 0);
  });

  it('has the word for the shape of its flight', () => {
    const document = assertMarked('swing', `${head}flight: { shape: push draw }\n`) as SwingRecord;
    assert.equal(document.shape?.value, 'push draw');
  });
});
