// How a handout is set on A4, as pdfmake's description of a document; says nothing of its own.
import type { Content } from '../draw/handout/content.tsx';
import type { Table } from '../draw/handout/file-tables.ts';
import { leastOfCare } from '../draw/handout/style.ts';
import { widthOf } from '../draw/lettering.ts';
import { printed } from './letters.ts';
import { cardLayout, changes } from './handout-cards.ts';
import { printedPicture } from './picture.ts';
import type { Role } from 'pdfmake/js/Renderer.js';
import { heading, ink, line, list, margin, partOf, width, type Block, type Setting } from './setting.ts';

/** @param tableSize that of the second page's letters */
export function handoutSheets(content: Content, size: number, tableSize: number): Block {
  const { speech, tables } = content;
  const setIn = (factor: number): Setting => ({
    points: (base) => Math.round(base * factor * 100) / 100,
    content,
  });
  const [set, tableSet] = [setIn(size), setIn(tableSize)];
  const { points } = set;
  const foot = tables.length > 0 ? `${speech.say('uncertainty')} ${speech.say('foot')}` : speech.say('foot');
  return {
    pageSize: 'A4',
    pageMargins: [margin.side, margin.top, margin.side, 40],
    defaultStyle: { font: 'Roboto', fontSize: points(10), lineHeight: 1.18, color: ink.ink },
    footer: {
      text: [{ text: printed(foot), role: 'Artifact' satisfies Role }],
      fontSize: 7.5,
      color: ink.soft,
      margin: [margin.side, 12, margin.side, 0],
    },
    content: [
      ...head(set),
      ...seen(set),
      ...changes(set),
      lastRow(set),
      ...(content.gaps === undefined
        ? []
        : [line(content.gaps, { color: ink.soft, margin: [0, points(8), 0, 0] })]),
      ...tables.map((table, i) => numbers(table, i === 0, tableSet)),
    ],
  };
}

/** Of day and club, beside the name. */
const facing = 220;

function head({ points, content: { title, facts, wish, speech, audience } }: Setting): readonly Block[] {
  const wide = width - facing - 16;
  // A name that is long is set smaller: it has no place to break at.
  const size = Math.min(points(25), Math.max(6, wide / widthOf(title, 1)));
  return [
    {
      columns: [
        {
          text: [line(title, { role: 'H1' satisfies Role })],
          fontSize: size,
          bold: true,
          width: wide,
          lineHeight: 1,
        },
        line(facts.join(' \u00b7 '), {
          color: ink.soft,
          width: facing,
          alignment: 'right',
          margin: [0, Math.max(0, size / 2 - points(1)), 0, 0],
        }),
      ],
      columnGap: 16,
    },
    rule(ink.entered, 2.4, points(5)),
    ...(wish.length === 0
      ? []
      : [
          {
            text: [
              line(`${speech.say(audience === 'file' ? 'wishOfFile' : 'wish')}: `, {
                bold: true,
                color: ink.goal,
              }),
              line(wish.join(' \u00b7 ')),
            ],
            fontSize: points(10.8),
            margin: [0, points(8), 0, 0],
          },
        ]),
  ];
}

function rule(colour: string, thickness: number, above: number): Block {
  return {
    canvas: [{ type: 'line', x1: 0, y1: 0, x2: width, y2: 0, lineWidth: thickness, lineColor: colour }],
    margin: [0, above, 0, 0],
  };
}

function seen(set: Setting): readonly Block[] {
  const { points, content } = set;
  const { speech, saw, sawOtherwise, remarks, doubts, chains, flight } = content;
  const words: Block[] = [
    heading(speech.say('saw'), set),
    ...(sawOtherwise === undefined ? [] : [line(sawOtherwise, { margin: [0, 0, 0, points(3)] })]),
    ...saw.map(({ title, text }) => ({
      text: [line(title, { bold: true }), ...(text === undefined ? [] : ['\n', line(text)])],
      margin: [0, 0, 0, points(5)],
    })),
    ...[...remarks, ...doubts].map((text) => line(text, { margin: [0, 0, 0, points(3)] })),
    ...(saw.length === 0 && chains.length === 0 ? [] : [heading(speech.say('causes'), set)]),
    ...(saw.length > 0 && chains.length === 0 ? [line(speech.say('causesNothing'))] : []),
    ...chains.map((chain) => chainOf(chain, set)),
  ];
  if (flight === undefined) return words;
  return [
    {
      columns: [
        { stack: words, width: '*' },
        {
          stack: [heading(speech.say('flight'), set), { ...printedPicture(flight), width: points(212) }],
          width: 212,
        },
      ],
      columnGap: 22,
    },
  ];
}

/** From cause to miss, an arrow between. */
function chainOf(chain: readonly string[], { points }: Setting): Block {
  const last = chain.length - 1;
  return {
    text: chain.flatMap((link, i) => [
      ...(i === 0 ? [] : [line('  \u203a  ', { color: ink.soft, bold: true })]),
      line(link, i === 0 ? { bold: true } : i === last && last > 1 ? { bold: true, color: ink.alert } : {}),
    ]),
    margin: [0, 0, 0, points(4)],
  };
}

function lastRow(set: Setting): Block {
  const { points, content } = set;
  const { speech, measureNext, care } = content;
  const box = {
    table: {
      widths: ['*'],
      body: [
        [
          {
            fontSize: Math.max(leastOfCare, points(10)),
            stack: [
              heading(speech.say('care'), set, { color: ink.expected, margin: [0, 0, 0, points(2)] }),
              ...care.map((text) => line(text, { margin: [0, points(2), 0, 0] })),
            ],
          },
        ],
      ],
    },
    layout: {
      ...cardLayout(points),
      hLineWidth: () => 1,
      vLineWidth: () => 1,
      hLineColor: () => ink.expected,
      vLineColor: () => ink.expected,
    },
    margin: [0, points(12), 0, 0],
    width: '*',
  };
  return {
    columns: [
      {
        stack: [
          heading(speech.say('measureNext'), set),
          measureNext.length === 0
            ? line(speech.say('measureNothing'))
            : list(speech.say('measureNext'), measureNext, set),
        ],
        width: '*',
      },
      box,
    ],
    columnGap: 22,
  };
}

function numbers({ title, columns, rows, rest }: Table, isFirst: boolean, set: Setting): Block {
  const { points } = set;
  const cell = (row: number, column: number, text: string, style: Block): Block =>
    partOf(
      [
        { type: 'Table', key: title },
        { type: 'TR', key: `${title} ${row}` },
        row === 0 || column === 0
          ? { type: 'TH', key: `${title} ${row} ${column}`, scope: row === 0 ? 'Column' : 'Row' }
          : { type: 'TD', key: `${title} ${row} ${column}` },
      ],
      text,
      style,
    );
  const body = [
    columns.map((text, i) => cell(0, i, text, { color: ink.soft })),
    ...rows.map((cells, n) =>
      columns.map((_, i) => cell(n + 1, i, cells[i] ?? '', i === 0 ? { bold: true } : {})),
    ),
  ];
  return {
    ...(isFirst ? { pageBreak: 'before' } : {}),
    stack: [
      heading(
        title,
        set,
        isFirst ? { margin: [0, 0, 0, points(3)] } : { margin: [0, points(9), 0, points(3)] },
      ),
      {
        table: {
          headerRows: 1,
          widths: columns.map((_, i) => (i === 0 ? '*' : 'auto')),
          body,
          dontBreakRows: true,
        },
        layout: {
          hLineWidth: (row: number) => (row === 0 ? 0 : 0.6),
          hLineColor: () => ink.faint,
          vLineWidth: () => 0,
          paddingLeft: (column: number) => (column === 0 ? 0 : 6),
          paddingRight: () => 6,
          paddingTop: () => points(1.6),
          paddingBottom: () => points(1.2),
        },
        fontSize: points(8.4),
      },
      ...(rest === undefined
        ? []
        : [line(rest, { color: ink.soft, fontSize: points(8.4), margin: [0, 2, 0, 0] })]),
    ],
  };
}
