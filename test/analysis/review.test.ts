// What the editor asks of a review: threads with their place today, harmless words, and edits that change nothing else.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import {
  remarkOn,
  reopenThread,
  replyTo,
  settleThread,
  signOff,
  takeSuggestion,
  type ReviewChange,
} from '../../src/analysis/review-edits.ts';
import { findReviewed, findReviews } from '../../src/analysis/review-files.ts';
import { reviewOf, type Reviewed } from '../../src/analysis/review.ts';
import type { ReviewFile, SwingRecord } from '../../src/record/document.ts';
import { anchorsOf } from '../../src/record/anchor.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { lesson } from '../record/lesson.ts';
import { applied } from '../checks/files.ts';
import '../seed.ts';

const folder = 'file:///lessons';
const record = `${folder}/a.swing.yaml`;
const ida = { author: 'Ida', time: '2026-06-02T10:00:00Z' };
const jon = { author: 'Jon', time: '2026-06-02T11:00:00Z' };

/** A folder held in memory. */
function kept(files: Record<string, string>) {
  const reach = {
    load: (uri: string) =>
      Promise.resolve(
        files[uri] === undefined
          ? ({ kind: 'missing' } as const)
          : ({ kind: 'text', text: files[uri] } as const),
      ),
    list: () => Promise.resolve(Object.keys(files)),
    signal: { throwIfAborted: () => undefined },
  };
  const of = (uri = record): Promise<Reviewed> =>
    findReviews({ uri, document: parseDocument('swing', files[uri]!) as SwingRecord }, builtIn, reach);
  const make = (change: ReviewChange): void => {
    assert.equal(change.kind, 'changed', JSON.stringify(change));
    if (change.kind !== 'changed') return;
    assert.equal(files[change.uri] === undefined, change.isNew);
    files[change.uri] = applied(files[change.uri] ?? '', change.edits);
  };
  return { files, reach, of, make };
}

describe('a review', () => {
  it('can be about every place of a record, and still is after edits above', async () => {
    const { files, of, make } = kept({ [record]: lesson });
    const places = [...anchorsOf((await of()).record.document).keys()];
    for (const about of places) make(remarkOn(await of(), { ...ida, about, text: `On ${about}` }));
    files[record] = `# one\n# two\n${lesson}`;
    const { threads } = reviewOf(await of());
    assert.equal(threads.length, places.length);
    assert.deepEqual(
      threads.filter(({ isChanged, range }) => isChanged || range === undefined),
      [],
    );
  });

  it('goes from open to answered, settled and open again', async () => {
    const { of, make } = kept({ [record]: lesson });
    make(remarkOn(await of(), { ...ida, about: 'delivery.attack', text: 'Sure?' }));
    const state = async (): Promise<string | undefined> => reviewOf(await of()).threads[0]?.state;
    const id = reviewOf(await of()).threads[0]!.id;
    assert.equal(await state(), 'open');
    make(replyTo(await of(), id, { ...jon, text: 'Yes.' }));
    assert.equal(await state(), 'answered');
    make(settleThread(await of(), id, { ...ida, time: '2026-06-02T12:00:00Z' }));
    assert.equal(await state(), 'settled');
    assert.equal(settleThread(await of(), id, ida).kind, 'refused');
    make(reopenThread(await of(), id, { ...jon, time: '2026-06-02T13:00:00Z' }));
    assert.equal(await state(), 'open');
  });

  it('takes a suggestion for every measured entry, leaving every other sign of the record', async () => {
    const { of } = kept({ [record]: lesson });
    const reviewed = await of();
    const { document } = reviewed.record;
    for (const [about, entry] of document.entries) {
      const { unit, directions } = entry.quantity;
      const suggests = `1.5 ${unit} ${directions[0]?.word ?? ''}`.trim();
      const own = kept({ [record]: lesson });
      const change = remarkOn(await own.of(), { ...ida, about, text: 'So?', suggests });
      if (change.kind === 'refused') {
        // In several lines, or where it cannot be.
        assert.match(change.reason, /several lines|cannot/);
        continue;
      }
      own.make(change);
      own.make(takeSuggestion(await own.of(), reviewOf(await own.of()).threads[0]!.id));
      const { start, end } = entry.valueSpan;
      assert.equal(own.files[record], lesson.slice(0, start) + suggests + lesson.slice(end));
      assert.equal(reviewOf(await own.of()).threads[0]?.isTaken, true);
    }
  });

  it('refuses a suggestion that would change more than its value', async () => {
    const { of } = kept({ [record]: lesson });
    for (const suggests of ['1 cm } # ', '1 cm, depth: 2 cm', '1 cm\ncl: x', '&a 1 cm', '', '2 kg'])
      assert.equal(
        remarkOn(await of(), { ...ida, about: 'ground.divot.starts', text: 'x', suggests }).kind,
        'refused',
        suggests,
      );
  });

  it('is signed off at what the record says', async () => {
    const { files, of, make } = kept({ [record]: lesson });
    make(signOff(await of(), ida));
    const isVoid = async (): Promise<boolean | undefined> => reviewOf(await of()).signOffs[0]?.isVoid;
    files[record] = lesson.replaceAll(/ +#.*$/gm, '');
    assert.equal(await isVoid(), false);
    files[record] = lesson.replace('3.5 deg down', '3.6 deg down');
    assert.equal(await isVoid(), true);
  });

  it('shows no words that could steer whoever shows them', async () => {
    const { of, make } = kept({ [record]: lesson });
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary', minLength: 1 }), async (words) => {
        const own = kept({ [record]: lesson });
        const change = remarkOn(await own.of(), {
          author: words,
          time: ida.time,
          about: 'club',
          text: `x${words}`,
        });
        own.make(change);
        for (const { author, text } of reviewOf(await own.of()).threads[0]!.comments)
          assert.doesNotMatch(
            author + text.replaceAll(/[\n\t]/g, ''),
            // eslint-disable-next-line no-control-regex
            /[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/,
          );
      }),
      { numRuns: 25 },
    );
    make(signOff(await of(), { author: '\u202eadI\n', time: ida.time }));
    assert.equal(reviewOf(await of()).signOffs[0]?.by, '\u{fffd}adI');
  });

  it('belongs to the record that was renamed, by its remarks, and to none where two fit', async () => {
    const { files, reach, of, make } = kept({
      [record]: lesson,
      [`${folder}/x.swing.yaml`]: 'swing: 1\nclub: x\n',
    });
    make(remarkOn(await of(), { ...ida, about: 'delivery.attack', text: 'Sure?' }));
    files[`${folder}/b.swing.yaml`] = lesson;
    delete files[record];
    const uri = `${folder}/a.review.yaml`;
    const review = { uri, document: parseDocument('review', files[uri]!) as ReviewFile };
    assert.equal((await findReviewed(review, reach))?.uri, `${folder}/b.swing.yaml`);
    assert.equal((await of(`${folder}/b.swing.yaml`)).reviews.length, 1);
    files[`${folder}/c.swing.yaml`] = lesson;
    assert.equal(await findReviewed(review, reach), undefined);
  });
});
