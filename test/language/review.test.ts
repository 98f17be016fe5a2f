// In a review, names of entries are proposed and lead into the record, and a remark is made at a place of the record.
import assert from 'node:assert/strict';
import { actOnReview, findDefinitions, findReview } from '../../src/language/index.ts';
import type { Reviewed } from '../../src/analysis/review.ts';
import type { ReviewFile, SwingRecord } from '../../src/record/document.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { analyseFiles } from '../checks/files.ts';
import { proposed } from './proposals.ts';

const path = 'tove/2026-04-18-seven-iron.review.yaml';
const head = 'review: 1\nof: 2026-04-18-seven-iron.swing.yaml\n';

function labels(source: string): string[] {
  return proposed(path, source).items.map(({ label }) => label);
}

describe('in a review', () => {
  it('a remark is proposed to be about what the record holds, in its order', () => {
    const found = labels(`${head}threads:\n  - id: a\n    about: $0\n`);
    for (const id of ['club', 'checkpoints.address.stance_width', 'delivery.attack'])
      assert.ok(found.includes(id), id);
    assert.ok(!found.includes('flight.descent'));
    assert.ok(found.indexOf('club') < found.indexOf('delivery.attack'));
  });

  it('states and records are proposed', () => {
    assert.deepEqual(labels(`${head}threads:\n  - id: a\n    replies:\n      - state: $0\n`), [
      'open',
      'answered',
      'settled',
    ]);
    assert.ok(labels('review: 1\nof: $0\n').includes('2026-04-18-seven-iron.swing.yaml'));
  });

  it('what a remark is about leads to the entry', () => {
    const text = 'review: 1\nof: lesson.swing.yaml\nthreads:\n  - about: delivery.face\n';
    const analysis = analyseFiles({
      'lesson.review.yaml': text,
      'lesson.swing.yaml': 'swing: 1\ndelivery:\n  face: 1 deg right\n',
    });
    const [link] = findDefinitions(analysis, { line: 3, character: 14 }, () => undefined);
    assert.equal(link?.targetUri, 'file:///lessons/2026/lesson.swing.yaml');
    assert.deepEqual(link.targetSelectionRange, {
      start: { line: 2, character: 2 },
      end: { line: 2, character: 6 },
    });
  });
});

describe('at a place of the record', () => {
  const text = '# a lesson\nswing: 1\n\nclub: hybrid\n';
  const reviewed: Reviewed = {
    record: { uri: 'file:///lessons/a.swing.yaml', document: parseDocument('swing', text) as SwingRecord },
    registry: builtIn,
    reviews: [],
    taken: [],
  };
  const at = (line: number) =>
    actOnReview(
      reviewed,
      { kind: 'remark', at: { line, character: 0 }, text: 'x' },
      { author: 'Ida', time: '2026-06-02T10:00:00Z' },
    );

  it('a remark is about the entry of that line', () => {
    const acted = at(3);
    assert.ok(acted.kind === 'edits' && acted.isNew);
    assert.match(acted.edits[0]!.newText, /about: club\n {4}value: hybrid\n/);
  });

  it('nothing is written while a review is torn, nor signed while the record is', () => {
    const torn = '<<<<<<< ours\n=======\n>>>>>>> theirs\n';
    const hand = { author: 'Ida', time: '2026-06-02T10:00:00Z' };
    const review = {
      uri: 'file:///lessons/a%20b.review.yaml',
      document: parseDocument('review', `review: 1\nof: a.swing.yaml\n${torn}`) as ReviewFile,
    };
    const words = (acted: ReturnType<typeof actOnReview>) => (acted.kind === 'refused' ? acted.reason : '');
    const remark = { kind: 'remark', at: { line: 3, character: 0 }, text: 'x' } as const;
    assert.match(
      words(actOnReview({ ...reviewed, reviews: [review] }, remark, hand)),
      /^`a b\.review\.yaml` cannot be read to its end \(.+\); expected it to be mended first$/,
    );
    const record = { ...reviewed.record, document: parseDocument('swing', text + torn) as SwingRecord };
    assert.match(
      words(actOnReview({ ...reviewed, record }, { kind: 'signOff' }, hand)),
      /^`a\.swing\.yaml` cannot be read to its end/,
    );
    assert.equal(actOnReview({ ...reviewed, record }, remark, hand).kind, 'edits');
  });

  it('nothing is remarked where nothing stands', () => {
    assert.deepEqual(findReview(reviewed).lines, [1, 3]);
    assert.equal(at(0).kind, 'refused');
    assert.equal(at(2).kind, 'refused');
  });
});
