// Turns the protocol's token of a cancelled request into the signal that everything below knows.
import type { CancellationToken } from 'vscode-languageserver';

export function signalOf(token: CancellationToken): AbortSignal {
  const stop = new AbortController();
  if (token.isCancellationRequested) stop.abort();
  token.onCancellationRequested(() => stop.abort());
  return stop.signal;
}
