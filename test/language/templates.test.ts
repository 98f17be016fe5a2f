// What an editor says of a record's template: the hover on an entry and the one on the reference.
import assert from 'node:assert/strict';
import { findHover } from '../../src/language/index.ts';
import { marked } from '../marked.ts';
import { analysed, student } from './analysed.ts';

const files = {
  'mira.student.yaml': student.replace('hand: right', 'hand: left'),
  'turf.template.yaml': `template: 1
title: From the turf
delivery:
  attack: { window: 2..6 deg down, strict: firm, source: common practice }
  club_speed: { window: 30..40 m/s, source: our own }
  path: 1..3 deg left
  face_to_path: 2 deg left..1 deg right
checkpoints: { top: { lead_pressure: 20..40 % } }
`,
};

const record = `swing: 1
student: mira.student.yaml
template: turf.template.yaml
delivery:
  attack: 8 deg down ± 1 deg
  club_speed: 35 m/s ± 1 m/s
  path: 2 deg right ± 1 deg
  face: 5 deg right ± 1 deg
`;

function hoverAt(word: string): readonly string[] {
  const at = marked(record.replace(word, `${word.slice(0, 2)}$0${word.slice(2)}`));
  const hover = findHover(analysed(at.text, { name: 'a.swing.yaml', files }), at.position);
  return (hover?.contents.value ?? '').split('  \n');
}

describe('a hover on an entry of the template', () => {
  it('says the window, how strict it is, its source and where the value stands', () => {
    assert.ok(
      hoverAt('attack').includes(
        'Template: 2\\.\\.6 deg down \\(firm; common practice\\): outside by 2.0 standard uncertainties.',
      ),
    );
    assert.ok(hoverAt('club_speed').includes('Template: 30\\.\\.40 m/s \\(gentle; our own\\): inside.'));
  });

  it('shows the window as the left-handed player sees left and right', () => {
    assert.ok(
      hoverAt('path').some((line) =>
        line.startsWith('Template: 1\\.\\.3 deg right \\(gentle; no source\\): inside'),
      ),
    );
  });
});

describe('a hover on the reference to a template', () => {
  it('says what is outside and inside, and what nobody measured', () => {
    assert.deepEqual(hoverAt('turf.template.yaml').slice(1), [
      '5 windows.',
      'Outside: attack angle 8.0 deg down ± 1.0 deg; 2\\.\\.6 deg down \\(firm; common practice\\), outside by 2.0 standard uncertainties.',
      'Outside: face to path 3.0 deg right ± 1.4 deg, computed; 1 deg left\\.\\.2 deg right \\(gentle; no source\\), outside by 0.7 standard uncertainties.',
      'Inside: club speed and club path.',
      'Not measured, and not computed: pressure in the lead foot at top.',
    ]);
  });
});
