// Gives a printed page its structure for those who have it read out: headings, paragraphs and pictures with their words, in reading order; sets nothing.
import rendering, { type Element, type Line, type Role, type Tagged } from 'pdfmake/js/Renderer.js';

interface Open {
  readonly whole: Element;
  paragraph: { readonly role: Role; readonly element: Element } | undefined;
}

const documents = new WeakMap<Tagged, Open>();
let isDone = false;

/**
 * pdfmake writes no structure by itself, and pdfkit below it can: so each line, picture and rule that is drawn is told what it is part
 * of. Lines of one text are one paragraph.
 */
export function tagWhatIsPrinted(): void {
  if (isDone) return;
  isDone = true;
  const { prototype } = 'default' in rendering ? rendering.default : rendering;
  const { renderLine, renderSVG, renderVector } = prototype;
  prototype.renderLine = function (line, x, y) {
    const role = roleOf(line);
    if (role === 'Artifact') return asArtifact(this.pdfDocument, () => renderLine.call(this, line, x, y));
    const paragraph = paragraphOf(this.pdfDocument, role);
    paragraph.add(this.pdfDocument.markStructureContent(role));
    renderLine.call(this, line, x, y);
    this.pdfDocument.endMarkedContent();
    if (line.lastLineInParagraph !== false) close(this.pdfDocument);
  };
  prototype.renderSVG = function (picture) {
    if (picture.alt === undefined) return asArtifact(this.pdfDocument, () => renderSVG.call(this, picture));
    const figure = this.pdfDocument.struct('Figure', { alt: picture.alt });
    close(this.pdfDocument);
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

function paragraphOf(page: Tagged, role: Role): Element {
  const open = openOf(page);
  if (open.paragraph?.role === role) return open.paragraph.element;
  close(page);
  const element = page.struct(role);
  open.whole.add(element);
  open.paragraph = { role, element };
  return element;
}

function openOf(page: Tagged): Open {
  const known = documents.get(page);
  if (known !== undefined) return known;
  const whole = page.struct('Document');
  page.addStructure(whole);
  const open: Open = { whole, paragraph: undefined };
  documents.set(page, open);
  return open;
}

function close(page: Tagged): void {
  const open = openOf(page);
  open.paragraph?.element.end();
  open.paragraph = undefined;
}
