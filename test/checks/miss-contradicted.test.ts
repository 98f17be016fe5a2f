// Tests of the check miss-contradicted, and of faults that the numbers speak against: they explain nothing.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, codesOf, messageOf } from './files.ts';

const files = (hand: string, rest: string) => ({
  'lesson.swing.yaml': `swing: 1\nstudent: rita.student.yaml\nfaults_from: house.faults.yaml\n${rest}`,
  'rita.student.yaml': `student: 1\nhand: ${hand}\n`,
  'house.faults.yaml': `faults: 1
book:
  open-face:
    evidence: delivery.face - delivery.path > 4 deg
    tends_to: [{ effect: flight.curve, direction: right }]
  late:
    evidence: delivery.path < -2 deg
    tends_to: [{ effect: delivery.face, direction: right }]
`,
});
const straight = `delivery: { path: 0 deg by radar, face: 0 deg by radar }
flight: { curve: 0 m by radar, carry: 120 m by radar }
faults: [{ fault: open-face }]
misses: [slice]
`;

describe('miss-contradicted', () => {
  it('marks a slice where the ball flew straight, and says by which number', () => {
    const analysis = assertMarked('miss-contradicted', {
      ...files('right', ''),
      'lesson.swing.yaml': `${files('right', straight)['lesson.swing.yaml']}#        ^^^^^ information[miss-contradicted]`,
    });
    assert.match(
      messageOf(analysis, 'miss-contradicted'),
      /found curve 0\.0 m ± 1\.5 m; expected what it means, curves too/,
    );
    const related = analysis.findings.find(({ code }) => code === 'miss-contradicted')?.related;
    assert.equal(related?.length, 1);
  });

  it('marks a heavy shot where the low point is well ahead of the ball', () => {
    const low = (words: string): string =>
      `delivery: { low_point: { ahead: ${words} ± 2 cm } }\nmisses: [heavy]\n`;
    assert.ok(codesOf(analyseFiles(files('right', low('5 cm ahead')))).includes('miss-contradicted'));
    assertNone('miss-contradicted', files('right', low('1 cm ahead')));
  });

  it('turns sides round for a left-handed player, and not those of the target line', () => {
    const flown = (miss: string): string =>
      `flight: { start: 6 deg left by radar, finish: 20 m left ± 2 m }\nmisses: [${miss}]\n`;
    assertNone('miss-contradicted', files('left', flown('push')));
    assert.ok(codesOf(analyseFiles(files('right', flown('push')))).includes('miss-contradicted'));
    for (const hand of ['left', 'right']) {
      assert.ok(codesOf(analyseFiles(files(hand, flown('right')))).includes('miss-contradicted'));
      assertNone('miss-contradicted', files(hand, flown('left')));
    }
  });

  it('says what a miss means as a left-handed player sees it', () => {
    const flown = 'flight: { start: 3 deg right by radar, curve: 12 m right by radar }\nmisses: [push]\n';
    const told = messageOf(analyseFiles(files('left', flown)), 'miss-contradicted');
    assert.match(told, /found start direction 3\.0 deg right.*starts to the left of the target line/);
    const target = messageOf(
      analyseFiles(files('left', 'flight: { finish: 20 m left ± 2 m }\nmisses: [right]\n')),
      'miss-contradicted',
    );
    assert.match(target, /comes down right of the target line/);
  });

  it('says nothing without a hand, a number, or of what has no zero', () => {
    assertNone('miss-contradicted', 'swing: 1\nflight: { start: 6 deg left by radar }\nmisses: [push]\n');
    assertNone('miss-contradicted', files('right', 'misses: [slice, heavy, toe]\n'));
    assertNone('miss-contradicted', files('right', 'flight: { carry: 200 m by radar }\nmisses: [short]\n'));
  });
});

describe('a fault that the numbers speak against', () => {
  it('explains no miss, and is named beside it', () => {
    const analysis = analyseFiles(files('right', straight));
    const [miss] = analysis.subject.judgement!.misses;
    assert.deepEqual([miss?.by, miss?.contradicted], [[], ['open-face']]);
    assert.match(messageOf(analysis, 'miss-not-explained'), /the numbers speak against `open-face`/);
  });

  it('leads nowhere: what stands behind it explains nothing through it', () => {
    const both = straight.replace('[{ fault: open-face }]', '[{ fault: open-face }, { fault: late }]');
    const open = both.replace('face: 0 deg', 'face: 2 deg right').replace('path: 0 deg', 'path: 5 deg left');
    const explained = analyseFiles(files('right', open)).subject.judgement!;
    assert.deepEqual([...explained.contradicted], []);
    assert.deepEqual(
      explained.misses[0]?.by.map(({ fault }) => fault),
      ['open-face', 'late'],
    );
    const against = analyseFiles(files('right', open.replace('2 deg right', '6 deg left'))).subject
      .judgement!;
    assert.deepEqual([...against.contradicted], ['open-face']);
    assert.deepEqual(against.misses[0]?.by, []);
    assert.equal(against.links.length, 1);
  });
});
