// What loads an injured part is said wherever planned changes or stated faults are shown, in the same words.
import assert from 'node:assert/strict';
import { swingwright, withFolder } from '../cli/program.ts';

const files = {
  'swingwright.yaml': 'swingwright: 1\n',
  'ansa.student.yaml': `student: 1
name: Ansa
hand: right
bag: { eight iron: { kind: iron, loft: 36 deg } }
injuries: [{ part: lower back, note: stiff }]
`,
  'house.faults.yaml': `faults: 1
book:
  stands-up:
    evidence: checkpoints.impact.forward_bend < 30 deg
    tends_to: [{ effect: delivery.low_point.ahead, direction: behind, size: 1 cm }]
    changes: [{ change: checkpoints.impact.forward_bend, by: 6 deg more }]
    cautions: [lower back]
`,
  'a.swing.yaml': `swing: 1
student: ansa.student.yaml
date: 2026-03-07
club: eight iron
faults_from: house.faults.yaml
checkpoints: { impact: { forward_bend: 25 deg ± 2 deg } }
faults: [{ fault: stands-up }]
plan:
  - { change: checkpoints.impact.forward_bend, to: 34 deg, because: [stands-up], proof: checkpoints.impact.forward_bend > 30 deg }
`,
  'b.swing.yaml': `swing: 1
student: ansa.student.yaml
date: 2026-03-21
club: eight iron
checkpoints: { impact: { lead_pressure: 70 % } }
`,
  'c.swing.yaml': `swing: 1
student: ansa.student.yaml
date: 2026-03-28
club: eight iron
checkpoints: { impact: { forward_bend: 33 deg ± 2 deg } }
`,
};
const words = "loads the lower back, which Ansa's file notes as injured: stop if it hurts.";

describe('a page that is handed on', () => {
  for (const command of [
    ['progress', 'ansa.student.yaml', '--format', 'html'],
    ['compare', 'a.swing.yaml', 'c.swing.yaml', '--format', 'html'],
  ])
    it(`says what is loaded, and of nobody's injury: ${command[0]}`, () =>
      withFolder(files, (folder) => {
        const { out } = swingwright(command, folder);
        assert.match(
          out,
          /loads: lower back\. Stop if it hurts\. This is no medical advice; see a physician/,
        );
        assert.doesNotMatch(out, /injur|stiff|Ansa(’|'|&#39;)s file|plan-loads-injury/);
      }));

  it('is the same page whether or not the file notes an injury, also where a finding of it is accepted', () => {
    const command = ['compare', 'a.swing.yaml', 'c.swing.yaml', '--format', 'html'];
    const pageOf = (injuries: string, accept: string): string =>
      withFolder(
        {
          ...files,
          'ansa.student.yaml': files['ansa.student.yaml'].replace(/^injuries:.*\n/m, injuries),
          'a.swing.yaml': files['a.swing.yaml'].replace(
            'faults: [{ fault: stands-up }]',
            `faults: [{ fault: stands-up }] ${accept}`,
          ),
        },
        (folder) => swingwright(command, folder).out,
      );
    const noted = /^injuries:.*\n/m.exec(files['ansa.student.yaml'])![0];
    for (const accept of ['', '# accept[caution]: talked about'])
      assert.equal(pageOf(noted, accept), pageOf('', accept), accept);
  });
});

describe('a caution', () => {
  for (const command of [
    ['outcome', 'a.swing.yaml'],
    ['outcome', 'c.swing.yaml'],
    ['claims', 'a.swing.yaml'],
    ['next', 'b.swing.yaml'],
    ['progress', 'ansa.student.yaml'],
    ['plan', 'a.swing.yaml'],
  ])
    it(`stands in ${command.join(' ')}, as text and as JSON`, () => {
      withFolder(files, (folder) => {
        const text = swingwright(command, folder).out;
        assert.equal(text.split(words).length, 2, text);
        const json = swingwright([...command, '--format', 'json'], folder).out;
        assert.ok(json.includes(words), json);
      });
    });
});
