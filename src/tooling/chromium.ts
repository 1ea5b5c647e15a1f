import { existsSync } from 'node:fs';
import { chromium } from 'playwright';
import { run } from './run.ts';

const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** @returns the Chromium on this machine; CHROMIUM names another one. */
export function findChromium(): string | undefined {
  return [process.env['CHROMIUM'], ...USUAL_PLACES, chromium.executablePath()].find(
    (place) => place && existsSync(place),
  );
}

/** Installs Chromium where there is none: on Debian as root from its own packages, elsewhere playwright's build. */
export function ensureChromium(): string | undefined {
  const found = findChromium();
  if (found) return found;
  console.log('Installing Chromium for the browser tests…');
  const mayUseApt = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
  const installed =
    mayUseApt &&
    run(
      'apt-get update -q && DEBIAN_FRONTEND=noninteractive apt-get install -q -y chromium fonts-dejavu-core',
    );
  if (!installed) run('playwright install chromium');
  return findChromium();
}
