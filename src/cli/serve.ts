// The `serve` command: starts the language server that is bundled beside the command line; nothing of it is loaded before.

/** The server reads from its arguments how it is to be spoken to. It ends when the editor says so, or is gone. */
export async function serve(): Promise<void> {
  if (!process.argv.includes('--stdio')) process.argv.push('--stdio');
  await import(new URL('server.cjs', import.meta.url).href);
}
