// Tests of a face turned about its shaft: what a rotation must keep, and the rule of thumb that it must meet.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { loftFromOpening } from '../../src/physics/loft.ts';
import { loftWithFaceAt, turnedFace } from '../../src/physics/opened-face.ts';
import { directionOf, dot, vector } from '../../src/physics/vector.ts';
import { anyNumber, between, degree, numbersOf } from './scenarios.ts';

const anyClub = fc.record({
  loft: between(5 * degree, 60 * degree),
  lie: between(50 * degree, 70 * degree),
  lean: between(-10 * degree, 15 * degree),
});
const anyTurn = between(-40 * degree, 40 * degree);

describe('turnedFace', () => {
  it('leaves a face that is not turned as it is', () => {
    fc.assert(
      fc.property(anyClub, (club) => {
        const face = turnedFace(club, 0)!;
        assert.ok(Math.abs(face.face) < 1e-12);
        assert.ok(Math.abs(face.loft - club.loft) < 1e-12);
      }),
    );
  });

  it('keeps the angle between face and shaft', () => {
    fc.assert(
      fc.property(anyClub, anyTurn, (club, turn) => {
        const shaft = vector(
          Math.tan(club.lean) * Math.sin(club.lie),
          Math.cos(club.lie),
          Math.sin(club.lie),
        );
        const face = turnedFace(club, turn);
        if (face === undefined) return;
        const [before, after] = [directionOf(0, club.loft), directionOf(face.face, face.loft)];
        assert.ok(Math.abs(dot(shaft, before) - dot(shaft, after)) < 1e-12);
      }),
    );
  });

  it('opens to the right and adds loft, closes to the left and takes it off', () => {
    // Common practice, no source.
    fc.assert(
      fc.property(anyClub, between(1 * degree, 20 * degree), (club, turn) => {
        const upright = { ...club, lean: 0 };
        const [open, shut] = [turnedFace(upright, turn)!, turnedFace(upright, -turn)!];
        assert.ok(open.face > 0 && open.loft > club.loft);
        assert.ok(shut.face < 0 && shut.loft < club.loft);
      }),
    );
  });

  it('knows no face that looks straight up', () => {
    assert.equal(turnedFace({ loft: Math.PI / 2, lie: 1 }, 0.1), undefined);
  });
});

describe('loftWithFaceAt', () => {
  it('is the loft of the turn that brings the face there', () => {
    fc.assert(
      fc.property(anyClub, between(-25 * degree, 25 * degree), (club, turn) => {
        const turned = turnedFace(club, turn)!;
        assert.ok(Math.abs(loftWithFaceAt(club, turned.face)! - turned.loft) < 1e-9);
      }),
    );
  });

  it('agrees with the rule of thumb for small angles', () => {
    fc.assert(
      fc.property(anyClub, between(-3 * degree, 3 * degree), (club, face) => {
        const exact = loftWithFaceAt({ ...club, lean: 0 }, face)! - club.loft;
        assert.ok(Math.abs(exact - loftFromOpening(face, club.lie)!) < 0.25 * degree);
      }),
    );
  });

  it('gives finite numbers or none for any input', () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, anyNumber, (loft, lie, lean, angle) => {
        const clubs = [
          { loft, lie, lean },
          { loft, lie: 1, lean: 0.1 },
          { loft: 0.4, lie, lean },
        ];
        const results = clubs.flatMap((club) => [turnedFace(club, angle), loftWithFaceAt(club, angle)]);
        assert.ok(numbersOf(results).every(Number.isFinite));
      }),
      { numRuns: 500 },
    );
  });
});
