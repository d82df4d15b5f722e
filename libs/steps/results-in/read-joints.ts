import type { Joint } from '#libs/contracts/common';
import type { Finding, Protocol, Side } from '#libs/science/protocols/types';

/** One joint as the cells of a file have it. */
export interface JointCells { value: string; reason: string; findings: Record<string, string> }

export type Reading = { joints: Joint[]; problems: string[] };

/** Cells of text as the study's row means them; what cannot be read is told, and nothing is rounded or guessed. */
export function readJoints(protocol: Protocol, cells: Partial<Record<Side, JointCells>>): Reading {
  const problems: string[] = [];
  const joints = (Object.entries(cells) as [Side, JointCells][]).flatMap(([side, cell]): Joint[] => {
    const where = `${side === 'left' ? 'Left' : 'Right'} ${protocol.region}`;
    const say = (words: string): undefined => void problems.push(`${where}: ${words}`);
    const findings = Object.entries(cell.findings).flatMap(([head, text]): [string, boolean | string | number][] => {
      if (text === '') return [];
      const finding = protocol.findings.find((f) => same(f.code, head) || same(f.label, head));
      const found = finding ? readFinding(finding, text, say) : say(`“${head}” is not recorded in this study. Empty the cell, or use one of ${listed(protocol.findings.map((f) => f.code))}.`);
      return finding && found !== undefined ? [[finding.code, found]] : [];
    });
    const value = cell.value === '' ? undefined : readValue(protocol, cell.value, say);
    const reason = cell.reason === '' ? undefined : readReason(protocol, cell.reason, say);
    return [{ joint: side, ...(value !== undefined && { value }), ...(reason !== undefined && { reason }), ...(findings.length > 0 && { findings: Object.fromEntries(findings) }) }];
  });
  return { joints, problems };
}

type Say = (words: string) => undefined;

function readValue({ value: rule, noValue }: Protocol, text: string, say: Say): number | string | undefined {
  if (rule.kind === 'grade') return rule.grades.find((g) => same(g.code, text) || same(`${rule.name} ${g.code}`, text))?.code ?? say(`“${text}” is no grade here. Use one of ${listed(rule.grades.map((g) => g.code))}.`);
  if (noValue.some((r) => same(r.code, text))) return say(`“${text}” is a reason. Write it in the column of the reasons, and leave the value empty.`);
  return readNumber(text) ?? say(`“${text}” is no number. Write the ${rule.name} like ${rule.min.toFixed(rule.decimals)} or ${rule.min.toFixed(rule.decimals).replace('.', ',')}, without a unit.`);
}

const readReason = ({ noValue }: Protocol, text: string, say: Say): string | undefined =>
  noValue.find((r) => same(r.code, text) || same(r.words, text))?.code ?? say(`“${text}” is no reason of this study. Use one of ${listed(noValue.map((r) => r.code))}.`);

function readFinding(finding: Finding, text: string, say: Say): boolean | string | number | undefined {
  if (finding.kind === 'yesNo') return YES.has(text.toLowerCase()) ? true : NO.has(text.toLowerCase()) ? false : say(`${finding.label}: write yes or no, not “${text}”.`);
  if (finding.kind === 'choice') return finding.choices.find((c) => same(c.code, text) || same(c.words, text))?.code ?? say(`${finding.label}: “${text}” is not offered. Use one of ${listed(finding.choices.map((c) => c.code))}.`);
  return readNumber(text) ?? say(`${finding.label}: “${text}” is no number.`);
}

const YES = new Set(['yes', 'ja', 'true', '1', 'x']);
const NO = new Set(['no', 'nein', 'false', '0']);

/** A point or a comma before the decimals, and no sign between the thousands. */
export const readNumber = (text: string): number | undefined => (/^-?\d{1,9}([.,]\d{1,9})?$/.test(text) ? Number(text.replace(',', '.')) : undefined);

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();
const listed = (codes: string[]): string => codes.join(', ');
