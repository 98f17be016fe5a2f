// Writes a value as JSON that nothing in it can steer a terminal by; a program reads the same value from it.

const steering = /[\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;

/** Such a sign can stand in a string alone, where JSON has an escape for it; those below U+0020 are escaped by JSON itself. */
export function jsonText(value: unknown): string {
  const escaped = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
  return `${JSON.stringify(value, null, 2).replace(steering, escaped)}\n`;
}
