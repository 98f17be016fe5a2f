// Quick fixes change what they say and nothing else.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { lineTableOf } from '../../src/analysis/positions.ts';
import { findActions, type ActionRequest } from '../../src/language/index.ts';
import { offsetAt } from '../../src/language/places.ts';
import type { CodeAction } from '../../src/language/shapes.ts';
import { marked } from '../marked.ts';
import { analysed, everywhere } from './analysed.ts';

const request: ActionRequest = {
  range: everywhere,
  version: 4,
  edits: 'plain',
  explanation: () => undefined,
  textOf: () => undefined,
};

function applied(text: string, action: CodeAction): string {
  const table = lineTableOf(text);
  const [change] = action.edit.documentChanges;
  const edits = [...(change?.edits ?? [])].sort(
    (a, b) => offsetAt(table, b.range.start) - offsetAt(table, a.range.start),
  );
  return edits.reduce((changed, edit) => {
    const words = 'newText' in edit ? edit.newText : edit.snippet.value;
    return (
      changed.slice(0, offsetAt(table, edit.range.start)) +
      words +
      changed.slice(offsetAt(table, edit.range.end))
    );
  }, text);
}

function at(source: string): { text: string; actions: CodeAction[] } {
  const { text, position } = marked(source);
  return {
    text,
    actions: findActions(analysed(text), { ...request, range: { start: position, end: position } }),
  };
}

describe('quick fixes', () => {
  it('write a unit out at the cursor, and name the version that they are for', () => {
    const { text, actions } = at('swing: 1\nflight:\n  carry: 171$0 # by eye\n');
    const fix = actions.find(({ isPreferred }) => isPreferred);
    assert.ok(fix);
    assert.equal(applied(text, fix), 'swing: 1\nflight:\n  carry: 171 m # by eye\n');
    assert.deepEqual(fix.edit.documentChanges[0]?.textDocument, {
      uri: 'file:///lessons/a.swing.yaml',
      version: 4,
    });
    assert.deepEqual(
      fix.diagnostics.map(({ code }) => code),
      ['bare-number'],
    );
  });

  it('are not offered away from the finding', () => {
    const { actions } = at('swi$0ng: 1\nflight:\n  carry: 171\n');
    assert.deepEqual(
      actions.filter(({ diagnostics }) => diagnostics.some(({ code }) => code === 'bare-number')),
      [],
    );
  });
});

describe('accepting a finding', () => {
  const accept = (actions: readonly CodeAction[], code: string): CodeAction | undefined =>
    actions.find(({ title }) => title.startsWith(`Accept ${code}`));

  it('puts a comment with a reason on a line of its own, as far in as the finding', () => {
    const { text, actions } = at('swing: 1\nflight:\n  carry: 171$0\n');
    const action = accept(actions, 'bare-number');
    assert.ok(action);
    const changed = applied(text, action);
    assert.equal(changed, 'swing: 1\nflight:\n  # accept[bare-number]: say why\n  carry: 171\n');
    assert.ok(analysed(changed).findings.every(({ code }) => code !== 'bare-number'));
  });

  it('is not offered where a value is lost, and never preferred', () => {
    for (const value of ['171 kg', '17l m', '171 metrs', 'far', '3e999 m', '150..170 m'])
      assert.deepEqual(
        at(`swing: 1\nflight:\n  carry: ${value}$0\n`).actions.filter(({ title }) =>
          title.startsWith('Accept'),
        ),
        [],
        value,
      );
    assert.equal(
      accept(at('swing: 1\ndelivery:\n  path: -3 deg left$0\n').actions, 'direction-with-sign'),
      undefined,
    );
    // Our bounds may be wrong: what lies outside can be accepted.
    const bounds = accept(at('swing: 1\nflight:\n  carry: 171$0000 m\n').actions, 'outside-bounds');
    assert.equal(bounds?.isPreferred, false);
  });

  it('lets the reader type over the reason where the editor can', () => {
    const { text, position } = marked('swing: 1\nflight:\n  carry: 171$0\n');
    const range = { start: position, end: position };
    const action = accept(
      findActions(analysed(text), { ...request, range, edits: 'snippet' }),
      'bare-number',
    );
    const [edit] = action?.edit.documentChanges[0]?.edits ?? [];
    assert.ok(edit && 'snippet' in edit);
    assert.equal(edit.snippet.value, '  # accept[bare-number]: ${1:say why}\n');
  });

  it('says how many go where the line has several of the kind', () => {
    const { text, position } = marked('swing: 1\ndelivery: { attack: 15$0 deg down, path: 30 deg left }\n');
    const titles = findActions(analysed(text), { ...request, range: { start: position, end: position } }).map(
      ({ title }) => title,
    );
    assert.ok(titles.includes('Accept all 2 outside-practice on this line with a reason'), titles.join('; '));
  });

  it('asks for the reason as long as nobody wrote one', () => {
    const { findings } = analysed(
      'swing: 1\ndelivery:\n  # accept[outside-practice]: say why\n  attack: 15 deg down\n',
    );
    assert.deepEqual(
      findings.filter(({ code }) => code === 'silence-without-reason').map(({ range }) => range.start.line),
      [2],
    );
  });

  it('silences that finding and keeps every other byte, in texts of many forms', () => {
    const entries = fc.constantFrom(
      'carry: 171',
      'carry: 171 # far',
      'carry: { value: 171, note: "a # b" }',
      'carry: [171, 169]',
      'start: 2 right',
      'spin: 4000',
      'carry: 171 kg',
      'unknown: 3',
      'start: >\n    2 right',
      'carry: "171"',
    );
    const text = fc
      .tuple(fc.array(entries, { minLength: 1, maxLength: 4 }), fc.constantFrom('\n', '\r\n'))
      .map(([lines, end]) =>
        `swing: 1\nflight:\n${lines.map((line) => `  ${line}`).join('\n')}\n`.replaceAll('\n', end),
      );
    let accepted = 0;
    fc.assert(
      fc.property(text, (source) => {
        const analysis = analysed(source);
        for (const action of findActions(analysis, request).filter(({ title }) =>
          title.startsWith('Accept'),
        )) {
          accepted += 1;
          const [{ code, range }] = action.diagnostics as [CodeAction['diagnostics'][number]];
          const changed = applied(source, action);
          const comment = `# accept[${code}]: say why`;
          assert.ok(changed.includes(comment));
          const rest = changed.replace(new RegExp(`( *${escape(comment)}\\r?\\n)|( ${escape(comment)})`), '');
          assert.equal(rest, source);
          const moved = changed.split('\n').length > source.split('\n').length ? 1 : 0;
          const left = analysed(changed).findings.filter(
            (finding) => finding.code === code && finding.range.start.line === range.start.line + moved,
          );
          assert.deepEqual(left, [], `${code} is left in\n${changed}`);
        }
      }),
    );
    assert.ok(accepted > 0);
  });
});

function escape(text: string): string {
  return text.replace(/[[\]]/g, '\\$&');
}
