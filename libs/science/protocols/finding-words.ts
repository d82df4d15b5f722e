import { inEnglish, said, type Said } from '#libs/words/said';
import type { Finding } from './types.js';

/** What was found beside a joint's value, in any language: "Norberg angle 103°", "Bone spurs, the largest: 2 to 5 mm"; of a yes, the label alone. */
export function saidFinding(finding: Finding, found: boolean | string | number): Said {
  const label = said(finding.label);
  if (finding.kind === 'yesNo') return label;
  if (finding.kind === 'choice') return said('{finding}: {answer}', { finding: label, answer: said(finding.choices.find(({ code }) => code === found)?.words ?? String(found)) });
  return said('{finding} {figure}', { finding: label, figure: { number: Number(found), decimals: finding.decimals, unit: `${/^\w/.test(finding.unit) ? ' ' : ''}${finding.unit}` } });
}

export const findingWords = (finding: Finding, found: boolean | string | number): string => inEnglish(saidFinding(finding, found));
