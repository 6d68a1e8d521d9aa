import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { readDxf } from '../../drawing/read-dxf';
import { readPdf } from '../../drawing/read-pdf';
import { closePages, launchBrowser, pagePatience } from '../../harness/browser';
import { until } from '../../harness/until';
import { axeFindings } from '../axe';
import { openPane } from '../pane-harness';
import { sampleAsJson } from '../sample-host';

let browser: Browser;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  browser = await launchBrowser();
  ({ page, complaints } = await openPane(browser, { viewport: { width: 320, height: 900 } }));
});
afterAll(() => closePages(browser));

// Each opens a new pane in the page.
beforeEach(async () => {
  await open('US/cone-cut-plan');
});
afterEach(() => {
  expect(complaints).toEqual([]);
});

async function open(path: string): Promise<void> {
  const workbook = await sampleAsJson(path);
  await page.evaluate((data) => {
    window.paneTest.openWorkbook(data);
    window.paneTest.pane.show('drawings');
  }, workbook);
}

async function select(sheet: string, address: string): Promise<void> {
  await page.evaluate(([name, cells]) => window.paneTest.host.choose(name!, cells!), [sheet, address]);
}

const caption = () => page.locator('figcaption');
const drawing = () => page.locator('figure.drawing svg');

/** Presses a button by the keyboard alone and reads the file that is saved. */
async function saved(button: string): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  await page.getByRole('button', { name: button }).focus();
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  return { name: download.suggestedFilename(), bytes: readFileSync((await download.path())!) };
}

describe('what is selected is drawn', () => {
  test('a pattern row, scaled and dimensioned, fitting the pane', async () => {
    await select('Patterns', 'B5:K5');
    await caption().waitFor();
    expect(await caption().textContent()).toBe('Fern: cone pattern, cut 1 (Patterns!B5:K5)');
    // The units of the workbook may be read just then, and the drawing made again.
    const box = await vi.waitFor(
      async () => (await drawing().boundingBox()) ?? Promise.reject(new Error('no drawing')),
      {
        timeout: pagePatience,
      },
    );
    expect(box.width).toBeGreaterThan(240);
    expect(box.x + box.width).toBeLessThanOrEqual(320);
    expect(await drawing().locator('text').allTextContents()).toContain('inner radius');
  });

  test('several rows one at a time, changed by the keyboard', async () => {
    await select('Patterns', 'B4:K8');
    await caption().waitFor();
    await page.getByRole('button', { name: 'Next pattern' }).focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    await expect.poll(() => caption().textContent()).toContain('Sedge');
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
      .toBe('Next pattern');
    // A cell that changes draws the same pattern again.
    await page.evaluate(() => window.paneTest.host.change('Patterns', 'A7', 'Rush'));
    await expect.poll(() => caption().textContent()).toContain('Rush');
  });

  test('what is typed over a figure of a drum stays when its row changes, and goes with the next row', async () => {
    await select('Drums', 'B5');
    await page.getByText('Settling drum in section (Drums, row 5)').waitFor();
    const pail = page.getByLabel('Height of the pail');
    const given = await pail.inputValue();
    await pail.fill('12');
    await page.evaluate(() => window.paneTest.host.change('Drums', 'G5', 9.5));
    await expect.poll(() => page.getByLabel('Height of the cone').inputValue()).toBe('9.5');
    expect(await pail.inputValue()).toBe('12');
    await select('Drums', 'B6');
    await page.getByText('Settling drum in section (Drums, row 6)').waitFor();
    expect(await pail.inputValue()).toBe(given);
    expect(given).not.toBe('');
  });

  test('a diameter that the sheet has computed of a girth is shown with the digits that matter', async () => {
    await select('Drums', 'B7');
    await page.getByText('Settling drum in section (Drums, row 7)').waitFor();
    await expect.poll(() => page.getByLabel('Inside diameter of the drum').inputValue()).toBe('22.67');
  });

  test('the form of a drum follows the workbook to other units', async () => {
    await select('Drums', 'B5');
    await page.getByText('Settling drum in section (Drums, row 5)').waitFor();
    expect(await page.getByLabel('Height of the cone').inputValue()).toBe('9.25');
    // The form is filled after the drawing; a value that comes while one types would be joined to it.
    await expect.poll(() => page.getByLabel('Height of the pail').inputValue()).toBe('14.5');
    await page.getByLabel('Height of the pail').fill('12');
    await select('Start', 'A1');
    const cell = (await page.evaluate(() => window.paneTest.host.names())).find(({ name }) => name === 'SiltUnits');
    const [sheet = '', address = ''] = cell!.refersTo.replaceAll(/['$=]/g, '').split('!');
    await page.evaluate(([on, at]) => window.paneTest.host.change(on!, at!, 'metric'), [sheet, address]);
    await page.locator('.drum .unit', { hasText: 'mm' }).first().waitFor();
    // What a row gave is gone; what was typed here keeps its unit.
    expect(await page.getByLabel('Height of the cone').inputValue()).toBe('');
    expect(await page.getByLabel('Height of the pail').inputValue()).toBe('12 in');
  });

  test('the next selection replaces the last, and a drum fills its form', async () => {
    await select('Cut plan', 'C9');
    await page.getByText('Cut plan (Cut plan!A7:F11)').waitFor();
    await select('Drums', 'B5');
    await page.getByText('Settling drum in section (Drums, row 5)').waitFor();
    expect(await page.getByLabel('Height of the cone').inputValue()).toBe('9.25');
    await page.getByLabel('Height of the stand').fill('18 1/2 in');
    await page.getByText('above ground').first().waitFor();
    await page.getByLabel('Height of the stand').fill('tall');
    await page.locator('.recognition', { hasText: /Height of the stand: .*tall/ }).waitFor();
    expect(await drawing().count()).toBe(0);
  });

  test('a scenario’s train, with the others to choose from', async () => {
    await open('US/stocking-scenarios');
    await select('Compare', 'C8');
    await drawing().waitFor();
    const first = await caption().textContent();
    const choice = page.getByLabel('Scenario');
    const titles = await choice.locator('option').allTextContents();
    await choice.selectOption(titles[2]!);
    await caption()
      .filter({ hasText: `${titles[2]}: train` })
      .waitFor();
    expect(first).not.toContain(titles[2]);
    // A cell that changes draws the same scenario again.
    await page.evaluate(() => window.paneTest.host.change('Scenarios', 'E4', 'Rush farm'));
    await caption().filter({ hasText: 'Rush farm: train' }).waitFor();
    expect(await drawing().locator('text').allTextContents()).toContain('first limit');
  });

  test('a sentence says that there is nothing to draw', async () => {
    await select('Start', 'A1');
    await page.getByText('Nothing here can be drawn: select a pattern row').waitFor();
  });

  test('a row that changes is drawn again', async () => {
    await select('Patterns', 'B5:K5');
    await caption().waitFor();
    await page.evaluate(() => window.paneTest.host.change('Patterns', 'C5', 99));
    await page.getByText('make the row again with SILT.CONE.PATTERN').waitFor();
  });

  test('nothing from old values while the spreadsheet calculates, and then from the new ones', async () => {
    await select('Patterns', 'B5:K5');
    await caption().waitFor();
    // Another drum's row stands for the new results.
    const asked = await page.evaluate(async () => {
      const { host } = window.paneTest;
      host.holdsOldResults = true;
      const range = { row: 6, column: 1, rows: 1, columns: 10 };
      const { values } = await host.read({ sheet: 'Patterns', range });
      for (const [at, value] of values[0]!.entries()) host.change('Patterns', `${'BCDEFGHIJK'[at]}5`, value);
      return host.askedWhetherCalculating;
    });
    const sentence =
      'the test is still calculating; the drawing appears when it is done. If it calculates only when asked, press F9.';
    await page.getByText(sentence, { exact: true }).waitFor();
    expect(await drawing().count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Save PDF' }).isVisible()).toBe(false);
    // It is asked again after another event, and still says so.
    await select('Patterns', 'B5:K5');
    await until(page, async (before) => window.paneTest.host.askedWhetherCalculating > before + 1, asked);
    expect(await drawing().count()).toBe(0);
    await page.getByText(sentence, { exact: true }).waitFor();

    await page.getByRole('button', { name: 'Save job packet as PDF' }).click();
    await page.getByText('the test is still calculating; save again when it is done.').waitFor();

    await page.evaluate(() => window.paneTest.host.finishCalculating());
    await caption().waitFor();
    const texts = await drawing().locator('text').allTextContents();
    await select('Patterns', 'B7:K7');
    await caption().filter({ hasText: 'B7:K7' }).waitFor();
    expect(await drawing().locator('text').allTextContents()).toEqual(texts);
  });

  test('text from cells is never markup', async () => {
    const name = '<img src=x onerror="document.title=1">&amp;';
    await page.evaluate((text) => window.paneTest.host.change('Patterns', 'A5', text), name);
    await select('Patterns', 'B5:K5');
    await caption().waitFor();
    expect(await caption().textContent()).toContain(name);
    expect(await drawing().locator('title').textContent()).toContain(name);
    expect(await page.locator('.view img').count()).toBe(0);
  });
});

describe('files saved from the pane', () => {
  // The first drum is 22.5 in wide, gap 1/8 in, sheet 1/16 in, drain 4 in, height 9.25 in, mid-plane of the sheet:
  // the radii follow from slant × D / (D - d), where D and d are found from the wall angle by iteration.
  const radii = (() => {
    let angle = Math.PI / 4;
    let [outer, inner] = [0, 0];
    for (let i = 0; i < 60; i++) {
      const top = 22.5 - 2 * 0.125 - 0.0625 * Math.sin(angle);
      const bottom = 4 + 0.0625 * Math.sin(angle);
      angle = Math.atan(9.25 / ((top - bottom) / 2));
      const slant = Math.hypot(9.25, (top - bottom) / 2);
      [outer, inner] = [(slant * top) / (top - bottom), (slant * bottom) / (top - bottom)];
    }
    return { outer, inner };
  })();

  test('the DXF has the radii to 0.1 mm and better, in inches', async () => {
    await select('Patterns', 'B5:K5');
    await caption().waitFor();
    const { name, bytes } = await saved('Save DXF');
    expect(name).toBe('fern-cone-pattern.dxf');
    const { arcs, header, layers } = readDxf(bytes.toString());
    const cut = arcs.filter(({ layer }) => layer === 'cut').map(({ radius }) => radius);
    expect(Math.max(...cut)).toBeCloseTo(radii.outer, 4);
    expect(Math.min(...cut)).toBeCloseTo(radii.inner, 4);
    expect(header.$INSUNITS).toBe(1);
    expect(layers).toEqual(expect.arrayContaining(['cut', 'mark', 'text']));
    await page.getByText('Saved fern-cone-pattern.dxf.').waitFor();
  });

  test('the PDF is on the paper chosen, with a check bar of 100 mm on every page but the map', async () => {
    await select('Patterns', 'B5:K5');
    await caption().waitFor();
    expect(await page.getByLabel('Paper').inputValue()).toBe('Letter');
    await page.getByLabel('Paper').selectOption('A4');
    const { name, bytes } = await saved('Save PDF');
    expect(name).toBe('fern-cone-pattern.pdf');
    const [map, ...pages] = await readPdf(bytes);
    expect(map!.texts.some(({ text }) => text.includes('Fern'))).toBe(true);
    expect(pages.length).toBeGreaterThan(6);
    for (const { width, height, strokes } of pages) {
      expect(Math.min(width, height)).toBeCloseTo(210, 1);
      const spans = strokes.map(({ points }) => Math.abs(points.at(-1)![0] - points[0]![0]));
      expect(spans.some((span) => Math.abs(span - 100) < 0.01)).toBe(true);
    }
  });

  test('the SVG is as large as the piece', async () => {
    await select('Patterns', 'B5:K5');
    await caption().waitFor();
    const { name, bytes } = await saved('Save SVG');
    expect(name).toBe('fern-cone-pattern.svg');
    expect(bytes.toString()).toMatch(/^<svg[^>]* width="[\d.]+mm"/);
    expect(bytes.toString()).toContain(`A${Number((radii.outer * 25.4).toFixed(4))} `);
  });

  test('a pattern of more than 20 pages is refused in one sentence, and nothing is saved', async () => {
    const cells = await largePattern(80);
    await page.evaluate((values) => {
      for (const [i, value] of values.entries()) window.paneTest.host.change('Patterns', `${'BCDEFGHIJK'[i]}20`, value);
    }, cells);
    await select('Patterns', 'B20:K20');
    await caption().waitFor();
    await page.getByRole('button', { name: 'Save PDF' }).click();
    await page.getByText(/full size needs .* of Letter, and the limit is 20 pages; make it of more pieces/).waitFor();
  });

  test('if the host cannot save, a separate page draws and saves it', async () => {
    await page.evaluate(() => {
      window.paneTest.host.downloads = false;
    });
    await select('Patterns', 'B5:K5');
    await caption().waitFor();
    expect(await page.getByRole('button', { name: 'Save PDF' }).isVisible()).toBe(false);
    await page.getByRole('button', { name: 'Open in the browser' }).click();
    await page.getByText('The drawing opens larger in the browser').waitFor();
    const [address] = await page.evaluate(() => window.paneTest.host.pages);
    expect(address).toMatch(/^https:\/\/pane\.test\/drawing\.html#[\w-]+$/);
  });
});

/** A pattern row in inches, worked out by the page’s own functions. */
function largePattern(top: number): Promise<(number | string)[]> {
  return page.evaluate(
    (width) => window.paneTest.call('CONE.PATTERN', 'US', width, 4, 38)[0] as (number | string)[],
    top,
  );
}

describe('the marking-out table', () => {
  test('goes on a new sheet, as a live formula, and can be undone', async () => {
    await select('Patterns', 'B6');
    await caption().waitFor();
    await page.getByRole('button', { name: 'Insert marking-out table' }).click();
    await page.getByText('The marking-out table is on the sheet Marking out 2.').waitFor();
    expect(await page.evaluate(() => window.paneTest.host.at('Marking out 2', 'A4'))).toBe(
      "=SILT.CONE.MARKS(SiltUnits,'Patterns'!$B$6:$K$6,15,TRUE)",
    );
    await page.getByRole('button', { name: 'Undo' }).click();
    await until(page, async () => !(await window.paneTest.host.sheets()).includes('Marking out 2'));
  });

  test('leaves no sheet behind if it cannot be written', async () => {
    await select('Patterns', 'B6');
    await caption().waitFor();
    await page.evaluate(() => window.paneTest.host.protectedSheets.add('Marking out 2'));
    await page.getByRole('button', { name: 'Insert marking-out table' }).click();
    await page.getByText('The sheet Marking out 2 is protected; remove the protection').waitFor();
    expect(await page.evaluate(() => window.paneTest.host.sheets())).not.toContain('Marking out 2');
  });
});

describe('the larger view', () => {
  test('opens, zooms and closes by the keyboard, and returns the focus', async () => {
    await select('Patterns', 'B5:K5');
    await caption().waitFor();
    await page.getByRole('button', { name: 'Larger' }).focus();
    // A cell that changes draws it again, under the keyboard and under the larger view.
    const rename = (name: string) => page.evaluate((text) => window.paneTest.host.change('Patterns', 'A5', text), name);
    await rename('Rush');
    await caption().filter({ hasText: 'Rush' }).waitFor();
    await page.keyboard.press('Enter');
    await page.locator('dialog').waitFor();
    await rename('Reed');
    await caption().filter({ hasText: 'Reed' }).waitFor({ state: 'attached' });
    const picture = page.locator('dialog svg');
    const before = (await picture.boundingBox())!.width;
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    await expect.poll(async () => (await picture.boundingBox())!.width).toBeGreaterThan(2 * before);
    expect(await axeFindings(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('dialog').count()).toBe(0);
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Larger');
  });
});

describe('the view at 320 pixels', () => {
  test.each([
    ['light', 'Patterns', 'B4:K7', 'cone pattern'],
    ['dark', 'Drums', 'B5', 'Settling drum'],
    ['dark', 'Cut plan', 'A8', 'Cut plan'],
    ['light', 'Start', 'A1', 'Nothing here can be drawn'],
  ] as const)('axe finds nothing and nothing sticks out: %s, %s', async (theme, sheet, address, words) => {
    await page.evaluate((dark) => window.paneTest.host.turn(dark), theme === 'dark');
    await select(sheet, address);
    await page.locator('figcaption, .view p').filter({ hasText: words, visible: true }).first().waitFor();
    expect(await axeFindings(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });

  test('a pane on its own draws a drum from its form', async () => {
    await page.evaluate(() => {
      window.paneTest.openAlone();
      window.paneTest.pane.show('drawings');
    });
    await page.getByText('A settling drum in section').click();
    await page.getByLabel('Inside diameter of the drum').fill('572 mm');
    await page.getByLabel('Water above the cone').fill('0.6 m');
    await caption().filter({ hasText: 'Settling drum in section' }).waitFor();
    expect((await saved('Save SVG')).name).toBe('settling-drum-in-section.svg');
  });

  test('a figure of a drum that cannot be is told of beside its own field', async () => {
    await page.evaluate(() => {
      window.paneTest.openAlone();
      window.paneTest.pane.show('drawings');
    });
    await page.getByText('A settling drum in section').click();
    const fields = {
      'Inside diameter of the drum': '572 mm',
      'Water above the cone': '600',
      'Height of the cone': '235',
      'Height of the stand': '300',
    };
    for (const [label, text] of Object.entries(fields)) await page.getByLabel(label).fill(text);
    await caption().filter({ hasText: 'Settling drum in section' }).waitFor();
    const wrong = [
      ['Inside diameter of the drum', '-1', '-1 mm is not allowed; give a length of more than 0 mm'],
      [
        'Inside diameter of the drum',
        '1e400',
        '1e400 mm is not allowed; give a dimension (mm, in, cm, m, ft or yd), such as 20 mm',
      ],
      [
        'Cone’s diameter at the top',
        '60 cm',
        '600 mm is not allowed; give at most the inside diameter of the drum (572 mm)',
      ],
      [
        'Cone’s diameter at the bottom',
        '572',
        '572 mm is not allowed; give less than the inside diameter of the drum (572 mm)',
      ],
      ['Valve below the stand’s top', '300', '300 mm is not allowed; give less than the height of the stand (300 mm)'],
    ] as const;
    for (const [label, entry, why] of wrong) {
      const field = page.getByLabel(label);
      const before = await field.inputValue();
      await field.fill(entry);
      await page.locator('.recognition', { hasText: `${label}: ${why}.` }).waitFor();
      const beside = await field.evaluate((input) => [
        input.getAttribute('aria-invalid'),
        document.getElementById(input.getAttribute('aria-describedby') ?? '')?.textContent,
      ]);
      expect(beside).toEqual(['true', `${label}: ${why}.`]);
      expect(await page.locator('.drum [aria-invalid]').count()).toBe(1);
      await field.fill(before);
      await caption().filter({ hasText: 'Settling drum in section' }).waitFor();
      expect(await page.locator('.drum [aria-invalid]').count()).toBe(0);
    }
  });
});
