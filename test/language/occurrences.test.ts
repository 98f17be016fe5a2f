// A thing is found wherever it is mentioned, and nothing that only bears the same name.
import assert from 'node:assert/strict';
import { cardOf } from '../../src/analysis/cards.ts';
import { occurrencesOf } from '../../src/analysis/occurrences.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { registryOf } from '../../src/record/workspace.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { findHighlights, findMention, findOccurrences } from '../../src/language/index.ts';
import { cardsIn, cursorAt, lessons, practice, shown, type Cursor } from './practice.ts';

function occurrences({ analysis, position, files }: Cursor, includeDeclaration = true): string[] {
  const mention = findMention(analysis, position);
  if (mention === undefined) return [];
  return findOccurrences(mention, cardsIn(files), { includeDeclaration })
    .map(({ uri, range }) => shown(uri, range, files))
    .sort();
}

describe('occurrences', () => {
  it('of a fault are those in the book, in records and in plans, also by way of a book that extends another', () => {
    const all = [
      'a.swing.yaml:12: weight-back',
      'a.swing.yaml:15: weight-back',
      'b.swing.yaml:6: weight-back',
      'base.faults.yaml:3: weight-back',
      'house.faults.yaml:4: weight-back',
    ];
    assert.deepEqual(occurrences(cursorAt('a.swing.yaml', 'weight-back')), all);
    assert.deepEqual(occurrences(cursorAt('base.faults.yaml', 'weight-back')), all);
    assert.deepEqual(
      occurrences(cursorAt('a.swing.yaml', 'weight-back'), false),
      all.filter((place) => !place.includes('.faults.')),
    );
  });

  it('of a fault of the same name in a book of its own are its own', () => {
    assert.deepEqual(occurrences(cursorAt('c.swing.yaml', 'weight-back')), [
      'c.swing.yaml:5: weight-back',
      'other.faults.yaml:2: weight-back',
    ]);
  });

  it('of a club are the bag, the goals and the records of that student', () => {
    assert.deepEqual(occurrences(cursorAt('mira.student.yaml', 'seven iron')), [
      'b.swing.yaml:4: seven iron',
      'mira.student.yaml:6: seven iron',
      'mira.student.yaml:7: seven iron',
    ]);
    assert.deepEqual(occurrences(cursorAt('c.swing.yaml', 'hybrid')), [
      'ansa.student.yaml:3: hybrid',
      'c.swing.yaml:3: hybrid',
    ]);
  });

  it('of a student are the records that name its file, from the file itself and from a record', () => {
    const records = ['a.swing.yaml:2: mira.student.yaml', 'b.swing.yaml:2: mira.student.yaml'];
    assert.deepEqual(occurrences(cursorAt('mira.student.yaml', 'Mira')), records);
    assert.deepEqual(occurrences(cursorAt('mira.student.yaml', 'student: 1')), records);
    assert.deepEqual(occurrences(cursorAt('b.swing.yaml', 'mira.student')), records);
  });

  it('of a template are the records that name its file', () => {
    assert.deepEqual(occurrences(cursorAt('iron.template.yaml', 'Iron from')), [
      'a.swing.yaml:5: iron.template.yaml',
    ]);
  });

  it('of a quantity are every entry, window, plan and expression', () => {
    assert.deepEqual(occurrences(cursorAt('a.swing.yaml', 'lead_pressure')), [
      'a.swing.yaml:15: checkpoints.impact.lead_pressure',
      'a.swing.yaml:9: lead_pressure',
      'house.faults.yaml:6: checkpoints.impact.lead_pressure',
      'iron.template.yaml:4: lead_pressure',
    ]);
  });

  it('of a quantity are columns of shots and quoted keys too', () => {
    const files = {
      'swingwright.yaml':
        'swingwright: 1\nshots: { columns: { Flown: { quantity: flight.carry }, "Far (m)": flight.total } }\n',
      'a.swing.yaml': 'swing: 1\nflight: { "carry": 150 m, total: 160 m }\nshots: [{ carry: 151 m }]\n',
    };
    assert.deepEqual(occurrences(cursorAt('a.swing.yaml', 'carry', '', files)), [
      'a.swing.yaml:2: carry',
      'a.swing.yaml:3: carry',
      'swingwright.yaml:2: flight.carry',
    ]);
    assert.deepEqual(occurrences(cursorAt('a.swing.yaml', 'total', '', files)).length, 2);
  });

  it('of an own quantity are those of its own folder, where another one declares the same id', () => {
    const own = 'swingwright: 1\nquantities: { delivery.wand: { like: delivery.face } }\n';
    const lesson = 'swing: 1\ndelivery: { wand: 1 deg right }\n';
    const cards = ['one', 'two'].flatMap((folder) => {
      const workspace = `${lessons}${folder}/swingwright.yaml`;
      const document = parseDocument('workspace', own);
      assert.ok(document.kind === 'workspace');
      const registry = registryOf(document);
      return [
        cardOf(workspace, document, { registry: builtIn, workspace }),
        cardOf(`${lessons}${folder}/a.swing.yaml`, parseDocument('swing', lesson, registry), {
          registry,
          workspace,
        }),
      ];
    });
    const thing = {
      kind: 'quantity',
      name: 'delivery.wand',
      workspace: `${lessons}two/swingwright.yaml`,
    } as const;
    assert.deepEqual(
      occurrencesOf(thing, cards).map(({ uri }) => uri.replace(lessons, '')),
      ['two/swingwright.yaml', 'two/a.swing.yaml'],
    );
  });

  it('are none of a word that stands for nothing', () => {
    assert.deepEqual(occurrences(cursorAt('a.swing.yaml', 'seen')), []);
  });

  it('come to an end where fault books go round in a circle', () => {
    const files = {
      'a.faults.yaml': 'faults: 1\nextends: b.faults.yaml\nbook: { x: {} }\n',
      'b.faults.yaml': 'faults: 1\nextends: a.faults.yaml\nbook: { x: {} }\n',
    };
    assert.deepEqual(occurrences(cursorAt('a.faults.yaml', 'x:', '', files)), [
      'a.faults.yaml:3: x',
      'b.faults.yaml:3: x',
    ]);
  });
});

describe('highlights', () => {
  it('mark every mention in the document, those that give a value as written', () => {
    const { analysis, position } = cursorAt('a.swing.yaml', 'lead_pressure');
    const found = findHighlights(analysis, position)!.map(({ range, kind }) => [
      shown(analysis.uri, range),
      kind,
    ]);
    assert.deepEqual(found, [
      ['a.swing.yaml:9: lead_pressure', 3],
      ['a.swing.yaml:15: checkpoints.impact.lead_pressure', 2],
    ]);
  });

  it('leave other words to the editor', () => {
    const { analysis, position } = cursorAt('a.swing.yaml', 'seen');
    assert.equal(findHighlights(analysis, position), null);
    assert.ok(practice['a.swing.yaml']);
  });
});
