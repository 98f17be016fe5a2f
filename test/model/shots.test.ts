// Means, spreads, ellipses and far-out shots, held against how they were drawn.
import assert from 'node:assert/strict';
import { summariseShots, type Shot } from '../../src/model/shots.ts';
import { normals } from './draws.ts';

const shot = (values: Readonly<Record<string, number>>): Shot =>
  new Map(Object.entries(values).map(([key, value]) => [`flight.${key}`, value]));

const carries = (values: readonly number[]): Shot[] => values.map((carry) => shot({ carry }));

function drawn(count: number, draw: () => number): Shot[] {
  return Array.from({ length: count }, () => {
    const [a, b] = [draw(), draw()];
    return shot({ carry: 160 + 6 * a, finish: 3 + 4 * b });
  });
}

describe('shots summed up', () => {
  it('say nothing where there are none', () => {
    assert.equal(summariseShots([]), undefined);
    assert.equal(summariseShots([new Map()]), undefined);
  });

  it('have no spread where there is one', () => {
    const { sd, u, mean } = summariseShots(carries([168]))!.statistics.get('flight.carry')!;
    assert.deepEqual([mean, sd, u], [168, undefined, undefined]);
  });

  it('give mean, median, standard deviation and the uncertainty of the mean', () => {
    // 2, 4, 4, 4, 5, 5, 7, 9: sum of squares about the mean 5 is 32; 32/7 under the root.
    const shots = [2, 4, 4, 4, 5, 5, 7, 9].map((apex) => shot({ apex }));
    const { mean, median, sd, u, count } = summariseShots(shots)!.statistics.get('flight.apex')!;
    assert.deepEqual([count, mean, median], [8, 5, 4.5]);
    assert.ok(Math.abs(sd! - Math.sqrt(32 / 7)) < 1e-14);
    assert.ok(Math.abs(u! - Math.sqrt(32 / 7 / 8)) < 1e-14);
  });

  it('fill in the finish from start, curve and carry', () => {
    // asin(30/150) from a start of asin(0.1): 150 · sin(asin 0.1 + asin 0.2).
    const summary = summariseShots([shot({ carry: 150, start: Math.asin(0.1), curve: 30 })])!;
    const expected = 150 * (0.1 * Math.sqrt(1 - 0.04) + 0.2 * Math.sqrt(1 - 0.01));
    assert.ok(Math.abs(summary.statistics.get('flight.finish')!.mean - expected) < 1e-12);
  });

  it('leave out a shot that lies far out, and name its place', () => {
    const summary = summariseShots(carries([168, 171, 165, 64, 169, 170, 166]))!;
    assert.deepEqual([summary.outliers, summary.count, summary.used], [[3], 7, 6]);
    assert.ok(Math.abs(summary.statistics.get('flight.carry')!.mean - 1009 / 6) < 1e-12);
  });

  it('leave none out of five shots, nor where most say the same number', () => {
    assert.deepEqual(summariseShots(carries([168, 169, 170, 171, 64]))!.outliers, []);
    assert.deepEqual(summariseShots(carries([168, 168, 168, 168, 168, 168, 64]))!.outliers, []);
  });

  it('leave a shot out of about one clean set of twelve in five, which takes little from the spread', () => {
    const draw = normals(5);
    let [sets, squares] = [0, 0];
    const rounds = 1500;
    for (let round = 0; round < rounds; round++) {
      const summary = summariseShots(drawn(12, draw))!;
      if (summary.outliers.length > 0) sets += 1;
      squares += (summary.statistics.get('flight.carry')!.sd! / 6) ** 2;
    }
    assert.ok(sets / rounds > 0.14 && sets / rounds < 0.22, `${sets / rounds}`);
    assert.ok(Math.abs(Math.sqrt(squares / rounds) - 0.97) < 0.02, `${Math.sqrt(squares / rounds)}`);
  });

  it('draw the 95 % ellipse so that the next shot comes down within it 95 times in a hundred', () => {
    const draw = normals(11);
    let within = 0;
    const rounds = 3000;
    for (let round = 0; round < rounds; round++) {
      // Few enough that nothing is left out.
      const [next, ...shots] = drawn(6, draw);
      const ellipse = summariseShots(shots)!.ellipse!;
      const right = next!.get('flight.finish')! - ellipse.right;
      const ahead =
        Math.sqrt(next!.get('flight.carry')! ** 2 - next!.get('flight.finish')! ** 2) - ellipse.ahead;
      const [sin, cos] = [Math.sin(ellipse.direction), Math.cos(ellipse.direction)];
      const along = (ahead * cos + right * sin) / (ellipse.long * ellipse.factor95);
      const across = (right * cos - ahead * sin) / (ellipse.short * ellipse.factor95);
      if (along ** 2 + across ** 2 <= 1) within += 1;
    }
    // The standard error of the share is √(0.95 · 0.05/3000) = 0.004.
    assert.ok(Math.abs(within / rounds - 0.95) < 0.012, `${within / rounds}`);
  });

  it('turn the ellipse to the right where long shots end on the right', () => {
    const shots = [-2, -1, 0, 1, 2].map((k) => shot({ carry: 150 + 4 * k, finish: 4 * k }));
    const { direction, short, long } = summariseShots(shots)!.ellipse!;
    assert.ok(direction > 0.7 && direction < 0.9);
    assert.ok(short < 0.1 * long);
  });

  it('take as typical the shot nearest to the medians', () => {
    const shots = [
      shot({ carry: 150, finish: 9 }),
      shot({ carry: 160, finish: 3 }),
      shot({ carry: 170, finish: -4 }),
      shot({ carry: 161, finish: 12 }),
    ];
    assert.equal(summariseShots(shots)!.typical, 1);
  });

  it('give the covariance of two quantities over the shots that say both', () => {
    const { covariance } = summariseShots([
      shot({ carry: 1, spin: 2 }),
      shot({ carry: 2, spin: 4 }),
      shot({ carry: 6, spin: 9 }),
      shot({ carry: 100 }),
    ])!;
    // Means 3 and 5: (−2)(−3) + (−1)(−1) + 3·4 = 19, over 2.
    assert.equal(covariance('flight.carry', 'flight.spin'), 9.5);
    assert.equal(covariance('flight.carry', 'flight.apex'), undefined);
  });
});
