// Which checkpoint comes next; knows no page.
import type { SheetCheckpoint } from '../language/sheet.ts';

/** The one that many steps further; the ends are ends. */
export function stepped(
  checkpoints: readonly SheetCheckpoint[],
  from: string | null,
  by: 1 | -1,
): string | null {
  const at = Math.max(
    0,
    checkpoints.findIndex(({ name }) => name === from),
  );
  const next = checkpoints[Math.max(0, Math.min(checkpoints.length - 1, at + by))];
  return next?.name ?? null;
}
