// Writes a value as JSON that nothing in it can steer a terminal by; a program reads the same value from it.
import { steering } from '../../measure/quote.ts';

/** Such a sign can stand in a string alone, where JSON has an escape for it; those below U+0020 are escaped by JSON itself. */
export function jsonText(value: unknown): string {
  const escaped = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
  return `${JSON.stringify(value, null, 2).replace(steering, escaped)}\n`;
}
