// The hover on a checkpoint or on a section of a record: what it is, and what follows there from the entries.
import type { Analysis } from '../analysis/result.ts';
import { showValue } from '../measure/show.ts';
import type { OutlineNode } from '../record/document.ts';
import { checkpoints, type Checkpoint } from '../registry/quantity.ts';
import { findQuantity } from '../registry/registry.ts';
import type { Remark } from './hover.ts';
import { holds } from './places.ts';
import { list, nameOf } from './words.ts';

/** Where in the swing each checkpoint is; plain descriptions. */
const checkpointMeanings: Readonly<Record<Checkpoint, string>> = {
  address: 'Standing to the ball, before anything moves.',
  takeaway: 'The first move away: the club head has gone about as far back as the trail foot.',
  lead_arm_parallel_back: 'Going back, the lead arm is level with the ground.',
  top: 'The club changes from going back to coming down.',
  lead_arm_parallel_down: 'Coming down, the lead arm is level with the ground.',
  shaft_parallel_down: 'Coming down, the shaft is level with the ground, before the strike.',
  impact: 'The club head meets the ball.',
  shaft_parallel_through: 'After the strike, the shaft is level with the ground.',
  finish: 'The swing has come to rest.',
};

const sectionMeanings: Readonly<Record<string, string>> = {
  conditions: 'The air and the wind in which the shots were hit.',
  checkpoints: 'Where the body and the club were, at moments of the swing.',
  delivery: 'How the club head came to the ball.',
  ground: 'The mark that the club left in the turf.',
  strike: 'Where on the face the ball was met, from the centre of the face.',
  flight: 'What the ball did.',
};

/** So that what is computed is not crowded out by what is not. */
const mostMissing = 4;

export function hoverOnKey(analysis: Analysis, offset: number): Remark | undefined {
  const { document } = analysis;
  if (document.kind !== 'swing' && document.kind !== 'template') return undefined;
  for (const section of document.outline) {
    if (holds(section.nameSpan, offset))
      return sectionRemark(section, section.name, sectionMeanings[section.name], analysis);
    if (section.name !== 'checkpoints') continue;
    const node = section.children.find(({ nameSpan }) => holds(nameSpan, offset));
    const checkpoint = checkpoints.find((name) => name === node?.name);
    if (node === undefined || checkpoint === undefined) continue;
    return sectionRemark(node, `checkpoints.${checkpoint}`, checkpointMeanings[checkpoint], analysis);
  }
  return undefined;
}

function sectionRemark(
  node: OutlineNode,
  prefix: string,
  meaning: string | undefined,
  { derivation }: Analysis,
): Remark | undefined {
  if (meaning === undefined) return undefined;
  const title = node.name.replaceAll('_', ' ');
  const derived = [...(derivation?.values.values() ?? [])].flatMap((value) => {
    const quantity = findQuantity(value.id);
    if (value.kind !== 'derived' || quantity === undefined || !value.id.startsWith(`${prefix}.`)) return [];
    return [`${quantity.title}: ${showValue(quantity, value.value, value.u)}`];
  });
  const missing = [...(derivation?.missing.values() ?? [])].flatMap(({ id, needs }) => {
    const quantity = findQuantity(id);
    if (quantity === undefined || needs.length === 0 || !id.startsWith(`${prefix}.`)) return [];
    return [`${quantity.title}: would take ${list(needs.map(nameOf), 4)}`];
  });
  return {
    span: node.nameSpan,
    lines: [
      `**${title[0]!.toUpperCase()}${title.slice(1)}**`,
      meaning,
      ...(derived.length === 0 ? [] : ['*Computed from the entries*', ...derived]),
      ...(missing.length === 0 ? [] : ['*Not computed yet*', ...missing.slice(0, mostMissing)]),
    ],
  };
}
