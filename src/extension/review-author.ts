// The name that a remark or a signature is written under: the setting, else whom git knows here, else asked once and kept as the setting.
import * as vscode from 'vscode';
import { userNameAt } from './git-revisions.ts';

const section = 'swingwright.review';
const key = 'author';

/** Undefined where the person does not say. */
export async function authorAt(uri: vscode.Uri): Promise<string | undefined> {
  const settings = vscode.workspace.getConfiguration(section);
  const stated = settings.get<unknown>(key);
  if (typeof stated === 'string' && stated.trim() !== '') return stated.trim();
  const known = await userNameAt(uri);
  if (known !== undefined) return known;
  const given = await vscode.window.showInputBox({
    prompt: vscode.l10n.t('Your name, as it stands under your remarks'),
    ignoreFocusOut: true,
    validateInput: (name) => (name.trim() === '' ? vscode.l10n.t('A remark needs a name.') : undefined),
  });
  const name = given?.trim();
  if (name === undefined || name === '') return undefined;
  await settings.update(key, name, vscode.ConfigurationTarget.Global);
  return name;
}
