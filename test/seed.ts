// Gives every property test the same seed, so that a run can be repeated; PROPERTY_SEED=random or a number looks elsewhere.
import fc from 'fast-check';

const wanted = process.env['PROPERTY_SEED'] ?? '20260525';

fc.configureGlobal(wanted === 'random' ? {} : { seed: Number(wanted) });
