// The mends of findings: each takes its finding away and changes only what it says.
import assert from 'node:assert/strict';
import { analyseFiles, applied, assertFixedTo, messageOf, type Files } from './files.ts';

function titlesOf(code: string, source: string | Files): readonly string[] {
  return analyseFiles(source)
    .findings.filter((finding) => finding.code === code)
    .flatMap(({ fixes }) => fixes.map(({ title }) => title));
}

describe('the mend of', () => {
  it('missing-direction writes one of the words, none before another', () => {
    const source = 'swing: 1\nconditions:\n  wind: 3 m/s # gusts\n';
    const [finding] = analyseFiles(source).findings.filter(({ code }) => code === 'missing-direction');
    assert.ok(finding && finding.fixes.length >= 4 && finding.fixes.every(({ preferred }) => !preferred));
    const fix = finding.fixes.find(({ title }) => title.includes('from left'));
    assert.equal(applied(source, fix!.edits), 'swing: 1\nconditions:\n  wind: 3 m/s from left # gusts\n');
    assertFixedTo('missing-direction', source, applied(source, finding.fixes[0]!.edits));
  });

  it('uncertainty-not-positive drops a sign, and leaves a zero to the coach', () => {
    const source = 'swing: 1\ndelivery:\n  attack: 3 deg down ± -1 deg by eye\n';
    assertFixedTo('uncertainty-not-positive', source, source.replace('-1', '1'));
    assert.deepEqual(titlesOf('uncertainty-not-positive', source.replace('-1', '0')), []);
  });

  it('unreadable-measure writes a decimal point', () => {
    const source = 'swing: 1\ndelivery:\n  attack: 3,5 deg down # c\n';
    assertFixedTo('unreadable-measure', source, source.replace(',', '.'));
    // A thousand to some and a fraction to others.
    assert.deepEqual(titlesOf('unreadable-measure', 'swing: 1\nflight:\n  spin: 2,500 rpm\n'), []);
  });

  it('window-not-allowed writes the middle with half the width over √3 (JCGM 100:2008, 4.3.7)', () => {
    const source = 'swing: 1\ndelivery:\n  attack: 2..4 deg down\n';
    assertFixedTo('window-not-allowed', source, source.replace('2..4 deg down', '3.0 deg down ± 0.6 deg'));
  });

  it('missing-key writes the version above the first key, below a comment', () => {
    const source = '# today\ndate: 2026-05-14\n';
    assertFixedTo('missing-key', source, '# today\nswing: 1\ndate: 2026-05-14\n');
    assert.deepEqual(titlesOf('missing-key', '{ date: 2026-05-14 }\n'), []);
  });

  it('impossible-date orders what begins with the year, and guesses no other', () => {
    const source = 'swing: 1\ndate: 2026/5/4\n';
    assertFixedTo('impossible-date', source, 'swing: 1\ndate: 2026-05-04\n');
    assert.deepEqual(titlesOf('impossible-date', 'swing: 1\ndate: 4/5/2026\n'), []);
    assert.deepEqual(titlesOf('impossible-date', 'swing: 1\ndate: 2026-02-30\n'), []);
  });

  it('yaml-syntax is one space, quote, bracket or indentation', () => {
    for (const [source, mended] of [
      ['swing: 1\ndelivery:\n\tattack: 3 deg down\n', 'swing: 1\ndelivery:\n  attack: 3 deg down\n'],
      [
        'swing: 1\ndelivery:\n  attack:3 deg down\n  path: 0 deg\n',
        'swing: 1\ndelivery:\n  attack: 3 deg down\n  path: 0 deg\n',
      ],
      ['swing: 1\ndelivery: { attack: 3 deg down # c\n', 'swing: 1\ndelivery: { attack: 3 deg down } # c\n'],
      ['swing: 1\nclub: "hybrid\ndate: 2026-05-14\n', 'swing: 1\nclub: "hybrid"\ndate: 2026-05-14\n'],
    ] as const)
      assertFixedTo('yaml-syntax', source, mended);
  });

  it('unsupported-version writes the present one as a number, and leaves a newer one alone', () => {
    assertFixedTo('unsupported-version', 'swing: "1" # first\n', 'swing: 1 # first\n');
    assert.deepEqual(titlesOf('unsupported-version', 'swing: 2\n'), []);
    const message = messageOf(analyseFiles('swing: 2\n'), 'unsupported-version');
    assert.match(message, /version `2` of the format, newer than this Swingwright; expected `1`/);
  });

  it('missing-reference turns the backslashes of a path', () => {
    const source = 'swing: 1\nstudent: pupils\\mira.student.yaml # new\n';
    assertFixedTo(
      'missing-reference',
      { 'lesson.swing.yaml': source, 'pupils/mira.student.yaml': 'student: 1\n' },
      source.replace('\\', '/'),
    );
  });
});
