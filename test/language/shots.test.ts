// What an editor is told of shots: the words behind their key, the hover, and the offer to take the typical one.
import assert from 'node:assert/strict';
import { findActions, findHints, findHover, type ActionRequest } from '../../src/language/index.ts';
import { marked } from '../marked.ts';
import { analysed, everywhere } from './analysed.ts';

const files = {
  'shots.csv': `carry,start,finish
168,1 right,3 right
171,2 right,6 right
165,0,1 left
169,1 right,2 right
64,0,0
166,1 right,4 right
`,
};
const none = {
  units: false,
  faceToPath: false,
  lowPoint: false,
  flight: false,
  shots: false,
  windows: false,
  faults: false,
};

function hintsIn(text: string): string[] {
  return findHints(analysed(text, { files }), everywhere, { ...none, shots: true }).map(
    ({ position, label }) => `${text.split('\n')[position.line]!.slice(0, position.character)}⟦${label}⟧`,
  );
}

describe('shots in the editor', () => {
  it('are summed up behind their key', () => {
    // Mean 839/5 and 14/5; standard deviations √(22.8/4) and √(26.8/4).
    assert.deepEqual(hintsIn('swing: 1\nshots: shots.csv # all\n'), [
      'shots: shots.csv # all⟦6 shots (1 far out): carry 167.8 m ± 2.4 m, finish 2.8 m right ± 2.6 m⟧',
    ]);
    assert.deepEqual(hintsIn('swing: 1\nshots:\n  - { carry: 168 m }\n'), ['shots:⟦1 shot: carry 168 m⟧']);
  });

  it('have no hint where none can be read', () => {
    assert.deepEqual(hintsIn('swing: 1\nshots: other.csv\n'), []);
    assert.deepEqual(hintsIn('swing: 1\nshots: []\n'), []);
  });

  it('tell in the hover how many, mean, spread, what was left out and which is typical', () => {
    for (const source of ['swing: 1\nsh$0ots: shots.csv\n', 'swing: 1\nshots: sho$0ts.csv\n']) {
      const { text, position } = marked(source);
      const hover = findHover(analysed(text, { files }), position)!.contents.value;
      assert.match(hover, /^\*\*6 shots\*\*/);
      assert.match(hover, /Carry: 167\.8 m ± 2\.4 m/);
      assert.match(hover, /Start direction: 1\.0 deg right ± 0\.7 deg|Start.*: 1\.0 deg right/);
      assert.match(hover, /19 in 20 such shots come down in an ellipse/);
      assert.match(hover, /left out: shot 5\./);
      assert.match(hover, /Typical: shot 1\./);
      assert.ok(hover.split('\n').length <= 12);
    }
  });

  it('offer the typical shot on `shots` and `flight`, without anything being wrong, and nowhere else', () => {
    const record = 'swing: 1\nflight: { carry: 167 m }\nshots: shots.csv\n';
    const offered = (line: number): string[] => {
      const at = { line, character: 1 };
      const request: ActionRequest = {
        range: { start: at, end: at },
        version: 3,
        edits: 'plain',
        explanation: () => undefined,
        textOf: () => undefined,
      };
      return findActions(analysed(record, { files }), request)
        .filter(({ kind }) => kind === 'refactor.rewrite')
        .map(
          ({ title, edit }) => `${title}: ${edit.documentChanges.map(({ edits }) => edits.length).join()}`,
        );
    };
    assert.deepEqual([0, 1, 2].map(offered), [
      [],
      ['Take the typical shot (shot 1): 2'],
      ['Take the typical shot (shot 1): 2'],
    ]);
  });
});
