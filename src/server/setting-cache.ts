// Settings of one section as the client has them for each file, asked for once; knows no setting.
import type { Connection } from 'vscode-languageserver';

export interface SettingCache<T> {
  readonly of: (uri: string) => Promise<T>;
  readonly forget: (uri: string) => void;
  readonly forgetAll: () => void;
}

export function createSettingCache<T>(
  connection: Connection,
  isAnswered: () => boolean,
  section: string,
  /** Whatever an editor sends, and nothing where it sends nothing. */
  read: (sent: unknown) => T,
): SettingCache<T> {
  const asked = new Map<string, Promise<T>>();
  return {
    of: (uri) => {
      if (!isAnswered()) return Promise.resolve(read(undefined));
      const answer =
        asked.get(uri) ??
        connection.workspace.getConfiguration({ scopeUri: uri, section }).then(read, () => read(undefined));
      asked.set(uri, answer);
      return answer;
    },
    forget: (uri) => void asked.delete(uri),
    forgetAll: () => asked.clear(),
  };
}
