/**
 * Tells which lines of VS Code's server and page mean nothing here, where it is alone, without marketplace, accounts and
 * telemetry.
 */

const NOISE = [
  /connection.?token/i,
  /reconnection-grace-time/,
  /additional builtin extensions/,
  /ENOTFOUND|EAI_AGAIN|ERR_NAME_NOT_RESOLVED/,
  /AgentHost|AccountPolicyGate/,
  /default profile extensions/,
  /(Management|ExtensionHost)Connection/,
  /^Creating a socket \(renderer-/,
  /^\[Service Worker\] registration/,
  /^File not found: .*node_modules/,
  /Extension host agent (started|listening)|^Server bound|Web UI available/,
  /DeprecationWarning|ExperimentalWarning|--trace-/,
  /^Creation of workbench contribution/,
  /^Loading development extension/,
  /^Canceled: Canceled/,
  /^\*/,
];

/** @param {string} line */
export function isNoise(line) {
  const bare = line.replace(/^\[[\d:]+\]/, '').trim();
  return bare === '' || NOISE.some((pattern) => pattern.test(bare));
}
