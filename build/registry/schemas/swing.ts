// The JSON Schema of a swing record; knows nothing of how records are read.
import { languages } from '../../../src/registry/language.ts';
import type { Quantity, Shape } from '../../../src/registry/quantity.ts';
import { checkpoints } from '../../../src/registry/quantity.ts';
import {
  file,
  listOf,
  mapping,
  mappingOf,
  oneWordOf,
  quantityTree,
  text,
  use,
  word,
  type Schema,
} from './parts.ts';
import { below, checkpointMappings, ofSection, type Vocabulary } from './vocabulary.ts';

export function swingSchema(vocabulary: Vocabulary): Schema {
  const { quantities, shapes, misses } = vocabulary;
  const section = (name: 'conditions' | 'delivery' | 'ground' | 'strike', description: string): Schema =>
    mapping(description, quantityTree(ofSection(quantities, name), below, 'measure'));
  return file(
    'swing',
    'A swing record: one student, one club, one day',
    {
      student: word("The student's file, relative to this one."),
      date: word('The day of the lesson, as in 2026-05-14.'),
      club: word("The name of a club in the student's bag."),
      language: oneWordOf(
        "The language of what is handed to the student; otherwise that of the student's file.",
        languages,
      ),
      template: word('The template that this swing is held against, relative to this file.'),
      faults_from: word('The fault book whose faults may be stated here, relative to this file.'),
      conditions: section('conditions', 'The air and the place.'),
      checkpoints: mapping(
        'What was measured at each checkpoint.',
        checkpointMappings(vocabulary, 'measure'),
      ),
      delivery: section('delivery', 'How the club head came to the ball.'),
      ground: section('ground', 'What the club left in the ground.'),
      strike: section('strike', 'Where on the face the ball was struck.'),
      flight: mapping(
        'What the ball did.',
        quantityTree(ofSection(quantities, 'flight'), below, 'measure', { shape: shape(shapes) }),
      ),
      shots: {
        description: 'A file with one shot a row, relative to this one, or a list of shots.',
        type: ['string', 'array', 'null'],
        items: mapping('One shot.', shotKeys(quantities, shapes)),
      },
      faults: listOf(
        'The faults that the coach states.',
        mapping('One stated fault.', {
          fault: word('The name of a fault in the fault book.'),
          at: oneWordOf('The checkpoint at which it is seen.', checkpoints),
          note: text('What was seen.'),
        }),
      ),
      misses: {
        description: 'The misses that the student complains of, in the words of the trade.',
        type: ['array', 'null'],
        items: {
          description: 'One of them: a word, or a mapping with a note.',
          type: ['string', 'object', 'null'],
          pattern: `^(${misses.map(({ word: name }) => name).join('|')})$`,
          properties: {
            miss: oneWordOf(
              'The miss in a word.',
              misses.map(({ word: name }) => name),
            ),
            note: text('When it comes, and how often.'),
          },
          additionalProperties: false,
        },
      },
      goals: goals(vocabulary),
      plan: listOf(
        'What the student is to change, one to three things.',
        mapping('One change.', {
          change: word('The full id of the quantity to change, as in checkpoints.address.stance_width.'),
          to: use('target', 'The value or the window that it shall have.'),
          because: {
            ...listOf('The faults that it is to mend.', word('The name of a fault.')),
            type: ['string', 'array', 'null'],
          },
          proof: word(
            'What the next record must meet, as a condition over quantities: checkpoints.impact.lead_pressure > 70 %.',
          ),
          feel: text('What it shall feel like, said to the student; otherwise what the fault book says.'),
          note: text('Anything worth knowing about this change.'),
        }),
      ),
      predicted: mappingOf(
        'What the plan as a whole leads to at the next record, by the full id of the quantity; written by the tool.',
        use('measure', 'A value with its ± and where it comes from: by model, or by belief.'),
      ),
      notes: text('Anything else.'),
    },
    ['measure', 'target'],
  );
}

/** Goals, of a lesson or of a student. */
export function goals({ quantities, shapes, contacts }: Vocabulary): Schema {
  return listOf(
    'What the student wants of the ball.',
    mapping('One goal.', {
      shape: shape(shapes),
      ...quantityTree(ofSection(quantities, 'flight'), below, 'target'),
      contact: oneWordOf(
        'What the student wants of the strike, in words.',
        contacts.flatMap(({ word: name, also }) => [name, ...also]),
      ),
      club: word('The club that this goal is for; every club where it is left out.'),
      note: text('Anything worth knowing about this goal.'),
    }),
  );
}

function shape(shapes: readonly Shape[]): Schema {
  return oneWordOf(
    'The shape of the shot in a word.',
    shapes.map((known) => known.word),
  );
}

/** Flight, delivery and strike, each by its key below the section or by its full id. */
function shotKeys(
  quantities: readonly Quantity[],
  shapes: readonly Shape[],
): Readonly<Record<string, Schema>> {
  const known = (['flight', 'delivery', 'strike'] as const).flatMap((name) => ofSection(quantities, name));
  const short = known.map(
    (quantity) => [below(quantity), use('measure', `Short for ${quantity.id}.`)] as const,
  );
  const full = known.map((quantity) => [quantity.id, use('measure', quantity.meaning)] as const);
  return {
    ...Object.fromEntries([...short, ...full]),
    shape: shape(shapes),
    note: text('Anything worth knowing about this shot.'),
  };
}
