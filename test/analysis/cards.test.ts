// Cards of many files: made once for each text, only where the word can stand, and given up when nobody waits any more.
import assert from 'node:assert/strict';
import { cardsOf, type Archive, type CardCache } from '../../src/analysis/cards.ts';
import { occurrencesOf, wordOf } from '../../src/analysis/occurrences.ts';
import type { Thing } from '../../src/analysis/mentions.ts';
import type { FileState } from '../../src/analysis/result.ts';

const folder = 'file:///many/';
const count = 1000;

function thousandRecords(): Map<string, string> {
  const files = new Map([
    ['a.student.yaml', 'student: 1\nname: A\nbag: { driver: {}, wedge: {} }\n'],
    ['b.student.yaml', 'student: 1\nname: B\nbag: { driver: {} }\n'],
    ['house.faults.yaml', 'faults: 1\nbook: { stays-back: {}, stands-up: {} }\n'],
  ]);
  for (let i = 0; i < count; i += 1)
    files.set(
      `${i}.swing.yaml`,
      `swing: 1
student: ${i % 2 === 0 ? 'a' : 'b'}.student.yaml
club: ${i % 10 === 0 ? 'wedge' : 'driver'}
faults_from: house.faults.yaml
delivery: { path: ${i % 7} deg right, face: 1 deg right }
faults: [{ fault: ${i % 4 === 0 ? 'stays-back' : 'stands-up'} }]
`,
    );
  return new Map([...files].map(([name, text]) => [folder + name, text]));
}

function archiveOf(texts: ReadonlyMap<string, string>, cards: CardCache = new Map()) {
  let rests = 0;
  const reads: string[] = [];
  const archive: Archive = {
    files: { get: () => undefined },
    load: (uri) => {
      reads.push(uri);
      const text = texts.get(uri);
      return Promise.resolve<FileState>(text === undefined ? { kind: 'missing' } : { kind: 'text', text });
    },
    signal: { throwIfAborted: () => undefined },
    rest: () => Promise.resolve(void (rests += 1)),
    cards,
  };
  return { archive, reads, rests: () => rests };
}

const fault: Thing = { kind: 'fault', name: 'stays-back', book: `${folder}house.faults.yaml` };

describe('the cards of a thousand records', () => {
  const texts = thousandRecords();
  const uris = [...texts.keys()];

  it('find every occurrence of a fault and of one student’s club', async () => {
    const cards = await cardsOf(uris, archiveOf(texts).archive);
    assert.equal(cards.length, count + 3);
    assert.equal(occurrencesOf(fault, cards).length, count / 4 + 1);
    const wedge: Thing = { kind: 'club', name: 'wedge', student: `${folder}a.student.yaml` };
    assert.equal(occurrencesOf(wedge, cards).length, count / 10 + 1);
  });

  it('are made only of files that can hold the word, and of fault books', async () => {
    const { archive } = archiveOf(texts);
    const cards = await cardsOf(uris, archive, wordOf(fault));
    assert.equal(cards.length, count / 4 + 1);
    assert.equal(occurrencesOf(fault, cards).length, count / 4 + 1);
  });

  it('are kept while the text is the same', async () => {
    const { archive } = archiveOf(texts);
    const before = await cardsOf(uris, archive);
    const changed = new Map(texts).set(`${folder}7.swing.yaml`, 'swing: 1\n');
    const after = await cardsOf(uris, archiveOf(changed, archive.cards).archive);
    const anew = after.filter((card, place) => card !== before[place]);
    assert.deepEqual(
      anew.map(({ uri }) => uri),
      [`${folder}7.swing.yaml`],
    );
  });

  it('give others their turn, and are given up when nobody waits', async () => {
    const { archive, rests } = archiveOf(texts);
    await cardsOf(uris, archive);
    assert.ok(rests() > 5, String(rests()));
    let turns = 0;
    const cancelled = archiveOf(texts);
    const stop = {
      ...cancelled.archive,
      signal: {
        throwIfAborted: () => {
          if (turns > 1) throw new Error('given up');
        },
      },
      rest: () => Promise.resolve(void (turns += 1)),
    };
    await assert.rejects(cardsOf(uris, stop), /given up/);
    assert.ok(cancelled.reads.length < count / 2, String(cancelled.reads.length));
  });
});

describe('cards', () => {
  it('leave out what is no file of ours, what is gone and what cannot be read', async () => {
    const texts = new Map([
      [`${folder}a.swing.yaml`, 'swing: 1\n'],
      [`${folder}shots.csv`, 'carry\n'],
    ]);
    const { archive } = archiveOf(texts);
    const failing = {
      ...archive,
      load: (uri: string) => (uri.includes('bad') ? Promise.reject(new Error()) : archive.load(uri)),
    };
    const cards = await cardsOf(
      [...texts.keys(), `${folder}gone.swing.yaml`, `${folder}bad.swing.yaml`],
      failing,
    );
    assert.deepEqual(
      cards.map(({ uri }) => uri),
      [`${folder}a.swing.yaml`],
    );
  });

  it('find a word that YAML breaks over lines or writes in numbers', async () => {
    const student = `${folder}a.student.yaml`;
    const texts = new Map([
      [student, 'student: 1\nbag: { seven iron: {} }\n'],
      [`${folder}a.swing.yaml`, 'swing: 1\nstudent: a.student.yaml\nclub: seven\n  iron\n'],
      [`${folder}b.swing.yaml`, 'swing: 1\nstudent: a.student.yaml\nclub: "\\x73even ir\\u006fn"\n'],
    ]);
    const thing: Thing = { kind: 'club', name: 'seven iron', student };
    const cards = await cardsOf([...texts.keys()], archiveOf(texts).archive, wordOf(thing));
    assert.equal(occurrencesOf(thing, cards).length, 3);
  });
});
