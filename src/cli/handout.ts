// The `handout` command: one page for the student or two for the file, as HTML or PDF, to standard output or into a file.
import { open, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { handoutFileName } from '../analysis/handout-name.ts';
import { handoutOf, type Handout, type Health } from '../analysis/handout.ts';
import { findLessons } from '../analysis/lessons.ts';
import type { Audience } from '../draw/handout/content.tsx';
import { handoutPage } from '../draw/handout/page.tsx';
import { printable } from './formats/text.ts';
import { practiceAround } from './practice.ts';
import { analyseRecord } from './record.ts';

export const handoutFormats = ['html', 'pdf'] as const;
export type HandoutFormat = (typeof handoutFormats)[number];

export interface HandoutRequest {
  readonly audience: Audience;
  /** By the name of the file where undefined. */
  readonly format: HandoutFormat | undefined;
  readonly language: string | undefined;
  readonly health: Health;
  /** A file, or a folder for a file that is named for the student; standard output where undefined. */
  readonly out: string | undefined;
}

/** 0 written, 2 the record cannot be read, the language is none that there is, or the file cannot be written. */
export async function handoutCommand(
  path: string,
  request: HandoutRequest,
  signal: AbortSignal,
): Promise<number> {
  const { audience, language, health, out } = request;
  const format = request.format ?? (out !== undefined && /\.pdf$/i.test(out) ? 'pdf' : 'html');
  if (format === 'pdf' && out === undefined)
    return refuse('Found no place for a PDF; expected `--out` with a file or a folder.');
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  const lessons = await findLessons(analysis, practiceAround(signal));
  const result = handoutOf(analysis, lessons, { language, health });
  if (result.kind === 'refused') return refuse(result.words);
  const { handout } = result;
  if (out === undefined) {
    process.stdout.write(handoutPage(handout, audience));
    return 0;
  }
  const bytes = format === 'pdf' ? await pdfOf(handout, audience) : handoutPage(handout, audience);
  return write(await fileAt(out, handoutFileName(handout, audience, format)), bytes);
}

/** What prints is large, and loaded for whoever prints. */
async function pdfOf(handout: Handout, audience: Audience): Promise<Uint8Array> {
  const { handoutPdf } = await import('../print/handout-pdf.ts');
  const { bytes, isWhole } = await handoutPdf(handout, audience);
  if (!isWhole)
    process.stderr.write(
      'swingwright: some characters are none that the PDF can hold (Latin, Greek and Cyrillic letters); the HTML has them all.\n',
    );
  return bytes;
}

async function fileAt(out: string, name: string): Promise<string> {
  const isFolder =
    /[/\\]$/.test(out) ||
    (await stat(out).then(
      (info) => info.isDirectory(),
      () => false,
    ));
  return isFolder ? join(out, name) : out;
}

/** An earlier handout gives way; a file that is none of the same format stays. */
async function write(file: string, content: string | Uint8Array): Promise<number> {
  const start = typeof content === 'string' ? '<!doctype html>' : '%PDF-';
  const there = await startOf(file, start.length);
  if (there !== undefined && there !== start)
    return refuse(
      `Found another kind of file at \`${file}\`; expected a name that is free, or an earlier handout.`,
    );
  try {
    await writeFile(file, content);
  } catch (error) {
    return refuse(`cannot write \`${file}\`: ${error instanceof Error ? error.message : String(error)}.`);
  }
  process.stdout.write(`Wrote ${printable(file)}\n`);
  return 0;
}

async function startOf(file: string, length: number): Promise<string | undefined> {
  const handle = await open(file).catch(() => undefined);
  if (handle === undefined) return undefined;
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(length), 0, length, 0);
    return buffer.toString('latin1', 0, bytesRead);
  } finally {
    await handle.close();
  }
}

function refuse(message: string): number {
  process.stderr.write(`swingwright: ${printable(message)}\n`);
  return 2;
}
