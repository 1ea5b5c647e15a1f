/* `npm run icons`: draws the PNG icons of the installed app from static/icon.svg. Do it after changing that file. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { chromium } from 'playwright';
import { findChromium } from './chromium.ts';
import { ROOT } from './run.ts';

/** The ground of the drawing, which a mask cuts into its own shape. */
const GROUND = '#f5efe1';
/**
 * A mask leaves a circle whose radius is 2/5 of the icon's size (W3C, Web Application Manifest, "Icon masks and safe zone"). The end of the board
 * lies furthest out, at 0.566 of the drawing's width from its middle.
 */
const SAFE_SHARE = 0.7;

const file = (name: string) => path.join(ROOT, 'static', name);
const drawing = `data:image/svg+xml;base64,${readFileSync(file('icon.svg')).toString('base64')}`;

const executablePath = findChromium();
const browser = await chromium.launch({ args: ['--no-sandbox'], ...(executablePath && { executablePath }) });
const page = await browser.newPage();

async function draw(name: string, px: number, { share, ground }: { share: number; ground: string }) {
  await page.setViewportSize({ width: px, height: px });
  await page.setContent(
    `<body style="margin:0;height:100vh;display:grid;place-items:center;background:${ground}"><img src="${drawing}" width="${px * share}" height="${px * share}">`,
  );
  await page.screenshot({ path: file(name), omitBackground: true });
}

for (const px of [192, 512]) await draw(`icon-${px}.png`, px, { share: 1, ground: 'transparent' });
await draw('icon-maskable-512.png', 512, { share: SAFE_SHARE, ground: GROUND });
await browser.close();
