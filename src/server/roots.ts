// The folders that the editor has open, and the one around a file that lies in none of them; lists nothing.
import type { Connection, InitializeParams } from 'vscode-languageserver';
import type { Analysis } from '../analysis/result.ts';

export interface Roots {
  /** All open folders, and the folder of this file's workspace file (else its own) where it lies outside of them. */
  readonly around: (of: Analysis | undefined) => readonly string[];
  /** The innermost open folder that this file lies in; where it lies in none, as `around`. What is proposed stays in it. */
  readonly holding: (of: Analysis) => string;
  readonly start: (params: Pick<InitializeParams, 'capabilities' | 'workspaceFolders' | 'rootUri'>) => void;
  /** To be called once the client is ready. */
  readonly listen: () => void;
}

/** `normal` gives the one spelling of a URI that the analysis knows. */
export function createRoots(connection: Connection, normal: (uri: string) => string): Roots {
  const roots = new Set<string>();
  let tellsChanges = false;
  const withoutSlash = (uri: string): string => normal(uri).replace(/\/+$/, '');
  const outside = ({ uri, subject }: Analysis): string => folderOf(subject.workspace?.uri ?? uri);
  return {
    holding: (of) => {
      const holders = [...roots].filter((root) => of.uri.startsWith(`${root}/`));
      const [innermost] = holders.sort((a, b) => b.length - a.length);
      return innermost ?? outside(of);
    },
    around: (of) => {
      if (of === undefined) return [...roots];
      const isInside = [...roots].some((root) => of.uri.startsWith(`${root}/`));
      return isInside ? [...roots] : [...roots, outside(of)];
    },
    // The older parameter still comes from clients that open one folder only.
    start: ({ capabilities, workspaceFolders, rootUri }) => {
      for (const { uri } of workspaceFolders ?? []) roots.add(withoutSlash(uri));
      if (roots.size === 0 && typeof rootUri === 'string') roots.add(withoutSlash(rootUri));
      tellsChanges = capabilities.workspace?.workspaceFolders === true;
    },
    listen: () => {
      if (!tellsChanges) return;
      connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
        for (const { uri } of removed) roots.delete(withoutSlash(uri));
        for (const { uri } of added) roots.add(withoutSlash(uri));
      });
    },
  };
}

function folderOf(uri: string): string {
  return uri.slice(0, uri.lastIndexOf('/'));
}
