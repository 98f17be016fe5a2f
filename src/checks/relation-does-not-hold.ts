// The check that says where a relation of the workspace's own does not hold among the entries of a record.
import { relationNamed } from '../model/own-model.ts';
import { relatedEntries } from './agreement.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';

const workspace = `swingwright: 1
quantities:
  delivery.shaft_droop: { unit: deg, bounds: -5..15 deg, uncertainty: 0.5 deg }
relations:
  droop-and-lean: { says: delivery.shaft_droop ≈ 0.2 * checkpoints.impact.shaft_lean ± 0.5 deg }`;

const lesson = (droop: string): string => `swing: 1
checkpoints:
  impact: { shaft_lean: [8 deg forward ± 0.5 deg, 8 deg forward ± 0.5 deg] }
delivery:
  shaft_droop: [${droop} ± 0.2 deg, ${droop} ± 0.2 deg]`;

export const relationDoesNotHold: Check = {
  code: 'relation-does-not-hold',
  severity: 'warning',
  title: 'A relation of this workspace does not hold',
  explanation: explain({
    found:
      'The entries together speak against an equation that `swingwright.yaml` states between quantities.',
    matters:
      'Either one of the entries is off, or the relation is narrower than swings are. The entries that it joins are linked; the rest of the agreement is told without it.',
    raises: { 'lesson.swing.yaml': lesson('9 deg'), 'swingwright.yaml': workspace },
    accepts: { 'lesson.swing.yaml': lesson('1.6 deg'), 'swingwright.yaml': workspace },
    source: 'the relation itself; least squares with normalised residuals (Baarda 1968; VDI 2048).',
  }),
  kinds: ['swing'],
  find: (subject) =>
    (subject.agreement?.conflicts ?? []).flatMap(({ id }) => {
      const name = relationNamed(id);
      return name === undefined ? [] : findingOf(name, subject);
    }),
};

/** What was entered of it; of a computed quantity what it was computed from. */
function enteredFor(id: string, { document, derivation, registry }: Subject): readonly string[] {
  if (document.kind === 'swing' && document.entries.has(id)) return [id];
  const from = derivation?.values.get(id)?.from ?? [];
  return from.length === 0 ? [id] : from.filter((one) => registry.find(one) !== undefined);
}

function findingOf(name: string, subject: Subject): readonly RawFinding[] {
  const relation = subject.workspace?.document.own.relations.find((one) => one.name.value === name);
  const joined = subject.own.relations.find((one) => one.name === name)?.rule.inputs ?? [];
  const inputs = [...new Set(joined.flatMap((id) => enteredFor(id, subject)))];
  if (relation === undefined || subject.document.kind !== 'swing') return [];
  const { entries, text } = subject.document;
  const entry = inputs
    .map((id) => entries.get(id))
    .find((one) => one !== undefined && one.readings.length > 0);
  const [first] = relatedEntries(
    subject,
    inputs.filter((id) => id === entry?.id),
  );
  const found = first === undefined ? '' : `${first.message}: `;
  return [
    {
      span: entry?.valueSpan ?? { start: 0, end: text.search(/[\r\n]|$/) },
      message: `${found}the relation \`${name}\` of this workspace does not hold; expected \`${relation.says.value}\`.`,
      related: [
        { uri: subject.workspace!.uri, span: relation.says.span, message: 'The relation' },
        ...relatedEntries(
          subject,
          inputs.filter((id) => id !== entry?.id),
        ),
      ],
    },
  ];
}
