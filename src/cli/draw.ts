// The `draw` command: the pictures of one record as SVG files.
import { writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { URI } from 'vscode-uri';
import { svgOf } from '../draw/picture.tsx';
import { pictures, sheetsOf } from '../draw/pictures.tsx';
import { themes, type ThemeName } from '../draw/theme.ts';
import { checkpoints, type Checkpoint } from '../registry/quantity.ts';
import { printable } from './formats/text.ts';
import { makeFolder } from '../disk/make-folder.ts';
import { analyseRecord } from './record.ts';

export const pictureNames: readonly string[] = pictures.map(({ name }) => name);
export const checkpointNames: readonly string[] = checkpoints;
export const themeNames = Object.keys(themes) as readonly ThemeName[];

export interface DrawOptions {
  readonly picture?: string | undefined;
  /** Pictures of this one checkpoint, whether it has entries or not, and no others. */
  readonly checkpoint?: Checkpoint | undefined;
  readonly theme: ThemeName;
  readonly out: string;
}

/** Writes `<record>.<picture>.svg` into the folder, `<record>.<picture>.<checkpoint>.svg` for each checkpoint; 2 where the record cannot be read or a file not be written. */
export async function drawCommand(
  path: string,
  { picture, checkpoint, theme, out }: DrawOptions,
  signal: AbortSignal,
): Promise<number> {
  const analysis = await analyseRecord(path, signal);
  if (analysis === undefined) return 2;
  const record = basename(URI.parse(analysis.uri).fsPath, '.swing.yaml');
  const sheets = pictures
    .filter((one) => picture === undefined || one.name === picture)
    .flatMap((one) => sheetsOf(one, analysis, checkpoint));
  for (const sheet of sheets) {
    const at = sheet.checkpoint === undefined ? '' : `.${sheet.checkpoint}`;
    const file = join(out, `${record}.${sheet.name}${at}.svg`);
    const svg = svgOf(sheet.draw(themes[theme]));
    try {
      await makeFolder(out);
      await writeFile(file, `<?xml version="1.0" encoding="UTF-8"?>\n${svg}\n`);
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      process.stderr.write(`swingwright: cannot write \`${printable(file)}\`: ${printable(reason)}.\n`);
      return 2;
    }
    process.stdout.write(`${printable(file)}\n`);
  }
  return 0;
}
