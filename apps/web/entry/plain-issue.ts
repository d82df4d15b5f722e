import type { z } from 'zod';

/** What to change, for the cases in which a contract gives no sentence of its own. */
export function plainIssue(issue: z.core.$ZodRawIssue): string | undefined {
  switch (issue.code) {
    case 'invalid_type':
      if (typeof issue.input === 'number') return issue.expected === 'int' ? 'A whole number, please.' : 'Write a number, like 24.6.';
      return issue.expected === 'number' || issue.expected === 'int' ? 'A number is needed here.' : 'This is needed.';
    case 'invalid_value':
      return 'Please choose one.';
    case 'invalid_union':
      return 'This is needed.';
    case 'invalid_format':
      return issue.format === 'uuid' ? 'Please choose one.' : 'This is not written as it should be.';
    case 'too_small':
      return issue.origin === 'number' || issue.origin === 'int' ? `At least ${issue.minimum}.` : issue.origin === 'array' ? 'Choose at least one.' : 'A little more is needed.';
    case 'too_big':
      return issue.origin === 'number' || issue.origin === 'int' ? `At most ${issue.maximum}.` : `At most ${issue.maximum} signs.`;
    default:
      return undefined;
  }
}
