// Checks of segment lengths and centres of mass against published tables and a published worked example.
import assert from 'node:assert/strict';
import { bodyTables } from '../../src/physics/body-tables.ts';
import {
  segmentCentre,
  segmentLengths,
  wholeBodyCentre,
  type PlacedSegment,
} from '../../src/physics/body.ts';
import { trunkShares } from '../../src/physics/trunk.ts';
import { vector, type Vector } from '../../src/physics/vector.ts';

describe('centres of mass by Winter’s table', () => {
  // Duarte & Watanabe, notes on biomechanics, body segment parameters: a lower limb in the plane, m.
  const metatarsal = vector(1.011, 0, 0.013);
  const ankle = vector(0.849, 0, 0.11);
  const knee = vector(0.864, 0, 0.549);
  const hip = vector(0.721, 0, 0.928);
  const limb: readonly PlacedSegment[] = [
    { segment: 'foot', proximal: ankle, distal: metatarsal },
    { segment: 'shank', proximal: knee, distal: ankle },
    { segment: 'thigh', proximal: hip, distal: knee },
  ];
  const published = [
    [0.93, 0.062],
    [0.858, 0.359],
    [0.783, 0.764],
  ] as const;

  limb.forEach(({ segment, proximal, distal }, i) => {
    it(`finds the centre of the ${segment} of the worked example`, () => {
      near(segmentCentre('winter', segment, proximal, distal)!, published[i]!);
    });
  });

  it('finds the centre of the whole limb of the worked example', () => {
    near(wholeBodyCentre('winter', limb)!.centre, [0.818, 0.584]);
  });
});

describe('body tables', () => {
  it('differ by 48 % in the mass of the thigh', () => {
    // Winter, table 4.1: 0.100; de Leva 1996, table 4, women: 14.78 %.
    const { female, winter } = bodyTables;
    assert.ok(Math.abs(female.segments.thigh.mass / winter.segments.thigh.mass - 1.478) < 1e-9);
  });

  it('put the centre of the trunk at one point, from the breastbone’s top and from the shoulders', () => {
    // de Leva 1996, table 4: lengths to the hips in mm, from memory.
    const rows = [
      ['male', 531.9, 515.5],
      ['female', 529.3, 497.9],
    ] as const;
    for (const [table, fromBreastbone, fromShoulders] of rows) {
      const above = (1 - bodyTables[table].segments.trunk.centre) * fromBreastbone;
      const again = (1 - trunkShares[table].centre) * fromShoulders;
      assert.ok(Math.abs(above - again) < 0.1);
    }
  });
});

describe('segment lengths', () => {
  it('are those of Drillis & Contini for 1.80 m', () => {
    // Drillis & Contini 1966, in Winter, figure 4.1: shares .186, .146, .818, .530 of stature.
    const lengths = segmentLengths(1.8)!;
    assert.ok(Math.abs(lengths.upperArm - 0.3348) < 1e-9);
    assert.ok(Math.abs(lengths.forearm - 0.2628) < 1e-9);
    assert.ok(Math.abs(lengths.shoulderHeight - 1.4724) < 1e-9);
    assert.ok(Math.abs(lengths.hipHeight - 0.954) < 1e-9);
  });
});

function near(centre: Vector, [x, z]: readonly [number, number]): void {
  assert.ok(Math.abs(centre.x - x) <= 5.5e-4, `${centre.x} is not ${x}`);
  assert.ok(Math.abs(centre.z - z) <= 5.5e-4, `${centre.z} is not ${z}`);
}
