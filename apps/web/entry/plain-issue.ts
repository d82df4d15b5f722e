import type { z } from 'zod';
import { t } from '../words/t.js';
import { plain } from '../design/format.js';

/** What to change, for the cases in which a contract gives no sentence of its own. */
export function plainIssue(issue: z.core.$ZodRawIssue): string | undefined {
  switch (issue.code) {
    case 'invalid_type':
      if (typeof issue.input === 'number') return issue.expected === 'int' ? t('A whole number, please.') : t('Write a number, like 24.6.');
      return issue.expected === 'number' || issue.expected === 'int' ? t('A number is needed here.') : t('This is needed.');
    case 'invalid_value':
      return t('Please choose one.');
    case 'invalid_union':
      return t('This is needed.');
    case 'invalid_format':
      return issue.format === 'uuid' ? t('Please choose one.') : t('This is not written as it should be.');
    case 'too_small':
      return issue.origin === 'number' || issue.origin === 'int' ? t('At least {least}.', { least: plain(Number(issue.minimum)) }) : issue.origin === 'array' ? t('Choose at least one.') : t('A little more is needed.');
    case 'too_big':
      return issue.origin === 'number' || issue.origin === 'int' ? t('At most {most}.', { most: plain(Number(issue.maximum)) }) : t('At most {most} signs.', { most: plain(Number(issue.maximum)) });
    default:
      return undefined;
  }
}
