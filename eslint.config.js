import js from '@eslint/js';
import { globalIgnores } from 'eslint/config';
import reactHooks from 'eslint-plugin-react-hooks';
import ts from 'typescript-eslint';

const anyEnvironment = { object: 'process', property: 'env', message: 'Only libs/platform/settings reads the environment: take a setting as an argument.' };
const silent = ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }];

export default [
  globalIgnores(['node_modules/', 'dist/', '.data/', '.cache/', 'libs/platform/database/generated/']),
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  js.configs.recommended,
  {
    files: ['**/*.{js,mjs,cjs}'],
    languageOptions: { globals: Object.fromEntries(['console', 'process', 'URL', 'performance', 'fetch', 'AbortController', 'AbortSignal', 'WebAssembly', 'setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'module', '__dirname', 'Buffer'].map((name) => [name, 'readonly'])) },
    rules: { 'no-unused-vars': silent },
  },
  // The rules that find mistakes, not those that argue about style: each costs time in every run.
  { ...ts.configs.base, files: ['**/*.{ts,tsx}'] },
  {
    files: ['**/*.{ts,tsx}'],
    languageOptions: { parserOptions: { projectService: { allowDefaultProject: ['prisma.config.ts', 'apps/web/vite.config.ts'] }, tsconfigRootDir: import.meta.dirname } },
    rules: {
      'no-undef': 'off', // the compiler knows better
      'no-redeclare': 'off',
      'no-unused-vars': 'off',
      '@typescript-eslint/no-unused-vars': silent,
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: { attributes: false } }],
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/no-for-in-array': 'error',
      '@typescript-eslint/only-throw-error': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      'no-empty': ['error', { allowEmptyCatch: false }],
      eqeqeq: ['error', 'always', { null: 'ignore' }],
    },
  },
  {
    files: ['apps/**', 'libs/**', 'seed/**'],
    ignores: ['libs/platform/settings/**', '**/*.test.{ts,tsx}'],
    rules: { 'no-restricted-properties': ['error', anyEnvironment] },
  },
  {
    files: ['apps/web/**/*.{ts,tsx}'],
    plugins: { 'react-hooks': reactHooks },
    rules: { 'react-hooks/rules-of-hooks': 'error', 'react-hooks/exhaustive-deps': 'error' },
  },
];
