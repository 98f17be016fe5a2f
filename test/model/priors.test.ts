// Tests of what the model may take where nobody entered it.
import assert from 'node:assert/strict';
import { headOf, priorsFor } from '../../src/model/priors.ts';

const kinds = ['driver', 'fairway', 'hybrid', 'iron', 'wedge', undefined, 'putter'];

describe('priorsFor', () => {
  it('never takes speed, loft, attack, path, face, arc or anything of the flight', () => {
    for (const clubKind of kinds) {
      for (const { id } of priorsFor({ clubKind, windBearing: undefined })) {
        assert.ok(
          !id.startsWith('delivery.') && !id.startsWith('flight.') && !id.startsWith('checkpoints.'),
          id,
        );
        assert.notEqual(id, 'club.loft');
      }
    }
  });

  it('says each assumption in words, with an uncertainty and a source, and only once', () => {
    for (const clubKind of kinds) {
      const priors = priorsFor({ clubKind, windBearing: undefined });
      assert.equal(new Set(priors.map((p) => p.id)).size, priors.length);
      for (const prior of priors) {
        assert.ok(prior.u > 0 && Number.isFinite(prior.value), prior.id);
        assert.ok(prior.words.length > 5 && prior.source.length > 5, prior.id);
      }
    }
  });

  it('knows no head, and so assumes no mass, for a kind of club that is not in the table', () => {
    for (const clubKind of ['putter', 'toString', undefined]) {
      assert.equal(headOf(clubKind), undefined);
      assert.ok(!priorsFor({ clubKind, windBearing: undefined }).some((p) => p.id === 'club.head_mass'));
    }
  });
});
