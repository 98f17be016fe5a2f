// Asks one thing at a time and always the latest: what was asked meanwhile and overtaken is never sent; knows no question.

export interface Latest<T> {
  readonly ask: (question: T) => void;
  /** An answer has come, whatever it says. */
  readonly answered: () => void;
}

export function latestOnly<T>(send: (question: T) => void): Latest<T> {
  let isBusy = false;
  let waiting: { readonly question: T } | undefined;
  return {
    ask: (question) => {
      if (isBusy) {
        waiting = { question };
        return;
      }
      isBusy = true;
      send(question);
    },
    answered: () => {
      isBusy = waiting !== undefined;
      const next = waiting;
      waiting = undefined;
      if (next !== undefined) send(next.question);
    },
  };
}
