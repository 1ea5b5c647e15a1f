import { language, say } from '../lib/texts/say.ts';

/** @param links to what the device has kept, as items of a list @returns the page in place of one that is not there without the server, as HTML */
export const offlinePage = (links: readonly string[]): string => `<!doctype html>
<html lang="${language()}">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <meta name="color-scheme" content="light dark" />
    <title>${say('Offline')} · Ridgelarder</title>
    <link rel="icon" href="/icon.svg" type="image/svg+xml" />
    <link rel="stylesheet" href="/plain.css" />
  </head>
  <body>
    <main>
      <h1>${say('Offline')}</h1>
      <p>${say('This page lives on the computer that runs Ridgelarder, and that computer cannot be reached from here.')}</p>
      <h2>${say('Saved on this device')}</h2>
      <p>${say('Card, menu, pack weights and packing lists of the trips you opened last. Empty if you have not opened any yet.')}</p>
      <ul>
        ${links.join('')}
      </ul>
      <p><a href="">${say('Try again')}</a></p>
    </main>
  </body>
</html>
`;
