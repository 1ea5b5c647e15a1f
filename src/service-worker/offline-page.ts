import { language, say } from '../lib/texts/say.ts';

/** @param links to what the device has kept, as items of a list @returns the page in place of one that is not there without the server, as HTML */
export const offlinePage = (links: readonly string[]): string => `<!doctype html>
<html lang="${language()}">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <meta name="color-scheme" content="light dark" />
    <title>${say('Without connection')} · Ridgelarder</title>
    <link rel="icon" href="/icon.svg" type="image/svg+xml" />
    <link rel="stylesheet" href="/plain.css" />
  </head>
  <body>
    <main>
      <h1>${say('Without connection')}</h1>
      <p>${say('This page comes from the computer that Ridgelarder runs on, and it cannot be reached from here.')}</p>
      <h2>${say('What this device has kept')}</h2>
      <p>${say('Card, menu, loads and packing lists of the trips opened last. None is listed where none was opened yet.')}</p>
      <ul>
        ${links.join('')}
      </ul>
      <p><a href="">${say('Try this page again')}</a></p>
    </main>
  </body>
</html>
`;
