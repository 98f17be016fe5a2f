// The JSON Schemas of the student's file, the template, the fault book, the review and the workspace; knows nothing of how they are read.
import { languages } from '../../../src/registry/language.ts';
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
  wordsOf,
  type Schema,
} from './parts.ts';
import { ownProperties } from './own.ts';
import { goals } from './swing.ts';
import { below, checkpointMappings, ofSection, type Vocabulary } from './vocabulary.ts';

export function studentSchema(vocabulary: Vocabulary): Schema {
  const { quantities, clubKinds } = vocabulary;
  return file(
    'student',
    "The student's file: the player, the bag of clubs, goals and cautions",
    {
      name: text('What the student is called.'),
      born: text('The date of birth, or only the year.'),
      language: oneWordOf(
        'The language of what is handed to the student; otherwise that of the workspace.',
        languages,
      ),
      hand: oneWordOf('The hand that the student plays with.', ['left', 'right']),
      ...quantityTree(ofSection(quantities, 'student'), below, 'measure'),
      body_table: oneWordOf('The published table of segment masses to use.', ['female', 'male', 'winter']),
      bag: mappingOf(
        'The clubs, each under the name that records call it by.',
        mapping('A club, under the name that records call it by.', {
          kind: oneWordOf('What kind of club it is.', clubKinds),
          ...quantityTree(ofSection(quantities, 'club'), below, 'measure'),
          note: text('Anything worth knowing about this club.'),
        }),
      ),
      goals: goals(vocabulary),
      injuries: listOf(
        'Pain, injuries and what to be careful with.',
        mapping('One of them.', {
          part: text('The part of the body, as in trail wrist.'),
          side: oneWordOf('The side of the body.', ['lead', 'trail', 'left', 'right', 'both']),
          since: text('Since when, as in 2026-03.'),
          note: text('What a coach has to know.'),
        }),
      ),
      notes: text('Anything else.'),
    },
    ['measure', 'target'],
  );
}

export function templateSchema(vocabulary: Vocabulary): Schema {
  const { quantities, clubKinds } = vocabulary;
  const section = (name: 'delivery' | 'ground' | 'strike' | 'flight', description: string): Schema =>
    mapping(description, quantityTree(ofSection(quantities, name), below, 'window'));
  return file(
    'template',
    'A template: the windows that a coach teaches toward',
    {
      title: text('What the template is called.'),
      clubs: wordsOf('The kinds of club that it is for; every kind where it is left out.', clubKinds),
      checkpoints: mapping('Windows at each checkpoint.', checkpointMappings(vocabulary, 'window')),
      delivery: section('delivery', 'Windows for how the club head comes to the ball.'),
      ground: section('ground', 'Windows for what the club leaves in the ground.'),
      strike: section('strike', 'Windows for where on the face the ball is struck.'),
      flight: section('flight', 'Windows for what the ball does.'),
      notes: text('Anything else.'),
    },
    ['window'],
  );
}

export function faultsSchema(): Schema {
  return file(
    'faults',
    'A fault book: what a fault is, what shows it, what it tends to cause and what changes it',
    {
      title: text('What the book is called.'),
      extends: word('Another fault book that this one adds to, relative to this file.'),
      book: mappingOf(
        'The faults, each under the name that records call it by.',
        mapping('A fault, under the name that records call it by.', {
          title: text('The fault in a few words.'),
          explanation: text('What it is and why it matters, for the student.'),
          at: wordsOf('The checkpoints at which it may be seen.', checkpoints),
          evidence: {
            description: 'What shows the fault: one expression over quantities, or a list of them.',
            type: ['string', 'array', 'null'],
            items: {
              type: ['string', 'object', 'null'],
              properties: {
                expression: word(
                  'An expression over quantities, as in checkpoints.top.lead_pressure > 55 %.',
                ),
                weight: {
                  description: 'How much it counts beside the others.',
                  type: ['number', 'null'],
                  minimum: 0,
                },
              },
              additionalProperties: false,
            },
          },
          tends_to: listOf(
            'What the coach believes the fault does.',
            mapping('One effect.', {
              effect: word('The full id of the quantity that it changes.'),
              direction: word(
                'The direction in which it changes, in the words of that quantity, or more, or less.',
              ),
              size: text('How much, as in 2 deg per 5 cm ± 0.5 deg.'),
              of: word(
                'The full id of the quantity of the evidence that so much per so much is for, where it could be several.',
              ),
            }),
          ),
          changes: listOf(
            'What a coach can change about it.',
            mapping('One change.', {
              change: word('The full id of the quantity to change.'),
              to: text('The value or the window to bring it to.'),
              by: text('How much to change it by and which way, as in 5 cm narrower.'),
              feel: text('What it feels like when it is right, said to the student.'),
              when: oneWordOf('The part of the swing in which it is changed.', [
                'setup',
                'backswing',
                'downswing',
              ]),
            }),
          ),
          cautions: listOf('The parts of the body that its changes load.', text('A part of the body.')),
          drills: listOf('What to practise.', text('One drill.')),
        }),
      ),
      notes: text('Anything else.'),
    },
    [],
  );
}

export function reviewSchema(): Schema {
  const author = word('Who wrote it.');
  const time = word('When it was written, as in 2026-05-14T18:30:00Z.');
  const suggests = text('The value that should stand there instead, as it would be written in the record.');
  const states = ['open', 'answered', 'settled'];
  return file(
    'review',
    "A colleague's review of one record",
    {
      of: word('The record under review, relative to this file.'),
      threads: listOf(
        'What the colleague remarks.',
        mapping('One remark with its replies.', {
          id: text('A name for the remark that no other one in this file has.'),
          about: word(
            'The full id of the quantity that it is about, or keys joined by dots, as in faults.low-hands.',
          ),
          value: text('What stood there when the remark was made.'),
          author,
          time,
          state: oneWordOf('How far it has come, before its replies.', states),
          text: text('The remark.'),
          suggests,
          replies: listOf(
            'The replies, and who settled the remark or opened it again.',
            mapping('One of them.', {
              author,
              time,
              state: oneWordOf(
                "How far the remark has come with it; open after its author's word and answered after another's where left out.",
                states,
              ),
              text: text('The reply.'),
              suggests,
            }),
          ),
        }),
      ),
      signed_off: listOf(
        'Who has signed the record off, and what it said then.',
        mapping('One signature.', {
          by: word('Who signed.'),
          time,
          hash: word('Of all values of the record when it was signed, as in sha256:0a….'),
        }),
      ),
      notes: text('Anything else.'),
    },
    [],
  );
}

export function workspaceSchema(vocabulary: Vocabulary): Schema {
  const { methods, dimensions } = vocabulary;
  const figures = Object.fromEntries(
    dimensions.map((dimension) => [
      dimension,
      text(`One standard uncertainty for the dimension ${dimension}, with its unit.`),
    ]),
  );
  const method = mapping('One method of measuring.', {
    meaning: text('What the method is.'),
    uncertainty: {
      ...mapping('One standard uncertainty for each dimension or quantity, as in 2 deg.', figures),
      // Full ids, the workspace's own among them: its reader says which of them it does not know.
      patternProperties: {
        '\\.': text('One standard uncertainty for this quantity alone, with its unit.'),
      },
    },
  });
  return file(
    'workspace',
    'The workspace: how good each method of measuring is, and how loud each finding',
    {
      coverage: {
        description: 'How many standard uncertainties a written ± stands for; 1 where it is left out.',
        type: ['number', 'null'],
        exclusiveMinimum: 0,
      },
      most_changes: {
        description: 'The most changes that a plan may have; 3 where it is left out.',
        type: ['integer', 'null'],
        minimum: 1,
      },
      language: oneWordOf('The language of what is handed to students; en where it is left out.', languages),
      severities: mappingOf(
        'How loud a finding is, by its code.',
        oneWordOf('How loud this finding is.', ['error', 'warning', 'information', 'hint', 'off']),
      ),
      methods: {
        description: 'Methods of measuring: known ones with figures of your own, or new ones.',
        type: ['object', 'null'],
        properties: Object.fromEntries(
          methods.map(({ name, meaning }) => [name, use('method', `${meaning}.`)]),
        ),
        additionalProperties: { $ref: '#/definitions/method' },
      },
      ...ownProperties(vocabulary),
      shots: mapping('How files of shots are read.', {
        by: word('The method by which the shots were measured, where a column or a cell does not say.'),
        columns: mappingOf('What each column holds, by the words in the first line of the file.', {
          description:
            'A quantity of flight, delivery or strike, as in flight.carry or carry, or `ignore`; in a mapping with its unit.',
          type: ['string', 'object', 'null'],
          properties: {
            quantity: word('The id of the quantity, as in flight.carry, or its short key, as in carry.'),
            unit: word('The unit of its bare numbers.'),
            by: word('The method by which this column was measured.'),
          },
          additionalProperties: false,
        }),
      }),
      calibration: mapping(
        'Multipliers of drag and lift, fitted to shots of this workspace; written by `swingwright calibrate --write`.',
        {
          drag: text('What published drag is multiplied by, as in 1.04 ± 0.02.'),
          lift: text('What published lift is multiplied by; left out where it could not be told from drag.'),
          correlation: {
            description: 'How far the two go together, from -1 to 1.',
            type: ['number', 'null'],
            minimum: -1,
          },
          shots: {
            description: 'How many shots it was fitted to.',
            type: ['number', 'null'],
            exclusiveMinimum: 0,
          },
          ball_speed: text('The ball speeds that it was fitted to, as in 38..52 m/s.'),
        },
      ),
      notes: text('Anything else.'),
    },
    [],
    'swingwright',
    { method },
  );
}
