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
    <style>
      body {
        max-width: 68ch;
        margin: 0 auto;
        padding: 1.5rem 1rem;
        background: light-dark(#f5efe1, #191713);
        color: light-dark(#221d17, #f0e8d8);
        font:
          1.0625rem/1.5 'Noto Sans',
          'DejaVu Sans',
          sans-serif;
        color-scheme: light dark;
      }
      a {
        display: inline-block;
        padding: 0.6rem 0;
        color: light-dark(#0d5748, #86cfb4);
        font-weight: 600;
      }
    </style>
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
