// Tests of the check evidence-shows-nothing.
import assert from 'node:assert/strict';
import { analyseFiles, assertMarked, assertNone, messageOf, type Files } from './files.ts';

const book = (evidence: string): Files => ({
  'house.faults.yaml': `faults: 1\nbook:\n  trail-side:\n    evidence: ${evidence}`,
});

describe('evidence-shows-nothing', () => {
  it('marks what speaks of no quantity', () => {
    const analysis = assertMarked('evidence-shows-nothing', {
      'house.faults.yaml': `faults: 1
book:
  trail-side:
    evidence:
      - checkpoints.impact.lead_pressure < 70 %
      - { expression: 2 cm > 1 cm, weight: 2 }
#                     ^^^^^^^^^^^ warning[evidence-shows-nothing]`,
    });
    assert.match(messageOf(analysis, 'evidence-shows-nothing'), /^`2 cm > 1 cm` always holds, since/);
  });

  for (const evidence of [
    'delivery.path > delivery.path',
    'delivery.path - delivery.path >= 0 deg',
    'checkpoints.impact.lead_pressure > 100 %',
    'checkpoints.impact.lead_pressure >= 0 %',
    'abs(delivery.path) >= 0 deg',
    'delivery.attack > 2 deg and delivery.attack < 1 deg',
    'delivery.attack > 1 deg or not (delivery.attack > 2 deg)',
    'delivery.path > 2 deg and checkpoints.impact.lead_pressure > 120 %',
  ])
    it(`marks \`${evidence}\``, () => {
      assert.match(messageOf(analyseFiles(book(evidence)), 'evidence-shows-nothing'), /(always|never) holds/);
    });

  for (const evidence of [
    'sqrt(-1) * delivery.face > 1 deg',
    'delivery.face / 0 > 1 deg',
    'asin(2) > delivery.face',
    'asin(1.5) > delivery.face - delivery.path',
  ])
    it(`marks \`${evidence}\`, which no swing gives a number for`, () => {
      assert.match(
        messageOf(analyseFiles(book(evidence)), 'evidence-shows-nothing'),
        /gives no number for any swing/,
      );
    });

  for (const evidence of [
    'delivery.face - delivery.path > 4 deg',
    'delivery.attack > 1 deg and delivery.attack < 2 deg',
    '0 deg < delivery.attack < 1 deg',
    'abs(delivery.path) < 0.5 deg',
    'delivery.path > 2 deg ? delivery.attack > 1 deg : delivery.attack < 3 deg',
    'checkpoints.impact.lead_pressure < 100 %',
    'sqrt(delivery.face / 1 deg) > 2',
    'delivery.face / delivery.path > 1',
    'delivery.x > 2',
    '',
  ])
    it(`takes \`${evidence}\``, () => {
      assertNone('evidence-shows-nothing', book(evidence));
    });
});
