/**
 * Ends what a script has started when a signal asks the script to end. Knows nothing of what is ended.
 */

/** Exit codes of a process that a signal has ended. */
const SIGNAL_CODES = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 };

/**
 * Ends what runs, and then this process, when a signal asks for it.
 * @param {() => Promise<void>} end
 * @returns {() => void} stops listening
 */
export function endOnSignals(end) {
  let ending = false;
  const listeners = Object.entries(SIGNAL_CODES).map(([signal, code]) => {
    const listener = () => {
      // A second Ctrl-C must not cut the ending short.
      if (ending) return;
      ending = true;
      void end().finally(() => process.exit(code));
    };
    process.on(signal, listener);
    return () => process.off(signal, listener);
  });
  return () => listeners.forEach((release) => release());
}
