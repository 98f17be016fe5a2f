// The keys of the workspace file with which a developer adds quantities, relations and checks; knows nothing of how they are read.
import { checkpoints } from '../../../src/registry/quantity.ts';
import { mapping, mappingOf, oneWordOf, text, word, wordsOf, yesOrNo, type Schema } from './parts.ts';
import type { Vocabulary } from './vocabulary.ts';

/** `quantities`, `derived`, `relations`, `checks` and `show`. */
export function ownProperties({ methods }: Vocabulary): Readonly<Record<string, Schema>> {
  const uncertainty: Schema = {
    description: 'One standard uncertainty, as in 1 deg; in a mapping by method and `otherwise`.',
    type: ['string', 'number', 'object', 'null'],
    properties: Object.fromEntries(
      ['otherwise', ...methods.map(({ name }) => name)].map((name) => [
        name,
        text(name === 'otherwise' ? 'By any other method.' : `By ${name}.`),
      ]),
    ),
    additionalProperties: text('By a method of your own.'),
  };
  return {
    quantities: mappingOf(
      'Quantities of your own, each under its full id, as in delivery.shaft_droop; below checkpoints. with `at`.',
      mapping('A quantity of your own, under its full id.', {
        ...described,
        bounds: text('The window that is possible, as in -5..15 deg; a number outside is an error.'),
        practice: text('The window that is usual, as in 0..6 deg; a number outside is information.'),
        source: text('Where the windows come from.'),
        at: wordsOf(
          'The checkpoints that it belongs to, where its id is checkpoints. and a key of its own.',
          checkpoints,
        ),
        uncertainty,
      }),
    ),
    derived: mappingOf(
      'Quantities of your own that follow from others, each under its full id.',
      mapping('A quantity that follows from others, under its full id.', {
        is: word('The expression that gives it, as in delivery.delivered_loft - delivery.attack.'),
        ...described,
        bounds: text('The window that is possible, as in 0..60 deg.'),
        practice: text('The window that is usual, as in 20..40 deg.'),
        source: text('Where the expression comes from.'),
        uncertainty,
      }),
    ),
    relations: mappingOf(
      'Equations between quantities that join the agreement of all entries, each under a name.',
      mapping('An equation between quantities, under its name.', {
        says: word(
          'Left ≈ right ± one standard uncertainty, as in checkpoints.impact.hands ≈ 2 * checkpoints.impact.head ± 3 cm; ~ will do for ≈.',
        ),
        because: text('Why it holds, and where it comes from.'),
      }),
    ),
    checks: mappingOf(
      'Checks of your own, each under a name; their codes are own/ and that name.',
      mapping('A check, under its name.', {
        when: word('The condition that raises the finding, as in delivery.path < -6 deg.'),
        message: text(
          'What the finding says; a full id between braces, as in {delivery.path}, stands for its value.',
        ),
        severity: oneWordOf('How loud the finding is; a warning where it is left out.', [
          'error',
          'warning',
          'information',
          'hint',
        ]),
        at: word('The full id of the quantity at which the finding stands.'),
        because: text('Why it matters, for the explanation of the code.'),
      }),
    ),
    show: mappingOf(
      'The unit in which a quantity, or all of a dimension, is shown, by full id or dimension.',
      word('The unit, as in yd.'),
    ),
  };
}

const described: Readonly<Record<string, Schema>> = {
  like: word('The full id of a known quantity from which all that is not said here is taken.'),
  title: text('What it is called.'),
  meaning: text('What it is, in one sentence.'),
  from: text('What it is measured from.'),
  to: text('What it is measured to.'),
  unit: word('The unit of a bare number, and the one shown.'),
  decimals: {
    description: 'The decimals shown where the uncertainty does not say better.',
    type: ['integer', 'null'],
    minimum: 0,
    maximum: 6,
  },
  directions: mappingOf(
    'Words that stand for a sign, as in { open: positive, closed: negative }.',
    oneWordOf('The sign that the word stands for.', ['positive', 'negative']),
  ),
  lateral: yesOrNo('True where left and right change places for a left-handed player.'),
};
