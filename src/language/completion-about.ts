// Which quantity a half-written measure is of, and in which form: measured, aimed at, a change, an effect; proposes nothing itself.
import { evidenceQuantities } from '../judgement/cause-quantity.ts';
import type { Notation, ParseOptions } from '../measure/measure.ts';
import { parseMeasure } from '../measure/parse.ts';
import { wordBeside } from '../record/cursor.ts';
import type { Quantity } from '../registry/quantity.ts';
import { changeWords, type Registry } from '../registry/registry.ts';
import { habitOf } from './completion-habits.ts';
import { continueMeasure, type Continuation, type Form } from './completion-measure.ts';
import { quantityAt, quantityBeside, type Path } from './completion-place.ts';
import { continueSize } from './completion-size.ts';
import { workspaceAbout } from './completion-workspace.ts';
import type { Desire } from './completion.ts';

export interface About {
  readonly quantity: Quantity;
  readonly form: Form;
}

/** The quantity that is measured, wanted or changed at this place. */
export function aboutAt(desire: Desire, path: Path): About | undefined {
  const { analysis, text, cursor } = desire;
  const { kind } = analysis.document;
  const { registry } = analysis.subject;
  if (kind === 'workspace') return workspaceAbout(desire, path);
  const last = path.at(-1);
  const beside = (form: Form): About | undefined => about(quantityBeside(text, cursor, registry), form);
  if (kind === 'swing' && path[0] === 'plan' && last === 'to') return beside('target');
  if (kind === 'faults' && path[2] === 'changes') {
    if (last === 'to') return beside('target');
    return last === 'by' ? beside('step') : undefined;
  }
  if (kind === 'faults' && path[2] === 'tends_to') return last === 'size' ? beside('size') : undefined;
  if (/^(?:by|note|doubtful|seen|source|strict)$/.test(String(last))) return undefined;
  return about(quantityAt(kind, path, registry), formAt(kind, path));
}

function formAt(kind: Desire['analysis']['document']['kind'], path: Path): Form {
  const last = path.at(-1);
  if (last === 'give_or_take') return 'uncertainty';
  if (kind === 'template') return 'window';
  if (path[0] === 'goals') return 'target';
  return last === 'value' ? 'long' : 'measure';
}

function about(quantity: Quantity | undefined, form: Form): About | undefined {
  return quantity === undefined ? undefined : { quantity, form };
}

/** `value` is the whole value, the cursor at `at`. */
export function continueAbout(
  { quantity, form }: About,
  value: string,
  at: number,
  desire: Desire,
): Continuation | undefined {
  const { analysis, cursor } = desire;
  const { registry } = analysis.subject;
  const habit = habitOf(quantity, desire);
  const meaningOf = (name: string): string | undefined => registry.findMethod(name)?.meaning;
  if (form === 'size') return continueSize(value, at, quantity, habit, causesAt(desire));
  if (form === 'step') {
    const directions = changeWords(quantity);
    const changed = { ...quantity, directions };
    const words = directions.map(({ word }) => word);
    const found = continueMeasure(value, at, changed, { ...habit, directions: words }, form, meaningOf);
    return found && readable(found, value, changed, form, registry);
  }
  const beside = {
    stated: form === 'long' && cursor.siblings.has('give_or_take'),
    method: form === 'long' && cursor.siblings.has('by'),
  };
  const found = continueMeasure(value, at, quantity, habit, form, meaningOf, beside);
  // How sure a number is has no direction.
  const notation = form === 'uncertainty' ? { ...quantity, directions: [] } : quantity;
  return found && readable(found, value, notation, form, registry);
}

const windows = { window: 'only', target: 'also' } as const satisfies Partial<
  Record<Form, ParseOptions['window']>
>;

/** Only what leaves a measure that can be read at least as well as before. */
function readable(
  found: Continuation,
  value: string,
  notation: Notation,
  form: Form,
  { methodNames: methods }: Registry,
): Continuation {
  const window = form === 'window' || form === 'target' ? windows[form] : 'no';
  const problems = (text: string): number =>
    parseMeasure(text, notation, { window, methods }).problems.length;
  const most = problems(value);
  return {
    ...found,
    proposals: found.proposals.filter(({ text }) => {
      // What goes on behind a word such as `by` is taken as written.
      const rest = text.endsWith('by ') ? methods[0]! : text.endsWith('± ') ? '1' : '';
      return problems(value.slice(0, found.start) + text + rest + value.slice(found.end)) <= most;
    }),
  };
}

/** What the effect at the cursor may be so much of: the quantity that `of` names, else those of the fault's evidence. */
function causesAt({ analysis: { document, subject }, cursor, text }: Desire): readonly Quantity[] {
  const of = wordBeside(text, cursor, 'of');
  const named = of === undefined ? undefined : subject.registry.find(of);
  if (named !== undefined) return [named];
  const fault = document.kind === 'faults' ? document.faults.get(String(cursor.path[1])) : undefined;
  return fault === undefined ? [] : evidenceQuantities(fault, subject.registry);
}
