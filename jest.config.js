import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';

const swc = JSON.parse(readFileSync(new URL('.swcrc', import.meta.url), 'utf8'));

/** Shared by all kinds of test: TypeScript source run as ES modules. */
const base = {
  testEnvironment: 'node',
  testEnvironmentOptions: { customExportConditions: ['development', 'node', 'node-addons'] },
  testMatch: ['**/*.test.ts'],
  extensionsToTreatAsEsm: ['.ts', '.tsx'],
  transform: { '^.+\\.tsx?$': ['@swc/jest', { ...swc, swcrc: false }] },
  moduleNameMapper: { '^content-disposition$': '<rootDir>/test/support/content-disposition.cjs', '^(\\.{1,2}/.*)\\.js$': '$1' },
  modulePathIgnorePatterns: ['<rootDir>/dist/', '<rootDir>/.data/', '<rootDir>/.cache/'],
};

export default {
  projects: [
    { ...base, displayName: 'small', roots: ['<rootDir>/libs', '<rootDir>/seed', '<rootDir>/apps', '<rootDir>/scripts', '<rootDir>/test/published'] },
    {
      ...base,
      displayName: 'medium',
      roots: ['<rootDir>/test'],
      testPathIgnorePatterns: ['/node_modules/', '<rootDir>/test/published/'],
      globalSetup: '<rootDir>/test/support/global-setup.mjs',
      globalTeardown: '<rootDir>/test/support/global-teardown.mjs',
    },
  ],
  testTimeout: 60_000,
  // Each worker has connections of its own to the one test server.
  // Modules of finished files stay in a worker's memory; a full worker collects more than it tests.
  workerIdleMemoryLimit: '1200MB',
  maxWorkers: Math.min(availableParallelism(), 4),
};
