import globals from 'globals';
export default [{ ignores: ['build', '.svelte-kit', 'data'] }, { languageOptions: { globals: globals.node } }];
