// Tests of the blow: conservation, limits and symmetry of the rigid-body solve.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { ballInertia, ruleBall } from '../../src/physics/ball.ts';
import { pointHead, representativeHeads } from '../../src/physics/heads.ts';
import { pennerRestitution, softCoverFriction, strike } from '../../src/physics/impact.ts';
import { mirrored, sideways } from '../../src/physics/mirror.ts';
import { anyDelivery, anyHeadKind, anyNumber, between, degree, numbersOf } from './scenarios.ts';

const straight = { speed: 40, path: 0, attack: 0, face: 0, loft: 0 };

describe('strike', () => {
  it('sends a ball from a heavy wall at one and the restitution times its speed', () => {
    const launch = strike(straight, pointHead(Infinity), { restitution: 0.8 })!;
    assert.ok(Math.abs(launch.ballSpeed - 72) < 1e-9);
    assert.ok(Math.abs(launch.spin) < 1e-9);
  });

  it('leaves a gripping ball rolling on the face', () => {
    fc.assert(
      fc.property(between(10, 55), between(5 * degree, 50 * degree), (speed, loft) => {
        const head = pointHead(0.25);
        const launch = strike({ ...straight, speed, loft }, head, { friction: 10 })!;
        // In the plane: the ball's own velocity along the face, less the head's, equals r ω.
        const along = launch.ballSpeed * Math.sin(launch.launchAngle - loft);
        const headAlong = -speed * Math.sin(loft) - (ruleBall.mass / head.mass) * along;
        assert.ok(Math.abs(Math.abs(along - headAlong) - ruleBall.radius * launch.spin) < 1e-9);
      }),
    );
  });

  it('never makes energy, wherever on the face the ball is met', () => {
    fc.assert(
      fc.property(anyHeadKind, anyDelivery, (kind, delivery) => {
        const { head } = representativeHeads[kind];
        const launch = strike(delivery, head);
        if (launch === undefined) return;
        const ball =
          0.5 * ruleBall.mass * launch.ballSpeed ** 2 + 0.5 * ballInertia(ruleBall) * launch.spin ** 2;
        assert.ok(ball <= 0.5 * head.mass * delivery.speed ** 2);
      }),
    );
  });

  it('gives less ball speed off the centre of a flat face than in its middle', () => {
    fc.assert(
      fc.property(between(-0.03, 0.03), between(-0.015, 0.015), (across, height) => {
        const { head } = representativeHeads.iron;
        const delivery = { ...straight, loft: 25 * degree };
        const centred = strike(delivery, head)!;
        const off = strike({ ...delivery, across, height }, head)!;
        assert.ok(off.ballSpeed <= centred.ballSpeed * (1 + 2e-3));
      }),
    );
  });

  it('starts a toe strike with a deep bulged head to the right and tilts it back to the left', () => {
    const toe = strike({ ...straight, loft: 12 * degree, across: 0.02 }, representativeHeads.driver.head)!;
    const heel = strike({ ...straight, loft: 12 * degree, across: -0.02 }, representativeHeads.driver.head)!;
    assert.ok(toe.start > 1 * degree && toe.spinTilt < -1 * degree);
    assert.ok(heel.start < -1 * degree && heel.spinTilt > 1 * degree);
  });

  it('spins a strike low on the face more and launches it lower', () => {
    const delivery = { ...straight, loft: 14 * degree };
    const low = strike({ ...delivery, height: -0.01 }, representativeHeads.driver.head)!;
    const high = strike({ ...delivery, height: 0.01 }, representativeHeads.driver.head)!;
    assert.ok(low.spin > high.spin && low.launchAngle < high.launchAngle);
  });

  it('keeps a sliding impulse on the edge of the friction cone', () => {
    fc.assert(
      fc.property(between(0.01, 0.2), between(30 * degree, 60 * degree), (friction, loft) => {
        const launch = strike({ ...straight, loft }, pointHead(0.3), { friction, restitution: 0.8 })!;
        if (!launch.sliding) return;
        const angleFromNormal = loft - launch.launchAngle;
        assert.ok(Math.abs(Math.tan(angleFromNormal) - friction) < 1e-9);
      }),
    );
  });

  it('changes steadily where gripping turns to sliding', () => {
    const at = (friction: number) =>
      strike({ ...straight, loft: 40 * degree }, representativeHeads.wedge.head, { friction })!;
    let [grips, slides] = [1, 0.01];
    for (let i = 0; i < 60; i++) {
      const middle = (grips + slides) / 2;
      if (at(middle).sliding) slides = middle;
      else grips = middle;
    }
    assert.ok(Math.abs(at(grips).spin - at(slides).spin) < 1e-6 * at(grips).spin);
    assert.ok(Math.abs(at(grips).launchAngle - at(slides).launchAngle) < 1e-9);
  });

  it('mirrors with the blow', () => {
    fc.assert(
      fc.property(anyHeadKind, anyDelivery, (kind, delivery) => {
        const { head } = representativeHeads[kind];
        const launch = strike(delivery, head);
        // In the same right-handed head, the mirror image of a toe strike is a heel strike.
        const image = strike(mirrored(delivery, ['path', 'face', 'across']), head);
        assert.equal(image === undefined, launch === undefined);
        if (launch === undefined || image === undefined) return;
        const back = mirrored(image, sideways.launch);
        assert.equal(back.sliding, launch.sliding);
        for (const name of ['ballSpeed', 'launchAngle', 'start', 'spin'] as const) {
          assert.ok(Math.abs(back[name] - launch[name]) < 1e-9 * (1 + Math.abs(launch[name])));
        }
        // Pure top spin lies at +π and −π alike.
        assert.ok(Math.abs(Math.sin((back.spinTilt - launch.spinTilt) / 2)) * launch.spin < 1e-6);
      }),
    );
  });

  it('makes no launch of a face that does not close on the ball', () => {
    assert.equal(strike({ ...straight, speed: 0 }, pointHead(0.2)), undefined);
    assert.equal(strike({ ...straight, loft: 95 * degree }, pointHead(0.2)), undefined);
    assert.equal(strike({ ...straight, face: Number.NaN }, pointHead(0.2)), undefined);
  });

  it('gives finite numbers or none for any blow', () => {
    const anyBlow = fc.tuple(anyNumber, anyNumber, anyNumber, anyNumber, anyNumber, anyNumber, anyNumber);
    fc.assert(
      fc.property(anyHeadKind, anyBlow, (kind, [speed, path, attack, face, loft, across, height]) => {
        const launch = strike(
          { speed, path, attack, face, loft, across, height },
          representativeHeads[kind].head,
        );
        assert.ok(numbersOf(launch).every(Number.isFinite));
      }),
    );
  });
});

describe('pennerRestitution', () => {
  it('falls with the normal speed and stays between 0 and 0.86', () => {
    fc.assert(
      fc.property(between(0, 1000), between(0, 1000), (a, b) => {
        const [slow, fast] = [Math.min(a, b), Math.max(a, b)];
        assert.ok(pennerRestitution(fast) <= pennerRestitution(slow));
        assert.ok(pennerRestitution(fast) >= 0 && pennerRestitution(slow) <= 0.86);
      }),
    );
  });
});

describe('softCoverFriction', () => {
  it('is held at both ends of what was measured', () => {
    assert.equal(softCoverFriction(0), 0.38);
    assert.ok(Math.abs(softCoverFriction(100) - 0.29) < 1e-12);
  });
});
