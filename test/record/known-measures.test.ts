// Measurements that are kept are what reading them anew would give, whatever was read before.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { parseMeasure } from '../../src/measure/parse.ts';
import { measureFrom } from '../../src/record/known-measures.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { quantities } from '../../src/registry/generated.ts';

describe('measureFrom', () => {
  it('reads each text as parseMeasure does, in any order and with any methods', () => {
    const text = fc.oneof(
      fc.constantFrom(
        '2 cm',
        '2 cm ahead',
        '~ 3..5 deg',
        '1e3',
        '4 m/s by radar',
        '4 m/s by ruler',
        '12 % ± 2',
      ),
      fc.string({ maxLength: 8 }),
    );
    const asked = fc.record({
      text,
      notation: fc.constantFrom(...quantities.slice(0, 3)),
      window: fc.constantFrom('no', 'also', 'only' as const),
      methods: fc.constantFrom(builtIn.methodNames, [...builtIn.methodNames, 'ruler']),
    });
    fc.assert(
      fc.property(fc.array(asked, { maxLength: 60 }), (all) => {
        for (const { text, notation, window, methods } of all) {
          const options = { window, methods };
          assert.deepEqual(measureFrom(text, notation, options), parseMeasure(text, notation, options));
        }
      }),
    );
  });
});
