// What client and server say to each other about pages that lay records beside one another; plain names and shapes, nothing of either side.

/** One side of a comparison. */
export interface PageSide {
  /** A record, or a template. */
  readonly uri: string;
  /** The git revision; as it stands now where undefined. */
  readonly revision?: string;
  /** As the reader would name it. */
  readonly name: string;
}

/** Client to server: the page that compares two files. */
export const comparePageRequest = 'swingwright/comparePage';
export interface ComparePageParams {
  readonly first: PageSide;
  readonly second: PageSide;
}

/** Client to server: the page that shows how a student came along. */
export const progressPageRequest = 'swingwright/progressPage';
export interface ProgressPageParams {
  /** The student's file, or one of the records. */
  readonly uri: string;
}

/** Client to server: the page that says of each entry of a record how sound it is. */
export const auditPageRequest = 'swingwright/auditPage';
export interface AuditPageParams {
  /** The record. */
  readonly uri: string;
}

/** Client to server: what changed from one version of a record to another, in one short line; null where one cannot be read. */
export const changeSummaryRequest = 'swingwright/changeSummary';
export type ChangeSummaryParams = ComparePageParams;

/** Server to client: a file as it stood at a git revision. Answered only by clients that asked for one. */
export const readRevisionRequest = 'swingwright/readRevision';
export interface ReadRevisionParams {
  readonly uri: string;
  readonly revision: string;
}

/** A page as HTML, or a sentence that says why there is none. */
export type PageResult =
  | { readonly kind: 'page'; readonly title: string; readonly html: string }
  | { readonly kind: 'refused'; readonly words: string };
