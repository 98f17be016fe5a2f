// Alt+Enter goes from entry to entry that has no value, in block and in flow style, and nowhere else.
import assert from 'node:assert/strict';
import { findNextEmpty } from '../../src/language/next-empty.ts';
import { marked } from '../marked.ts';

/** The text with `‸` where the cursor goes from `$0`, the space in place. */
function after(source: string, uri = 'file:///a.swing.yaml'): string | undefined {
  const { text, offset } = marked(source);
  const found = findNextEmpty(uri, text, offset);
  if (found === undefined) return undefined;
  const { at, needsSpace } = found;
  const head = needsSpace ? `${text.slice(0, at - 1)} ` : text.slice(0, at);
  return `${head}‸${text.slice(needsSpace ? at - 1 : at)}`;
}

/** The keys that are gone to from the top, until one comes again. */
function round(text: string, uri = 'file:///a.swing.yaml'): readonly string[] {
  const keys: string[] = [];
  const seen = new Set<number>();
  let now = text;
  for (let offset = 0; ;) {
    const found = findNextEmpty(uri, now, offset);
    if (found === undefined || seen.has(found.at)) return keys;
    seen.add(found.at);
    keys.push(/([\w"']+)\s*:\s*$/.exec(now.slice(0, found.at))?.[1] ?? '');
    if (found.needsSpace) now = `${now.slice(0, found.at - 1)} ${now.slice(found.at - 1)}`;
    offset = found.at;
  }
}

describe('the next empty entry', () => {
  it('is never in the text of notes, and is found between braces', () => {
    const text = `swing: 1
notes: |
  He said:
  Plan for June:
strike: { across: , height: }
delivery:
  path:
`;
    assert.deepEqual(round(text), ['across', 'height', 'path']);
  });

  it('is no section, list of mappings or mapping without its keys', () => {
    const text = `swing: 1
student:
checkpoints:
  impact:
flight:
goals:
faults:
  -
plan:
  - change:
    because:
conditions: {}
`;
    assert.deepEqual(round(text), ['student', 'change', 'because']);
  });

  it('leaves a space behind the colon, and one before a comment or a bracket', () => {
    const cases = [
      ['$0delivery:\n  path:\n', 'delivery:\n  path: ‸\n'],
      ['$0delivery:\n  path: \n', 'delivery:\n  path: ‸\n'],
      ['$0delivery:\n  path:   # later\n', 'delivery:\n  path: ‸  # later\n'],
      ['$0delivery:\n  path: # later\n', 'delivery:\n  path: ‸ # later\n'],
      ['$0delivery: { path: }\n', 'delivery: { path: ‸ }\n'],
      ['$0delivery: { path: , face: }\n', 'delivery: { path: ‸, face: }\n'],
      ['$0delivery: { "path":, face: 1 deg right }\n', 'delivery: { "path": ‸, face: 1 deg right }\n'],
      ['$0delivery:\r\n  path:\r\n', 'delivery:\r\n  path: ‸\r\n'],
    ];
    for (const [source, expected] of cases) assert.equal(after(source!), expected);
  });

  it('is a measurement that waits for its number, as a form leaves it', () => {
    const cases = [
      ['$0delivery:\n  path:  deg right by 3d camera\n', 'delivery:\n  path: ‸ deg right by 3d camera\n'],
      ['$0delivery:\n  path: right\n', 'delivery:\n  path: ‸ right\n'],
      ['$0delivery: { path: { value: deg right } }\n', 'delivery: { path: { value: ‸ deg right } }\n'],
      [
        '$0checkpoints:\n  impact:\n    lead_pressure: " %"\n',
        'checkpoints:\n  impact:\n    lead_pressure: "‸ %"\n',
      ],
    ];
    for (const [source, expected] of cases) assert.equal(after(source!), expected);
    assert.deepEqual(
      round('swing: 1\nshots: far.csv\ndelivery: { path: 2 deg right }\nflight: { shape: draw }\n'),
      [],
    );
  });

  it('goes on from the cursor, on its line too, and then from the top', () => {
    const flow = (cursor: string): string => `strike: { across: ${cursor}, height: }\ndelivery:\n  path: \n`;
    assert.match(after(flow('$0'))!, /height: ‸ }/);
    assert.match(after(`${flow('')}$0`)!, /across: ‸,/);
    assert.match(after('delivery:\n  path: $0\n  face: \n')!, /face: ‸/);
    assert.match(after('delivery:\n  path: \n  face: 2$0\n')!, /path: ‸/);
  });

  it('knows the keys of each kind of file, and a value that says that there is none', () => {
    assert.deepEqual(
      round('student: 1\nname:\nbag:\n  iron: { kind: , loft: }\n', 'file:///a.student.yaml'),
      ['name', 'kind', 'loft'],
    );
    assert.deepEqual(round('swing: 1\ndate: null\nclub: ~\n'), []);
    assert.equal(after('swing: 1\n$0'), undefined);
  });

  it('is none of any text that cannot be read', () => {
    for (const text of ['', ':', '{', '- :', 'a: &x { path: }\nb: *x\n', '? :\n', '\u0000:'])
      assert.doesNotThrow(() => findNextEmpty('untitled:1', text, 0), text);
  });
});
