// Answers the request to calibrate a folder, from the files as the editor has them; writes nothing.
import { createCache } from '../analysis/cache.ts';
import { calibrateFolder } from '../analysis/calibration.ts';
import { lineTableOf, rangeOf } from '../analysis/positions.ts';
import type { Files } from './files.ts';
import type { CalibrateParams, CalibrateResult } from './protocol.ts';

export async function calibrateIn(
  { folder, records }: CalibrateParams,
  files: Files,
  signal: AbortSignal,
): Promise<CalibrateResult> {
  const { lines, workspace, isThere, edit } = await calibrateFolder({
    folder: folder.replace(/\/+$/, ''),
    records,
    files,
    load: files.load,
    signal,
    cache: createCache(),
  });
  const state = files.get(workspace);
  const table = lineTableOf(isThere && state?.kind === 'text' ? state.text : '');
  return {
    lines,
    workspace,
    isThere,
    edit: edit === undefined ? null : { range: rangeOf(table, edit.span), newText: edit.text },
  };
}
