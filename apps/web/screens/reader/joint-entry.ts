import type { FindingField, Joint } from '#libs/contracts/common';
import type { PackageScreen } from '#libs/contracts/screens/reader';
import { t } from '../../words/t.js';
import { fixed } from '../../design/format.js';

/** What stands in the boxes of one joint before it is read as a value. */
export interface JointEntry {
  joint: string;
  value?: string;
  reason?: string;
  /** A yes or no, the code of a choice, or a number as it was typed. */
  findings: Partial<Record<string, boolean | string>>;
}

export type ValueRule = PackageScreen['value'];
/** What is wrong, by place: `value`, `reason`, or the code of a finding. */
export type JointProblems = Partial<Record<string, string>>;
export type JointReading = { joint: Joint; problems: null } | { joint: null; problems: JointProblems };

/** A joint is finished with a value or with a reason why there is none, never with both or neither. */
export function readEntry(entry: JointEntry, rule: ValueRule, fields: readonly FindingField[]): JointReading {
  const problems: JointProblems = {};
  const written = entry.value?.trim() ?? '';
  const value = written === '' ? undefined : readValue(written, rule);
  if (written === '' && !entry.reason) problems['value'] = t('Give a value, or a reason why there is none.');
  else if (written !== '' && entry.reason) problems['reason'] = t('A value and a reason at once cannot be. Take one of them out.');
  else if (typeof value === 'object') problems['value'] = value.says;
  const findings = readFindings(entry, fields, written !== '', problems);
  if (Object.keys(problems).length > 0 || typeof value === 'object') return { joint: null, problems };
  return {
    problems: null,
    joint: { joint: entry.joint, ...(value === undefined ? {} : { value }), ...(entry.reason ? { reason: entry.reason } : {}), ...(Object.keys(findings).length ? { findings } : {}) },
  };
}

type Said = { says: string };

const readValue = (written: string, rule: ValueRule): number | string | Said =>
  rule.kind === 'grade' ? readGrade(written, rule) : readNumber(written, rule);

function readGrade(written: string, { grades }: ValueRule): string | Said {
  const grade = grades.find((g) => g.toLowerCase() === written.toLowerCase());
  return grade ?? { says: t('{written} is not a grade of this study. It has {grades}.', { written, grades: grades.join(', ') }) };
}

type NumberRule = { unit: string; min: number | null; max: number | null; decimals?: number };

function readNumber(written: string, rule: NumberRule): number | Said {
  if (!/^-?\d+([.,]\d+)?$/.test(written)) return { says: t('{written} cannot be read as a number.', { written }) };
  const decimals = written.split(/[.,]/)[1]?.length ?? 0;
  if (rule.decimals !== undefined && decimals > rule.decimals) return { says: t('{written} has {decimals} decimals; this study is read to {most}. Nothing is rounded for you.', { written, decimals, most: rule.decimals }) };
  const value = Number(written.replace(',', '.'));
  const tooLow = rule.min !== null && value < rule.min;
  const tooHigh = rule.max !== null && value > rule.max;
  return tooLow || tooHigh ? { says: t('{written} cannot be. {range}', { written, range: rangeWords(rule) }) } : value;
}

export function rangeWords({ min, max, unit, decimals }: NumberRule): string {
  const shown = (n: number) => (decimals === undefined ? String(n) : fixed(n, decimals)) + (unit && unit !== '°' ? ` ${unit}` : unit);
  if (min !== null && max !== null) return t('It lies between {min} and {max}.', { min: shown(min), max: shown(max) });
  if (min !== null) return t('It is {min} or more.', { min: shown(min) });
  return max === null ? '' : t('It is {max} or less.', { max: shown(max) });
}

function readFindings(entry: JointEntry, fields: readonly FindingField[], hasValue: boolean, problems: JointProblems) {
  const read: Record<string, boolean | string | number> = {};
  for (const field of fields) {
    const given = entry.findings[field.code];
    if (given === undefined || given === '') {
      if (field.required && hasValue) problems[field.code] = t('Needed beside a value: {finding}.', { finding: field.words });
      continue;
    }
    const found = field.kind === 'number' ? readNumber(String(given).trim(), field) : given;
    if (typeof found === 'object') problems[field.code] = found.says;
    else read[field.code] = found;
  }
  return read;
}
