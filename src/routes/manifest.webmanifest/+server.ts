import { language, say } from '$lib/texts/say';
import type { RequestHandler } from './$types';

/** What a browser asks for to install the app, in the language of the request. */
export const GET: RequestHandler = () =>
  new Response(JSON.stringify(manifest()), { headers: { 'content-type': 'application/manifest+json' } });

const manifest = () => ({
  id: '/',
  name: 'Ridgelarder',
  short_name: 'Ridgelarder',
  description: say("Plans a hike's menu, loads, fuel and water from a shelf of home-dried pouches."),
  lang: language(),
  start_url: '/trips',
  scope: '/',
  display: 'standalone',
  background_color: '#f5efe1',
  theme_color: '#f5efe1',
  icons: [
    { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
    { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
    { src: '/icon-512.png', sizes: '512x512', type: 'image/png' },
    { src: '/icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
});
