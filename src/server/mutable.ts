// The types of the protocol library are writable, and ours are not; nothing writes to what is sent.

type Mutable<T> = T extends object ? { -readonly [K in keyof T]: Mutable<T[K]> } : T;

export function mutable<T>(value: T): Mutable<T> {
  return value as Mutable<T>;
}
