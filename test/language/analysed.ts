// Analyses a text beside a few other files, all in memory, for tests of what an editor is told.
import { analyse } from '../../src/analysis/analyse.ts';
import type { Analysis, FileState } from '../../src/analysis/result.ts';

const folder = 'file:///lessons/';

export const everywhere = { start: { line: 0, character: 0 }, end: { line: 1000, character: 0 } };

/** The analysis of `text` under `name`; files that are not given are not there. */
export function analysed(
  text: string,
  { name = 'a.swing.yaml', files = {} }: { name?: string; files?: Readonly<Record<string, string>> } = {},
): Analysis {
  const texts = new Map(
    Object.entries({ ...files, [name]: text }).map(([file, words]) => [folder + file, words]),
  );
  const file = (uri: string): FileState => {
    const words = texts.get(uri);
    return words === undefined ? { kind: 'missing' } : { kind: 'text', text: words };
  };
  return analyse(folder + name, { file });
}

export const student = `student: 1
name: Mira
hand: right
stature: 171 cm
mass: 66 kg
bag:
  hybrid: { kind: hybrid, loft: 22 deg, lie: 59 deg, length: 40 in, head_mass: 230 g }
`;
