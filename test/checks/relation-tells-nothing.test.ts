// Tests of the check relation-tells-nothing.
import assert from 'node:assert/strict';
import { compileOwn } from '../../src/judgement/own.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { assertMarked } from './files.ts';

const names = (says: string): readonly string[] => {
  const document = parseDocument('workspace', `swingwright: 1\nrelations: { it: { says: "${says}" } }\n`);
  assert.ok(document.kind === 'workspace');
  const { model, problems } = compileOwn(document);
  return [
    ...problems.map(({ code, found }) => `${code}: ${found}`),
    ...(model?.relations ?? []).map(() => 'kept'),
  ];
};

describe('relation-tells-nothing', () => {
  it('marks an equation that always holds and one that never does, at the equation', () => {
    assertMarked('relation-tells-nothing', {
      'swingwright.yaml': `swingwright: 1
relations:
  itself: { says: delivery.path ≈ delivery.path ± 1 deg }
#                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ warning[relation-tells-nothing]
  beyond: { says: delivery.path ≈ 500 deg ± 1 deg }
#                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ warning[relation-tells-nothing]
  fine: { says: delivery.path ≈ delivery.face ± 1 deg }
`,
    });
  });

  it('knows the corners of what is possible', () => {
    for (const [says, telling] of [
      ['delivery.path ≈ delivery.path + 3 deg ± 1 deg', 'never holds'],
      ['2 * delivery.path - delivery.path ≈ delivery.path ± 1 deg', 'always holds'],
      ['delivery.path ≈ delivery.face ± 900 deg', 'always holds'],
      ['flight.carry ≈ -900 m ± 1 m', 'never holds'],
      ['abs(delivery.path) - abs(delivery.path) ≈ 0 deg ± 1 deg', 'always holds'],
      ['abs(delivery.path) - abs(delivery.path) ≈ 90 deg ± 1 deg', 'never holds'],
    ] as const) {
      const [found, ...more] = names(says);
      assert.match(found ?? '', new RegExp(`^relation-tells-nothing: .* which ${telling} `), says);
      assert.deepEqual(more, []);
    }
    for (const says of [
      'delivery.path ≈ delivery.face + 20 deg ± 1 deg',
      'abs(delivery.path) ≈ 3 deg ± 1 deg',
      'flight.total ≈ 1.05 * flight.carry ± 4 m',
    ])
      assert.deepEqual(names(says), ['kept'], says);
  });
});
