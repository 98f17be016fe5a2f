// The figures on pages that compare: two records laid over one another, or one record before the windows of a template; at which checkpoints is told here.
import type { Analysis } from '../analysis/result.ts';
import { FigureDownTheLine } from './figure-down-the-line.tsx';
import { FigureFaceOn } from './figure-face-on.tsx';
import { checkpointsWithEntries, standOf } from './figure-pose.ts';
import { checkpointTitle } from './figure-words.ts';
import { isPostureSeen, OverlaidFigure, overlaidViews } from './overlaid-figure.tsx';
import type { OverlayProps } from './overlaid.tsx';
import type { Picture } from './picture.tsx';
import type { Theme } from './theme.ts';

export function FiguresOverlaid(props: OverlayProps): Picture | null {
  const all = overlaidViews(props);
  if (all.length === 0) return null;
  return (
    <>
      <h2>The player</h2>
      <p class="soft">
        B is the body, A the dashed outline over it. What nobody recorded is drawn as it usually is, dotted.
      </p>
      <div class="pictures">
        {all.map(({ checkpoint, view, title }) => (
          <figure key={title}>
            <figcaption>{title}</figcaption>
            <OverlaidFigure {...props} checkpoint={checkpoint} view={view} />
          </figure>
        ))}
      </div>
    </>
  );
}

/** Where the template has windows and the record entries. */
export function FiguresInWindows({
  record,
  template,
  theme,
}: {
  readonly record: Analysis;
  readonly template: Analysis;
  readonly theme: Theme;
}): Picture | null {
  const { document, uri } = template;
  if (document.kind !== 'template') return null;
  const analysis = { ...record, subject: { ...record.subject, template: { uri, document } } };
  const windowed = [...document.windows.values()].map(({ quantity }) => quantity.checkpoint);
  const shown = checkpointsWithEntries(analysis).filter((checkpoint) => windowed.includes(checkpoint));
  if (shown.length === 0) return null;
  return (
    <>
      <h2>The player and the windows</h2>
      <p class="soft">Hatched areas are the windows of the template.</p>
      <div class="pictures">
        {shown.flatMap((checkpoint) => {
          const at = { analysis, theme, checkpoint };
          const named = checkpoint.replaceAll('_', '-');
          const title = checkpointTitle(checkpoint);
          const faceOn = (
            <figure key={`${title}, face-on`}>
              <figcaption>{`${title}, face-on`}</figcaption>
              <FigureFaceOn {...at} name={`figure-face-on-${named}`} />
            </figure>
          );
          if (!isPostureSeen(standOf(analysis, checkpoint), 'down_the_line')) return [faceOn];
          return [
            faceOn,
            <figure key={`${title}, down the line`}>
              <figcaption>{`${title}, down the line`}</figcaption>
              <FigureDownTheLine {...at} name={`figure-down-the-line-${named}`} />
            </figure>,
          ];
        })}
      </div>
    </>
  );
}
