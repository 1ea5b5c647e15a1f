import adapter from '@sveltejs/adapter-node';

/** @type {import('@sveltejs/kit').Config} */
export default {
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
