// What a workspace has of its own gets its new name in every file, in expressions too, and nothing else changes.
import assert from 'node:assert/strict';
import { applyEdits, rename } from '../../src/analysis/renaming.ts';
import { findRenamed, prepareRename } from '../../src/language/index.ts';
import { cardsIn, cursorAt, lessons } from './practice.ts';

const files: Readonly<Record<string, string>> = {
  'swingwright.yaml': `swingwright: 1
severities: { own/wide: hint }
quantities:
  delivery.wobble: # the wobble of delivery.wobble
    { title: Wobble, unit: deg, bounds: 0..9 deg, uncertainty: 1 deg }
  delivery.wobble_two: { like: delivery.wobble }
  checkpoints.rib_turn: { like: checkpoints.shoulder_turn, at: [top, impact] }
  checkpoints.chest_turn: { like: checkpoints.rib_turn, at: [top] }
  flight.hang: { unit: s, bounds: 0..20 s, uncertainty: 0.1 s }
derived:
  "delivery.rock": { is: delivery.wobble + 1 deg, like: delivery.wobble }
relations:
  alike: { says: delivery.wobble ≈ delivery.wobble_two ± 1 deg }
checks:
  wide: { when: delivery.wobble > 4 deg, message: "It is {delivery.wobble}.", at: delivery.wobble }
show: { delivery.wobble: rad, flight.hang: ms }
shots: { columns: { Up: hang, Aloft (s): { quantity: flight.hang, unit: s } } }
`,
  'a.swing.yaml': `swing: 1
checkpoints: { top: { rib_turn: 80 deg }, impact: { 'rib_turn': 20 deg } }
delivery: { "wobble": [3 deg, { value: 4 deg }], path: 2 deg right } # accept[own/wide]: as it is
goals: [{ carry: 100 m, hang: 5 s }]
shots: [{ hang: 5 s }]
plan: [{ change: delivery.wobble, to: 1 deg, proof: delivery.rock < 2 deg and checkpoints.top.rib_turn > 70 deg }]
predicted: { delivery.wobble: 1 deg ± 1 deg by model }
`,
  'iron.template.yaml': "template: 1\ndelivery: { 'wobble': 0..2 deg }\n",
  'house.faults.yaml': `faults: 1
book:
  shaky:
    evidence: [delivery.wobble > 3 deg, "delivery.wobble - delivery.wobble_two > 1 deg"]
    tends_to: [{ effect: delivery.path, direction: right, size: 1 deg per 1 deg, of: delivery.wobble }]
    changes: [{ change: delivery.wobble, to: 1 deg }]
`,
};

function renamed(
  name: string,
  word: string,
  to: string,
  { after = '', of = files }: { after?: string; of?: typeof files } = {},
): Record<string, string> | string {
  const { analysis, position } = cursorAt(name, word, after, of);
  const renaming = rename(findRenamed(analysis, position), to, cardsIn(of));
  if (renaming.kind === 'refused') return renaming.reason;
  return Object.fromEntries(renaming.files.map((file) => [file.uri.replace(lessons, ''), applyEdits(file)]));
}

function refusal(answer: Record<string, string> | string): string {
  return typeof answer === 'string' ? answer : `no refusal, but ${Object.keys(answer).join()}`;
}

/** Every file, with each of these words replaced wherever it stands, but in comments and in the names of others. */
function replaced(pattern: RegExp, by: string): Record<string, string> {
  return Object.fromEntries(
    Object.entries(files).flatMap(([name, text]) => {
      const changed = text.replace(pattern, by);
      return changed === text ? [] : [[name, changed]];
    }),
  );
}

describe('renaming an own quantity', () => {
  const expected = replaced(/(?<!wobble of delivery\.)\bwobble\b(?!:? of)/g, 'shake');

  it('changes its declaration, entries, windows, expressions, messages and predictions, and no comment', () => {
    assert.deepEqual(Object.keys(expected), Object.keys(files));
    assert.deepEqual(renamed('swingwright.yaml', 'delivery.wobble', 'delivery.shake'), expected);
    assert.match(expected['swingwright.yaml']!, /# the wobble of delivery\.wobble\n/);
  });

  it('may begin wherever it is mentioned, with the key alone or the whole id', () => {
    assert.deepEqual(renamed('a.swing.yaml', 'wobble', 'shake'), expected);
    assert.deepEqual(renamed('iron.template.yaml', 'wobble', 'delivery.shake'), expected);
    assert.deepEqual(renamed('house.faults.yaml', 'delivery.wobble', 'shake', { after: 'of' }), expected);
    assert.deepEqual(renamed('swingwright.yaml', 'delivery.wobble', 'shake', { after: 'It is {' }), expected);
  });

  it('offers what is written there to be typed over', () => {
    const placeOf = (name: string, word: string): unknown => {
      const { analysis, position } = cursorAt(name, word, '', files);
      return prepareRename(analysis, findRenamed(analysis, position), cardsIn(files));
    };
    assert.equal((placeOf('a.swing.yaml', 'wobble') as { placeholder: string }).placeholder, 'wobble');
    assert.equal(
      (placeOf('house.faults.yaml', 'delivery.wobble') as { placeholder: string }).placeholder,
      'delivery.wobble',
    );
  });

  it('changes it at all its checkpoints, and a derived one and one of shots like others', () => {
    assert.deepEqual(
      renamed('a.swing.yaml', 'rib_turn', 'checkpoints.top.cage_turn'),
      replaced(/rib_turn/g, 'cage_turn'),
    );
    assert.deepEqual(renamed('swingwright.yaml', 'delivery.rock', 'roll'), replaced(/\brock\b/g, 'roll'));
    assert.deepEqual(renamed('a.swing.yaml', 'hang', 'aloft'), replaced(/\bhang\b/g, 'aloft'));
  });

  it('refuses another place, a name that is taken or that is none, and a quantity of the format', () => {
    const said = (to: string): string => refusal(renamed('a.swing.yaml', 'wobble', to));
    assert.match(said('flight.shake'), /^Found `flight\.shake`; expected `delivery\.` and a key/);
    assert.match(said('wobble_two'), /^`delivery\.wobble_two` is known already/);
    assert.match(said('path'), /^`delivery\.path` is known already/);
    assert.match(said('low_point'), /^`delivery\.low_point\.ahead` is known already/);
    for (const to of ['Wobble', '2x', 'a b', 'é', 'a-b'])
      assert.match(said(to), /expected a key in small letters/, to);
    assert.match(refusal(renamed('a.swing.yaml', 'path', 'way')), /is a quantity of the format/);
    assert.deepEqual(renamed('a.swing.yaml', 'wobble', 'wobble'), {});
  });

  it('refuses where an expression is written in a way of its own, and changes nothing then', () => {
    const of = {
      ...files,
      'odd.faults.yaml':
        'faults: 1\nbook: { odd: { evidence: "delivery.wobble > 1 deg \\x61nd delivery.wobble < 3 deg" } }\n',
    };
    assert.match(
      refusal(renamed('a.swing.yaml', 'wobble', 'shake', { of })),
      /cannot be replaced in `odd\.faults\.yaml`/,
    );
  });

  it('refuses where its declaration was not looked through', () => {
    const { analysis, position } = cursorAt('a.swing.yaml', 'wobble', '', files);
    const cards = cardsIn(files).filter(({ kind }) => kind !== 'workspace');
    const renaming = rename(findRenamed(analysis, position), 'shake', cards);
    assert.equal(renaming.kind, 'refused');
  });
});

describe('renaming an own check or relation', () => {
  it('changes a check where its code is accepted or made quieter', () => {
    const expected = replaced(/\bwide\b/g, 'too-wide');
    assert.deepEqual(Object.keys(expected), ['swingwright.yaml', 'a.swing.yaml']);
    assert.deepEqual(renamed('swingwright.yaml', 'wide', 'too-wide', { after: 'checks:' }), expected);
    assert.deepEqual(renamed('a.swing.yaml', 'wide', 'too-wide'), expected);
    assert.match(refusal(renamed('a.swing.yaml', 'wide', 'Too wide')), /expected a name in small letters/);
  });

  it('changes a relation, and refuses one that stands there already', () => {
    assert.deepEqual(renamed('swingwright.yaml', 'alike', 'same'), replaced(/\balike\b/g, 'same'));
    const two = {
      ...files,
      'swingwright.yaml': files['swingwright.yaml']!.replace(
        'relations:\n',
        'relations:\n  same: { says: delivery.rock ≈ 2 * delivery.wobble ± 1 deg }\n',
      ),
    };
    assert.match(
      refusal(renamed('swingwright.yaml', 'alike', 'same', { of: two })),
      /stands in `swingwright\.yaml` already/,
    );
  });
});
