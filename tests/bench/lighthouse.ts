/*
 * `npm run bench:lighthouse`: what Lighthouse says of the built app with the demo, as on a desk: the shelf, a trip's menu and its card.
 * Points of 100, and what costs some.
 */
import lighthouse, { desktopConfig } from 'lighthouse';
import { startBrowser } from '../../src/tooling/browse.ts';
import { ensureBuilt } from '../../src/tooling/build.ts';
import { fillDemo, startBuiltApp } from '../../src/tooling/built-app.ts';

const PORT = 9333;
const CATEGORIES = ['performance', 'accessibility', 'best-practices'];

if (!ensureBuilt()) process.exit(1);
const [app, browser] = await Promise.all([
  startBuiltApp(),
  startBrowser([`--remote-debugging-port=${PORT}`]),
]);
try {
  const trip = await fillDemo(app.origin);
  for (const address of ['/shelf', `${trip}/menu`, `${trip}/card`]) {
    const result = await lighthouse(
      app.origin + address,
      { port: PORT, onlyCategories: CATEGORIES, logLevel: 'error' },
      desktopConfig,
    );
    if (!result) throw new Error(`Lighthouse said nothing of ${address}.`);
    const { categories, audits } = result.lhr;
    const points = CATEGORIES.map((id) => `${id} ${Math.round((categories[id]?.score ?? 0) * 100)}`);
    console.log(`${address.replace(trip, '/trips/…')}: ${points.join(', ')}`);
    for (const id of CATEGORIES)
      for (const { id: audit, weight } of categories[id]?.auditRefs ?? []) {
        const { score, title, displayValue } = audits[audit]!;
        if (weight > 0 && score !== null && score < 1)
          console.log(`  ${Math.round(score * 100)} of 100, ${title} ${displayValue ?? ''}`);
      }
  }
} finally {
  await browser.close();
  await app.stop();
}
