import { createHash } from 'node:crypto';
import adapter from '@sveltejs/adapter-node';

/** How SvelteKit hides its announcer for screen readers; no other style attribute is let through. */
const ANNOUNCER_STYLE =
  'position: absolute; left: 0; top: 0; clip: rect(0 0 0 0); clip-path: inset(50%); overflow: hidden; white-space: nowrap; width: 1px; height: 1px';

/** @type {import('@sveltejs/kit').Config} */
export default {
  compilerOptions: {
    // A table that scrolls sideways has to be reached by the keyboard; axe, in the browser tests, checks what this rule means.
    warningFilter: ({ code }) => code !== 'a11y_no_noninteractive_tabindex',
  },
  kit: {
    adapter: adapter({ out: 'build', precompress: true }),
    csp: {
      mode: 'auto',
      directives: {
        'default-src': ['none'],
        'connect-src': ['self'],
        'img-src': ['self'],
        'manifest-src': ['self'],
        'script-src': ['self'],
        'style-src': ['self'],
        'style-src-attr': [
          'unsafe-hashes',
          `sha256-${createHash('sha256').update(ANNOUNCER_STYLE).digest('base64')}`,
        ],
        'worker-src': ['self'],
        'base-uri': ['none'],
        'form-action': ['self'],
        'frame-ancestors': ['none'],
        'require-trusted-types-for': ['script'],
        'trusted-types': ['svelte-trusted-html', 'sveltekit-trusted-url'],
      },
    },
  },
};
