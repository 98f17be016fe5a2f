// The picture in a hover: an image in the Markdown for editors that ask for it, with words for who cannot see it.
import assert from 'node:assert/strict';
import { themes, type ThemeName } from '../../src/draw/theme.ts';
import { findHover, themeNamed } from '../../src/language/index.ts';
import { marked } from '../marked.ts';
import { analysed, student } from './analysed.ts';

const files = { 'mira.student.yaml': student };
const head = 'swing: 1\nstudent: mira.student.yaml\nclub: hybrid\n';
const path = 'delivery:\n  pa$0th: 5 deg right by radar\n  face: 1 deg right by radar\n';
const image =
  /!\[((?:\\.|[^\]\\])*)\]\(data:image\/svg\+xml;base64,([A-Za-z0-9+/=]+)\|width=(\d+),height=(\d+)\)/;

function hover(text: string, room: { readonly pictures?: ThemeName } = { pictures: 'light' }): string {
  const at = marked(head + text);
  return findHover(analysed(at.text, { files }), at.position, room)?.contents.value ?? '';
}

function pictureIn(value: string): { readonly alt: string; readonly svg: string; readonly link: string } {
  const [link = '', alt = '', data = ''] = image.exec(value) ?? [];
  return { alt, svg: Buffer.from(data, 'base64').toString('utf8'), link };
}

describe('the picture in a hover', () => {
  it('stands below the first line, and the rest of the words are those of a hover without it', () => {
    const value = hover(path);
    const { link, svg } = pictureIn(value);
    assert.match(
      svg,
      /^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"[^>]*data-picture="hover-directions"/,
    );
    assert.match(svg, /<\/svg>$/);
    assert.match(value, /^\*\*Club path\*\*: 5\.0 deg right[^\n]*\n\n!\[/);
    const [first, others] = value.split(`\n\n${link}\n\n`);
    assert.equal(`${first}  \n${others}`, hover(path, {}));
    assert.ok(value.split('\n').filter((line) => line.trim() !== '' && !line.startsWith('![')).length <= 12);
  });

  it('says in words what is drawn', () => {
    const { alt } = pictureIn(hover(path));
    assert.match(alt.replaceAll('\\', ''), /^Path and face from above\. Club path: 5\.0 deg right/);
    assert.match(alt.replaceAll('\\', ''), /Face direction: 1\.0 deg right/);
  });

  it('has the colours of the theme in it', () => {
    for (const theme of Object.keys(themes) as ThemeName[]) {
      const { svg } = pictureIn(hover(path, { pictures: theme }));
      assert.ok(svg.includes(`fill="${themes[theme].paper}"`), theme);
      assert.ok(svg.includes(`stroke="${themes[theme].entered}"`), theme);
      assert.doesNotMatch(svg, /var\(/);
    }
  });

  it('is ASCII alone, and less than 12 kB as it is sent', () => {
    for (const text of [path, 'flight:\n  car$0ry: 160 m\n  start: 1 deg right\n']) {
      const { link, svg } = pictureIn(hover(text));
      assert.doesNotMatch(svg, /[^\0-\x7f]/);
      assert.ok(svg.includes('&#8594;') || svg.includes('from the side'));
      assert.ok(link.length > 0 && link.length < 12_000, String(link.length));
    }
  });

  it('is there for editors that ask for it, for quantities that are drawn, and where something is known', () => {
    for (const [text, room] of [
      [path, {}],
      ['delivery: { club_spe$0ed: 41 m/s }\n', undefined],
      ['delivery: { pa$0th: }\n', undefined],
      ['delivery: { attack: 3 deg down }\nflight: { apex: 1e300 m, car$0ry: 1e300 m }\n', undefined],
    ] as const)
      assert.doesNotMatch(hover(text, room), /!\[/, text);
  });

  it('is drawn of a number that is written nowhere as soon as it is computed', () => {
    const value = hover('delivery: { path: 5 deg right, face_to_path: 4 deg left, fa$0ce: }\n');
    assert.match(pictureIn(value).svg, /data-id="delivery.face"/);
  });

  it('takes names of themes alone for themes', () => {
    for (const said of ['solarized', 'toString', '', 3, null, undefined, ['light']])
      assert.equal(themeNamed(said), undefined);
    assert.equal(themeNamed('contrast-dark'), 'contrast-dark');
  });
});
