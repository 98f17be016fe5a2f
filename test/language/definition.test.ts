// Each name leads to where that which it stands for is made.
import assert from 'node:assert/strict';
import { findDefinitions } from '../../src/language/index.ts';
import { cursorAt, practice, shown, type Cursor } from './practice.ts';

const page = (name: string, record: string | undefined): string =>
  `page:${name}${record === undefined ? '' : `?${record}`}`;

function leadsTo({ analysis, position, files }: Cursor): string[] {
  return findDefinitions(analysis, position, page).map(({ targetUri, targetSelectionRange }) =>
    shown(targetUri, targetSelectionRange, files),
  );
}

describe('a name leads', () => {
  it('from a stated fault to its entry in the book, the nearest book first', () => {
    assert.deepEqual(leadsTo(cursorAt('a.swing.yaml', 'weight-back')), [
      'house.faults.yaml:4: weight-back',
      'base.faults.yaml:3: weight-back',
    ]);
  });

  it('from a reason to the stated fault, else to the book', () => {
    assert.deepEqual(leadsTo(cursorAt('a.swing.yaml', 'weight-back', 'because')), [
      'a.swing.yaml:12: weight-back',
    ]);
    assert.deepEqual(leadsTo(cursorAt('a.swing.yaml', 'handle-trails')), [
      'base.faults.yaml:4: handle-trails',
    ]);
  });

  it('from a fault in a book to itself and to the one that it stands for', () => {
    assert.deepEqual(leadsTo(cursorAt('house.faults.yaml', 'weight-back')), [
      'house.faults.yaml:4: weight-back',
      'base.faults.yaml:3: weight-back',
    ]);
  });

  it('from a reference to its file', () => {
    for (const name of ['mira.student.yaml', 'iron.template.yaml', 'house.faults.yaml'])
      assert.deepEqual(leadsTo(cursorAt('a.swing.yaml', name)), [shown(`file:///lessons/${name}`, top)]);
  });

  it('from a club to its line in the bag, in records and in goals', () => {
    assert.deepEqual(leadsTo(cursorAt('b.swing.yaml', 'seven iron')), ['mira.student.yaml:6: seven iron']);
    assert.deepEqual(leadsTo(cursorAt('mira.student.yaml', 'seven iron', 'club: ')), [
      'mira.student.yaml:6: seven iron',
    ]);
  });

  it('shows all of the entry beside the text', () => {
    const { analysis, position } = cursorAt('b.swing.yaml', 'seven iron');
    const [link] = findDefinitions(analysis, position, page);
    assert.equal(
      shown(link!.targetUri, link!.targetRange),
      'mira.student.yaml:6: seven iron: { kind: iron, loft: 33 deg }',
    );
    assert.equal(shown(analysis.uri, link!.originSelectionRange), 'b.swing.yaml:4: seven iron');
  });

  it('from the quantity of a plan to its entry in the record', () => {
    assert.deepEqual(leadsTo(cursorAt('a.swing.yaml', 'checkpoints.impact', 'change')), [
      'a.swing.yaml:9: lead_pressure',
    ]);
  });

  it('from a quantity without an entry, in an expression or a plan, to its page', () => {
    const files = {
      ...practice,
      'a.swing.yaml': practice['a.swing.yaml']!.replace(
        'change: checkpoints.impact',
        'change: checkpoints.address',
      ),
    };
    assert.deepEqual(leadsTo(cursorAt('a.swing.yaml', 'address.lead', '', files)), [
      'page:checkpoints.address.lead_pressure?a.swing.yaml:1: ',
    ]);
    assert.deepEqual(leadsTo(cursorAt('house.faults.yaml', 'impact.lead')), [
      'page:checkpoints.impact.lead_pressure:1: ',
    ]);
    assert.deepEqual(leadsTo(cursorAt('house.faults.yaml', 'low_point')), [
      'page:delivery.low_point.ahead:1: ',
    ]);
  });

  it('from a miss to the stated fault that explains it, else to its page', () => {
    assert.deepEqual(leadsTo(cursorAt('a.swing.yaml', 'heavy')), ['house.faults.yaml:4: weight-back']);
    const files = { ...practice, 'a.swing.yaml': practice['a.swing.yaml']!.replace('heavy', 'slice') };
    assert.deepEqual(leadsTo(cursorAt('a.swing.yaml', 'slice', '', files)), ['page:slice:1: ']);
  });

  it('from the code in an accepting comment and in the settings to its page', () => {
    const files = {
      'd.swing.yaml': 'swing: 1\ndelivery:\n  path: 30 deg right # accept[outside-practice]: so it was\n',
      'swingwright.yaml': 'swingwright: 1\nseverities: { outside-practice: off }\n',
    };
    for (const name of Object.keys(files))
      assert.deepEqual(
        leadsTo(cursorAt(name, 'outside-practice', '', files)),
        ['page:outside-practice:1: '],
        name,
      );
  });

  it('nowhere from words that stand for nothing, and from a fault in no book', () => {
    const files = {
      ...practice,
      'a.swing.yaml': practice['a.swing.yaml']!.replace('fault: weight-back', 'fault: unheard-of'),
    };
    assert.deepEqual(leadsTo(cursorAt('a.swing.yaml', 'unheard-of', '', files)), []);
    assert.deepEqual(leadsTo(cursorAt('a.swing.yaml', 'seen')), []);
    assert.deepEqual(
      leadsTo(cursorAt('a.swing.yaml', 'hybrid', 'club: ', { 'a.swing.yaml': practice['a.swing.yaml']! })),
      [],
    );
  });
});

const top = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
