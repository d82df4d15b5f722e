import { said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import type { Joint } from '#libs/contracts/common';
import type { Finding, Protocol, Side } from '#libs/science/protocols/types';

/** One joint as the cells of a file have it. */
export interface JointCells { value: string; reason: string; findings: Record<string, string> }

export type Reading = { joints: Joint[]; problems: Tellable[] };

/** Cells of text as the study's row means them; what cannot be read is told, and nothing is rounded or guessed. */
export function readJoints(protocol: Protocol, cells: Partial<Record<Side, JointCells>>): Reading {
  const problems: Tellable[] = [];
  const joints = (Object.entries(cells) as [Side, JointCells][]).flatMap(([side, cell]): Joint[] => {
    const where = said(`${side === 'left' ? 'Left' : 'Right'} ${protocol.region}`);
    const say: Say = (why) => void problems.push(said('{where}: {why}', { where, why }));
    const findings = Object.entries(cell.findings).flatMap(([head, text]): [string, boolean | string | number][] => {
      if (text === '') return [];
      const finding = protocol.findings.find((f) => same(f.code, head) || same(f.label, head));
      const found = finding ? readFinding(finding, text, say) : say(said('“{head}” is not recorded in this study. Empty the cell, or use one of {codes}.', { head, codes: listed(protocol.findings.map((f) => f.code)) }));
      return finding && found !== undefined ? [[finding.code, found]] : [];
    });
    const value = cell.value === '' ? undefined : readValue(protocol, cell.value, say);
    const reason = cell.reason === '' ? undefined : readReason(protocol, cell.reason, say);
    return [{ joint: side, ...(value !== undefined && { value }), ...(reason !== undefined && { reason }), ...(findings.length > 0 && { findings: Object.fromEntries(findings) }) }];
  });
  return { joints, problems };
}

type Say = (why: Tellable) => undefined;

function readValue({ value: rule, noValue }: Protocol, text: string, say: Say): number | string | undefined {
  if (rule.kind === 'grade') return rule.grades.find((g) => same(g.code, text) || same(`${rule.name} ${g.code}`, text))?.code ?? say(said('“{value}” is no grade here. Use one of {grades}.', { value: text, grades: listed(rule.grades.map((g) => g.code)) }));
  if (noValue.some((r) => same(r.code, text))) return say(said('“{text}” is a reason. Write it in the column of the reasons, and leave the value empty.', { text }));
  return readNumber(text) ?? say(said('“{text}” is no number. Write the {name} like {point} or {comma}, without a unit.', { text, name: said(rule.name), point: rule.min.toFixed(rule.decimals), comma: rule.min.toFixed(rule.decimals).replace('.', ',') }));
}

const readReason = ({ noValue }: Protocol, text: string, say: Say): string | undefined =>
  noValue.find((r) => same(r.code, text) || same(r.words, text))?.code ?? say(said('“{reason}” is no reason of this protocol. Use one of {reasons}.', { reason: text, reasons: listed(noValue.map((r) => r.code)) }));

function readFinding(finding: Finding, text: string, tell: Say): boolean | string | number | undefined {
  const say: Say = (why) => tell(said('{where}: {why}', { where: said(finding.label), why }));
  if (finding.kind === 'yesNo') return YES.has(text.toLowerCase()) ? true : NO.has(text.toLowerCase()) ? false : say(said('write yes or no, not “{text}”.', { text }));
  if (finding.kind === 'choice') return finding.choices.find((c) => same(c.code, text) || same(c.words, text))?.code ?? say(said('“{found}” is not offered. Use one of {choices}.', { found: text, choices: listed(finding.choices.map((c) => c.code)) }));
  return readNumber(text) ?? say(said('“{text}” is no number.', { text }));
}

const YES = new Set(['yes', 'ja', 'true', '1', 'x']);
const NO = new Set(['no', 'nein', 'false', '0']);

/** A point or a comma before the decimals, and no sign between the thousands. */
export const readNumber = (text: string): number | undefined => (/^-?\d{1,9}([.,]\d{1,9})?$/.test(text) ? Number(text.replace(',', '.')) : undefined);

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();
const listed = (codes: string[]): string => codes.join(', ');
