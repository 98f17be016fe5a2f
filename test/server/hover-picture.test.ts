// Pictures in hovers over the protocol: for clients that show them, in the colours of the theme in front, with a switch of their own.
import assert from 'node:assert/strict';
import type { Hover, MarkupContent } from 'vscode-languageserver/node';
import { themes } from '../../src/draw/theme.ts';
import { themeNotification, type InitializationOptions } from '../../src/server/protocol.ts';
import { startSession, type Session } from './session.ts';

const record = 'swing: 1\ndelivery:\n  path: 5 deg right\n';

describe('pictures in hovers', () => {
  let session: Session | undefined;
  afterEach(() => session?.end());

  const start = async (options: InitializationOptions): Promise<() => Promise<string>> => {
    session = await startSession({}, undefined, options);
    const uri = await session.open('a.swing.yaml', record);
    return async () => {
      const position = { line: 2, character: 4 };
      const hover = await session!.connection.sendRequest<Hover | null>('textDocument/hover', {
        textDocument: { uri },
        position,
      });
      return (hover?.contents as MarkupContent).value;
    };
  };
  const svgIn = (value: string): string =>
    Buffer.from(/base64,([^|]+)\|/.exec(value)?.[1] ?? '', 'base64').toString('utf8');

  it('go to clients alone that say that they show them', async () => {
    const hover = await start({});
    assert.match(await hover(), /Club path/);
    assert.doesNotMatch(await hover(), /!\[/);
    await session!.connection.sendNotification(themeNotification, { theme: 'dark' });
    assert.doesNotMatch(await hover(), /!\[/);
  });

  it('follow the theme, and leave it where a word is no theme', async () => {
    const hover = await start({ hoverPictures: 'light' });
    assert.ok(svgIn(await hover()).includes(themes.light.entered));
    await session!.connection.sendNotification(themeNotification, { theme: 'contrast-dark' });
    assert.ok(svgIn(await hover()).includes(themes['contrast-dark'].entered));
    await session!.connection.sendNotification(themeNotification, { theme: 'sepia' });
    assert.ok(svgIn(await hover()).includes(themes['contrast-dark'].entered));
  });

  it('are turned off and on by a setting', async () => {
    const hover = await start({ hoverPictures: 'light' });
    await session!.configure({ pictures: false });
    assert.doesNotMatch(await hover(), /!\[/);
    await session!.configure({ pictures: true });
    assert.match(await hover(), /!\[/);
  });
});
