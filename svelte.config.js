import adapter from '@sveltejs/adapter-node';

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
        'default-src': ['self'],
        // SvelteKit hides its announcer for screen readers by a style attribute.
        'style-src-attr': ['unsafe-inline'],
        'object-src': ['none'],
        'base-uri': ['self'],
        'form-action': ['self'],
        'frame-ancestors': ['none'],
      },
    },
  },
};
