// The frame of a page that stands alone: one file without script or address, coloured by theme, ready for print; knows nothing of what is on it.
import type { ComponentChildren } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { harmless } from '../measure/quote.ts';
import type { Picture } from './picture.tsx';
import { pageStyle } from './page-style.ts';
import { unbrokenPage } from './unbroken.ts';

export interface PageProps {
  readonly title: string;
  /** Of the words on it, as HTML names languages. */
  readonly language?: string;
  /** Rules of this page alone, behind those of every page. */
  readonly style?: string;
  readonly children: ComponentChildren;
}

/**
 * Nothing can be loaded from anywhere, and nothing runs. What a file says is text: it is escaped, and characters that a page may
 * not hold, or that turn the writing direction, are replaced.
 */
export function pageOf({ title, language = 'en', style = '', children }: PageProps): string {
  const page = (
    <html lang={language}>
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta
          http-equiv="Content-Security-Policy"
          content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"
        />
        <title>{title}</title>
        <style dangerouslySetInnerHTML={{ __html: `${pageStyle}${style}` }} />
      </head>
      <body>
        <main>{children}</main>
      </body>
    </html>
  );
  return `<!doctype html>\n${unbrokenPage(harmless(renderToString(page)))}\n`;
}

/** A table that can be scrolled sideways by keyboard where it is too wide. */
export function ScrolledTable({
  name,
  children,
}: {
  readonly name: string;
  readonly children: ComponentChildren;
}): Picture {
  return (
    <div class="scrolled" role="region" aria-label={name} tabIndex={0}>
      <table>{children}</table>
    </div>
  );
}
