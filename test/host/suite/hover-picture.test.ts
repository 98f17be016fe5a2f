// The picture in a hover, in a real VS Code: it is let through, shown at its size in the colours of each theme, and turned off by the setting.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { themes, type ThemeName } from '../../../src/draw/theme.ts';
import { inTestFolder, until, writeFile } from './files.ts';
import { needsStage, stage, type Theme } from './stage.ts';

const record = `swing: 1
delivery:
  club_speed: 41 m/s by radar
  path: 4 deg right by radar
  face: 1 deg right by radar
  attack: 3.5 deg down by radar
  low_point: { ahead: 6 cm ahead, depth: 12 mm below }
ground:
  divot: { starts: 2 cm ahead, length: 11 cm, depth: 6 mm }
flight:
  launch_angle: 14 deg by radar
  ball_speed: 55 m/s by radar
  spin: 4500 rpm by radar
  start: 1 deg right by radar
  carry: 150 m by radar
`;

const shown: readonly (readonly [Theme, ThemeName])[] = [
  ['dark', 'dark'],
  ['high-contrast-dark', 'contrast-dark'],
  ['high-contrast-light', 'contrast-light'],
  ['light', 'light'],
];

/** What the hover on the page shows of its image: decoded to this width, beside these words. */
const image = `(() => {
  const found = document.querySelector('.monaco-hover:not(.hidden) .hover-contents img');
  return found && found.complete && found.naturalWidth > 0
    ? { width: found.getBoundingClientRect().width, alt: found.alt, source: found.src }
    : null;
})()`;
interface Image {
  readonly width: number;
  readonly alt: string;
  readonly source: string;
}

describe('pictures in hovers', () => {
  before(needsStage);
  before(async () => {
    const file = await writeFile(inTestFolder('hover-picture-test', 'a.swing.yaml'), record);
    await vscode.window.showTextDocument(await vscode.workspace.openTextDocument(file));
    await stage.waitForHints(1);
  });
  after(async () => {
    await vscode.workspace.getConfiguration('swingwright.hovers').update('pictures', undefined, true);
    await stage.theme('light');
    await vscode.commands.executeCommand('workbench.action.closeAllEditors');
  });

  const hovered = async (key: string): Promise<Image | null> => {
    await leave();
    await stage.hoverText(key);
    await stage.settle();
    return stage.evaluate<Image | null>(image);
  };
  /** Closes the hover, the mouse where nothing has one. */
  const leave = async (): Promise<void> => {
    await stage.hover('.part.sidebar');
    await stage.press('Escape');
  };
  const svgIn = ({ source }: Image): string =>
    Buffer.from(source.slice(source.indexOf(',') + 1), 'base64').toString('utf8');

  for (const key of ['path:', 'face:', 'attack:', 'low_point:', 'starts:', 'carry:', 'start:'])
    it(`are shown at ${key}`, async () => {
      // The name of a group is no entry: its first one is.
      const at = key === 'low_point:' ? 'ahead:' : key;
      let found: Image | null = null;
      await until(async () => (found = await hovered(at)) !== null);
      assert.match(found!.source, /^data:image\/svg\+xml;base64,/);
      assert.equal(found!.width, 325);
      assert.ok(found!.alt.length > 20, found!.alt);
      await stage.screenshot(`hover-picture-${key.replace(':', '')}`);
    });

  for (const [theme, name] of shown)
    it(`have the colours of the ${theme} theme`, async () => {
      await stage.theme(theme);
      await until(async () => {
        const found = await hovered('path:');
        return found !== null && svgIn(found).includes(`stroke="${themes[name].entered}"`);
      });
      await stage.screenshot(`hover-picture-path-${theme}`);
    });

  it('are not there when the setting says so', async () => {
    await vscode.workspace.getConfiguration('swingwright.hovers').update('pictures', false, true);
    await until(async () => {
      await leave();
      const words = await stage.hoverText('path:');
      return words.includes('Club path') && (await stage.evaluate<Image | null>(image)) === null;
    });
  });
});
