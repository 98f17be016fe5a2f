// Gives a printed page its structure for those who have it read out: headings, paragraphs, lists, tables and pictures with their words, in reading order; sets nothing.
import rendering, {
  type Element,
  type Line,
  type Part,
  type Role,
  type Tagged,
} from 'pdfmake/js/Renderer.js';

interface Open {
  readonly whole: Element;
  /** From the outermost to the innermost that more lines may belong to. */
  readonly path: { readonly key: string; readonly element: Element }[];
}

const documents = new WeakMap<Tagged, Open>();
let isDone = false;

/**
 * pdfmake writes no structure by itself, and pdfkit below it can: so each line, picture and rule that is drawn is told what it is part
 * of. Lines of one text are one paragraph; lines that name parts of a table or a list are cells and items of it. The types and how they
 * nest are those of ISO 32000-1, 14.8.4.3 (clause number from memory).
 */
export function tagWhatIsPrinted(): void {
  if (isDone) return;
  isDone = true;
  const { prototype } = 'default' in rendering ? rendering.default : rendering;
  const { renderLine, renderSVG, renderVector } = prototype;
  prototype.renderLine = function (line, x, y) {
    const role = roleOf(line);
    const draw = (): void => renderLine.call(this, line, x, y);
    const parts = line.inlines[0]?.parts;
    // A cell that holds nothing is one of its row all the same.
    if (role === 'Artifact' && parts !== undefined) leafOf(this.pdfDocument, parts);
    if (role === 'Artifact') return asArtifact(this.pdfDocument, draw);
    const leaf = leafOf(this.pdfDocument, parts ?? [{ type: role, key: role }]);
    leaf.add(this.pdfDocument.markStructureContent(parts?.at(-1)?.type ?? role));
    draw();
    this.pdfDocument.endMarkedContent();
    if (parts === undefined && line.lastLineInParagraph !== false) closeTo(this.pdfDocument, 0);
  };
  prototype.renderSVG = function (picture) {
    if (picture.alt === undefined) return asArtifact(this.pdfDocument, () => renderSVG.call(this, picture));
    const figure = this.pdfDocument.struct('Figure', { alt: picture.alt });
    closeTo(this.pdfDocument, 0);
    openOf(this.pdfDocument).whole.add(figure);
    figure.add(this.pdfDocument.markStructureContent('Figure'));
    renderSVG.call(this, picture);
    this.pdfDocument.endMarkedContent();
    figure.end();
  };
  prototype.renderVector = function (vector) {
    asArtifact(this.pdfDocument, () => renderVector.call(this, vector));
  };
}

/** Nothing is read out of an empty cell. */
function roleOf({ inlines }: Line): Role {
  const isEmpty = inlines.every(({ text }) => text.trim() === '');
  return isEmpty ? 'Artifact' : (inlines[0]?.role ?? 'P');
}

function asArtifact(page: Tagged, draw: () => void): void {
  page.markContent('Artifact');
  draw();
  page.endMarkedContent();
}

type Step = Omit<Part, 'type'> & { readonly type: Part['type'] | Role };

/** What is open already stays so as far as the two agree. */
function leafOf(page: Tagged, steps: readonly Step[]): Element {
  const { path, whole } = openOf(page);
  const differs = steps.findIndex(({ key }, i) => path[i]?.key !== key);
  closeTo(page, differs === -1 ? steps.length : differs);
  for (const { type, key, scope } of steps.slice(path.length)) {
    const element = page.struct(type, scope === undefined ? {} : { scope });
    (path.at(-1)?.element ?? whole).add(element);
    path.push({ key, element });
  }
  return path.at(-1)!.element;
}

function openOf(page: Tagged): Open {
  const known = documents.get(page);
  if (known !== undefined) return known;
  const whole = page.struct('Document');
  page.addStructure(whole);
  const open: Open = { whole, path: [] };
  documents.set(page, open);
  return open;
}

function closeTo(page: Tagged, depth: number): void {
  const { path } = openOf(page);
  while (path.length > depth) path.pop()!.element.end();
}
