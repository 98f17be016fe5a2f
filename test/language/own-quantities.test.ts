// A quantity of a workspace's own is found, led to and highlighted like any other.
import assert from 'node:assert/strict';
import { cardsOf, type CardCache } from '../../src/analysis/cards.ts';
import type { FileState } from '../../src/analysis/result.ts';
import { findDefinitions, findHighlights, findMention, findOccurrences } from '../../src/language/index.ts';
import { cardsIn, cursorAt, shown } from './practice.ts';

const files = {
  'swingwright.yaml': `swingwright: 1
quantities:
  delivery.wobble:
    { title: Wobble, unit: deg, bounds: 0..9 deg, uncertainty: 1 deg }
  delivery.shake: { like: delivery.wobble }
derived:
  "delivery.rock": { is: delivery.wobble + 1 deg, like: delivery.wobble }
relations:
  alike: { says: delivery.wobble ≈ delivery.shake ± 1 deg }
checks:
  much: { when: delivery.wobble > 4 deg, message: "It is {delivery.wobble}.", at: delivery.wobble }
show: { delivery.wobble: rad }
`,
  'a.swing.yaml': `swing: 1
delivery: { wobble: 3 deg, path: 2 deg right }
plan: [{ change: delivery.wobble, to: 1 deg, proof: delivery.rock < 2 deg }]
`,
  'iron.template.yaml': 'template: 1\ndelivery: { wobble: 0..2 deg }\n',
  'house.faults.yaml': 'faults: 1\nbook: { shaky: { evidence: delivery.wobble > 3 deg } }\n',
};

const page = (): string => 'page:';

function leadsTo(
  name: string,
  word: string,
  after = '',
  of: Readonly<Record<string, string>> = files,
): string[] {
  const { analysis, position } = cursorAt(name, word, after, of);
  return findDefinitions(analysis, position, page).map(({ targetUri, targetSelectionRange }) =>
    shown(targetUri, targetSelectionRange, of),
  );
}

describe('a quantity of the workspace', () => {
  it('leads from its entry, from a template and from a fault book to where the workspace says what it is', () => {
    const definition = ['swingwright.yaml:3: delivery.wobble'];
    assert.deepEqual(leadsTo('a.swing.yaml', 'wobble'), definition);
    assert.deepEqual(leadsTo('iron.template.yaml', 'wobble'), definition);
    assert.deepEqual(leadsTo('house.faults.yaml', 'delivery.wobble'), definition);
  });

  it('leads from a plan to its entry in the record first', () => {
    assert.deepEqual(leadsTo('a.swing.yaml', 'delivery.wobble', 'change'), [
      'a.swing.yaml:2: wobble',
      'swingwright.yaml:3: delivery.wobble',
    ]);
    assert.deepEqual(leadsTo('a.swing.yaml', 'delivery.rock'), ['swingwright.yaml:7: "delivery.rock"']);
  });

  it('leads there from every section of the workspace file', () => {
    for (const after of ['shake: { like:', 'is:', 'says:', 'when:', 'is {', 'at:', 'show:'])
      assert.deepEqual(
        leadsTo('swingwright.yaml', 'delivery.wobble', after),
        ['swingwright.yaml:3: delivery.wobble'],
        after,
      );
  });

  it('leads nowhere where the workspace does not have it', () => {
    const without = { ...files, 'swingwright.yaml': 'swingwright: 1\n' };
    assert.deepEqual(leadsTo('house.faults.yaml', 'delivery.wobble', '', without), []);
  });

  it('is found in every file, from wherever one asks', () => {
    const all = [
      'a.swing.yaml:2: wobble',
      'a.swing.yaml:3: delivery.wobble',
      'house.faults.yaml:2: delivery.wobble',
      'iron.template.yaml:2: wobble',
      'swingwright.yaml:11: delivery.wobble',
      'swingwright.yaml:11: delivery.wobble',
      'swingwright.yaml:11: delivery.wobble',
      'swingwright.yaml:12: delivery.wobble',
      'swingwright.yaml:3: delivery.wobble',
      'swingwright.yaml:5: delivery.wobble',
      'swingwright.yaml:7: delivery.wobble',
      'swingwright.yaml:7: delivery.wobble',
      'swingwright.yaml:9: delivery.wobble',
    ];
    for (const [name, word] of [
      ['swingwright.yaml', 'delivery.wobble'],
      ['a.swing.yaml', 'wobble'],
    ] as const) {
      const { analysis, position } = cursorAt(name, word, '', files);
      const found = findOccurrences(findMention(analysis, position)!, cardsIn(files), {
        includeDeclaration: true,
      });
      assert.deepEqual(found.map(({ uri, range }) => shown(uri, range, files)).sort(), all);
    }
  });

  it('is highlighted in the workspace file, its definition as written to', () => {
    const { analysis, position } = cursorAt('swingwright.yaml', 'delivery.shake', '', files);
    assert.deepEqual(
      findHighlights(analysis, position)!.map(({ range, kind }) => [range.start.line, kind]),
      [
        [4, 3],
        [8, 2],
      ],
    );
  });

  it('is read in each file with the workspace that the file is in, and anew once that has changed', async () => {
    const texts = new Map<string, string>([
      ['file:///one/swingwright.yaml', files['swingwright.yaml']],
      ['file:///one/a.swing.yaml', files['a.swing.yaml']],
      ['file:///two/swingwright.yaml', 'swingwright: 1\n'],
      ['file:///two/a.swing.yaml', files['a.swing.yaml']],
    ]);
    const state = (uri: string): FileState => {
      const text = texts.get(uri);
      return text === undefined ? { kind: 'missing' } : { kind: 'text', text };
    };
    const cards: CardCache = new Map();
    const entries = async (): Promise<string[]> => {
      const found = await cardsOf(['file:///one/a.swing.yaml', 'file:///two/a.swing.yaml'], {
        files: new Map(),
        load: (uri) => Promise.resolve(state(uri)),
        signal: new AbortController().signal,
        rest: () => Promise.resolve(),
        cards,
      });
      return found.flatMap(({ uri, mentions }) =>
        mentions.flatMap(({ role, thing }) => (role === 'entry' && /wob/.test(thing.name) ? [uri] : [])),
      );
    };
    assert.deepEqual(await entries(), ['file:///one/a.swing.yaml']);
    texts.set('file:///one/swingwright.yaml', 'swingwright: 1\n');
    assert.deepEqual(await entries(), []);
    texts.set('file:///two/swingwright.yaml', files['swingwright.yaml']);
    assert.deepEqual(await entries(), ['file:///two/a.swing.yaml']);
  });
});
