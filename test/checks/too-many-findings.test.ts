// Tests of the check too-many-findings, and that the work on a hostile text is bounded: what is counted does not grow with it.
import assert from 'node:assert/strict';
import { mostFindings } from '../../src/checks/check.ts';
import { mostReadings } from '../../src/record/entry.ts';
import { analyseFiles, assertNone, codesOf, messageOf } from './files.ts';

const goals = (count: number): string => `swing: 1\ngoals:\n${'  - { carry: 178 }\n'.repeat(count)}`;

describe('too-many-findings', () => {
  it('says once that only the gravest are told', () => {
    const analysis = analyseFiles(goals(3000));
    assert.equal(analysis.findings.length, mostFindings + 1);
    assert.equal(analysis.findings[0]?.code, 'too-many-findings');
    assert.match(messageOf(analysis, 'too-many-findings'), /more than 1000 findings/);
  });

  it('says nothing of as many as are told', () => {
    const analysis = assertNone('too-many-findings', `${goals(mostFindings - 1)}`);
    assert.equal(codesOf(analysis).length, mostFindings - 1);
  });

  it('keeps an error that stands below more hints than are told', () => {
    const analysis = analyseFiles(`${goals(3000)}  - { carry: 178 deg }\n`);
    assert.equal(analysis.findings.filter(({ severity }) => severity === 'error').length, 1);
  });

  it('counts neither what is silenced nor what is off', () => {
    const silent = `swing: 1\nflight:\n  carry: [${'178, '.repeat(90)}178]\n`;
    assert.equal(codesOf(analyseFiles(silent)).length, 91);
    assert.deepEqual(
      codesOf(
        analyseFiles({
          'lesson.swing.yaml': goals(3000),
          'swingwright.yaml': 'swingwright: 1\nseverities: { bare-number: off }\n',
        }),
      ),
      [],
    );
  });

  it('bounds what is found of twenty thousand comments that accept nothing', () => {
    const { findings } = analyseFiles(`swing: 1\n${'# accept[a]: \n'.repeat(17_000)}`);
    assert.equal(findings.length, mostFindings + 1);
  });
});

describe('a list of very many readings', () => {
  it('is read as far as anybody would measure one thing, and says where that ends', () => {
    const text = `swing: 1\ndelivery:\n  path: [${'3 deg right, '.repeat(17_000)}3 deg right]\n`;
    const analysis = analyseFiles(text);
    const entry = analysis.document.kind === 'swing' && analysis.document.entries.get('delivery.path');
    assert.ok(entry && entry.readings.length === mostReadings);
    assert.match(messageOf(analysis, 'wrong-shape'), /17001 readings of one thing; expected at most 100/);
  });
});
