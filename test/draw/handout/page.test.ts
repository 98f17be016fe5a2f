// A handout as a page: what stands on it, what does not, and what hostile or missing words do to it.
import assert from 'node:assert/strict';
import { handoutPage } from '../../../src/draw/handout/page.tsx';
import { handoutFrom, handoutOfFiles, lesson, sampleRecords } from '../../analysis/handouts.ts';

/** What is read on a page, without its pictures. */
function wordsOf(html: string): string {
  return html
    .replace(/<style>.*?<\/style>/gs, '')
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&lt;', '<')
    .replace(/\s+/g, ' ');
}

describe('a handout as a page', () => {
  it('tells the student what was seen, why, what to change, what to feel, and what is measured next', () => {
    const words = wordsOf(handoutPage(handoutOfFiles(lesson), 'student'));
    for (const said of [
      'Ansa',
      'Lesson of 14 May 2026 · hybrid',
      'You want: Landing beside the target line 5 m left to 5 m right',
      'Hangs back (at the strike) The weight stays behind.',
      'Hangs back → Lowest point of the swing, from the ball: further behind → heavy',
      'Three things to change',
      'from 47 cm to 41 cm',
      'from 9° forward to 6 to 8° forward',
      'Feel light on the trail heel',
      'Drill Half swings on one leg.',
      'The record plans 4 changes. This page shows 3 of them, the first in the record, and what that leads to; one more stands in the record.',
      'Pressure in the lead foot, at the strike: over 70 %',
      'Club up or down into the ball: over 2° down',
      'Face against the way of the club: under 4° right',
      'Changes 1, 2, 3 load: lead knee, lower back. Stop if it hurts.',
      'see a physician or physiotherapist first.',
    ])
      assert.ok(words.includes(said), said);
  });

  it('tells the student nothing that the numbers speak against, and no note', () => {
    const words = wordsOf(handoutPage(handoutOfFiles(lesson), 'student'));
    assert.doesNotMatch(words, /Leans back|Tuuli|twisted|stiff|eighteen|Noted/);
  });

  it('names no fault that the numbers speak against anywhere, and no cause of a miss that has none', () => {
    const record = lesson['lesson.swing.yaml']!.replace(
      'hangs-back, at: impact, note: said with her sister Tuuli }, { fault: leans-back',
      'leans-back',
    ).replaceAll('[hangs-back]', '[leans-back]');
    assert.ok(!record.includes('hangs-back'));
    const files = { ...lesson, 'lesson.swing.yaml': record };
    for (const [language, seen, unexplained] of [
      ['en', /The numbers speak against what was written down\./, /No stated fault explains: heavy\./],
      ['de', /Die Zahlen sprechen gegen das, was/, /Kein genannter Fehler erklärt: fett\./],
    ] as const) {
      const words = wordsOf(handoutPage(handoutOfFiles(files, { language }), 'student'));
      assert.doesNotMatch(words, /Leans back|Against|Gegen |No fault is written down|kein Fehler auf/);
      assert.match(words, seen);
      assert.match(words, unexplained);
    }
    const whole = wordsOf(handoutPage(handoutOfFiles(lesson), 'student'));
    assert.match(whole, /Against Hangs back/);
    assert.doesNotMatch(whole, /No stated fault|speak against what/);
  });

  it('tells the file of verdicts, numbers and a minor, and of no injury', () => {
    const words = wordsOf(handoutPage(handoutOfFiles(lesson), 'file'));
    assert.match(words, /Leans back \(impact\) speak against it/);
    assert.match(words, /Under eighteen on this day/);
    assert.match(words, /47\.0 cm ± 0\.\d cm tape/);
    assert.doesNotMatch(words, /twisted|stiff|Noted/);
  });

  it('tells the file alone what the student’s file notes, but for what speaks of an injured part', () => {
    const notes = 'notes: Plays on Tuesdays. The knee is better since spring.\n';
    const files = { ...lesson, 'ansa.student.yaml': `${lesson['ansa.student.yaml']}${notes}` };
    const words = (audience: 'student' | 'file', health: 'named' | 'left out'): string =>
      wordsOf(handoutPage(handoutOfFiles(files, { health }), audience));
    assert.match(words('file', 'left out'), /Notes .*the student’s file Plays on Tuesdays\./);
    assert.doesNotMatch(words('file', 'left out'), /since spring/);
    assert.match(words('file', 'named'), /Plays on Tuesdays\. The knee is better since spring\./);
    assert.doesNotMatch(words('student', 'named'), /Tuesdays|since spring/);
  });

  it('names the injuries that the changes load where that was asked for', () => {
    const words = wordsOf(handoutPage(handoutOfFiles(lesson, { health: 'named' }), 'student'));
    assert.match(words, /Noted, as asked for: lead knee \(twisted on ice\)\./);
    assert.doesNotMatch(words, /stiff/);
  });

  it('tells everybody plainly which numbers do not go together, and nothing where all do', () => {
    const odd = `swing: 1
student: a.student.yaml
delivery: { face: 2 deg right ± 0.3 deg, path: 1 deg right ± 0.3 deg, face_to_path: 9 deg right ± 0.3 deg }
`;
    const files = { 'lesson.swing.yaml': odd, 'a.student.yaml': 'student: 1\nhand: right\n' };
    const words = wordsOf(handoutPage(handoutOfFiles(files), 'student'));
    assert.match(
      words,
      /do(es)? not go together with the others: [A-Z].*Your coach will look at (it|them) again\./,
    );
    assert.doesNotMatch(wordsOf(handoutPage(handoutOfFiles(lesson), 'student')), /go together/);
  });

  it('lists the flight for the file, and no column that says nothing', () => {
    const sample = (path: string) => sampleRecords.find(([one]) => one === path)![1];
    const words = wordsOf(handoutPage(handoutFrom(sample('runa/2026-08-03-six-iron.swing.yaml')), 'file'));
    for (const said of ['Launch angle 18.5°', 'Ball speed 42.3 m/s', 'Curve 15.0 m right', 'Carry 117.0 m'])
      assert.ok(words.includes(said), said);
    assert.doesNotMatch(words, /more in the record/);
    const bare = wordsOf(handoutPage(handoutOfFiles('swing: 1\nflight: { carry: 150 m }\n'), 'file'));
    assert.match(bare, /Quantity As entered/);
    assert.doesNotMatch(bare, /Measured by/);
  });

  it('speaks German, with a comma', () => {
    const html = handoutPage(handoutOfFiles(lesson, { language: 'de' }), 'file');
    const words = wordsOf(html);
    assert.match(html, /<html lang="de">/);
    for (const said of [
      'Stunde vom 14. Mai 2026',
      'Standbreite, beim Ansprechen',
      'von 47 cm auf 41 cm',
      'Druck auf dem vorderen Fuß, im Treffmoment: über 70 %',
      'Eintreffwinkel: über 2° abwärts',
      'Änderungen 1, 2, 3 belasten: Knie (vorn), unterer Rücken.',
      '47,0 cm',
    ])
      assert.ok(words.includes(said), said);
    assert.doesNotMatch(words, /\d\.\d/);
  });

  it('prints cautions in letters of 8 pt or more, and all else smaller where much is said', () => {
    const long = 'word '.repeat(300);
    const book = lesson['house.faults.yaml']!.replace('The weight stays behind.', long)
      .replace('light on the trail heel', long)
      .replace('Half swings on one leg.', long);
    const html = handoutPage(handoutOfFiles({ ...lesson, 'house.faults.yaml': book }), 'student');
    const page = Number(/--page: ([\d.]+)pt/.exec(html)?.[1]);
    assert.ok(page >= 5.5 && page < 8, `${page}`);
    assert.match(html, /\.care \{ font-size: max\(8pt, 1em\); \}/);
  });

  it('is whole for every sample, loads nothing, and names nobody else', () => {
    const names = ['Bram', 'Odile', 'Runa', 'Tove'];
    for (const [path, analysis] of sampleRecords)
      for (const audience of ['student', 'file'] as const)
        for (const language of ['en', 'de']) {
          const html = handoutPage(handoutFrom(analysis, { language }), audience);
          const own = names.filter((name) => path.startsWith(name.toLowerCase()));
          assert.deepEqual(
            names.filter((name) => html.includes(name)),
            own,
          );
          assert.doesNotMatch(html, /NaN|undefined|Infinity|\{\w+\}.{0,3}<|<script|href=|src=|url\((?!#)/);
          assert.doesNotMatch(html, /twisted on stairs|stiff in the morning/);
          const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
          assert.equal(new Set(ids).size, ids.length);
        }
  });

  it('says what is missing of an empty record, and of one with a single entry', () => {
    const nothing = wordsOf(handoutPage(handoutOfFiles(''), 'student'));
    assert.match(nothing, /Your lesson Lesson without a date/);
    assert.match(nothing, /Nothing to change is planned yet/);
    assert.match(nothing, /Still missing: the student’s file, the club, anything measured\./);
    const one = wordsOf(handoutPage(handoutOfFiles('swing: 1\nflight: { carry: 150 m }\n'), 'file'));
    assert.match(one, /Carry 150/);
    assert.match(one, /Still missing: the student’s file, the day of the lesson, the club, what was seen/);
  });

  it('takes absurd numbers and hostile words as words', () => {
    const hostile = '</title><script>alert(1)</script>\u202e\u0007\n<b>';
    const files = {
      'lesson.swing.yaml': `swing: 1
student: a.student.yaml
club: ${JSON.stringify(hostile)}
faults_from: b.faults.yaml
checkpoints: { address: { stance_width: 1e300 m, ball_position: -1e9 m }, impact: { lead_pressure: 9e9 % } }
flight: { carry: 1e12 m, finish: 1e308 m, start: 900 deg right }
faults: [{ fault: x }]
plan:
  - { change: checkpoints.address.stance_width, to: -1e300 m, because: [x], proof: ${JSON.stringify(hostile)} }
  - { change: flight.carry, to: 0 m }
`,
      'a.student.yaml': `student: 1\nname: ${JSON.stringify(hostile + 'x'.repeat(5000))}\n`,
      'b.faults.yaml': `faults: 1\nbook: { x: { title: ${JSON.stringify(hostile)}, drills: [${JSON.stringify(hostile)}] } }\n`,
    };
    for (const audience of ['student', 'file'] as const) {
      const html = handoutPage(handoutOfFiles(files), audience);
      assert.doesNotMatch(html, /<script|NaN|Infinity|\u202e/);
      assert.ok(!html.includes('\u0007'));
      assert.match(html, /&lt;script>/);
      assert.ok(html.length < 100_000);
    }
  });
});

describe('a handout of a record with little in it', () => {
  const wordsFor = (text: string, asked: { readonly language?: string } = {}): string =>
    wordsOf(handoutPage(handoutOfFiles(`swing: 1\n${text}`, asked), 'student'));

  it('shows what was measured, drawn, and says what a fuller record would show', () => {
    const html = handoutPage(
      handoutOfFiles('swing: 1\ndelivery: { path: 3 deg left, attack: 4 deg down }\n'),
      'student',
    );
    const words = wordsOf(html);
    for (const said of [
      'What was measured Way of the club through the ball: 3° left Club up or down into the ball: 4° down',
      'What a fuller record would show here where the ball goes, drawn from above',
      'up to three changes, each with a picture, what to feel and a drill',
    ])
      assert.ok(words.includes(said), said);
    assert.match(html, /data-picture="handout-measured"/);
  });

  it('says beside planned changes too what no swing can be', () => {
    const words = wordsFor(
      'flight: { carry: 900 m }\ndelivery: { attack: 4 deg down }\nplan: [{ change: delivery.attack, to: 2 deg down }]\n',
    );
    assert.match(words, /One thing to change/);
    assert.match(words, /Left out, for no swing can be so: Carry/);
  });

  it('says which faults no fault book knows, instead of that none was written down', () => {
    const words = wordsFor('faults: [{ fault: nope }]\nmisses: [heavy]\n');
    assert.match(words, /No fault book of this lesson knows: nope\./);
    assert.doesNotMatch(words, /No fault is written down|speak against/);
    assert.match(
      wordsFor('faults: [{ fault: nope }]\n', { language: 'de' }),
      /In keinem Fehlerbuch[^.]*: nope\./,
    );
    assert.match(wordsFor(''), /No fault is written down for this lesson\./);
  });

  it('counts what no swing can be beyond the first five', () => {
    const five =
      'checkpoints: { address: { stance_width: 1e9 cm } }\ndelivery: { path: 1e9 deg right, face: 1e9 deg right, attack: 1e9 deg down, club_speed: 1e9 m/s }\n';
    assert.match(wordsFor(five), /no swing can be so: Stance width, address, [^.:]*, Club speed What/);
    assert.match(wordsFor(`${five}flight: { carry: 1e9 m }\n`), /, Club speed and 1 more What/);
  });

  it('draws no change from or to what no swing can be, and says so', () => {
    const absurd = (now: string, to: string): string =>
      handoutPage(
        handoutOfFiles(
          `swing: 1\ncheckpoints: { address: { stance_width: ${now} } }\nplan: [{ change: checkpoints.address.stance_width, to: ${to} }]\n`,
        ),
        'student',
      );
    for (const [now, to] of [
      ['90000 cm', '40 cm'],
      ['45 cm', '1e9 cm'],
    ] as const) {
      const page = absurd(now, to);
      assert.match(wordsOf(page), /No picture: no swing can be so\./);
      assert.doesNotMatch(page, /data-picture="handout-change/);
    }
    const usual = absurd('45 cm', '40 cm');
    assert.match(usual, /data-picture="handout-change-1"/);
    assert.doesNotMatch(usual, /No picture/);
  });

  it('says nothing of causes where no fault was seen, and nothing of goals for another club', () => {
    const files = {
      'lesson.swing.yaml': 'swing: 1\nstudent: a.student.yaml\nclub: iron\nflight: { carry: 150 m }\n',
      'a.student.yaml': `student: 1
hand: right
bag: { iron: { kind: iron }, driver: { kind: driver } }
goals: [{ shape: draw, club: driver }]
`,
    };
    const words = wordsOf(handoutPage(handoutOfFiles(files), 'student'));
    assert.doesNotMatch(words, /What causes what|You want|draw\b/);
    assert.match(words, /what you want of the ball/);
    const own = { ...files, 'a.student.yaml': files['a.student.yaml'].replace('club: driver', 'club: iron') };
    const asked = wordsOf(handoutPage(handoutOfFiles(own), 'student'));
    assert.match(asked, /You want: draw/);
    assert.doesNotMatch(asked, /what you want of the ball/);
  });

  it('says that nothing was measured where nothing was, and in German too', () => {
    assert.match(wordsFor(''), /What was measured Nothing is measured yet\./);
    assert.match(wordsFor('', { language: 'de' }), /Noch ist nichts gemessen\./);
  });

  it('leaves out what no swing can be, and says so', () => {
    const words = wordsFor(
      'delivery: { path: 5000 deg right, attack: 4 deg down }\nflight: { carry: 1e300 m }\n',
    );
    assert.match(
      words,
      /Club up or down into the ball: 4° down Left out, for no swing can be so: Way of the club through the ball, Carry/,
    );
    assert.doesNotMatch(words, /5000|e\+300|NaN|Infinity/);
  });
});
