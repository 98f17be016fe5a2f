// Proposals in the workspace file know its sections, also where the text is half typed.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import { marked } from '../marked.ts';
import { practice, snapshotWith } from '../samples.ts';
import { itemsAt, proposed, written } from './proposals.ts';

const own = 'swingwright: 1\nquantities: { delivery.wobble: { like: delivery.path } }\n';

function labels(source: string): string[] {
  return proposed('swingwright.yaml', own + source).items.map(({ label }) => label);
}

describe('proposals in the workspace file', () => {
  it('are quantities and functions in a derived quantity, a relation and a check, own ones included', () => {
    for (const source of [
      'derived:\n  delivery.rock:\n    is: $0',
      'derived:\n  delivery.rock:\n    is: 2 * del$0',
      'derived: { delivery.rock: { is: abs(del$0',
      'relations:\n  alike:\n    says: del$0',
      'relations:\n  alike:\n    says: delivery.path ≈ $0',
      'checks:\n  much:\n    when: $0',
    ]) {
      const found = labels(source);
      assert.ok(found.includes('delivery.wobble'), source);
      assert.ok(found.includes('median'), source);
    }
  });

  it('are the signs of a relation, each where it belongs, and none of a condition', () => {
    const signs = (says: string): string[] =>
      labels(`relations: { r: { says: ${says}$0 } }`).filter((label) =>
        /^(?:[^\w%°.]+|and|or|not)$/.test(label),
      );
    assert.deepEqual(signs('delivery.face '), ['≈', '+', '-', '*', '/']);
    assert.deepEqual(signs('2 * delivery.face '), ['≈', '+', '-', '*', '/']);
    assert.deepEqual(signs('delivery.face ≈ delivery.path '), ['±', '+', '-', '*', '/']);
    assert.deepEqual(signs('delivery.face = delivery.path ± 1 '), ['+', '-', '*', '/']);
    assert.deepEqual(signs('delivery.face ≈ delivery.path ± 1 deg '), ['+', '-', '*', '/']);
    assert.deepEqual(signs(''), []);
  });

  it('are quantities behind `like` and behind the `at` of a check, and checkpoints behind that of a quantity', () => {
    assert.ok(labels('derived:\n  delivery.rock:\n    like: del$0').includes('delivery.wobble'));
    const at = labels('checks:\n  much:\n    at: $0');
    assert.ok(at.includes('delivery.wobble') && !at.includes('impact'));
    const places = 'swingwright: 1\nquantities:\n  checkpoints.heel:\n    at: [$0]';
    assert.ok(proposed('swingwright.yaml', places).items.some(({ label }) => label === 'impact'));
  });

  it('are dimensions and quantities below `show`', () => {
    const found = labels('show:\n  $0');
    assert.ok(found.includes('length') && found.includes('delivery.wobble'));
  });

  it('are all units behind `unit`, those of the quantity that it is like first', () => {
    const first = 'swingwright: 1\nquantities:\n  delivery.rock: { like: delivery.path, unit: $0 }\n';
    const found = proposed('swingwright.yaml', first).items.map(({ label }) => label);
    assert.deepEqual(found.slice(0, 2), ['deg', 'rad']);
    assert.ok(found.includes('cm') && found.includes('ratio'));
  });

  it('are units and own directions in windows, and units alone in uncertainties', () => {
    const declared = (line: string): string[] =>
      proposed(
        'swingwright.yaml',
        `swingwright: 1\nquantities:\n  delivery.rock:\n    unit: cm\n    directions: { open: positive, shut: negative }\n    ${line}\n`,
      ).items.map(({ label }) => label);
    assert.ok(declared('bounds: 1..5 $0').includes('cm'));
    assert.ok(!declared('bounds: 1..5 $0').includes('deg'));
    assert.ok(declared('practice: 1..5 cm $0').includes('open'));
    assert.ok(declared('uncertainty: 1 $0').includes('mm'));
    assert.ok(declared('uncertainty: { radar: 1 $0 }').includes('mm'));
    assert.ok(!declared('uncertainty: 1 cm $0').includes('open'));
    const like =
      'swingwright: 1\nquantities: { delivery.rock: { like: delivery.face, uncertainty: 1 $0 } }\n';
    assert.ok(proposed('swingwright.yaml', like).items.some(({ label }) => label === 'deg'));
    assert.deepEqual(labels('methods: { wand: { uncertainty: { length: 2 $0 } } }').slice(0, 2), [
      'mm',
      'cm',
    ]);
  });

  it('are units for what is shown and for columns, and quantities of shots for columns', () => {
    assert.deepEqual(labels('show: { flight.carry: $0 }'), labels('show: { length: $0 }'));
    assert.ok(labels('show: { flight.carry: $0 }').includes('yd'));
    assert.ok(labels('shots: { columns: { Flown: { quantity: flight.carry, unit: $0 } } }').includes('yd'));
    assert.ok(!labels('shots: { columns: { Flown: { quantity: flight.carry, unit: $0 } } }').includes('deg'));
    const column = labels('shots:\n  columns:\n    Flown: $0');
    assert.ok(
      column.includes('flight.carry') && column.includes('ignore') && column.includes('delivery.wobble'),
    );
    assert.ok(!column.includes('checkpoints.impact.head'));
  });

  it('are the beginnings of ids below `quantities` and `derived`, with the name to fill in', () => {
    const source = 'swingwright: 1\nderived:\n  del$0\n';
    const { text, items } = proposed('swingwright.yaml', source);
    const one = items.find(({ label }) => label === 'delivery.')!;
    assert.equal(written(text, one), 'swingwright: 1\nderived:\n  delivery.name:\n    \n');
    assert.ok(items.some(({ label }) => label === 'checkpoints.impact.'));
    const plain = proposed('swingwright.yaml', source, { snippets: false });
    assert.equal(
      written(
        text,
        plain.items.find(({ label }) => label === 'delivery.')!,
      ),
      'swingwright: 1\nderived:\n  delivery.\n',
    );
  });

  it('are ids between the braces of a message, those of its condition first', () => {
    const { text, items } = proposed(
      'swingwright.yaml',
      'swingwright: 1\nchecks:\n  far: { when: delivery.path > 3 deg, message: "It says {del$0 here" }\n',
    );
    assert.equal(items[0]?.label, 'delivery.path');
    assert.match(written(text, items[0]), /"It says \{delivery\.path\} here"/);
    assert.deepEqual(labels('checks: { far: { message: "It says $0" } }'), []);
    const closed = proposed('swingwright.yaml', 'swingwright: 1\nchecks:\n  far:\n    message: Found {$0}\n');
    assert.match(written(closed.text, closed.items[0]!), /message: Found \{[\w.]+\}\n/);
  });

  it('are codes that can be accepted in a comment, those of its line first, own ones among them', () => {
    const files = {
      [`${practice}swingwright.yaml`]:
        'swingwright: 1\nchecks: { steep: { when: delivery.attack < -10 deg, message: Steep. } }\n',
    };
    const codes = (source: string): readonly string[] => {
      const { text, offset } = marked(source);
      const uri = `${practice}a.swing.yaml`;
      return itemsAt(analyse(uri, snapshotWith({ ...files, [uri]: text })), offset).map(({ label }) => label);
    };
    const attack = '  attack: 15 deg down';
    for (const source of [
      `swing: 1\ndelivery:\n${attack} # accept[$0\n`,
      `swing: 1\ndelivery:\n  # accept[$0\n\n  # steep\n${attack}\n`,
      `swing: 1\ndelivery:\n${attack} # accept[bare-number, $0]\n`,
    ]) {
      const found = codes(source);
      assert.deepEqual([...found.slice(0, 2)].sort(), ['outside-practice', 'own/steep'], source);
      assert.ok(!found.includes('duplicate-key') && !found.includes('yaml-syntax'), source);
      assert.ok(found.includes('agreement-not-judged'), source);
    }
    assert.deepEqual(
      codes(`swing: 1\ndelivery:\n${attack} # accept[own/st$0\n`).filter((code) => code.startsWith('own/')),
      ['own/steep'],
    );
  });

  it('are none behind the end of the document, and know the first key behind a byte order mark', () => {
    for (const end of ['...\n$0', '---\n$0', '...\n\n  $0', '---\nswing: 1\n$0'])
      assert.deepEqual(proposed('a.swing.yaml', `swing: 1\n${end}`).items, [], end);
    assert.ok(proposed('a.swing.yaml', '# a\n---\n$0').items.length > 0);
    const marks = proposed('a.swing.yaml', '\ufeffswing: 1\n$0').items.map(({ label }) => label);
    assert.ok(marks.includes('date') && !marks.includes('swing'));
  });

  it('are the codes of own checks below `severities`', () => {
    assert.equal(labels('checks: { far: { when: delivery.path > 3 deg } }\nseverities:\n  $0')[0], 'own/far');
  });

  it('go in as far as the file does', () => {
    const { text, items } = proposed(
      'swingwright.yaml',
      'swingwright: 1\nshots:\n    by: radar\n    col$0\n',
    );
    const one = items.find(({ label }) => label === 'columns')!;
    assert.equal(written(text, one), 'swingwright: 1\nshots:\n    by: radar\n    columns:\n        \n');
  });
});
