// A hover says what stands under the cursor, in twelve lines at most, and never runs what a user wrote.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { findHover } from '../../src/language/index.ts';
import { marked } from '../marked.ts';
import { analysed, student } from './analysed.ts';

const files = {
  'mira.student.yaml': student,
  'house.faults.yaml': 'faults_file: 1\n',
  'hybrid.template.yaml': 'template: 1\n',
};

function hoverIn(source: string, name = 'a.swing.yaml'): string {
  const { text, position } = marked(source);
  return findHover(analysed(text, { name, files }), position)?.contents.value ?? '';
}

describe('a hover', () => {
  it('gives a value in two units', () => {
    const hover = hoverIn('swing: 1\ncheckpoints:\n  address:\n    stance_width: 4$07 cm by tape\n');
    assert.match(hover, /47(\.0)? cm/);
    // 47 / 2.54 = 18.5 in
    assert.match(hover, /18\.5\d? in/);
  });

  it('gives the same on the key and on the value', () => {
    const text = 'swing: 1\nflight:\n  carry: 171 m ± 3 m\n';
    assert.equal(hoverIn(text.replace('carry', 'ca$0rry')), hoverIn(text.replace('171', '1$071')));
  });

  it('says what a quantity means and where it is measured', () => {
    const hover = hoverIn('swing: 1\ncheckpoints:\n  impact:\n    shaft_$0lean: 9 deg forward\n');
    assert.match(hover, /\*\*Shaft lean\*\*/i);
    assert.match(hover, /Measured from .+ to .+\./);
  });

  it('says whose uncertainty it is: stated, the method’s or the quantity’s own', () => {
    const hover = (value: string): string => hoverIn(`swing: 1\nflight:\n  ca$0rry: ${value}\n`);
    assert.match(hover('171 m ± 3 m'), /± 3(\.0)? m, as stated/);
    assert.match(hover('171 m by radar'), /usual for `radar`/);
    assert.match(hover('171 m'), /nothing is stated/);
    assert.match(hover('~171 m'), /doubled/);
  });

  it('says what the other entries expect and how far apart they are', () => {
    const text =
      'swing: 1\ndelivery:\n  face: 1 deg right ± 1 deg\n  path: 5 deg right ± 1 deg\n  face_to_$0path: 6 deg left ± 1 deg\n';
    // Expected −4 ± √2, entered −6 ± 1: 2 / √3 = 1.15 apart.
    assert.match(
      hoverIn(text),
      /The other entries expect 4\.0 deg left ± 1\.4 deg \(from .*\): 1\.2 times the combined uncertainty apart/,
    );
  });

  it('names the two largest shares behind what the others expect', () => {
    const text =
      'swing: 1\ndelivery:\n  face: 1 deg right ± 1 deg\n  path: 5 deg right ± 2 deg\n  face_to_$0path: 4 deg left ± 1 deg\n';
    // 2² and 1² of 5.
    assert.match(hoverIn(text), /\(from club path 80 % and face direction 20 %\)/);
  });

  it('says whether an entry is checked, does not fit, or is spoken of by nothing else', () => {
    const sum = (faceToPath: string): string =>
      `swing: 1\ndelivery:\n  face: 1 deg right ± 1 deg\n  path: 5 deg right ± 1 deg\n  face_to_$0path: ${faceToPath} ± 1 deg\n`;
    assert.match(hoverIn(sum('4 deg left')), /^Checked, and it fits\.\s*$/m);
    assert.match(hoverIn(sum('9 deg right')), /^Does not fit\.\s*$/m);
    assert.match(
      hoverIn('swing: 1\ndelivery:\n  at$0tack: 4 deg down\n'),
      /^Unchecked: nothing else in this record says anything about it\.\s*$/m,
    );
  });

  it('ends with the way to the page that says why, where the editor has one', () => {
    const { text, position } = marked('swing: 1\ndelivery:\n  at$0tack: 4 deg down\n');
    const analysis = analysed(text, { files });
    const value = findHover(analysis, position, { whyAddress: (id) => `command:why?${id}` })!.contents.value;
    assert.match(value, /\n\[Why\?\]\(command:why\?delivery\.attack\)$/);
    assert.doesNotMatch(hoverIn('swing: 1\ndelivery:\n  at$0tack: 4 deg down\n'), /Why/);
  });

  it('says that there is no value yet, and how a bare number is read', () => {
    assert.match(hoverIn('swing: 1\nflight:\n  ca$0rry:\n'), /no value yet/);
  });

  it('gives each reading of a list by itself, and all together on the key', () => {
    const text = 'swing: 1\ndelivery:\n  face: [1 deg right by radar, 3 deg right by eye]\n';
    assert.match(hoverIn(text.replace('3 deg', '3$0 deg')), /3(\.0)? deg right .*usual for `eye`/s);
    assert.match(hoverIn(text.replace('face', 'fa$0ce')), /2 readings, taken together/);
  });

  it('describes a checkpoint and a section', () => {
    const text = 'swing: 1\ncheckpoints:\n  top:\n    shoulder_turn: 90 deg\n';
    assert.match(hoverIn(text.replace('top', 't$0op')), /The club head changes direction/);
    assert.match(hoverIn(text.replace('checkpoints', 'check$0points')), /\*\*Checkpoints\*\*/);
  });

  it('says of every other key what the schema says', () => {
    const record = `swing: 1
student: mira.student.yaml
date: 2026-05-14
club: hybrid
template: hybrid.template.yaml
faults_from: house.faults.yaml
delivery: { arc: { radius: 1.5 m }, low_point: { ahead: 9 cm ahead } }
ground: { divot: { length: 11 cm } }
flight: { shape: draw }
faults:
  - { fault: low-hands, note: seen }
goals:
  - { shape: draw, contact: no turf, club: hybrid }
plan:
  - { change: delivery.path, because: [low-hands] }
`;
    const on = (key: string, source = record, name?: string): string =>
      hoverIn(source.replace(new RegExp(`(\\b${key})(?=:)`), '$$0$1'), name);
    assert.equal(on('student'), "**Student**  \nThe student's file, relative to this one.");
    assert.match(on('date'), /The day of the lesson/);
    assert.match(on('club'), /The name of a club/);
    assert.match(on('template'), /The template that this swing is held against/);
    assert.match(on('faults_from'), /^\*\*Faults from\*\*/);
    assert.match(on('arc'), /The arc of the club head/);
    assert.match(on('low_point'), /The lowest point/);
    assert.match(on('divot'), /The divot:/);
    assert.match(on('shape'), /The shape of the shot/);
    assert.match(on('goals'), /What the student wants of the ball/);
    assert.match(on('contact'), /What the student wants of the strike/);
    assert.match(on('because'), /The faults that it is to mend/);
    const book =
      'faults: 1\nbook:\n  low-hands: { title: Low hands, at: [top], tends_to: [{ effect: delivery.path }] }\n';
    assert.match(on('low-hands', book, 'a.faults.yaml'), /^\*\*`low-hands`\*\* {2}\nA fault, under the name/);
    assert.match(on('effect', book, 'a.faults.yaml'), /The full id of the quantity that it changes/);
    const settings = 'swingwright: 1\nseverities: { bare-number: off }\n';
    assert.match(
      on('bare-number', settings, 'swingwright.yaml'),
      /How loud this finding is\..*\nUnit not written \(hint/,
    );
  });

  it('lists what is computed in a section', () => {
    const text = 'swing: 1\ndeli$0very:\n  face: 1 deg right ± 1 deg\n  path: 5 deg right ± 1 deg\n';
    assert.match(hoverIn(text), /Face.to.path: 4\.0 deg left/i);
  });

  it('sums up the file that a reference leads to, and the club', () => {
    const text = 'swing: 1\nstudent: mira.student.yaml\nclub: hybrid\n';
    assert.match(hoverIn(text.replace('mira', 'mi$0ra')), /\*\*Mira\*\*, plays right-handed/);
    assert.match(hoverIn(text.replace('hybrid', 'hyb$0rid')), /Loft.*: 22/);
  });

  it('says what is usual with the kind of club, where that is known', () => {
    const text = 'swing: 1\nstudent: m.student.yaml\nclub: eight\nflight: { ca$0rry: 120 m }\n';
    const hover = (bag: string): string => {
      const { text: plain, position } = marked(text);
      return findHover(analysed(plain, { files: { 'm.student.yaml': bag } }), position)?.contents.value ?? '';
    };
    assert.match(hover('student: 1\nbag: { eight: { kind: iron } }\n'), /Usual with an iron: 3\.\.240 m /);
    assert.match(hover('student: 1\nbag: { eight: { loft: 36 deg } }\n'), /Usual: 3\.\.320 m /);
  });

  it('says "an iron" and "a hybrid"', () => {
    const bag = 'student: 1\nname: Mira\nbag: { eight iron: { kind: iron }, four: { kind: hybrid } }\n';
    const hover = (club: string): string => {
      const { text, position } = marked(`swing: 1\nstudent: m.student.yaml\nclub: ${club}\n`);
      return findHover(analysed(text, { files: { 'm.student.yaml': bag } }), position)?.contents.value ?? '';
    };
    assert.equal(hover('eight $0iron'), '**eight iron**, an iron');
    assert.equal(hover('fo$0ur'), '**four**, a hybrid');
  });

  it('explains the code in an accepting comment', () => {
    const hover = hoverIn('swing: 1\nflight:\n  carry: 171 # accept[bare-$0number]: metres are understood\n');
    assert.match(hover, /Accepted on line 3/);
  });

  it('gives a goal in two units with the value of today', () => {
    const hover = hoverIn('swing: 1\nflight:\n  carry: 171 m\ngoals:\n  - { carry: 1$078 m }\n');
    assert.match(hover, /Goal: 178 m = 19[45](\.\d)? yd/);
    assert.match(hover, /In this record: 171 m/);
  });

  it('shows a note as text, whatever stands in it', () => {
    const note = '[x](command:evil) <b>![i](http://a/b) `c` *d* **e**';
    const hover = hoverIn(`swing: 1\nflight:\n  carry: { value: 17$01 m, note: "${note}" }\n`);
    const line = hover.split('\n').find((each) => each.startsWith('Note:')) ?? '';
    assert.doesNotMatch(line, /(?<!\\)[[\]*`!(]/);
    assert.doesNotMatch(line, /<b>/);
    assert.match(line, /&lt;b/);
  });

  it('has at most twelve lines and never throws, wherever the cursor is', () => {
    const text = `swing: 1
student: mira.student.yaml
club: hybrid
delivery:
  club_speed: 41 m/s by radar
  path: 5 deg right
  face: [1 deg right by radar, 3 deg right by eye]
ground:
  divot: { starts: 2 cm ahead, length: 11 cm, depth: 6 mm }
flight: { start: 1 deg right, carry: 171 m }
goals:
  - { shape: draw, start: 2 deg left, carry: 178 m }
`;
    const analysis = analysed(text, { files });
    const lines = text.split('\n');
    fc.assert(
      fc.property(fc.nat(lines.length + 1), fc.nat(80), (line, character) => {
        const hover = findHover(analysis, { line, character });
        if (hover === undefined) return;
        const { value } = hover.contents;
        assert.ok(value.split('\n').length <= 12, value);
        assert.doesNotMatch(value, /NaN|Infinity|undefined/);
      }),
      { numRuns: 500 },
    );
  });
});
