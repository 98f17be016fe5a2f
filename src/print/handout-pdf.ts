// A handout as PDF: the same words and pictures as the page, set on A4, pictures as lines and letters; the same bytes for the same handout.
import pdfmake from 'pdfmake';
import files from 'pdfmake/build/vfs_fonts.js';
import type { Handout } from '../analysis/handout.ts';
import { contentOf, type Audience, type Content } from '../draw/handout/content.tsx';
import { handoutSheets } from './handout-sheets.ts';
import { isPrintable, printed } from './letters.ts';
import { tagWhatIsPrinted } from './tags.ts';

export interface Printed {
  readonly bytes: Uint8Array;
  /** Whether a character had to be replaced, for the page's letters are Latin, Greek and Cyrillic. */
  readonly isWhole: boolean;
}

/** Letters get smaller until it fits; smaller than this nobody reads it. */
const sizes = [1, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7] as const;

let isReady = false;

/** pdfmake asks for a name or an address, and looks whether it is one; bytes that answer to that go through to where they are read. */
function letters(style: string): Buffer {
  const bytes = Buffer.from(files[`Roboto-${style}.ttf`] ?? '', 'base64');
  return Object.assign(bytes, { url: bytes, toLowerCase: () => '' });
}

/** The letters are in the bundle: nothing is read from a disk or from an address. */
function prepare(): void {
  if (isReady) return;
  pdfmake.setFonts({
    Roboto: {
      normal: letters('Regular'),
      bold: letters('Medium'),
      italics: letters('Italic'),
      bolditalics: letters('MediumItalic'),
    },
  });
  tagWhatIsPrinted();
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.setLocalAccessPolicy(() => false);
  isReady = true;
}

export async function handoutPdf(handout: Handout, audience: Audience): Promise<Printed> {
  prepare();
  const content = contentOf(handout, audience);
  const said = [content.title, ...content.facts, JSON.stringify(content)].join(' ');
  const set = (told: Content, size: number, tableSize: number): Promise<Buffer> =>
    pdfmake
      .createPdf({ ...handoutSheets(told, size, tableSize), ...about(handout, content.title, content.facts) })
      .getBuffer();
  const first = await fitting((size) => set({ ...content, tables: [] }, size, size), 1);
  if (content.tables.length === 0) return { bytes: first.bytes, isWhole: isPrintable(said) };
  // Many numbers on the second page make no letter of the first one smaller.
  const { bytes } = await fitting((size) => set(content, first.size, size), 2);
  return { bytes, isWhole: isPrintable(said) };
}

/** With the largest letters that keep to so many pages. */
async function fitting(
  set: (size: number) => Promise<Buffer>,
  pages: number,
): Promise<{ readonly bytes: Buffer; readonly size: number }> {
  let bytes: Buffer = Buffer.alloc(0);
  let size = 1;
  for (size of sizes) {
    bytes = await set(size);
    if (pagesIn(bytes) <= pages) break;
  }
  return { bytes, size };
}

/** The day is the record's: no clock has a say. A record without one gets the first day that PDF knows of. */
function about({ date, language }: Handout, title: string, facts: readonly string[]): object {
  const day = new Date(`${date ?? '1970-01-01'}T12:00:00Z`);
  return {
    language,
    // Structure came with PDF 1.3 (ISO 32000-1, 14.7), tagged PDF with 1.4 (14.8), the scope of a cell that heads others with 1.5
    // (14.8.5.7); clause numbers from memory.
    version: '1.7',
    tagged: true,
    displayTitle: true,
    info: {
      title: printed([title, ...facts].join(', ')),
      creator: 'Swingwright',
      producer: 'Swingwright',
      creationDate: day,
      modDate: day,
    },
  };
}

function pagesIn(bytes: Buffer): number {
  return bytes.toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0;
}
