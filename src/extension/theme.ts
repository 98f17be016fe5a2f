// Tells the server which kind of theme is in front, since pictures in hovers have their colours in them.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { ThemeName } from '../draw/theme.ts';
import { themeNotification, type ThemeParams } from '../server/protocol.ts';

export function themeInFront(): ThemeName {
  switch (vscode.window.activeColorTheme.kind) {
    case vscode.ColorThemeKind.Light:
      return 'light';
    case vscode.ColorThemeKind.Dark:
      return 'dark';
    case vscode.ColorThemeKind.HighContrast:
      return 'contrast-dark';
    case vscode.ColorThemeKind.HighContrastLight:
      return 'contrast-light';
  }
}

export function registerTheme(client: BaseLanguageClient): vscode.Disposable {
  return vscode.window.onDidChangeActiveColorTheme(() => {
    const params: ThemeParams = { theme: themeInFront() };
    // Where the server is not up the next start tells it.
    client.sendNotification(themeNotification, params).catch(() => undefined);
  });
}
