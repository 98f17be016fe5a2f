// How many decimals an uncertainty supports, and numbers written with no more than those; knows no units.

/**
 * The decimals at which an uncertainty has two significant digits if the first is 1 or 2, else one; negative for tens and
 * hundreds. GUM (JCGM 100:2008) 7.2.6 wants at most two digits; that one is enough from 3 on is the rule of DIN 1333,
 * from memory. Undefined where the uncertainty is not positive.
 */
export function decimalsOf(uncertainty: number): number | undefined {
  if (!(uncertainty > 0) || !Number.isFinite(uncertainty)) return undefined;
  const scientific = uncertainty.toExponential();
  const exponent = Number(scientific.slice(scientific.indexOf('e') + 1));
  const digits = scientific.startsWith('1') || scientific.startsWith('2') ? 2 : 1;
  return digits - 1 - exponent;
}

/** More would only write out how a computer stores the number. */
const mostDecimals = 15;

/** A number with the decimals that its uncertainty supports, whole numbers kept whole, and never so few that nothing but zero is left. */
export function writeSupported(value: number, uncertainty: number): string {
  const supported = Math.max(0, decimalsOf(uncertainty) ?? 0);
  const needed = value === 0 ? 0 : Math.max(0, -Math.floor(Math.log10(Math.abs(value))));
  const text = value.toFixed(Math.min(mostDecimals, Math.max(supported, needed)));
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/** An uncertainty with its own significant digits. */
export function writeUncertainty(uncertainty: number): string {
  const decimals = decimalsOf(uncertainty) ?? 0;
  const step = 10 ** -decimals;
  return decimals > 0
    ? String(Number(uncertainty.toFixed(Math.min(mostDecimals, decimals))))
    : String(Math.round(uncertainty / step) * step);
}
