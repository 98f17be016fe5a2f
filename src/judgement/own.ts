// Compiles what a workspace has of its own: steps, relations and checks from their expressions, and all that is wrong with them; knows no record.
import type { Problem } from '../measure/measure.ts';
import { quote } from '../measure/quote.ts';
import { relationId, type OwnModel, type Relation } from '../model/own-model.ts';
import { exact, type Rule } from '../model/rule.ts';
import type { Located, WorkspaceFile } from '../record/document.ts';
import type { OwnCheck, OwnDerived, OwnRelation } from '../record/own-document.ts';
import { untold } from '../record/own.ts';
import { registryOf } from '../record/workspace.ts';
import type { Registry } from '../registry/registry.ts';
import { placed } from './book.ts';
import { compileExpression, type Expression } from './expression.ts';
import { compileFormula, type Formula } from './formula.ts';
import { isSame, kindOf, nameOf } from './kind.ts';
import { leftOpenIn, namesIn } from './message.ts';
import { unknownQuantity } from './problem.ts';
import { spelledOut } from './spelled-out.ts';
import { finestOf, isEverNumber, tellingOf, type Difference } from './telling.ts';

export interface CompiledCheck extends OwnCheck {
  readonly condition: Expression;
}

export interface Own {
  readonly registry: Registry;
  /** Undefined where the workspace adds nothing to the model. */
  readonly model: OwnModel | undefined;
  readonly checks: readonly CompiledCheck[];
  /** What each derived quantity that can be computed is computed from, by full ids. */
  readonly derived: ReadonlyMap<string, readonly string[]>;
  /** Placed in the workspace file. */
  readonly problems: readonly Problem[];
}

/** What cannot be read is left out, with its problems. */
export function compileOwn(document: Pick<WorkspaceFile, 'methods' | 'own'>): Own {
  const registry = registryOf(document);
  const problems: Problem[] = [];
  const { derived, relations, checks } = document.own;
  const formulas = new Map<OwnDerived, Formula>();
  for (const one of derived) {
    const formula = formulaOf(one.is, registry, problems);
    if (formula === undefined || !isOfKind(one, formula, problems)) continue;
    if (formula.quantities.length === 0) problems.push(withoutQuantity(one.is));
    else if (isEverNumber(formula.quantities, formula.compute)) formulas.set(one, formula);
    else problems.push(tellsNothing(one.is, 'gives no number', 'what can be worked out'));
  }
  for (const one of circular(formulas)) {
    formulas.delete(one);
    problems.push({
      code: 'circular-derivation',
      span: one.is.span,
      found: `${quote(one.quantity.id)}, which follows from itself`,
      expected: 'quantities that do not follow from it',
    });
  }
  const rules = [...formulas].map(([one, formula]) => ruleOf(one, formula));
  const byId = new Map([...formulas].map(([{ quantity }, formula]) => [quantity.id, formula] as const));
  const related = relations.flatMap((one) => relationOf(one, registry, byId, problems) ?? []);
  const key = JSON.stringify([
    registry,
    rules.map(({ outputs, formula }) => [outputs, formula]),
    related.map(({ name, rule, u }) => [name, rule.formula, u]),
  ]);
  const isEmpty = rules.length + related.length === 0;
  return {
    registry,
    model: isEmpty ? undefined : { key, rules, relations: related, toJSON: () => key },
    derived: new Map(rules.flatMap(({ inputs, outputs }) => outputs.map((id) => [id, inputs] as const))),
    checks: checks.flatMap((one) => checkOf(one, registry, problems) ?? []),
    problems: untold(problems, document.own.told),
  };
}

function formulaOf(text: Located<string>, registry: Registry, problems: Problem[]): Formula | undefined {
  const { formula, problems: own } = compileFormula(text.value, registry);
  problems.push(...own.map((problem) => placed(problem, text)));
  return formula;
}

function isOfKind({ quantity, is }: OwnDerived, { kind }: Formula, problems: Problem[]): boolean {
  const wanted = kindOf(quantity.dimension, quantity.unit);
  if (isSame(kind, wanted)) return true;
  const expected = `${nameOf(wanted)}, as ${quote(quantity.id)} is`;
  problems.push({ code: 'dimensions-do-not-match', span: is.span, found: nameOf(kind), expected });
  return false;
}

/** Those that follow from themselves, by whatever way. */
function circular(formulas: ReadonlyMap<OwnDerived, Formula>): readonly OwnDerived[] {
  const inputs = new Map(
    [...formulas].map(([{ quantity }, f]) => [quantity.id, f.quantities.map(({ id }) => id)]),
  );
  return [...formulas.keys()].filter(({ quantity }) => {
    const behind = new Set<string>(inputs.get(quantity.id));
    for (const id of behind) for (const input of inputs.get(id) ?? []) behind.add(input);
    return behind.has(quantity.id);
  });
}

function ruleOf({ quantity, is }: OwnDerived, { quantities, compute }: Formula): Rule {
  return {
    name: `own-${quantity.id}`,
    formula: `${quantity.id} = ${is.value}`,
    source: 'the workspace file',
    inputs: quantities.map(({ id }) => id),
    outputs: [quantity.id],
    compute: (numbers) => [compute(numbers)],
    discrepancy: exact,
  };
}

function relationOf(
  one: OwnRelation,
  registry: Registry,
  formulas: ReadonlyMap<string, Formula>,
  problems: Problem[],
): Relation | undefined {
  const [left, right, spread] = [one.left, one.right, one.u].map((part) =>
    formulaOf(part, registry, problems),
  );
  if (left === undefined || right === undefined || spread === undefined) return undefined;
  if (!isSame(left.kind, right.kind)) {
    const problem = { code: 'dimensions-do-not-match', span: one.right.span, found: nameOf(right.kind) };
    problems.push({ ...problem, expected: `${nameOf(left.kind)}, as the left side is` });
    return undefined;
  }
  const quantities = [...new Set([...left.quantities, ...right.quantities].map(({ id }) => id))];
  const u = spread.quantities.length === 0 ? spread.compute([]) : NaN;
  if (!isSame(spread.kind, left.kind)) {
    const problem = { code: 'dimensions-do-not-match', span: one.u.span, found: nameOf(spread.kind) };
    problems.push({ ...problem, expected: `${nameOf(left.kind)}, as both sides are` });
    return undefined;
  }
  if (!(u > 0 && u < Infinity)) {
    const problem = { code: 'uncertainty-not-positive', span: one.u.span, found: quote(one.u.value) };
    problems.push({ ...problem, expected: 'a number above 0 with its unit' });
    return undefined;
  }
  if (quantities.length === 0) {
    problems.push(withoutQuantity(one.says));
    return undefined;
  }
  const id = relationId(one.name.value);
  const of = ({ quantities: own, compute }: Formula): ((numbers: readonly number[]) => number) => {
    const places = own.map((quantity) => quantities.indexOf(quantity.id));
    return (numbers) => compute(places.map((place) => numbers[place]!));
  };
  const [a, b] = [of(left), of(right)];
  const compute = (numbers: readonly number[]): number => a(numbers) - b(numbers);
  const difference: Difference = {
    quantities: quantities.flatMap((at) => registry.find(at) ?? []),
    compute,
    isLinear: left.isLinear && right.isLinear,
  };
  const telling = tellingOf(spelledOut(difference, formulas), u);
  if (telling !== 'tells') {
    const found = `${quote(one.says.value)}, which ${telling} within what is possible`;
    const expected = 'an equation that some swings meet and others do not';
    problems.push({ code: 'relation-tells-nothing', span: one.says.span, found, expected });
    return undefined;
  }
  return {
    name: one.name.value,
    id,
    u: Math.max(u, finestOf(difference)),
    rule: {
      name: `own-${id}`,
      formula: one.says.value,
      source: one.because ?? 'the workspace file',
      inputs: quantities,
      outputs: [id],
      compute: (numbers) => [compute(numbers)],
      discrepancy: exact,
    },
  };
}

function checkOf(one: OwnCheck, registry: Registry, problems: Problem[]): CompiledCheck | undefined {
  const { expression: condition, problems: wrong, lost } = compileExpression(one.when.value, registry);
  const own = [...wrong, ...lost];
  const named = namesIn(one.message).filter(({ value }) => registry.find(value) === undefined);
  const at = one.at === undefined || registry.find(one.at.value) !== undefined ? [] : [one.at];
  problems.push(
    ...own.map((problem) => placed(problem, one.when)),
    ...[...named, ...at].map(({ value, span }) => unknownQuantity(value, span, registry, 'delivery.path')),
    ...leftOpenIn(one.message).map(({ value, span }) => ({
      code: 'unreadable-expression',
      span,
      found: quote(value),
      expected: '`}` behind the id of a quantity',
    })),
  );
  if (condition?.quantities.length === 0) problems.push(withoutQuantity(one.when));
  if (condition === undefined || condition.quantities.length === 0) return undefined;
  const truth = truthOf(condition);
  if (truth !== undefined && lost.length === 0)
    problems.push(tellsNothing(one.when, truth, 'a condition that some swings meet and others do not'));
  return { ...one, condition };
}

/** What a condition is for every swing that is possible; undefined where it tells swings apart. */
function truthOf({ quantities, holds, margin, over }: Expression): string | undefined {
  const [min, max] = [quantities.map(({ bounds }) => bounds.min), quantities.map(({ bounds }) => bounds.max)];
  const truth = over({ min, max });
  if (!Number.isNaN(truth)) return truth === 1 ? 'always holds' : 'never holds';
  return isEverNumber(quantities, margin ?? holds) ? undefined : 'gives no number';
}

function tellsNothing({ value, span }: Located<string>, what: string, expected: string): Problem {
  const found = `${quote(value)}, which ${what} within what is possible`;
  return { code: 'expression-tells-nothing', span, found, expected };
}

function withoutQuantity({ value, span }: Located<string>): Problem {
  const expected = 'at least one quantity by its full id';
  return { code: 'unreadable-expression', span, found: `${quote(value)}, without a quantity`, expected };
}
