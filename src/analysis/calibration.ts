// Calibrates the flight of a folder from the shots of its records and makes the edit that keeps it; reads and writes no file itself.
import { counted } from '../measure/counted.ts';
import type { TextEdit } from '../checks/check.ts';
import { calibrate, type CalibrationFit, type CalibrationOutcome } from '../model/calibration.ts';
import type { CalibrationShot } from '../model/calibration-fit.ts';
import type { OutlineNode } from '../record/document.ts';
import { parseDocument } from '../record/parse.ts';
import type { AnalysisCache } from './cache.ts';
import { calibrationShotsOf } from './calibration-shots.ts';
import type { FileState } from './result.ts';
import { settle, type Cancellation, type FileStore } from './settle.ts';
import { nearestWorkspace } from './workspace.ts';

export interface FolderCalibration {
  readonly outcome: CalibrationOutcome;
  /** The sentences that tell of it, one a line. */
  readonly lines: readonly string[];
  /** The workspace file of the folder, whether or not it is there yet. */
  readonly workspace: string;
  readonly isThere: boolean;
  /** Keeps the fit in the workspace file; undefined where there is none, or where the file is not one that can take it. */
  readonly edit: TextEdit | undefined;
}

export interface CalibrationRequest {
  /** Without a slash at its end. */
  readonly folder: string;
  /** The URIs of the records at or below the folder. */
  readonly records: readonly string[];
  readonly files: FileStore;
  readonly load: (uri: string) => Promise<FileState>;
  readonly signal: Cancellation;
  readonly cache: AnalysisCache;
}

/** Only records that belong to the folder's own workspace file count: others are calibrated where theirs lies. Rejects when aborted. */
export async function calibrateFolder(request: CalibrationRequest): Promise<FolderCalibration> {
  const { folder, records, files, load, signal, cache } = request;
  const { uri: workspace, text } = await nearestWorkspace(folder, files, load);
  signal.throwIfAborted();
  const shots: CalibrationShot[] = [];
  let sources = 0;
  let elsewhere = 0;
  for (const record of [...records].sort()) {
    const analysis = await settle(record, files, load, signal, cache);
    const found = calibrationShotsOf(analysis);
    if (found.length === 0) continue;
    const own = analysis.subject.workspace?.uri ?? workspace;
    if (own !== workspace) {
      elsewhere += 1;
      continue;
    }
    sources += 1;
    shots.push(...found);
  }
  const outcome = calibrate(shots);
  const edit = outcome.kind === 'fitted' ? calibrationEdit(workspace, text ?? '', outcome.fit) : undefined;
  const lines = [
    ...outcomeLines(outcome, sources),
    ...(elsewhere === 0
      ? []
      : [`Left out: ${counted(elsewhere, 'record')} with a workspace file of another folder.`]),
    ...(outcome.kind === 'fitted' && edit === undefined
      ? ['The workspace file cannot take it as it is; mend what is wrong there first.']
      : []),
  ];
  return { outcome, lines, workspace, isThere: text !== undefined, edit };
}

function outcomeLines(outcome: CalibrationOutcome, sources: number): readonly string[] {
  if (outcome.kind === 'refused') return [`Not calibrated. ${outcome.reason}`];
  const { drag, lift, correlation, shots, before, after } = outcome.fit;
  const factor = ({ value, u }: CalibrationFit['drag']): string => `× ${value.toFixed(3)} ± ${u.toFixed(3)}`;
  return [
    `Drag ${factor(drag)}${lift === undefined ? '' : `, lift ${factor(lift)} (correlation ${correlation.toFixed(2)})`}, from ${counted(shots, 'shot')} of ${counted(sources, 'record')}.`,
    `Carry less prediction, root mean square: ${before.toFixed(1)} m before, ${after.toFixed(1)} m after.`,
    ...outcome.cautions,
  ];
}

/** Changes the value of `calibration`, or adds the key at the end; undefined where the file would not read back as meant. */
export function calibrationEdit(uri: string, text: string, fit: CalibrationFit): TextEdit | undefined {
  const before = parseDocument('workspace', text);
  const pair = `calibration: ${calibrationText(fit)}`;
  const node = before.outline.find(({ name }) => name === 'calibration');
  const edit = node === undefined ? addition(uri, text, pair) : replacement(uri, text, node, pair);
  const { start, end } = edit.span;
  const edited = parseDocument('workspace', text.slice(0, start) + edit.text + text.slice(end));
  const isKept =
    edited.kind === 'workspace' &&
    edited.calibration?.drag.value === Number(fit.drag.value.toFixed(3)) &&
    edited.problems.length <= before.problems.length &&
    edited.silences.length === before.silences.length;
  return isKept ? edit : undefined;
}

function addition(uri: string, text: string, pair: string): TextEdit {
  const feed = text.includes('\r\n') ? '\r\n' : '\n';
  const isEmpty = text.trim() === '';
  const first = isEmpty ? `swingwright: 1${feed}` : '';
  const gap = text === '' || text.endsWith('\n') ? '' : feed;
  return { uri, span: { start: text.length, end: text.length }, text: `${gap}${first}${pair}${feed}` };
}

/** The white space behind a block belongs to what follows. */
function replacement(uri: string, text: string, { nameSpan, span }: OutlineNode, pair: string): TextEdit {
  const { start } = nameSpan;
  const end = start + text.slice(start, Math.max(span.end, nameSpan.end)).trimEnd().length;
  return { uri, span: { start, end: text[end] === ':' ? end + 1 : end }, text: pair };
}

/** `{ drag: 1.041 ± 0.020, lift: 0.970 ± 0.030, correlation: 0.85, shots: 48, ball_speed: 38..52 m/s }` */
function calibrationText({ drag, lift, correlation, shots, ballSpeed }: CalibrationFit): string {
  // An uncertainty that rounds to nothing would not be read as one.
  const factor = ({ value, u }: CalibrationFit['drag']): string =>
    `${value.toFixed(3)} ± ${Math.max(u, 0.001).toFixed(3)}`;
  const parts = [
    `drag: ${factor(drag)}`,
    ...(lift === undefined ? [] : [`lift: ${factor(lift)}`, `correlation: ${correlation.toFixed(2)}`]),
    `shots: ${shots}`,
    `ball_speed: ${Math.floor(ballSpeed.from)}..${Math.ceil(ballSpeed.to)} m/s`,
  ];
  return `{ ${parts.join(', ')} }`;
}
