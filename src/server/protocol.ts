// What client and server say to each other beyond the language server protocol; plain names and shapes, nothing of either side.
import type { LessonState, StateItem } from '../analysis/lesson-state.ts';
import type { FileState, TextRange } from '../analysis/result.ts';
import type { ThemeName } from '../language/index.ts';
import type { ProposedChange } from '../language/proposed-plan.ts';

export type { FileState, LessonState, ProposedChange, StateItem };

/** Server to client: the text of a file that is not open, as the editor's own file systems give it. */
export const readRequest = 'swingwright/read';
export interface ReadParams {
  readonly uri: string;
}

/** Server to client: the URIs of Swingwright's files, and of files that may hold shots, at or below a folder. */
export const listRequest = 'swingwright/list';
export interface ListParams {
  /** The folder's URI. */
  readonly folder: string;
}

/** Client to server: the page on a finding code, a quantity or a miss, as Markdown; null where there is no such word. */
export const explainRequest = 'swingwright/explain';
export interface ExplainParams {
  readonly code: string;
}

/** Client to server: the page that says why a quantity of an open record is what it is, as Markdown; null where there is none. */
export const whyRequest = 'swingwright/why';
export interface WhyParams {
  /** The record's URI. */
  readonly uri: string;
  readonly id: string;
}

/** What is watched and listed: Swingwright's own files, and tables that may hold shots. */
export const filePatterns: readonly string[] = [
  '**/*.{swing,student,template,faults,review}.yaml',
  '**/swingwright.yaml',
  '**/*.{csv,tsv}',
];

/** What a client may say of itself when it starts the server; an editor that says nothing gets the plain protocol. */
export interface InitializationOptions {
  /** True where the client answers `swingwright/read`. */
  readonly reads?: boolean;
  /** True where the client answers `swingwright/list`. */
  readonly lists?: boolean;
  /** True where the client tells of changed files without being asked to. */
  readonly watches?: boolean;
  /** True where the client knows VS Code's command that asks for proposals, so that one may lead to the next. */
  readonly asksAgain?: boolean;
  /** True where the client wants to hear of each new analysis, since it shows sheets. */
  readonly sheets?: boolean;
  /** The theme in front, where the client shows images that stand in a hover's Markdown as data. */
  readonly hoverPictures?: ThemeName;
  /** The address of explanations with `{code}` in it. */
  readonly explanations?: string;
  /** The address of pages on quantities, with `{arguments}` in it: the record's URI and the quantity's id, as JSON. */
  readonly quantities?: string;
  /**
   * The address at which the editor opens pages, with `{name}` in it: a finding code, a quantity or a miss. The record's URI
   * follows as the query where the page is about a quantity of a record.
   */
  readonly pages?: string;
  /** The command that proposes a plan: its argument is the record's URI. */
  readonly proposer?: string;
  /** The command that opens a record at a place: its arguments are the URI and the range. */
  readonly opener?: string;
}

/** Client to server: the theme in front has changed. */
export const themeNotification = 'swingwright/theme';
export interface ThemeParams {
  readonly theme: ThemeName;
}

/** Client to server: the changes that bring the goals of an open record inside their windows; null where there is no record to read. */
export const proposeRequest = 'swingwright/propose';
export interface ProposeParams {
  /** The record's URI. */
  readonly uri: string;
}
export interface ProposeResult {
  /** How the chance of each goal changes with all of them. */
  readonly goals: string;
  readonly mostChanges: number;
  /** None where nothing helps, or nothing needs help. */
  readonly changes: readonly ProposedChange[];
  /** Why there is none, in a sentence. */
  readonly nothing: string;
  /** How many changes the plan has that stands in the record. */
  readonly planned: number;
}

/** Client to server: the edits that write some of the proposed changes into the record. */
export const writePlanRequest = 'swingwright/writePlan';
export interface WritePlanParams extends ProposeParams {
  /** The ids of the changes. */
  readonly picked: readonly string[];
}
export interface WritePlanResult {
  /** The document's version that they are for. */
  readonly version: number;
  readonly edits: readonly { readonly range: TextRange; readonly newText: string }[];
}

/** Client to server: the page that says how good the predictions of a folder have been, as Markdown. */
export const predictionsRequest = 'swingwright/predictions';
export interface PredictionsParams {
  /** The folder's URI. */
  readonly folder: string;
}

/** Client to server: every finding code there is, with its title. */
export const codesRequest = 'swingwright/codes';
export interface ListedCode {
  readonly code: string;
  readonly title: string;
}

/** Client to server: fits drag and lift to the shots of a folder; nothing is written. */
export const calibrateRequest = 'swingwright/calibrate';
export interface CalibrateParams {
  /** The folder's URI. */
  readonly folder: string;
  /** The URIs of the records at or below it. */
  readonly records: readonly string[];
}
export interface CalibrateResult {
  /** Sentences that tell of the fit, or why there is none. */
  readonly lines: readonly string[];
  readonly workspace: string;
  readonly isThere: boolean;
  /** Keeps the fit in the workspace file; null where there is nothing to keep. */
  readonly edit: { readonly range: TextRange; readonly newText: string } | null;
}

/** Client to server: has git merge and show our files by value in the repository of a folder. */
export const gitSetupRequest = 'swingwright/gitSetup';
export interface GitSetupParams {
  /** The folder's URI. */
  readonly folder: string;
}
export const noGit =
  'Found a folder that git cannot reach from here; expected one on the disk of this computer, or of the remote host.';
export interface GitSetupResult {
  readonly kind: 'done' | 'refused';
  /** Sentences. */
  readonly words: readonly string[];
}

/** Client to server: the students of the open folders, by name. */
export const studentsRequest = 'swingwright/students';
export interface ListedStudent {
  /** The URI of the student's file. */
  readonly uri: string;
  readonly name: string;
}

/** Client to server: how each lesson of a student stands, by day; null where the file changed while it was looked at. */
export const lessonsRequest = 'swingwright/lessons';
export interface LessonsParams {
  /** The student's file, or one of the records. */
  readonly uri: string;
}
/** A file to be made; the cursor is an offset of its text. */
export interface NewFileText {
  readonly uri: string;
  readonly text: string;
  readonly cursor: number;
}
export interface NewFilesResult {
  readonly files: readonly NewFileText[];
}
export type NewStudentResult = NewFilesResult;

/** Client to server: the texts of a new practice. */
export const newPracticeRequest = 'swingwright/newPractice';
export interface NewPracticeParams {
  /** The folder's URI. */
  readonly folder: string;
  readonly name: string;
}

/** Client to server: the text of a new student's file. */
export const newStudentRequest = 'swingwright/newStudent';
export interface NewStudentParams {
  /** The URI of the practice's folder. */
  readonly folder: string;
  readonly name: string;
  readonly hand: 'left' | 'right';
  readonly stature: string | null;
  readonly born: string | null;
  readonly clubs: readonly string[];
  readonly injuries: readonly string[];
}

/** Client to server: what is wrong with an answer about a new student; null where nothing is. */
export const checkAnswerRequest = 'swingwright/checkAnswer';
export interface CheckAnswerParams {
  readonly question: 'stature' | 'born';
  readonly text: string;
}

/** Client to server: the clubs to propose for a new bag. */
export const proposedClubsRequest = 'swingwright/proposedClubs';

/** Client to server: whose lesson a file leads to, and with which clubs; null where it leads to no student. */
export const clubsRequest = 'swingwright/clubs';
export interface ClubsParams {
  /** A student's file or a record. */
  readonly uri: string;
}
export interface ClubsResult {
  readonly student: string;
  readonly clubs: readonly string[];
  /** That of the last lesson, or the first one. */
  readonly usual: string | null;
}

/** Client to server: the text of the next record of a student; null where the file is none of a student. */
export const newRecordRequest = 'swingwright/newRecord';
export interface NewRecordParams {
  readonly student: string;
  /** The day, as `YYYY-MM-DD`. */
  readonly date: string;
  readonly club: string | null;
}
