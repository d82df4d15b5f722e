// Lets a child process of a test run the sources as they are: node -C development --import <this file> x.ts
import { readFileSync } from 'node:fs';
import { register } from 'node:module';
import { fileURLToPath } from 'node:url';
import { transformSync } from '@swc/core';

const settings = JSON.parse(readFileSync(new URL('../../../.swcrc', import.meta.url), 'utf8'));

export async function resolve(specifier, context, next) {
  const isOurs = specifier.startsWith('.') && specifier.endsWith('.js') && context.parentURL?.endsWith('.ts');
  return next(isOurs ? specifier.replace(/\.js$/, '.ts') : specifier, context);
}

export async function load(url, context, next) {
  if (!url.endsWith('.ts')) return next(url, context);
  const { code } = transformSync(readFileSync(fileURLToPath(url), 'utf8'), { ...settings, swcrc: false, filename: fileURLToPath(url) });
  return { format: 'module', source: code, shortCircuit: true };
}

// the hooks run in a thread of their own, which loads this file once more
if (!process.env.COTYLA_HOOKS) {
  process.env.COTYLA_HOOKS = '1';
  register(import.meta.url);
}
