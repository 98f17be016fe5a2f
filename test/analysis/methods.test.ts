// What paired readings of a practice say of its methods: gathered right, recovered from made-up noise, and written where they belong.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { analyse } from '../../src/analysis/analyse.ts';
import { methodFigures, withMethodFigures } from '../../src/analysis/method-figures.ts';
import { methodAgreementOf } from '../../src/analysis/method-pairs.ts';
import { agreementLines, figureLine } from '../../src/analysis/method-words.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { withValue } from '../../src/record/set-value.ts';
import { registryOf } from '../../src/record/workspace.ts';
import { builtIn, standardUncertainty, type Registry } from '../../src/registry/registry.ts';
import { parse } from 'yaml';

const degree = Math.PI / 180;

function recordsOf(...texts: readonly string[]) {
  return texts.map((text) => {
    const uri = 'file:///l/a.swing.yaml';
    const found = text.startsWith('swing') ? text : `swing: 1\n${text}\n`;
    return analyse(uri, {
      file: (wanted) => (wanted === uri ? { kind: 'text', text: found } : { kind: 'missing' }),
    });
  });
}

/** Standard normal numbers, the same at every run (Box and Muller over a linear congruential generator). */
function normals(seed: number): () => number {
  let state = seed;
  const uniform = (): number => ((state = (state * 1664525 + 1013904223) % 2 ** 32) + 0.5) / 2 ** 32;
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

function signedDegrees(value: number): string {
  return `${Math.abs(value).toFixed(2)} deg ${value < 0 ? 'left' : 'right'}`;
}

describe('what was measured twice', () => {
  it('is paired by method, the mean of each, without doubtful readings, estimates and those of no method', () => {
    const { paired, repeated, records } = methodAgreementOf(
      recordsOf(
        'delivery: { face: [1 deg right by radar, 3 deg right by eye, 5 deg right by eye, ~9 deg right by eye, 8 deg right] }',
        'delivery: { face: [1 deg right by radar, { value: 7 deg right, by: eye, doubtful: true }] }',
        'delivery: { face: 1 deg right by radar }',
      ),
    );
    assert.equal(records, 3);
    assert.equal(paired.length, 1);
    const [{ one, other, pairs, quantity, comparison }] = paired as [(typeof paired)[0]];
    assert.deepEqual([quantity.id, one, other, comparison], ['delivery.face', 'eye', 'radar', undefined]);
    assert.deepEqual(
      pairs.map((pair) => [pair.one / degree, pair.other / degree].map((value) => Number(value.toFixed(9)))),
      [[4, 1]],
    );
    assert.equal(repeated.length, 1);
    assert.ok(Math.abs(repeated[0]!.repeatability.within / degree - Math.SQRT2) < 1e-9);
  });

  it('is said in words, with the bias and the limits', () => {
    const lines = agreementLines(
      methodAgreementOf(
        recordsOf(
          ...[0, 1, 2, 3].map(
            (i) => `delivery: { face: [${i} deg right by radar, ${i + 2 + (i % 2)} deg right by eye] }`,
          ),
        ),
      ),
    );
    assert.deepEqual(lines.slice(0, 3), [
      'By two methods',
      '  Face direction (delivery.face): eye less radar, 4 pairs',
      '    bias +2.50 deg (95 %: 1.58..3.42 deg)',
    ]);
    assert.match(lines[3]!, /95 % of differences lie within 1\.37\.\.3\.63 deg/);
    assert.match(
      agreementLines(methodAgreementOf(recordsOf('club: x')))[0]!,
      /Found nothing .* 1 record; expected/,
    );
  });
});

describe('the figure of a method', () => {
  const noise = normals(7);
  const texts = Array.from({ length: 200 }, () => {
    const truth = 4 * noise();
    // Radar is off by as much as the method table says, the eye by 2 on average and 3 about that.
    const radar = builtIn.find('delivery.face')!.uncertainty.by['radar']! / degree;
    return `delivery: { face: [${signedDegrees(truth + radar * noise())} by radar, ${signedDegrees(truth + 2 + 3 * noise())} by eye] }`;
  });
  const { paired } = methodAgreementOf(recordsOf(...texts));

  it('is the root mean square of what it is off, without what the surer one is unsure of', () => {
    const [figure] = methodFigures(paired, builtIn);
    assert.ok(figure);
    assert.deepEqual(
      [figure.method, figure.against, figure.quantity.id, figure.pairs],
      ['eye', 'radar', 'delivery.face', 200],
    );
    // √(2² + 3²) = 3.6, itself known to 1/√(2 · 200) = 5 %.
    assert.ok(
      Math.abs(figure.figure - Math.hypot(2, 3)) < 3 * 0.05 * Math.hypot(2, 3),
      String(figure.figure),
    );
    assert.match(
      figureLine(figure),
      /^eye: face direction \(delivery\.face\) ± 3\.\d deg, from 200 pairs with radar; the table says \d/,
    );
  });

  it('is not given from few pairs', () => {
    assert.deepEqual(methodFigures(methodAgreementOf(recordsOf(...texts.slice(0, 9))).paired, builtIn), []);
    assert.equal(
      methodFigures(methodAgreementOf(recordsOf(...texts.slice(0, 10))).paired, builtIn).length,
      1,
    );
  });

  it('is of that quantity alone: a carry by video says nothing of a breastbone by video', () => {
    const scatter = normals(3);
    const carries = Array.from({ length: 14 }, () => {
      const truth = 120 + 5 * scatter();
      return `flight: { carry: [${(truth + 0.3 * scatter()).toFixed(1)} m by tape, ${(truth + 6 * scatter()).toFixed(1)} m by video] }`;
    });
    const found = methodFigures(methodAgreementOf(recordsOf(...carries)).paired, builtIn);
    const written = withMethodFigures('', found);
    assert.match(written!, /video: \{ uncertainty: \{ flight\.carry: \d+(\.\d)? m \} \}/);
    const document = parseDocument('workspace', written!);
    assert.ok(document.kind === 'workspace');
    assert.deepEqual(document.problems, []);
    const registry = registryOf(document);
    const usual = (id: string, known: Registry): number =>
      standardUncertainty(
        builtIn.find(id)!,
        { stated: undefined, method: 'video', estimate: false },
        1,
        known,
      ).u;
    assert.ok(Math.abs(usual('flight.carry', registry) - found[0]!.figure) < 1e-9);
    const breastbone = 'checkpoints.impact.sternum';
    assert.equal(usual(breastbone, registry), usual(breastbone, builtIn));
  });

  it('counts what single readings scatter about the means that were paired', () => {
    const scatter = normals(11);
    const twice = Array.from({ length: 200 }, () => {
      const truth = 4 * scatter();
      const eye = (): string => `${signedDegrees(truth + 3 * scatter())} by eye`;
      return `delivery: { face: [${signedDegrees(truth)} by radar, ${eye()}, ${eye()}, ${eye()}] }`;
    });
    const [figure] = methodFigures(methodAgreementOf(recordsOf(...twice)).paired, builtIn);
    // One reading by eye is off by 3, the mean of three by 1.7; radar, which is right here, is said to be unsure.
    const radar = builtIn.find('delivery.face')!.uncertainty.by['radar']! / degree;
    assert.ok(Math.abs(figure!.figure - Math.sqrt(9 - radar ** 2)) < 0.4, String(figure!.figure));
  });

  it('is never more than the differences show, nor less than half of their variance', () => {
    // Differences of ±0.4 m from radar, which is said to be unsure by more.
    const records = Array.from(
      { length: 12 },
      (_, i) =>
        `flight: { carry: [${120 + i} m by radar, ${(120 + i + (i % 2 === 0 ? 0.4 : -0.4)).toFixed(1)} m by rangefinder] }`,
    );
    const figures = methodFigures(methodAgreementOf(recordsOf(...records)).paired, builtIn);
    assert.equal(figures.length, 1);
    assert.equal(figures[0]!.figure, Number(Math.sqrt(0.16 / 2).toPrecision(2)));
  });

  it('is written into a workspace file of any form, and nothing else in it changes', () => {
    const figures = methodFigures(paired, builtIn).map((figure) => ({ ...figure, figure: 3.5 }));
    for (const [before, after] of [
      ['', 'swingwright: 1\nmethods: { eye: { uncertainty: { delivery.face: 3.5 deg } } }\n'],
      [
        'swingwright: 1 # ours\n',
        'swingwright: 1 # ours\nmethods: { eye: { uncertainty: { delivery.face: 3.5 deg } } }\n',
      ],
      [
        'swingwright: 1\nmethods:\n  video:\n    meaning: two phones\ncoverage: 2\n',
        'swingwright: 1\nmethods:\n  video:\n    meaning: two phones\n  eye: { uncertainty: { delivery.face: 3.5 deg } }\ncoverage: 2\n',
      ],
      [
        'swingwright: 1\nmethods: { eye: { uncertainty: { angle: 9 deg, delivery.face: 4 deg } } } # guessed\n',
        'swingwright: 1\nmethods: { eye: { uncertainty: { angle: 9 deg, delivery.face: 3.5 deg } } } # guessed\n',
      ],
      [
        'swingwright: 1\nmethods:\n',
        'swingwright: 1\nmethods: { eye: { uncertainty: { delivery.face: 3.5 deg } } }\n',
      ],
    ] as const)
      assert.equal(withMethodFigures(before, figures), after);
    assert.equal(withMethodFigures('swingwright: 1\nmethods: [eye]\n', figures), undefined);
    assert.equal(withMethodFigures('swingwright: "1\n', figures), undefined);
  });
});

describe('writing a value below keys', () => {
  it('gives a file that says it, and says all else as before', () => {
    const keys = fc.constantFrom('a', 'b', 'c d', 'e: f', '"g"');
    fc.assert(
      fc.property(
        fc.dictionary(
          keys,
          fc.oneof(fc.constant('x'), fc.dictionary(keys, fc.constantFrom('y', 'z'), { minKeys: 1 })),
          { minKeys: 1 },
        ),
        fc.array(keys, { minLength: 1, maxLength: 3 }),
        fc.boolean(),
        (data, path, isFlow) => {
          const text = `${Object.entries(data)
            .map(([key, value]) => {
              const name = JSON.stringify(key);
              if (typeof value === 'string') return `${name}: ${value}`;
              const inner = Object.entries(value).map(([k, v]) => `${JSON.stringify(k)}: ${v}`);
              return isFlow
                ? `${name}: { ${inner.join(', ')} }`
                : `${name}: # of it\n  ${inner.join('\n  ')}`;
            })
            .join('\n')}\n`;
          const written = withValue(text, path, 'new');
          if (written === undefined) return;
          const expected = structuredClone(data) as Record<string, unknown>;
          let at = expected;
          for (const key of path.slice(0, -1)) at = (at[key] ??= {}) as Record<string, unknown>;
          at[path.at(-1)!] = 'new';
          assert.deepEqual(parse(written), expected, written);
          assert.equal((written.match(/# of it/g) ?? []).length, (text.match(/# of it/g) ?? []).length);
        },
      ),
      { numRuns: 500 },
    );
    assert.equal(withValue('a: 1\n', ['a', 'b'], 'x'), undefined);
    assert.equal(
      parseDocument('workspace', withValue('swingwright: 1\n', ['coverage'], '2')!).problems.length,
      0,
    );
  });
});
