// Tests of the check fault-not-stated.
import { assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('fault-not-stated', () => {
  const house = `faults: 1
book:
  late-weight:
    title: Weight comes late
    at: [lead_arm_parallel_down, impact]
    evidence: checkpoints.impact.lead_pressure < 65 %
    cautions: [lead knee]`;

  const head = 'swing: 1\nfaults_from: house.faults.yaml\n';
  const numbers = 'checkpoints: { impact: { lead_pressure: 50 % by pressure mat } }\n';
  const files = (rest: string) => ({
    'lesson.swing.yaml': head + numbers + rest,
    'house.faults.yaml': house,
  });
  const stated = '{ fault: late-weight, at: impact }';

  it('marks the entry that shows a fault which nobody stated', () => {
    assertMarked('fault-not-stated', {
      'lesson.swing.yaml': `${head}checkpoints:
  impact:
    lead_pressure: 50 % by pressure mat
#                  ^^^^^^^^^^^^^^^^^^^^ hint[fault-not-stated]`,
      'house.faults.yaml': house,
    });
  });

  it('says nothing of a fault that is stated anywhere, or that is in doubt', () => {
    assertNone('fault-not-stated', files('faults: [{ fault: late-weight, at: lead_arm_parallel_down }]'));
    assertNone('fault-not-stated', {
      'lesson.swing.yaml': `${head}checkpoints: { impact: { lead_pressure: 63 % by pressure mat } }`,
      'house.faults.yaml': house,
    });
  });

  const rows: readonly (readonly [string, string, string])[] = [
    ['with a key of its own at the end', '', `faults:\n  - ${stated}\n`],
    [
      'before the goals',
      'goals: [{ carry: 120 m }]\n',
      `faults:\n  - ${stated}\ngoals: [{ carry: 120 m }]\n`,
    ],
    [
      'below an empty key',
      'faults: # none yet\nnotes: dry\n',
      `faults: # none yet\n  - ${stated}\nnotes: dry\n`,
    ],
    ['between empty brackets', 'faults: []\n', `faults: [${stated}]\n`],
    [
      'behind the last one between brackets',
      'faults: [{ fault: x } ] # seen\n',
      `faults: [{ fault: x }, ${stated} ] # seen\n`,
    ],
    [
      'behind the last one of a list',
      'faults:\n- { fault: x } # seen\n\ngoals: []\n',
      `faults:\n- { fault: x } # seen\n- ${stated}\n\ngoals: []\n`,
    ],
    [
      'behind the last one of a list in blocks',
      'faults:\n    - fault: x\n      note: late # seen\nnotes: dry',
      `faults:\n    - fault: x\n      note: late # seen\n    - ${stated}\nnotes: dry`,
    ],
  ];
  for (const [where, before, after] of rows)
    it(`states it ${where}`, () => assertFixedTo('fault-not-stated', files(before), head + numbers + after));

  it('keeps the line breaks of Windows', () => {
    const crlf = (text: string): string => text.replaceAll('\n', '\r\n');
    assertFixedTo(
      'fault-not-stated',
      { 'lesson.swing.yaml': crlf(head + numbers), 'house.faults.yaml': house },
      crlf(`${head + numbers}faults:\n  - ${stated}\n`),
    );
  });
});
