// Whatever is taken at whatever place of a measure, the measure is read as well as before, and keeps its digits.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import { kinds } from '../../src/language/completion-item.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { kindOf } from '../../src/record/kind.ts';
import { practice, snapshotWith, yamlSamples } from '../samples.ts';
import { itemsAt, proposed, written } from './proposals.ts';

const path = 'tove/2026-04-18-seven-iron.swing.yaml';
const labels = (measure: string): readonly string[] =>
  proposed(path, `swing: 1\ndelivery:\n  attack: ${measure}\n`).items.map(({ label }) => label);

describe('in a number, and before a unit that is there', () => {
  for (const measure of [
    '4$0 deg down by radar',
    '4$04 deg down by radar',
    '4$0.5 deg',
    '3..4$0 deg down',
    '3$0..4 deg down',
    '3 deg down ± 1$0 deg by radar',
    '{ value: 3$0 deg down }',
    '[3$0 deg down, 4 deg down by eye]',
    '[3 deg down, 4$0 deg down by eye]',
  ])
    it(`proposes nothing: ${measure.replace('$0', '|')}`, () => {
      assert.deepEqual(labels(measure), []);
    });

  it('proposes a unit where there is none, and another one in its place', () => {
    assert.ok(labels('3$0 ± 1 deg').includes('deg'));
    assert.ok(labels('3$0 # deg').includes('deg'));
    const { text, items } = proposed(path, 'swing: 1\ndelivery:\n  attack: 3 de$0g down by radar\n');
    const radians = items.find(({ label }) => label === 'rad');
    assert.equal(written(text, radians!), 'swing: 1\ndelivery:\n  attack: 3 rad down by radar\n');
  });

  it('leaves the numbers of a size and of an expression alone', () => {
    const book = (line: string): readonly string[] =>
      proposed(
        'a.faults.yaml',
        `faults: 1\nbook:\n  open:\n    evidence: delivery.path > ${line.startsWith('size') ? '3 deg' : line}\n    tends_to: [{ effect: flight.start, direction: right, ${line.startsWith('size') ? line : 'size: 1 deg'} }]\n`,
      ).items.map(({ label }) => label);
    for (const line of [
      '3$0 deg',
      '3$03 deg',
      'size: 1$0 deg per 5 deg',
      'size: 1 deg per 5$0 deg',
      'size: 1$02 deg',
    ])
      assert.deepEqual(book(line), [], line);
    assert.ok(book('3$0').includes('deg'));
  });
});

/** These only remark that something is not written yet, or say it again in other words. */
const remarks = new Set(['bare-number', 'bare-direction', 'no-value-yet']);

describe('a word that is taken anywhere', function () {
  this.timeout(240_000);
  for (const [name, text] of yamlSamples)
    it(`leaves the measures of ${name} as readable as they were`, () => {
      const uri = practice + name;
      const analysis = analyse(uri, snapshotWith({ [uri]: text }));
      const count = (source: string): number =>
        parseDocument(kindOf(name)!, source, analysis.subject.registry).problems.filter(
          ({ code }) => !remarks.has(code),
        ).length;
      const before = count(text);
      const seen = new Set<string>();
      for (let offset = 0; offset <= text.length; offset++) {
        const around = text.slice(Math.max(0, offset - 1), offset + 1);
        if (!/\d/.test(around)) continue;
        const items = itemsAt(analysis, offset).filter(
          ({ kind }) => kind === kinds.unit || kind === kinds.value,
        );
        // Units are alike, and so are whole phrases.
        for (const item of [...items.slice(0, 1), ...items.slice(-1)]) {
          const after = written(text, item);
          if (seen.has(after)) continue;
          seen.add(after);
          assert.ok(
            count(after) <= before,
            `${JSON.stringify(item.textEdit.newText)} in ${JSON.stringify(text.slice(offset - 30, offset + 20))}`,
          );
        }
      }
    });
});
