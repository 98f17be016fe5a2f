// A handout as a page that stands alone, for the screen and for one sheet of paper; says nothing that `content.tsx` does not.
import type { Handout } from '../../analysis/handout.ts';
import { Head } from '../number-table.tsx';
import { pageOf, ScrolledTable } from '../page.tsx';
import type { Picture } from '../picture.tsx';
import { cssTheme as theme } from '../theme.ts';
import { contentOf, type Audience, type Card, type Content } from './content.tsx';
import type { Table } from './file-tables.ts';
import { Lines } from './lines.tsx';
import { Entries } from './measured-section.tsx';
import { handoutStyle, leastOfCare } from './style.ts';

export function handoutPage(handout: Handout, audience: Audience): string {
  const content = contentOf(handout, audience);
  const { speech, title, facts, wish, tables } = content;
  const { say, language } = speech;
  return pageOf({
    title: [title, ...facts].join(', '),
    language,
    style: handoutStyle + lettersOf(content),
    children: (
      <>
        <header class="top">
          <h1>{title}</h1>
          <p class="soft">{facts.join(' · ')}</p>
        </header>
        {wish.length > 0 && (
          <p class="wish">
            <b>{say(audience === 'file' ? 'wishOfFile' : 'wish')}:</b> {wish.join(' · ')}
          </p>
        )}
        <div class={content.flight === undefined ? '' : 'two'}>
          <div>
            <Saw content={content} />
            <Causes content={content} />
          </div>
          {content.flight !== undefined && (
            <section>
              <h2>{say('flight')}</h2>
              <figure class="flight">{content.flight(theme)}</figure>
            </section>
          )}
        </div>
        <Changes content={content} />
        {content.measured !== undefined && <Entries speech={speech} measured={content.measured} />}
        <div class="two even">
          <section>
            <h2>{say('measureNext')}</h2>
            <Lines lines={content.measureNext} otherwise={say('measureNothing')} />
          </section>
          <section class="care">
            <h2>{say('care')}</h2>
            {content.care.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </section>
        </div>
        {content.gaps !== undefined && <p class="soft">{content.gaps}</p>}
        {tables.length > 0 && (
          <div class="second">
            {tables.map((table) => (
              <Numbers key={table.title} table={table} />
            ))}
          </div>
        )}
        <footer>{tables.length > 0 ? `${say('uncertainty')} ${say('foot')}` : say('foot')}</footer>
      </>
    ),
  });
}

/** pt: the height within the margins of A4 (297 mm less 24 mm), what stands about the tables, and what each has besides its rows; the latter two are judgement. */
const sheet = { height: 774, foot: 44, table: 34 } as const;
/** Letters of a row, in all its cells, that stand on one line, as the widest of usual fonts has them: judgement. */
const lettersOnLine = 75;

/** Letters that the first sheet has room for at its largest, in usual fonts and the widest of them, and a headline too: judgement. */
const room = { sheet: 1350, headline: 26 } as const;

/** pt: what letters are printed at where there is room, and the least where there is none: judgement. */
const sizes = { page: [5.5, 9.2], headline: [11, 22], table: [5, 8.4] } as const;
/** Lines of a row's letters apart, and what a row has besides, in its letters' size: as the style says. */
const row = { line: 1.32, padding: 0.45 } as const;

/**
 * A browser prints as it is told: letters are as large as a sheet has room for, so that the handout keeps the pages that were promised.
 * A page takes as much of them as goes with the square of their size.
 */
function lettersOf(content: Content): string {
  const { title, tables } = content;
  const page = within(sizes.page, sizeOfPage(content));
  const headline = within(sizes.headline, (sizes.headline[1] * room.headline) / Math.max(1, title.length));
  const lines = tables.flatMap(({ columns, rows, rest }) =>
    [columns, ...rows, ...(rest === undefined ? [] : [[rest]])].map((cells) =>
      Math.ceil(Math.max(1, cells.join('').length) / lettersOnLine),
    ),
  );
  const heights = lines.reduce((sum, count) => sum + row.line * count + row.padding, 0);
  const size = (sheet.height - sheet.foot - sheet.table * tables.length) / Math.max(1, heights);
  const table = within(sizes.table, size);
  return `@media print { html { --page: ${page.toFixed(2)}pt; --headline: ${headline.toFixed(1)}pt; --table: ${table.toFixed(2)}pt; } }`;
}

/** pt, without a least: what the cautions take at their own least size, the rest has to do without. */
function sizeOfPage(content: Content): number {
  const [rest, care] = [Math.max(1, lettersOfSheet(content)), content.care.join('').length];
  const area = room.sheet * sizes.page[1] ** 2;
  const even = Math.sqrt(area / (rest + care));
  return even >= leastOfCare ? even : Math.sqrt(Math.max(0, area - care * leastOfCare ** 2) / rest);
}

function within([least, most]: readonly [number, number], size: number): number {
  return Math.min(most, Math.max(least, size));
}

/** As much room as so many letters has the box round each link of a chain: judgement. */
const lettersOfBox = 22;

/** But for the cautions. Cards stand side by side, so that each takes as much as the fullest. */
function lettersOfSheet({
  title,
  wish,
  saw,
  sawOtherwise,
  remarks,
  doubts,
  chains,
  cards,
  measureNext,
  gaps,
  further,
  measured,
}: Content): number {
  const cardLetters = cards.map(
    ({ title: name, step, feel, drills, why }) => [name, step, feel, ...drills, why].join('').length,
  );
  const rest = [
    title,
    ...wish,
    ...saw.flatMap((one) => [one.title, one.text]),
    sawOtherwise,
    ...remarks,
    ...doubts,
  ]
    .concat(chains.flat(), measureNext, gaps, further, measured?.lines ?? [], measured?.fuller ?? [])
    .join('').length;
  return rest + lettersOfBox * chains.flat().length + cards.length * Math.max(0, ...cardLetters);
}

function Saw({
  content: { speech, saw, sawOtherwise, remarks, doubts },
}: {
  readonly content: Content;
}): Picture {
  return (
    <section>
      <h2>{speech.say('saw')}</h2>
      {sawOtherwise !== undefined && <p>{sawOtherwise}</p>}
      {saw.length > 0 && (
        <ul class="saw">
          {saw.map(({ title, text }, i) => (
            <li key={i}>
              <b>{title}</b>
              {text}
            </li>
          ))}
        </ul>
      )}
      {[...remarks, ...doubts].map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </section>
  );
}

function Causes({ content: { speech, saw, chains } }: { readonly content: Content }): Picture | null {
  if (saw.length === 0 && chains.length === 0) return null;
  return (
    <section>
      <h2>{speech.say('causes')}</h2>
      {chains.length === 0 && <p>{speech.say('causesNothing')}</p>}
      {chains.length > 0 && (
        <div class="chains">
          {chains.map((chain, i) => (
            <ol key={i} class="chain">
              {chain.map((link, n) => (
                <li key={n} class={kindOf(n, chain.length)}>
                  {n > 0 && <span aria-hidden="true">{'\u2192 '}</span>}
                  {link}
                </li>
              ))}
            </ol>
          ))}
        </div>
      )}
    </section>
  );
}

function kindOf(at: number, of: number): string {
  if (at === 0) return 'cause';
  return at === of - 1 && of > 2 ? 'miss' : 'between';
}

function Changes({
  content: { speech, changesTitle, cards, further },
}: {
  readonly content: Content;
}): Picture {
  const count = ['', 'one', 'two-cards', ''][cards.length] ?? '';
  return (
    <section>
      <h2>{changesTitle}</h2>
      {further !== undefined && <p>{further}</p>}
      {cards.length > 0 && (
        <ol class={`cards ${count}`}>
          {cards.map((card) => (
            <li key={card.number} class="card">
              <div>
                <h3>
                  <span>{card.number}</span>
                  {card.title}
                </h3>
                {card.step !== '' && <p class="step">{card.step}</p>}
                {card.picture?.(theme) ?? <p class="soft">{speech.say('noPicture')}</p>}
              </div>
              <Words card={card} content={{ speech }} />
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

function Words({
  card: { feel, drills, why },
  content: { speech },
}: {
  readonly card: Card;
  readonly content: Pick<Content, 'speech'>;
}): Picture {
  const { say } = speech;
  return (
    <dl>
      {feel !== undefined && (
        <div class="feel">
          <dt>{say('feel')}</dt>
          <dd>{feel}</dd>
        </div>
      )}
      {drills.length > 0 && (
        <div>
          <dt>{say(drills.length === 1 ? 'drill' : 'drills')}</dt>
          {drills.map((drill, i) => (
            <dd key={i}>{drill}</dd>
          ))}
        </div>
      )}
      {why !== undefined && (
        <div>
          <dt>{say('why')}</dt>
          <dd>{why}</dd>
        </div>
      )}
    </dl>
  );
}

function Numbers({ table: { title, columns, rows, rest } }: { readonly table: Table }): Picture {
  return (
    <section class="numbers">
      <h2>{title}</h2>
      <ScrolledTable name={title}>
        <Head titles={[...columns]} />
        <tbody>
          {rows.map(([first, ...cells], i) => (
            <tr key={i}>
              <th scope="row">{first}</th>
              {cells.map((cell, n) => (
                <td key={n}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </ScrolledTable>
      {rest !== undefined && <p class="soft">{rest}</p>}
    </section>
  );
}
