// Tests of the check unknown-method.
import assert from 'node:assert/strict';
import { analyseFiles, assertFixedTo, assertMarked, assertNone } from './files.ts';

describe('unknown-method', () => {
  it('marks a mistyped method', () => {
    assertMarked(
      'unknown-method',
      `swing: 1
delivery:
  attack: 3 deg down by rdar
#                       ^^^^ warning[unknown-method]`,
    );
  });

  it('names the methods of the workspace first', () => {
    const workspace = 'swingwright: 1\nmethods: { wand: { uncertainty: { angle: 1 deg } } }\n';
    const { findings } = analyseFiles({
      'own.swing.yaml': 'swing: 1\ndelivery: { attack: 3 deg down by stick }\n',
      'swingwright.yaml': workspace,
    });
    const found = findings.find(({ code }) => code === 'unknown-method');
    assert.match(found?.message ?? '', /expected a method \(`wand`, /);
  });

  it('takes a method of the registry', () => {
    assertNone(
      'unknown-method',
      `swing: 1
delivery:
  attack: 3 deg down by motion capture`,
    );
  });

  it('writes the nearest method', () => {
    assertFixedTo(
      'unknown-method',
      `swing: 1
delivery:
  attack: 3 deg down by rdar # new`,
      `swing: 1
delivery:
  attack: 3 deg down by radar # new`,
    );
  });
});
