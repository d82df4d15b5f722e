import { t } from '../../words/t.js';

/** The first thing wrong at each field, by the field's path. */
export function problemsByPath(fields: readonly { path: string; message: string }[]): Record<string, string> {
  const problems: Record<string, string> = {};
  for (const { path, message } of fields) problems[path] ??= t.known(message);
  return problems;
}
