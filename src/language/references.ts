// The references of a document and the files that they lead to; resolves and reads nothing itself.
import type { Analysis } from '../analysis/result.ts';
import type { FaultFile, Located, StudentFile, SwingwrightDocument, TemplateFile } from '../record/document.ts';
import { resolveReference } from '../record/resolve-reference.ts';

export interface Reference {
  /** As written, and where. */
  readonly text: Located<string>;
  /** The URI that it leads to. */
  readonly target: string;
  /** "student's file", "fault book": what stands there. */
  readonly opens: string;
  /** What was read there; undefined where nothing was, or where the analysis does not read such files. */
  readonly document: SwingwrightDocument | undefined;
}

/** In the order in which a record names them. */
export function findReferences({ uri, document, subject }: Analysis): Reference[] {
  const reference = (
    text: Located<string> | undefined,
    opens: string,
    followed?: { readonly document: StudentFile | TemplateFile | FaultFile },
  ): Reference[] => {
    const target = text === undefined ? undefined : resolveReference(uri, text.value);
    return text === undefined || target === undefined ? [] : [{ text, target, opens, document: followed?.document }];
  };
  switch (document.kind) {
    case 'swing':
      return [
        ...reference(document.student, "student's file", subject.student),
        ...reference(document.template, 'template', subject.template),
        ...reference(document.faultsFrom, 'fault book', subject.faultBooks[0]),
        ...reference(document.shotsFile, 'file of shots'),
      ];
    case 'faults':
      return reference(
        document.extends,
        'fault book',
        subject.faultBooks.find((book) => book.uri !== uri),
      );
    case 'review':
      return reference(document.of, 'record under review');
    default:
      return [];
  }
}
