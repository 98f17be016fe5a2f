// Tests of the two-lever linkage against one that is rolled on point by point, and for the signs that coaches know.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { arcAtStrike } from '../../src/physics/arc.ts';
import { instantaneousCentreAhead, linkageAtStrike, type Linkage } from '../../src/physics/linkage.ts';
import { deliveredLoft } from '../../src/physics/loft.ts';
import { anyNumber, between, degree, numbersOf } from './scenarios.ts';

const iron: Linkage = {
  shoulderAhead: 0.1,
  shaftLean: 6 * degree,
  inclination: 60 * degree,
  armLength: 0.66,
  shaftLength: 0.84,
  clubSpeed: 38,
  releaseRatio: 2.4,
};

const anyLinkage = fc
  .record({
    armAngle: between(-25 * degree, 25 * degree),
    shaftLean: between(-12 * degree, 20 * degree),
    inclination: between(40 * degree, 75 * degree),
    armLength: between(0.5, 0.75),
    shaftLength: between(0.6, 1.05),
    clubSpeed: between(15, 55),
    releaseRatio: between(1.4, 4),
    hub: fc.record({ along: between(-1, 1), up: between(-1, 1) }),
  })
  .map(({ armAngle, ...linkage }): Linkage => {
    const lean = Math.atan(Math.tan(linkage.shaftLean) * Math.sin(linkage.inclination));
    const shoulderAhead = linkage.shaftLength * Math.sin(lean) - linkage.armLength * Math.sin(armAngle);
    return { ...linkage, shoulderAhead };
  });

/** Where the head is in the plane after a time, from positions alone. */
function headAfter(linkage: Linkage, armAngle: number, armRate: number, time: number): [number, number] {
  const { armLength, shaftLength, releaseRatio, hub = { along: 0, up: 0 } } = linkage;
  const lean = Math.atan(Math.tan(linkage.shaftLean) * Math.sin(linkage.inclination));
  const shoulderHeight = shaftLength * Math.cos(lean) + armLength * Math.cos(armAngle);
  const arm = armAngle + armRate * time;
  const shaft = releaseRatio * armRate * time - lean;
  return [
    linkage.shoulderAhead + hub.along * time + armLength * Math.sin(arm) + shaftLength * Math.sin(shaft),
    shoulderHeight + hub.up * time - armLength * Math.cos(arm) - shaftLength * Math.cos(shaft),
  ];
}

describe('linkageAtStrike', () => {
  it('has the head at the ball, at the club’s speed and in the direction of the attack', () => {
    fc.assert(
      fc.property(anyLinkage, (linkage) => {
        const strike = linkageAtStrike(linkage)!;
        const step = 1e-7;
        const place = headAfter(linkage, strike.armAngle, strike.armRate, 0);
        assert.ok(Math.hypot(...place) < 1e-12);
        const before = headAfter(linkage, strike.armAngle, strike.armRate, -step);
        const after = headAfter(linkage, strike.armAngle, strike.armRate, step);
        const [u, w] = [(after[0] - before[0]) / (2 * step), (after[1] - before[1]) / (2 * step)];
        assert.ok(Math.abs(Math.hypot(u, w) - linkage.clubSpeed) < 1e-5 * linkage.clubSpeed);
        const attack = Math.asin((w / Math.hypot(u, w)) * Math.sin(linkage.inclination));
        assert.ok(Math.abs(strike.attack - attack) < 1e-6);
      }),
    );
  });

  it('is nowhere lower than at its low point', () => {
    fc.assert(
      fc.property(anyLinkage, between(-0.02, 0.02), (linkage, away) => {
        const strike = linkageAtStrike(linkage)!;
        const low = headAfter(linkage, strike.armAngle, strike.armRate, strike.timeToLowPoint);
        assert.ok(Math.abs(low[0] - strike.lowPointAhead) < 1e-12);
        assert.ok(Math.abs(-low[1] * Math.sin(linkage.inclination) - strike.lowPointDepth) < 1e-12);
        const other = headAfter(linkage, strike.armAngle, strike.armRate, strike.timeToLowPoint + away);
        assert.ok(other[1] >= low[1] - 1e-12);
      }),
    );
  });

  it('has the radius of the circle through three near points of its path', () => {
    fc.assert(
      fc.property(anyLinkage, (linkage) => {
        const strike = linkageAtStrike(linkage)!;
        const [a, b, c] = [-2e-4, 0, 2e-4].map((t) =>
          headAfter(linkage, strike.armAngle, strike.armRate, t),
        ) as [[number, number], [number, number], [number, number]];
        const side = (p: number[], q: number[]) => Math.hypot(p[0]! - q[0]!, p[1]! - q[1]!);
        const area = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
        const radius = (side(a, b) * side(b, c) * side(c, a)) / (4 * area);
        assert.ok(Math.abs(strike.radius / radius - 1) < 1e-3);
      }),
    );
  });

  it('strikes down exactly when its low point is ahead of the ball', () => {
    fc.assert(
      fc.property(anyLinkage, (linkage) => {
        const strike = linkageAtStrike({ ...linkage, hub: { along: 0, up: 0 } })!;
        if (Math.abs(strike.attack) < 1e-9) return;
        assert.equal(strike.attack < 0, strike.lowPointAhead > 0);
        assert.equal(strike.attack < 0, strike.timeToLowPoint > 0);
      }),
    );
  });

  it('lies close to the low point of a circle of its radius and attack', () => {
    const strike = linkageAtStrike(iron)!;
    const circle = arcAtStrike(
      { radius: strike.radius, inclination: iron.inclination, direction: 0 },
      strike.attack,
    )!;
    assert.ok(Math.abs(strike.lowPointAhead - circle.lowPointAhead) < 0.002);
    assert.ok(Math.abs(strike.lowPointDepth - circle.lowPointDepth) < 0.0005);
    assert.ok(Math.abs(strike.angle - circle.angle) < 1e-12);
  });

  it('does not change its geometry with the speed while the shoulder rests', () => {
    const [slow, fast] = [linkageAtStrike(iron)!, linkageAtStrike({ ...iron, clubSpeed: 50 })!];
    assert.ok(Math.abs(slow.attack - fast.attack) < 1e-14);
    assert.ok(Math.abs(slow.lowPointAhead - fast.lowPointAhead) < 1e-14);
    assert.ok(Math.abs(slow.radius - fast.radius) < 1e-12);
  });

  it('is smooth: a small change of any input changes the results by its slope', () => {
    const names = [
      'shoulderAhead',
      'shaftLean',
      'inclination',
      'armLength',
      'shaftLength',
      'releaseRatio',
    ] as const;
    fc.assert(
      fc.property(anyLinkage, fc.constantFrom(...names), (linkage, name) => {
        const at = (by: number) => linkageAtStrike({ ...linkage, [name]: linkage[name] + by })!;
        for (const result of ['attack', 'lowPointAhead', 'lowPointDepth', 'radius'] as const) {
          const slopeOf = (step: number) => (at(step)[result] - at(-step)[result]) / (2 * step);
          assert.ok(Math.abs(slopeOf(1e-4) - slopeOf(1e-5)) < 1e-4 * (1 + Math.abs(slopeOf(1e-4))));
        }
      }),
    );
  });

  // Common practice, no source, each of these four.
  it('moves the low point back and levels the attack when the upper body is further behind', () => {
    fc.assert(
      fc.property(anyLinkage, between(0.005, 0.05), (linkage, back) => {
        const [before, after] = [
          linkageAtStrike(linkage)!,
          linkageAtStrike({ ...linkage, shoulderAhead: linkage.shoulderAhead - back })!,
        ];
        assert.ok(after.lowPointAhead < before.lowPointAhead);
        assert.ok(after.attack > before.attack);
      }),
    );
  });

  it('moves the low point forward and takes loft off with more lean of the handle', () => {
    fc.assert(
      fc.property(anyLinkage, between(1 * degree, 5 * degree), (linkage, more) => {
        const leaned = { ...linkage, shaftLean: linkage.shaftLean + more };
        assert.ok(linkageAtStrike(leaned)!.lowPointAhead > linkageAtStrike(linkage)!.lowPointAhead);
        assert.ok(linkageAtStrike(leaned)!.attack < linkageAtStrike(linkage)!.attack);
        const loft = (shaftLean: number) => deliveredLoft({ clubLoft: 30 * degree, shaftLean, kick: 0 });
        assert.ok(loft(leaned.shaftLean) < loft(linkage.shaftLean));
      }),
    );
  });

  it('sends the path outward of the arc’s direction in a steeper hit', () => {
    const path = (shaftLean: number) => {
      const strike = linkageAtStrike({ ...iron, shaftLean })!;
      return arcAtStrike(
        { radius: strike.radius, inclination: iron.inclination, direction: 0 },
        strike.attack,
      )!.path;
    };
    assert.ok(path(10 * degree) > path(5 * degree));
    assert.ok(path(5 * degree) > path(0));
  });

  it('levels the attack when the shoulder rises through the strike', () => {
    const rising = linkageAtStrike({ ...iron, hub: { along: 0, up: 0.5 } })!;
    assert.ok(rising.attack > linkageAtStrike(iron)!.attack);
    assert.ok(rising.lowPointAhead < linkageAtStrike(iron)!.lowPointAhead);
  });

  it('knows no strike for an arm that does not reach', () => {
    assert.equal(linkageAtStrike({ ...iron, shoulderAhead: 0.9 }), undefined);
  });

  it('knows no strike with a shoulder that is faster than the club', () => {
    assert.equal(linkageAtStrike({ ...iron, hub: { along: 40, up: 0 } }), undefined);
  });

  it('gives finite numbers or none for any input', () => {
    const anyInput = fc.record({
      shoulderAhead: anyNumber,
      shaftLean: anyNumber,
      inclination: anyNumber,
      armLength: anyNumber,
      shaftLength: anyNumber,
      clubSpeed: anyNumber,
      releaseRatio: anyNumber,
      hub: fc.record({ along: anyNumber, up: anyNumber }),
    });
    fc.assert(
      fc.property(anyInput, anyLinkage, fc.subarray(Object.keys(iron)), (any, playable, spoilt) => {
        const mixed = Object.fromEntries(
          Object.entries(playable).map(([key, value]) => [
            key,
            spoilt.includes(key) ? any[key as keyof typeof any] : value,
          ]),
        ) as unknown as Linkage;
        assert.ok(numbersOf([linkageAtStrike(mixed), linkageAtStrike(any)]).every(Number.isFinite));
      }),
      { numRuns: 500 },
    );
  });
});

describe('instantaneousCentreAhead', () => {
  it('stands over the point of the shaft that is at rest', () => {
    const strike = linkageAtStrike(iron)!;
    const centre = instantaneousCentreAhead(strike.handsAhead, iron.shoulderAhead, iron.releaseRatio)!;
    // The club turns about it: the head rises at the shaft's rate times its distance along the ground.
    const rising = iron.clubSpeed * Math.sin(strike.angle);
    assert.ok(Math.abs(rising + strike.shaftRate * centre) < 1e-10);
  });

  it('knows none without a ratio', () => {
    assert.equal(instantaneousCentreAhead(0.1, 0, 0), undefined);
    assert.equal(instantaneousCentreAhead(Number.NaN, 0, 2), undefined);
  });
});
