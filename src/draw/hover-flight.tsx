// The flight as a small picture for a hover, from the side or from above, to scale; draws what is known of it.
import type { ComputedFlight } from '../analysis/flight-path.ts';
import { showValue } from '../measure/show.ts';
import type { Value } from '../model/value.ts';
import { FromAbove } from './flight-above.tsx';
import { FromSide } from './flight-side.tsx';
import { sceneOf, type Scene } from './flight-scene.ts';
import { besidesSayings, numberSaying } from './flight-words.ts';
import { card, HoverCard } from './hover-card.tsx';
import type { HoverDrawn } from './hover-strike.tsx';
import { Key } from './key.tsx';
import { sayingOf, valueOf, wordsOf } from './known.ts';
import { Label } from './label.tsx';
import { fitted } from './lettering.ts';
import type { Picture } from './picture.tsx';
import { lowerFirst } from '../measure/quote.ts';

const field = { x: 16, width: card.width - 48, top: 26, height: card.height - 52 };

export function HoverFlightSide({ analysis, id, theme }: HoverDrawn): Picture | undefined {
  const scene = sceneOf(analysis);
  const { path, recorded, launch, descent, apex, extent } = scene;
  if (!(extent.ahead > 0) || !(path ?? recorded ?? launch ?? descent ?? apex)) return undefined;
  const scale = Math.min(field.width / extent.ahead, field.height / Math.max(extent.up, 1));
  const ground = field.top + field.height;
  return (
    <Card drawn={{ analysis, id, theme }} scene={scene} view="from the side">
      <path
        d={`M 6 ${ground} H ${card.width - 6}`}
        stroke={theme.ink}
        stroke-width="1.2"
        data-part="ground"
      />
      <FromSide scene={scene} ball={{ x: field.x, y: ground }} scale={scale} theme={theme} />
    </Card>
  );
}

export function HoverFlightAbove({ analysis, id, theme }: HoverDrawn): Picture | undefined {
  const scene = sceneOf(analysis);
  const { path, recorded, expected, extent } = scene;
  if (!(extent.ahead > 0) || !(path ?? recorded ?? expected)) return undefined;
  const scale = Math.min(field.width / extent.ahead, field.height / Math.max(extent.left + extent.right, 1));
  const spare = field.height - (extent.left + extent.right) * scale;
  const line = field.top + spare / 2 + extent.left * scale;
  return (
    <Card drawn={{ analysis, id, theme }} scene={scene} view="from above">
      <FromAbove
        scene={scene}
        ball={{ x: field.x, y: line }}
        scale={scale}
        reach={card.width - field.x - 24}
        picture={nameOf('from above')}
        theme={theme}
      />
    </Card>
  );
}

type View = 'from the side' | 'from above';

function nameOf(view: View): string {
  return `hover-flight-${view.replaceAll(' ', '-')}`;
}

function Card({
  drawn: { analysis, id, theme },
  scene,
  view,
  children,
}: {
  readonly drawn: HoverDrawn;
  readonly scene: Scene;
  readonly view: View;
  readonly children: Picture | readonly Picture[];
}): Picture {
  const { registry } = analysis.subject;
  const named = ['flight.carry', 'flight.apex', 'flight.start', 'flight.finish'];
  const values = [...new Set([id, ...named])].flatMap((one) => valueOf(analysis, one) ?? []);
  const own = valueOf(analysis, id);
  const { path, expected, goals } = scene;
  return (
    <HoverCard
      name={nameOf(view)}
      title={`The flight ${view}`}
      words={wordsOf(
        [...values.map((value) => numberSaying(value, scene, registry)), ...besidesSayings(scene, analysis)],
        [],
      )}
      theme={theme}
    >
      {children}
      {own && (
        <Label
          at={{ x: 8, y: 16 }}
          text={fitted(wordsFor(own), card.width - 16, 11)}
          tone="ink"
          theme={theme}
        />
      )}
      {view === 'from above' && goals.length > 0 && (
        <Key
          items={[{ mark: 'goal', text: goals.length === 1 ? 'goal' : 'goals' }]}
          x={card.width - 62}
          y={16}
          width={62}
          picture={nameOf(view)}
          theme={theme}
        />
      )}
      <Label at={{ x: 8, y: card.height - 7 }} text={view} theme={theme} />
      {(path ?? expected) && (
        <Label
          at={{ x: card.width - 8, y: card.height - 7 }}
          text={computedText(scene)}
          anchor="end"
          tone="expected"
          theme={theme}
        />
      )}
    </HoverCard>
  );

  /** Whose the dashed way is, and where it leads unless that is the recorded place. */
  function computedText({ computed: by, expected: place }: Scene): string {
    if (place === undefined) return 'dashed: computed';
    return `${by.by === 'others' ? 'others' : 'computed'} ${numbersOf(by)}`;
  }

  /** Carry alone from the side, where nobody sees how far aside; to as many digits as wherever their uncertainty stands beside them. */
  function numbersOf({ carry, finish }: ComputedFlight): string {
    const shown = view === 'from the side' ? [carry] : [carry, finish];
    return shown
      .flatMap((value) => (value ? [sayingOf(value, registry).number.split(' ± ')[0]!] : []))
      .join(', ');
  }

  function wordsFor({ id: of, value }: Value): string {
    const quantity = registry.find(of);
    return quantity ? `${lowerFirst(quantity.title)} ${showValue(quantity, value)}` : '';
  }
}
