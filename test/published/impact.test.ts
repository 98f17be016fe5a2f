// Checks of the blow against published mechanics and measurements.
import assert from 'node:assert/strict';
import { ballInertia, ruleBall } from '../../src/physics/ball.ts';
import { pointHead, representativeHeads, type HeadKind } from '../../src/physics/heads.ts';
import { pennerRestitution, softCoverFriction, strike } from '../../src/physics/impact.ts';

const degree = Math.PI / 180;
const penner = { mass: 0.0459, radius: 0.02135 };
const level = { path: 0, attack: 0, face: 0 };

describe('ball over club speed (Jorgensen, The Physics of Golf)', () => {
  // Obliquity °, speed ratio at e 0.83 and a 200 g head. The figures are those of the normal velocity alone,
  // (1 + e) cos Φ/(1 + m/M), with a 46 g ball: what a face without friction gives.
  const ball = { ...penner, mass: 0.046 };
  const rows = [[0, 1.488], [10, 1.465], [20, 1.398], [30, 1.288]] as const; // prettier-ignore
  const ratioAt = (obliquity: number, friction: number) => {
    const blow = { ...level, speed: 40, loft: obliquity * degree };
    return strike(blow, pointHead(0.2), { restitution: 0.83, friction }, ball)!.speedRatio;
  };
  for (const [obliquity, ratio] of rows) {
    it(`is ${ratio} at ${obliquity}° without friction`, () => {
      assert.ok(Math.abs(ratioAt(obliquity, 0) - ratio) < 5.1e-4);
    });
  }

  it('is up to 0.008 more with a face that grips, which these figures leave out: a deviation that stays', () => {
    for (const [obliquity, ratio] of rows) {
      const more = ratioAt(obliquity, 1) - ratio;
      assert.ok(more > -5.1e-4 && more < 0.008, `${more}`);
    }
  });
});

describe('velocities of a gripping blow (Penner 2001)', () => {
  it('has v_n = (1 + e) V cos Φ/(1 + m/M), v_t = V sin Φ/(1 + m/M + 5/2), ω = 5/2 v_t/r', () => {
    const [speed, loft, e, mass] = [43, 24 * degree, 0.79, 0.25];
    const launch = strike(
      { ...level, speed, loft },
      pointHead(mass),
      { restitution: e, friction: 1 },
      penner,
    )!;
    const share = penner.mass / mass;
    const normal = ((1 + e) * speed * Math.cos(loft)) / (1 + share);
    const tangential = (speed * Math.sin(loft)) / (1 + share + 2.5);
    assert.ok(Math.abs(launch.ballSpeed - Math.hypot(normal, tangential)) < 1e-9);
    assert.ok(Math.abs(launch.launchAngle - (loft - Math.atan2(tangential, normal))) < 1e-12);
    assert.ok(Math.abs(launch.spin - (2.5 * tangential) / penner.radius) < 1e-9);
  });
});

describe('friction needed to grip (Penner 2003, Rep. Prog. Phys. 66:131)', () => {
  const needed = (loft: number, mass: number) => {
    const blow = { ...level, speed: 40, loft: loft * degree };
    let [slides, grips] = [0, 1];
    for (let i = 0; i < 50; i++) {
      const friction = (slides + grips) / 2;
      if (strike(blow, pointHead(mass), { restitution: 0.83, friction }, penner)!.sliding) slides = friction;
      else grips = friction;
    }
    return grips;
  };
  // Loft °, head kg, coefficient of friction at e 0.83, published to two figures, and ours.
  const rows = [[10.5, 0.2, 0.036, 0.0334], [56, 0.3, 0.27, 0.2557]] as const; // prettier-ignore
  for (const [loft, mass, published, own] of rows) {
    it(`is ${published} for ${loft}° and ${mass * 1000} g once the head is held along its face`, () => {
      // The published figures agree with 2/7 tan Φ (1 + m/M)/(1 + e): the head does not give way along the face.
      const held = (needed(loft, mass) * (3.5 + penner.mass / mass)) / 3.5;
      assert.ok(Math.abs(held / published - 1) < 0.014, `${held}`);
    });

    it(`is ${own}, 5–7 % less, where the head gives way along the face too: a deviation that stays`, () => {
      assert.ok(Math.abs(needed(loft, mass) - own) < 5.1e-5);
      assert.ok(own / published > 0.92 && own / published < 0.95);
    });
  }
});

describe('measured friction of a soft cover (quoted in Penner 2003)', () => {
  it('falls from 0.38 to 0.29 for tangential speeds from 12.8 to 26 m/s', () => {
    assert.ok(Math.abs(softCoverFriction(12.8) - 0.38) < 1e-12);
    assert.ok(Math.abs(softCoverFriction(26) - 0.29) < 1e-12);
  });
});

describe('restitution', () => {
  it('is 0.86 − 0.0029 V cos Φ (Penner 2001)', () => {
    assert.ok(Math.abs(pennerRestitution(40) - 0.744) < 1e-12);
  });

  it('lies 0.048 and 0.0505 below Chou 1994, 0.85 at 20 and 0.78 at 45 m/s: a deviation that stays', () => {
    // Chou et al. 1994 as quoted in Penner 2003. The two published rules disagree with each other, so that no constant
    // can meet both; where no head says otherwise the model uses Penner's.
    assert.ok(Math.abs(0.85 - pennerRestitution(20) - 0.048) < 1e-9);
    assert.ok(Math.abs(0.78 - pennerRestitution(45) - 0.0505) < 1e-9);
  });

  it('falls as steeply with speed as Chou 1994 measured, within 4 %', () => {
    const slope = (pennerRestitution(20) - pennerRestitution(45)) / 25;
    assert.ok(Math.abs(slope / ((0.85 - 0.78) / 25) - 1) < 0.04);
  });

  it('meets the limit of the rules on the driver’s face', () => {
    // R&A / USGA Equipment Rules, part 2: 0.822 + 0.008 at 160 ft/s.
    const own = representativeHeads.driver.head.restitution!;
    assert.ok(Math.abs(own.atRest - own.perSpeed * 48.77 - 0.822) < 1e-12);
  });
});

describe('launch without gear effect (evaluated from Penner 2001 outside this project)', () => {
  // Speed m/s, path, attack, face, loft → launch, direction, rpm, tilt; degrees. e by Penner, head 200 g.
  const rows = [
    [45, 0, 0, 2, 14.7, 11.844, 1.599, 3454, 7.578],
    [45, -4, -1, 0, 13, 10.284, -0.797, 3390, 15.693],
    [40, 4, -4, 2, 26, 19.825, 2.456, 6008, -3.581],
  ] as const;
  for (const [speed, path, attack, face, loft, angle, start, rpm, tilt] of rows) {
    it(`is ${angle}°, ${start}°, ${rpm} rpm, ${tilt}° for path ${path}°, attack ${attack}°, face ${face}°, loft ${loft}°`, () => {
      const blow = {
        speed,
        path: path * degree,
        attack: attack * degree,
        face: face * degree,
        loft: loft * degree,
      };
      const launch = strike(blow, pointHead(0.2), {}, penner)!;
      assert.ok(Math.abs(launch.launchAngle / degree - angle) < 5.1e-4);
      assert.ok(Math.abs(launch.start / degree - start) < 5.1e-4);
      assert.ok(Math.abs((launch.spin * 30) / Math.PI - rpm) < 0.51);
      assert.ok(Math.abs(launch.spinTilt / degree - tilt) < 5.1e-4);
    });
  }
});

describe('share of the face in the start direction', () => {
  const share = (kind: HeadKind, speed: number, loft: number) => {
    const turn = 0.01 * degree;
    const { head } = representativeHeads[kind];
    return strike({ speed, path: 0, attack: 0, face: turn, loft: loft * degree }, head)!.start / turn;
  };
  // Delivered lofts are judgement: 12° driver, 26° mid-iron, 46° wedge.
  const [driver, iron, wedge] = [share('driver', 45, 12), share('iron', 38, 26), share('wedge', 32, 46)];

  it('falls from the driver to the wedge, as measured (Wood, Henrikson & Broadie 2018, Proc. 2(6):249)', () => {
    assert.ok(driver > iron && iron > wedge);
  });

  it('lies within 61–83 % over clubs (Wood, Henrikson & Broadie 2018)', () => {
    for (const found of [driver, iron, wedge]) assert.ok(found > 0.61 && found < 0.83, `${found}`);
  });

  it('agrees with 0.83 ± 0.08, 0.81 ± 0.05 and 0.72 ± 0.06 (Henrikson et al. 2020, Proc. 49(1):27) within one of them', () => {
    assert.ok(Math.abs(driver - 0.83) < 0.08, `${driver}`);
    assert.ok(Math.abs(iron - 0.81) < 0.05, `${iron}`);
    assert.ok(Math.abs(wedge - 0.72) < 0.06, `${wedge}`);
  });

  it('lies 0.05–0.10 above the single figures 0.76, 0.69, 0.61 of 2018: a deviation that stays', () => {
    // A gripping sphere on a rigid face is all that the model has; a ball that winds up and lets go on the face
    // (tangential restitution above 0) would lower the share. No constant was changed for it.
    for (const [found, published] of [
      [driver, 0.76],
      [iron, 0.69],
      [wedge, 0.61],
    ] as const) {
      // prettier-ignore
      assert.ok(found - published > 0.05 && found - published < 0.1, `${found} for ${published}`);
    }
  });
});

describe('a measured driver head (Proceedings 2020, 49(1):47)', () => {
  it('is the representative driver', () => {
    const { head } = representativeHeads.driver;
    assert.equal(head.mass, 0.204);
    assert.equal(head.depth, 0.0423);
    assert.equal(head.bulge, 0.305);
    const { frontBack, vertical, heelToe } = head.inertia;
    for (const [own, published] of [
      [frontBack, 2843],
      [vertical, 5679],
      [heelToe, 4085],
    ] as const) {
      // prettier-ignore
      assert.ok(Math.abs(own * 1e7 - published) < 1e-9);
    }
  });

  it('has its restitution of 0.83 at the speed of a drive, within 0.006', () => {
    const own = representativeHeads.driver.head.restitution!;
    for (const speed of [44, 48]) assert.ok(Math.abs(own.atRest - own.perSpeed * speed - 0.83) < 0.006);
  });

  it('is struck by a ball of inertia 83.63 g cm²', () => {
    assert.ok(Math.abs(ballInertia(ruleBall) * 1e7 - 83.63) < 0.01);
  });

  it('twists less than the rules allow', () => {
    // R&A / USGA Equipment Rules, part 2: inertia about the vertical at most 5900 + 100 g cm².
    for (const { head } of Object.values(representativeHeads)) assert.ok(head.inertia.vertical <= 6000e-7);
  });
});
