// What stands on each picture of the README and of the walkthrough, and how it is brought up in VS Code; starts and writes nothing.

/** As the README shows them, and as the walkthrough names them. */
const onlyLight = { light: 'light' };
const lightAndDark = { light: 'light', dark: 'dark' };
export const allFour = {
  ...lightAndDark,
  'high-contrast-dark': 'contrast-dark',
  'high-contrast-light': 'contrast-light',
};

const fits = 'tove/2026-04-18-seven-iron.swing.yaml';
const mistakes = 'bram/2026-05-09-seven-iron.swing.yaml';
export const started = 'tove/2026-05-30-seven-iron.swing.yaml';
export const half = `swing: 1
student: tove.student.yaml
date: 2026-05-30
club: seven iron
template: ../templates/iron.template.yaml
faults_from: ../house.faults.yaml

checkpoints:
  impact:
    
`;

/**
 * Pictures of one window: `show` brings up what is to be seen, anew for each theme, and `part` is cut out (with some room about
 * it), the whole page where it is left out.
 */
export const windows = [
  {
    file: mistakes,
    size: { width: 1360, height: 1160 },
    scale: 1.5,
    pictures: [
      { name: 'editor', folder: 'media', themes: lightAndDark, show: ({ tools }) => tools.goToLine(1) },
    ],
  },
  {
    file: mistakes,
    size: { width: 700, height: 500 },
    scale: 1.5,
    ready: async ({ page, tools }) => {
      await tools.palette('View: Toggle Primary Side Bar Visibility');
      await page.mouse.move(0, 0);
    },
    pictures: [
      { name: 'record', part: '.part.editor', show: ({ tools }) => tools.goToLine(29) },
      {
        name: 'findings',
        part: '.part.editor',
        show: async ({ page, tools }) => {
          await page.mouse.move(0, 0);
          await tools.press('Escape');
          await tools.goToLine(13);
          await tools.clickText('lead_foot_flair');
          await tools.press('Control+.');
          await page.locator('.action-widget .monaco-list-row').first().waitFor();
        },
      },
    ],
  },
  {
    // So wide and high that the whole hover stands inside the editor.
    file: mistakes,
    size: { width: 880, height: 640 },
    scale: 1.25,
    ready: ({ tools }) => tools.palette('View: Toggle Primary Side Bar Visibility'),
    pictures: [
      {
        name: 'hover',
        part: '.part.editor',
        show: async ({ page, tools }) => {
          await page.mouse.move(0, 0);
          await tools.press('Escape');
          await tools.goToLine(26);
          await tools.hoverText('path:');
        },
      },
    ],
  },
  {
    // So high that the list opens below the line, and leaves the record to be read.
    file: started,
    size: { width: 760, height: 700 },
    scale: 1.5,
    ready: async (scene) => {
      await scene.tools.palette('View: Toggle Primary Side Bar Visibility');
      await openList(scene);
      // From now on the meaning stands beside the list.
      await scene.tools.press('Control+Space');
      await scene.page.locator('.suggest-details-container .docs').waitFor();
    },
    pictures: [{ name: 'writing', part: '.part.editor', show: openList }],
  },
  {
    file: 'runa/2026-08-03-six-iron.swing.yaml',
    size: { width: 1360, height: 1000 },
    scale: 1.5,
    ready: async ({ page, tools }) => {
      await page.keyboard.press('Control+b');
      await tools.palette('Swingwright: Open the Sheet to the Side');
      await tools.webviewClick('#tab-what-if', 0);
      await tools.webviewClick('.sliders > button', 0);
      for (const slider of ['#slider-0', '#slider-1']) {
        await tools.webviewFocus(slider, 0);
        for (let n = 0; n < 4; n++) await tools.press('ArrowLeft');
      }
    },
    pictures: [{ name: 'sheet', folder: 'media', themes: lightAndDark, show: () => undefined }],
  },
  {
    file: 'runa/2026-08-03-six-iron.swing.yaml',
    size: { width: 1500, height: 1180 },
    scale: 1.5,
    ready: async ({ page, tools }) => {
      await page.keyboard.press('Control+b');
      await tools.palette('Swingwright: Show a Handout to the Side…');
      await page.locator('.quick-input-widget .monaco-list-row', { hasText: 'For the student' }).waitFor();
      await tools.press('Enter');
      await page.locator('.tab', { hasText: 'Handout of Runa' }).waitFor();
    },
    pictures: [{ name: 'handout', folder: 'media', themes: onlyLight, show: atRest }],
  },
  {
    file: fits,
    size: { width: 1360, height: 1000 },
    scale: 1.5,
    ready: async ({ page, tools }) => {
      await page.keyboard.press('Control+b');
      await tools.palette('Swingwright: Open the Sheet to the Side');
      await page.locator('iframe.webview.ready').waitFor();
    },
    pictures: [
      {
        name: 'drawings',
        folder: 'media',
        themes: onlyLight,
        show: async ({ page, tools }) => {
          await tools.goToLine(33);
          await tools.press('Home');
          await page.mouse.move(0, 0);
        },
      },
    ],
  },
  {
    file: 'runa/2026-08-03-six-iron.swing.yaml',
    size: { width: 1240, height: 1100 },
    scale: 1.5,
    ready: async ({ page, tools }) => {
      await page.keyboard.press('Control+b');
      await tools.palette('Swingwright: Compare Two Records…');
      await page.locator('.quick-input-widget input.input').fill('2026-08-24');
      await page.locator('.quick-input-widget .monaco-list-row', { hasText: '2026-08-24' }).first().waitFor();
      await tools.press('Enter');
      await pageIsShown(page);
    },
    pictures: [{ name: 'compare', folder: 'media', themes: onlyLight, part: '.part.editor', show: atRest }],
  },
  {
    file: 'runa/2026-08-03-six-iron.swing.yaml',
    size: { width: 1240, height: 1100 },
    scale: 1.5,
    ready: async ({ page, tools }) => {
      await page.keyboard.press('Control+b');
      await tools.palette('Swingwright: Show Progress');
      await pageIsShown(page);
    },
    pictures: [{ name: 'progress', folder: 'media', themes: onlyLight, part: '.part.editor', show: atRest }],
  },
  {
    file: mistakes,
    size: { width: 1000, height: 900 },
    scale: 1.5,
    ready: async ({ page, tools }) => {
      await page.keyboard.press('Control+b');
      await tools.palette('Swingwright: Audit This Record');
      await pageIsShown(page);
    },
    pictures: [{ name: 'audit', folder: 'media', themes: onlyLight, part: '.part.editor', show: atRest }],
  },
  {
    file: 'bram/2026-05-02-driver.swing.yaml',
    size: { width: 1000, height: 800 },
    scale: 1.5,
    // Else the list of comments opens with the first file that has some.
    more: { 'comments.openView': 'never' },
    ready: async ({ page, tools }) => {
      await page.locator('.review-widget .author').first().waitFor();
      await tools.palette('View: Toggle Primary Side Bar Visibility');
    },
    pictures: [
      {
        name: 'review',
        folder: 'media',
        themes: lightAndDark,
        part: '.part.editor',
        show: async ({ page, tools }) => {
          await tools.goToLine(19);
          await page.locator('.review-widget .review-comment').first().hover();
        },
      },
    ],
  },
  {
    file: mistakes,
    size: { width: 1000, height: 480 },
    scale: 1.5,
    ready: async ({ page, tools }) => {
      await tools.palette('Explorer: Focus on Lessons View');
      const others = page.locator('.sidebar .pane-header.expanded:not([aria-label^="Lessons"])');
      while ((await others.count()) > 0) await others.first().click();
      await widenSideBar(page, 460);
      const row = (words) =>
        page.locator('.pane:has(.pane-header[aria-label^="Lessons"]) .monaco-list-row', { hasText: words });
      for (const words of ['Bram', 'Runa', '2026-05-09']) {
        await row(words).first().locator('.monaco-tl-twistie').click();
        await tools.settle();
      }
    },
    pictures: [
      {
        name: 'lessons',
        part: '.part.sidebar',
        show: ({ page }) => page.mouse.move(900, 100),
      },
    ],
  },
];

async function pageIsShown(page) {
  await page.frameLocator('iframe.webview.ready').frameLocator('#active-frame').locator('h1').waitFor();
}

async function atRest({ page, tools }) {
  await page.mouse.move(0, 0);
  await tools.settle();
}

async function openList({ page, tools }) {
  await tools.press('Escape');
  await tools.goToLine(10);
  await tools.press('End');
  await page.mouse.move(0, 0);
  await tools.press('Control+Space');
  await page.locator('.suggest-widget.visible .monaco-list-row').first().waitFor();
}

async function widenSideBar(page, width) {
  const bar = await page.locator('.part.sidebar').boundingBox();
  await page.mouse.move(bar.x + bar.width, bar.y + bar.height / 2);
  await page.mouse.down();
  await page.mouse.move(bar.x + width, bar.y + bar.height / 2, { steps: 5 });
  await page.mouse.up();
  await page.mouse.move(bar.x + width + 200, bar.y);
}
