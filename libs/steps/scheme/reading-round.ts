import type { Round, RoundAsked } from '#libs/contracts/readers';
import { blandAltman, type Limit, type Pair } from '#libs/science/agreement/bland-altman';
import { fleissKappa } from '#libs/science/agreement/fleiss-kappa';
import { type Intraclass, intraclass } from '#libs/science/agreement/intraclass';
import { kappa } from '#libs/science/agreement/kappa';
import { withinSubject } from '#libs/science/agreement/within-subject';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import type { GradeRule, NumberRule } from '#libs/science/protocols/types';
import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import { readTable } from './read-table.js';

/** The studies whose readings can be compared. */
export const roundStudies = (): { id: string; name: string }[] => currentProtocols().map(({ code, deskName }) => ({ id: code, name: t.known(deskName) }));

/** How well the readers of a round agree. Computed from what was pasted; nothing is stored and no reader is named. */
export function readingRound({ protocol: code, table }: RoundAsked): Round {
  const protocol = currentProtocols().find((p) => p.code === code);
  if (!protocol) throw badInput('protocol', t('Please choose a study.'));
  const rule = protocol.value;
  return rule.kind === 'number' ? measured(rule, readTable(table, (cell) => measure(rule, cell))) : graded(rule, readTable(table, (cell) => place(rule, cell)));
}

function measured({ name, unit, decimals }: NumberRule, rows: number[][]): Round {
  const found = intraclass(rows);
  const shown = (correlation: Intraclass | undefined) => (correlation && Number.isFinite(correlation.value) ? correlation : null);
  const { sd, mayBe, smallestRealChange } = withinSubject(rows);
  return {
    kind: 'measured', films: rows.length, readers: rows[0]!.length, measure: name, unit, decimals,
    agreement: shown(found?.agreement.single), consistency: shown(found?.consistency.single), oneReader: shown(found?.oneWay.single), meanOfReaders: shown(found?.agreement.mean),
    within: { sd, mayBe, smallestRealChange },
    pair: rows[0]!.length === 2 ? pairOf(rows.map(([a, b]): Pair => [a!, b!])) : null,
  };
}

function pairOf(pairs: Pair[]) {
  const limit = ({ value, mayBe }: Limit) => ({ value, mayBe });
  const { difference, lower, upper } = blandAltman(pairs);
  return { difference: limit(difference), lower: limit(lower), upper: limit(upper), points: pairs.map(([a, b]) => ({ mean: (a + b) / 2, difference: a - b })) };
}

function graded({ grades }: GradeRule, rows: number[][]): Round {
  // Grades that nobody gave say nothing about agreement and would widen the table.
  const used = [...new Set(rows.flat())].sort((a, b) => a - b);
  const codes = used.map((i) => grades[i]!.code);
  const base = { kind: 'graded' as const, films: rows.length, readers: rows[0]!.length, grades: codes };
  if (used.length === 1) return { ...base, observed: 1, kappas: [{ what: t('Beyond chance'), value: null, mayBe: null }] };
  if (base.readers > 2) return { ...base, ...ofMany(codes, rows.map((row) => used.map((grade) => row.filter((given) => given === grade).length))) };
  const table = codes.map((_, i) => codes.map((__, j) => rows.filter(([a, b]) => a === used[i] && b === used[j]).length));
  const [plain, steps, squared] = (['none', 'linear', 'quadratic'] as const).map((weights) => kappa(table, weights));
  const line = (what: string, found: typeof plain) => ({ what, value: found!.kappa, mayBe: found!.mayBe });
  return { ...base, observed: plain!.observed, kappas: [line(t('Beyond chance, any difference alike'), plain), line(t('Every step apart counted once'), steps), line(t('Steps apart squared'), squared)] };
}

function ofMany(codes: string[], counts: number[][]) {
  const { readers, kappa: all, byGrade } = fleissKappa(counts);
  const pairsAlike = counts.reduce((sum, row) => sum + row.reduce((pairs, n) => pairs + n * (n - 1), 0), 0);
  return {
    observed: pairsAlike / (counts.length * readers * (readers - 1)),
    kappas: [{ what: t('Beyond chance, all readers'), value: all, mayBe: null }, ...byGrade.map((value, i) => ({ what: t('Grade {code} against the others', { code: codes[i]! }), value, mayBe: null }))],
  };
}

function measure({ min, max, name }: NumberRule, cell: string): number | string {
  const value = /^-?\d+([.,]\d+)?$/.test(cell) ? Number(cell.replace(',', '.')) : NaN;
  if (Number.isNaN(value)) return t('“{cell}” is no number', { cell });
  return value < min || value > max ? t('{cell} is no {name}: it lies outside {min} to {max}', { cell, name, min, max }) : value;
}

function place({ grades }: GradeRule, cell: string): number | string {
  const at = grades.findIndex(({ code }) => code.toLowerCase() === cell.toLowerCase());
  return at >= 0 ? at : t('“{cell}” is no grade of this study ({join})', { cell, join: grades.map(({ code }) => code).join(', ') });
}
