// The planned changes on a printed page, side by side in boxes of one height.
import type { Card } from '../draw/handout/content.tsx';
import type { Measured } from '../draw/handout/measured.tsx';
import { printedPicture } from './picture.ts';
import { heading, ink, line, list, width, type Block, type Setting } from './setting.ts';

const gutter = 10;

export function changes(set: Setting): readonly Block[] {
  const { points, content } = set;
  const { changesTitle, cards, further, measured } = content;
  return [
    heading(changesTitle, set),
    ...(further === undefined ? [] : [line(further, { margin: [0, 0, 0, points(5)] })]),
    ...(cards.length === 0 ? [] : [cards.length === 1 ? wideCard(cards[0]!, set) : cardRow(cards, set)]),
    ...(measured === undefined ? [] : entries(measured, set)),
  ];
}

/** In the place of cards: what was measured beside what a fuller record would show. */
function entries({ lines, picture, fuller }: Measured, set: Setting): readonly Block[] {
  const { points, content } = set;
  const { say } = content.speech;
  const listed = (title: string, texts: readonly string[], otherwise: string): Block => ({
    stack: [heading(title, set), texts.length === 0 ? line(otherwise) : list(title, texts, set)],
    width: '*',
  });
  return [
    ...(picture === undefined
      ? []
      : [{ ...printedPicture(picture), height: points(170), margin: [0, points(4), 0, 0] }]),
    {
      columns: [
        listed(say('measured'), lines, say('measuredNothing')),
        ...(fuller.length === 0 ? [] : [listed(say('fuller'), fuller, '')]),
      ],
      columnGap: 22,
    },
  ];
}

const side = [true, true, true, true];
const none = [false, false, false, false];

/** Cards of one row are as high as the highest, so they are cells of one table. */
function cardRow(cards: readonly Card[], set: Setting): Block {
  const { points } = set;
  const each = (width - gutter * (cards.length - 1)) / cards.length;
  const picture = Math.min(points(200), each - 18);
  const cells = cards.flatMap((card, i) => [
    ...(i === 0 ? [] : [{ text: '', border: none }]),
    { stack: [...cardHead(card, picture, set), ...cardWords(card, set)], border: side },
  ]);
  const widths = cards.flatMap((_, i) => [...(i === 0 ? [] : [gutter - 1]), '*']);
  return { table: { widths, body: [cells], dontBreakRows: true }, layout: cardLayout(points) };
}

function wideCard(card: Card, set: Setting): Block {
  const { points } = set;
  const cell = {
    columns: [
      { stack: cardHead(card, points(215), set), width: '*' },
      { stack: cardWords(card, set), width: '*', margin: [0, points(6), 0, 0] },
    ],
    columnGap: 18,
  };
  return { table: { widths: ['*'], body: [[cell]], dontBreakRows: true }, layout: cardLayout(points) };
}

export function cardLayout(points: Setting['points']): Block {
  return {
    hLineWidth: (row: number) => (row === 0 ? 3.5 : 0.9),
    hLineColor: (row: number) => (row === 0 ? ink.goal : ink.faint),
    vLineWidth: () => 0.9,
    vLineColor: () => ink.faint,
    // Every second column is the gap between two cards.
    paddingLeft: (column: number) => (column % 2 === 0 ? points(8) : 0),
    paddingRight: (column: number) => (column % 2 === 0 ? points(8) : 0),
    paddingTop: () => points(6),
    paddingBottom: () => points(7),
  };
}

function cardHead(
  { number, title, step, picture }: Card,
  wide: number,
  { points, content: { speech } }: Setting,
): readonly Block[] {
  return [
    {
      text: [line(`${number}  `, { color: ink.goal }), line(title)],
      bold: true,
      fontSize: points(11.5),
    },
    ...(step === '' ? [] : [line(step, { bold: true, color: ink.goal, fontSize: points(10.5) })]),
    picture === undefined
      ? line(speech.say('noPicture'), { color: ink.soft, margin: [0, points(4), 0, points(2)] })
      : {
          ...printedPicture(picture),
          width: wide,
          alignment: 'center',
          margin: [0, points(4), 0, points(2)],
        },
  ];
}

function cardWords({ feel, drills, why }: Card, { points, content: { speech } }: Setting): readonly Block[] {
  const named = (name: string, texts: readonly string[], style: Block = {}): readonly Block[] => [
    line(name, { fontSize: points(8.2), bold: true, color: ink.soft, margin: [0, points(4), 0, 0] }),
    ...texts.map((text) => line(text, style)),
  ];
  return [
    ...(feel === undefined ? [] : named(speech.say('feel'), [feel], { italics: true })),
    ...(drills.length === 0 ? [] : named(speech.say(drills.length === 1 ? 'drill' : 'drills'), drills)),
    ...(why === undefined ? [] : named(speech.say('why'), [why])),
  ];
}
