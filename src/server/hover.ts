// Answers hovers: with what the student's other records say where it matters, and with pictures where the client shows them.
import type { CancellationToken, Connection } from 'vscode-languageserver';
import { findHover, themeNamed, wantsLessons, type ThemeName } from '../language/index.ts';
import type { Client } from './client.ts';
import type { Desk, Result } from './desk.ts';
import { themeNotification, type ThemeParams } from './protocol.ts';
import type { SettingCache } from './setting-cache.ts';
import type { HoverSettings } from './settings.ts';

export interface HoverOptions {
  readonly connection: Connection;
  readonly desk: Desk;
  readonly client: () => Client;
  readonly settings: SettingCache<HoverSettings>;
  readonly answer: <T>(
    uri: string,
    token: CancellationToken,
    give: (result: Result) => T,
  ) => Promise<Awaited<T> | null>;
  readonly signalOf: (token: CancellationToken) => AbortSignal;
  readonly normal: (uri: string) => string;
}

export function serveHover({
  connection,
  desk,
  client,
  settings,
  answer,
  signalOf,
  normal,
}: HoverOptions): void {
  let theme: ThemeName | undefined;
  connection.onNotification(themeNotification, ({ theme: said }: ThemeParams) => {
    theme = themeNamed(said) ?? theme;
  });
  const whyAddress =
    (uri: string) =>
    (id: string): string | undefined =>
      client().quantities?.replace('{arguments}', encodeURIComponent(JSON.stringify([uri, id])));
  connection.onHover(async ({ textDocument: { uri }, position }, token) => {
    const isWanted = await answer(uri, token, ({ analysis }) => wantsLessons(analysis, position));
    const lessons =
      isWanted === true ? await desk.lessons(normal(uri), signalOf(token)).catch(() => undefined) : undefined;
    const shown = client().hoverPictures === undefined ? undefined : (theme ?? client().hoverPictures);
    const pictures = shown !== undefined && (await settings.of(normal(uri))).pictures ? shown : undefined;
    return answer(
      uri,
      token,
      ({ analysis }) =>
        findHover(analysis, position, { whyAddress: whyAddress(uri), pictures }, lessons) ?? null,
    );
  });
}
