// Every meaning of a colour has a colour in every theme, and a picture in CSS variables takes them all from the page.
import assert from 'node:assert/strict';
import { svgOf } from '../../src/draw/picture.tsx';
import { pictures, sheetsOf } from '../../src/draw/pictures.tsx';
import { cssTheme, themes, variablesOf, type ThemeName } from '../../src/draw/theme.ts';
import { analysed } from '../language/analysed.ts';
import { planFiles, planRecord, twoChanges } from '../language/plan-record.ts';

describe('the colours of pictures', () => {
  it('are declared as CSS variables, each one in each theme', () => {
    for (const name of Object.keys(themes) as ThemeName[]) {
      const declared = [...variablesOf(name).matchAll(/--sw-(\w+): (#[0-9a-f]{6});/g)];
      assert.deepEqual(Object.fromEntries(declared.map(([, key, colour]) => [key, colour])), themes[name]);
    }
  });

  it('come from variables alone where a page says what they are, without a style of the picture’s own', () => {
    const analysis = analysed(planRecord(twoChanges), { files: planFiles });
    for (const { name, draw } of pictures.flatMap((picture) => sheetsOf(picture, analysis))) {
      const svg = svgOf(draw(cssTheme));
      assert.doesNotMatch(svg, /#[0-9a-f]{6}/, name);
      // A strict policy refuses these, and what they say would be lost.
      assert.doesNotMatch(svg, /\sstyle=|<style|<script|\son\w+=|href=/, name);
      for (const [, variable = ''] of svg.matchAll(/var\(--sw-(\w+)\)/g)) assert.ok(variable in themes.light);
    }
  });
});
