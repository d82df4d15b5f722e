import { readFileSync } from 'node:fs';

const swc = JSON.parse(readFileSync(new URL('.swcrc', import.meta.url), 'utf8'));

/** Shared by all kinds of test: TypeScript source run as ES modules. */
const base = {
  testEnvironment: 'node',
  testEnvironmentOptions: { customExportConditions: ['development', 'node', 'node-addons'] },
  extensionsToTreatAsEsm: ['.ts', '.tsx'],
  transform: { '^.+\\.tsx?$': ['@swc/jest', { ...swc, swcrc: false }] },
  moduleNameMapper: { '^(\\.{1,2}/.*)\\.js$': '$1' },
  modulePathIgnorePatterns: ['<rootDir>/dist/', '<rootDir>/.data/', '<rootDir>/.cache/'],
};

export default {
  projects: [
    { ...base, displayName: 'small', roots: ['<rootDir>/libs', '<rootDir>/seed', '<rootDir>/apps', '<rootDir>/scripts'], testMatch: ['**/*.test.ts'] },
    {
      ...base,
      displayName: 'medium',
      roots: ['<rootDir>/test'],
      testMatch: ['**/*.test.ts'],
      globalSetup: '<rootDir>/test/support/global-setup.ts',
      globalTeardown: '<rootDir>/test/support/global-teardown.ts',
    },
  ],
  testTimeout: 60_000,
};
