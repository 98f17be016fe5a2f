// The words of a handout in every language: none is missing, none is left over, and what is put into them is the same.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { contentOf } from '../../../src/draw/handout/content.tsx';
import { plain } from '../../../src/draw/handout/plain.ts';
import { most } from '../../../src/draw/handout/shortened.ts';
import { speechIn } from '../../../src/draw/handout/speech.ts';
import { filled, terms, texts, type TextKey } from '../../../src/draw/handout/texts.ts';
import { bodyParts, contacts, methods, misses, quantities, shapes } from '../../../src/registry/generated.ts';
import { languages } from '../../../src/registry/language.ts';
import { builtIn, findQuantity } from '../../../src/registry/registry.ts';
import { handoutOfFiles, lesson } from '../../analysis/handouts.ts';

const folders = ['src/draw/handout', 'src/print'].map((folder) =>
  resolve(import.meta.dirname, '../../..', folder),
);

describe('the words of a handout', () => {
  it('have every key in every language, with the same places to fill', () => {
    const placesOf = (text: string): readonly string[] =>
      [...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!).sort();
    for (const language of languages) {
      assert.deepEqual(Object.keys(texts[language]), Object.keys(texts.en));
      for (const key of Object.keys(texts.en) as TextKey[]) {
        assert.notEqual(texts[language][key].trim(), '', `${language} ${key}`);
        assert.deepEqual(placesOf(texts[language][key]), placesOf(texts.en[key]), `${language} ${key}`);
      }
    }
  });

  it('are all said somewhere', () => {
    const sources = folders.flatMap((folder) =>
      readdirSync(folder)
        .filter((name) => !/^(en|de|terms-de|plain)\.ts$/.test(name))
        .map((name) => readFileSync(join(folder, name), 'utf8')),
    );
    const all = sources.join('\n');
    const unused = Object.keys(texts.en).filter(
      (key) =>
        !key.startsWith('gap.') &&
        !new RegExp(`'${key}'`).test(all) &&
        !['fits', 'conflict', 'unchecked', 'now', 'aim'].includes(key),
    );
    assert.deepEqual(unused, []);
  });

  it('have a word for each of the registry', () => {
    const german = terms.de!;
    const titles = quantities.map(({ id, checkpoint }) =>
      checkpoint === undefined ? id : id.replace(`.${checkpoint}.`, '.'),
    );
    const missing = [
      ...titles.filter((id) => german.titles[id] === undefined),
      ...misses.filter(({ word }) => german.misses[word] === undefined).map(({ word }) => word),
      ...shapes.filter(({ word }) => german.shapes[word] === undefined).map(({ word }) => word),
      ...contacts.filter(({ word }) => german.contacts[word] === undefined).map(({ word }) => word),
      ...methods.filter(({ name }) => german.methods[name] === undefined).map(({ name }) => name),
      ...bodyParts.filter(({ name }) => german.parts[name] === undefined).map(({ name }) => name),
      ...quantities.flatMap(({ directions, section }) =>
        section === 'conditions'
          ? []
          : directions.filter(({ word }) => german.directions[word] === undefined).map(({ word }) => word),
      ),
    ];
    assert.deepEqual(missing, []);
    const known = new Set(titles);
    assert.deepEqual(
      Object.keys(german.titles).filter((id) => !known.has(id)),
      [],
    );
  });

  it('are plain for a student where a coach has a term, of quantities that there are and short enough for a line', () => {
    const known = new Set(
      quantities.map(({ id, checkpoint }) =>
        checkpoint === undefined ? id : id.replace(`.${checkpoint}.`, '.'),
      ),
    );
    for (const language of languages)
      for (const [id, title] of Object.entries(plain[language].titles)) {
        assert.ok(known.has(id), id);
        assert.ok(title.length <= most.title, title);
      }
    const spoken = (whom: 'student' | 'file', language: 'en' | 'de'): string =>
      speechIn(language, whom).proof('flight.spin_tilt < 4 deg', builtIn);
    assert.equal(spoken('file', 'en'), 'Tilt of the spin axis: under 4° right');
    assert.equal(spoken('student', 'en'), 'To which side the spin of the ball leans: under 4° right');
    assert.equal(
      spoken('student', 'de'),
      'Nach welcher Seite sich die Drehung des Balls neigt: unter 4° rechts',
    );
    for (const id of ['delivery.attack', 'delivery.face_to_path', 'delivery.obliquity', 'flight.speed_ratio'])
      for (const language of languages) {
        const quantity = findQuantity(id)!;
        assert.notEqual(speechIn(language, 'student').title(quantity), speechIn(language).title(quantity));
      }
  });

  it('have three German words for where the ball goes, what is wanted and what is planned', () => {
    const { target, goal, goals, aim, wanted } = texts.de;
    assert.deepEqual([target, goal, goals, aim, wanted], ['Ziel', 'Wunsch', 'Wünsche', 'Soll', 'gewünscht']);
    const others = Object.entries(texts.de).filter(
      ([key, text]) => /\bZiele?\b/.test(text) && !['target', 'flightWords'].includes(key),
    );
    assert.deepEqual(others, []);
  });

  it('take what is put into them as it is', () => {
    assert.equal(filled('{a} and {b}', { a: '{b}', b: '$&' }), '{b} and $&');
  });

  it('say numbers with signs, words and comma of the language', () => {
    const face = findQuantity('delivery.face')!;
    const rad = Math.PI / 180;
    assert.equal(speechIn('en').value(face, -2.31 * rad, 0.42 * rad), '2.3° left ± 0.4°');
    assert.equal(speechIn('de').value(face, -2.31 * rad, 0.42 * rad), '2,3° links ± 0,4°');
    assert.equal(speechIn('de').window(face, -0.5 * rad, 2 * rad), '0,5° links bis 2° rechts');
    assert.equal(speechIn('en').round(findQuantity('flight.carry')!, 100), '100 m');
  });

  it('say a proof that is no plain comparison with the names of its quantities, and one that cannot be read as it stands', () => {
    const { proof } = speechIn('en');
    assert.equal(
      proof('delivery.path + delivery.face > 2 deg', builtIn),
      '“Club path” + “Face direction” > 2° (+ right, − left)',
    );
    assert.equal(proof('delivery.pth > 2', builtIn), 'delivery.pth > 2');
    assert.equal(proof('delivery.attack < 0 deg', builtIn), 'Attack angle: down');
  });

  it('says a goal that is one number as it is written, and what will do', () => {
    const files = {
      ...lesson,
      'lesson.swing.yaml': lesson['lesson.swing.yaml']!.replace(/^goals:.*$/m, 'goals: [{ carry: 171 m }]'),
    };
    assert.match(
      contentOf(handoutOfFiles(files), 'student').wish.join(' · '),
      /^Carry 171 m \(165 to 177 m will do\)$/,
    );
  });
});
