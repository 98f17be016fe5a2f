// One line on the terminal that says how far a long command has come; silent in pipes and for few files.

export interface Progress {
  readonly step: (what: string) => void;
  readonly end: () => void;
}

const few = 20;

/** Writes to standard error only, and only where that is a terminal, so that reports stay clean. */
export function startProgress(total: number): Progress {
  if (!process.stderr.isTTY || total < few) return { step: () => {}, end: () => {} };
  let done = 0;
  return {
    step: (what) => {
      done += 1;
      const line = `${done}/${total} ${what}`;
      process.stderr.write(`\r\u001b[2K${line.slice(0, (process.stderr.columns || 80) - 1)}`);
    },
    end: () => process.stderr.write('\r\u001b[2K'),
  };
}
