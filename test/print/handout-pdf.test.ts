// A handout as PDF: as many pages as promised, the same words, pictures of lines, and the same bytes twice.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { create } from 'fontkit';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { contentOf } from '../../src/draw/handout/content.tsx';
import { handoutSheets } from '../../src/print/handout-sheets.ts';
import { handoutPdf } from '../../src/print/handout-pdf.ts';
import { isPrintable, printed } from '../../src/print/letters.ts';
import { handoutFrom, handoutOfFiles, lesson, sampleRecords } from '../analysis/handouts.ts';

interface StructNode {
  readonly role: string;
  readonly alt?: string;
  readonly children: readonly (StructNode | { readonly id: string })[];
}

interface Read {
  readonly pages: number;
  readonly words: string;
  readonly operators: readonly number[];
  /** How far to the right any text reaches, in points. */
  readonly right: number;
}

async function read(bytes: Uint8Array): Promise<Read> {
  const document = await getDocument({ data: Uint8Array.from(bytes), useSystemFonts: false, verbosity: 0 })
    .promise;
  const words: string[] = [];
  const operators: number[] = [];
  let right = 0;
  for (let n = 1; n <= document.numPages; n++) {
    const page = await document.getPage(n);
    const { items } = await page.getTextContent();
    // Where each line of text ends, in points from the left edge; what lies between two words that stand far apart is told as a blank.
    for (const item of items)
      if ('str' in item && item.str.trim() !== '')
        right = Math.max(right, Number(item.transform[4]) + item.width);
    words.push(...items.map((item) => ('str' in item ? item.str : '')));
    operators.push(...(await page.getOperatorList()).fnArray);
  }
  const pages = document.numPages;
  await document.destroy();
  return { pages, words: words.join(' ').replace(/\s+/g, ' '), operators, right };
}

const raster = [OPS.paintImageXObject, OPS.paintInlineImageXObject, OPS.paintImageMaskXObject];

describe('a handout as PDF', function () {
  this.timeout(120_000);

  it('is one page for the student and two for the file, of every sample, with pictures of lines', async () => {
    for (const [path, analysis] of sampleRecords)
      for (const [audience, pages] of [
        ['student', 1],
        ['file', 2],
      ] as const) {
        const { bytes, isWhole } = await handoutPdf(handoutFrom(analysis, { language: 'de' }), audience);
        const found = await read(bytes);
        assert.equal(found.pages, pages, `${path} ${audience}`);
        assert.ok(isWhole);
        assert.ok(!found.operators.some((operator) => raster.includes(operator)));
        assert.doesNotMatch(found.words, /\ufffd|twisted on stairs|stiff in the morning/);
        const others = ['Bram', 'Odile', 'Runa', 'Tove'].filter(
          (name) => !path.startsWith(name.toLowerCase()),
        );
        assert.deepEqual(
          others.filter((name) => found.words.includes(name)),
          [],
        );
      }
  });

  it('says what the page says, in text that can be searched', async () => {
    const { words } = await read(
      (await handoutPdf(handoutOfFiles(lesson, { health: 'named' }), 'student')).bytes,
    );
    for (const said of [
      'Ansa',
      'Three things to change',
      'from 47 cm to 41 cm',
      'aim 41 cm',
      'light on the trail heel',
      'twisted on ice',
    ])
      assert.ok(words.includes(said), said);
  });

  it('is the same twice, and dated by the record', async () => {
    const [one, other] = [
      await handoutPdf(handoutOfFiles(lesson), 'student'),
      await handoutPdf(handoutOfFiles(lesson), 'student'),
    ];
    assert.ok(Buffer.from(one.bytes).equals(Buffer.from(other.bytes)));
    assert.match(Buffer.from(one.bytes).toString('latin1'), /\(D:20260514120000Z\)/);
  });

  it('has a structure that can be read out: headings, paragraphs, lists, tables, pictures in words, in a language', async () => {
    for (const [language, title, seen, picture] of [
      ['en', 'What we saw', 'Hangs back (impact)', 'Stance width, address: now 47 cm'],
      ['de', 'Was wir gesehen haben', 'Hangs back (im Treffmoment)', 'Standbreite, beim Ansprechen: jetzt'],
    ] as const) {
      const { bytes } = await handoutPdf(handoutOfFiles(lesson, { language }), 'file');
      const document = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
      const read: { role: string; text: string }[] = [];
      const seenOnPage: string[] = [];
      const rows: string[][] = [];
      for (let n = 1; n <= document.numPages; n++) {
        const page = await document.getPage(n);
        const { items } = await page.getTextContent({ includeMarkedContent: true });
        const texts = new Map<string, string>();
        let [id, isMarked] = ['', false];
        for (const item of items) {
          if ('str' in item) {
            if (isMarked) texts.set(id, (texts.get(id) ?? '') + item.str);
            else if (item.str.trim() !== '') seenOnPage.push(item.str);
          } else if (item.type === 'endMarkedContent') [id, isMarked] = ['', false];
          else [id, isMarked] = [item.id ?? '', true];
        }
        const walk = (node: StructNode): void => {
          const own = node.children.flatMap((child) => ('id' in child ? [texts.get(child.id) ?? ''] : []));
          if (node.role !== 'Root') read.push({ role: node.role, text: node.alt ?? own.join(' ') });
          const parts = node.children.filter((child): child is StructNode => 'children' in child);
          if (node.role === 'TR') rows.push(parts.map(({ role }) => role));
          if (node.role === 'Table') assert.ok(parts.every(({ role }) => role === 'TR'));
          if (node.role === 'L') assert.ok(parts.length > 0 && parts.every(({ role }) => role === 'LI'));
          for (const child of parts) walk(child);
        };
        walk(await page.getStructTree());
      }
      const { info } = await document.getMetadata();
      assert.equal((info as { Language?: string }).Language, language);
      assert.deepEqual(await document.getMarkInfo(), {
        Marked: true,
        UserProperties: false,
        Suspects: false,
      });
      await document.destroy();
      // Nothing is drawn that is neither in the structure nor marked as no part of it.
      assert.deepEqual(seenOnPage, []);
      const at = (role: string, text: string): number =>
        read.findIndex((one) => one.role === role && one.text.startsWith(text));
      assert.ok(at('H1', 'Ansa') >= 0);
      assert.ok(at('H2', title) > at('H1', 'Ansa'));
      assert.ok(at('P', seen) > at('H2', title), JSON.stringify(read.slice(0, 12)));
      assert.ok(
        at('Figure', picture) > at('P', seen),
        JSON.stringify(read.filter(({ role }) => role === 'Figure')),
      );
      assert.ok(!read.some(({ role, text }) => role === 'P' && text.trim() === ''));
      // Every row of a table has a cell for each of its columns, the empty ones too; the first one heads it.
      const tables = read.filter(({ role }) => role === 'Table').length;
      const heads = rows.filter((row): boolean => row.every((role) => role === 'TH'));
      assert.ok(tables > 1 && heads.length === tables, `${tables} ${heads.length}`);
      let columns = 0;
      for (const row of rows) {
        if (heads.includes(row)) columns = row.length;
        else assert.deepEqual(row, ['TH', ...Array<string>(columns - 1).fill('TD')]);
      }
      assert.ok(read.some(({ role, text }) => role === 'LBody' && /70 %|70\u00a0%/.test(text)));
    }
  });

  it('stays one page with as much as a file can say, and tells when letters are missing', async () => {
    const long = 'word '.repeat(300);
    const files = {
      ...lesson,
      'ansa.student.yaml': `student: 1\nname: ${JSON.stringify(`\u6f22\u5b57\u202e<b>${'W'.repeat(300)}`)}\n`,
      'house.faults.yaml': lesson['house.faults.yaml']!.replace('The weight stays behind.', long)
        .replace('light on the trail heel', long)
        .replace('Half swings on one leg.', long),
    };
    for (const [audience, pages] of [
      ['student', 1],
      ['file', 2],
    ] as const) {
      const { bytes, isWhole } = await handoutPdf(handoutOfFiles(files), audience);
      const found = await read(bytes);
      assert.equal(found.pages, pages);
      assert.ok(found.right <= 595.28 - 40 + 0.5, `text reaches ${found.right} points`);
      assert.equal(isWhole, false);
    }
  });

  it('keeps its page where a name has letters that are written from right to left, and tells that they are missing', async () => {
    const files = {
      ...lesson,
      'ansa.student.yaml': 'student: 1\nname: \u05e0\u05d5\u05e2\u05d4 \u0644\u064a\u0644\u0649\n',
    };
    const { bytes, isWhole } = await handoutPdf(handoutOfFiles(files), 'student');
    const found = await read(bytes);
    assert.deepEqual([found.pages, isWhole], [1, false]);
    assert.match(found.words, /What we saw/);
  });

  it('breaks a word that no column has room for, and keeps the picture beside it', async () => {
    const word = 'Übergewichtsverlagerung'.repeat(20);
    const files = {
      ...lesson,
      'lesson.swing.yaml': `${lesson['lesson.swing.yaml']}delivery: { club_speed: 38 m/s, face: 1 deg right, path: 4 deg right }\n`,
      'house.faults.yaml': lesson['house.faults.yaml']!.replace('The weight stays behind.', word)
        .replace('title: Hangs back', `title: ${word}`)
        .replace('light on the trail heel', word)
        .replace('Half swings on one leg.', `Half ${word}`),
    };
    for (const [audience, pages] of [
      ['student', 1],
      ['file', 2],
    ] as const) {
      const found = await read((await handoutPdf(handoutOfFiles(files), audience)).bytes);
      assert.equal(found.pages, pages);
      assert.ok(found.right <= 595.28 - 40 + 0.5, `text reaches ${found.right} points`);
      assert.match(found.words, /Where the ball goes/);
      const letters = found.words.replace(/\s/g, '');
      assert.ok(letters.includes(`${word.slice(0, 209)}…`), audience);
    }
  });

  it('sets cautions in letters that can be read, however small all else has to be', () => {
    const sheets = handoutSheets(contentOf(handoutOfFiles(lesson), 'student'), 0.7, 0.7);
    const found: number[] = [];
    const look = (block: unknown, size: number): void => {
      if (typeof block !== 'object' || block === null) return;
      const own = 'fontSize' in block ? Number(block.fontSize) : size;
      if ('text' in block && typeof block.text === 'string' && block.text.includes('hurts')) found.push(own);
      for (const part of Object.values(block)) look(part, own);
    };
    look(sheets['content'], 7);
    assert.ok(found.length > 0);
    for (const size of found) assert.ok(size >= 8, `${size} points`);
  });

  it('is there of an empty record', async () => {
    const { words, pages } = await read((await handoutPdf(handoutOfFiles(''), 'student')).bytes);
    assert.equal(pages, 1);
    assert.match(words, /Still missing/);
  });
});

describe('the letters of print', () => {
  it('are those that the font has', () => {
    const file = resolve(import.meta.dirname, '../../node_modules/pdfmake/fonts/Roboto/Roboto-Regular.ttf');
    const font = create(readFileSync(file));
    for (let code = 0x20; code < 0xffff; code++)
      if (
        isPrintable(String.fromCodePoint(code)) &&
        printed(String.fromCodePoint(code)) === String.fromCodePoint(code)
      )
        assert.ok(font.hasGlyphForCodePoint(code), code.toString(16));
  });

  it('stand in for arrows, and say where they cannot', () => {
    assert.equal(printed('a \u2192 b\n\u6f22'), 'a \u203a b \ufffd');
    assert.equal(isPrintable('Zo\u00eb \u2192'), true);
    assert.equal(isPrintable('\u6f22'), false);
  });
});
