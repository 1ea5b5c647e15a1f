import adapter from '@sveltejs/adapter-node';

/** @type {import('@sveltejs/kit').Config} */
export default {
  kit: {
    adapter: adapter({ out: 'build', precompress: true }),
    csp: { mode: 'auto', directives: { 'default-src': ['self'], 'object-src': ['none'] } },
  },
};
