// Checks of the arc against published and independently computed strikes.
import assert from 'node:assert/strict';
import { arcAtStrike } from '../../src/physics/arc.ts';

const degree = Math.PI / 180;

describe('arc through the strike', () => {
  it('turns the path 2.9° outward in a hit 5° down on a 60° plane', () => {
    // Penner 2003, Rep. Prog. Phys. 66:131, and Jorgensen, The Physics of Golf: "about 2.9°"; 2.8953° by solid geometry.
    const strike = arcAtStrike({ radius: 1.6, inclination: 60 * degree, direction: 0 }, -5 * degree)!;
    assert.ok(Math.abs(strike.path / degree - 2.8953) < 5e-5);
    assert.ok(Math.abs(strike.lowPointAhead - 0.161) < 5e-5);
    assert.ok(Math.abs(strike.lowPointDepth - 0.00703) < 5e-6);
  });

  // Radius m, plane °, attack °, path °, low point ahead cm, lower mm: computed by solid geometry outside this project.
  const rows = [
    [1.5, 64, -6, 2.9384, 17.44, 9.15],
    [1.75, 47, 3, -2.8012, -12.52, 3.28],
  ] as const;
  for (const [radius, plane, attack, path, ahead, lower] of rows) {
    it(`meets the ball ${attack}° on a ${plane}° plane as computed independently`, () => {
      const strike = arcAtStrike({ radius, inclination: plane * degree, direction: 0 }, attack * degree)!;
      assert.ok(Math.abs(strike.path / degree - path) < 5.1e-5);
      assert.ok(Math.abs(strike.lowPointAhead * 100 - ahead) < 5.1e-3);
      assert.ok(Math.abs(strike.lowPointDepth * 1000 - lower) < 5.1e-3);
    });
  }

  it('puts the low point of an iron 5–12 cm ahead for strikes 1.7–4.3° down', () => {
    // Common practice, no source: irons bottom out some 5–12 cm ahead of the ball.
    const arc = { radius: 1.55, inclination: 62 * degree, direction: 0 };
    assert.ok(Math.abs(arcAtStrike(arc, -1.7 * degree)!.lowPointAhead - 0.05) < 0.005);
    assert.ok(Math.abs(arcAtStrike(arc, -4.3 * degree)!.lowPointAhead - 0.13) < 0.01);
  });
});
