import type { BillLine } from '#libs/contracts/centre-bills';
import { ScienceError } from '#libs/science/error';
import { parseAccession } from '#libs/science/identifiers/accession';
import { t } from '#libs/words/spoken';
import { spokenMoney } from '../money-words.js';
import type { BillRecord } from './bill-sql.js';
import type { StudyAt } from './find-study.js';
import type { Matched } from './match-lines.js';
import type { Matching } from './read-matching.js';

type Line = { reference: string; study: string; amountMinor: number };
export const studyWords = (s: StudyAt): string => t('{s} of {dog}, {accession}', { s: s.name, dog: s.dog, accession: s.accession });
export const billedOf = ({ study, order, accession, name, dog }: StudyAt) => ({ study, order, accession, name, dog });

export function lineView(line: BillRecord['lines'][number], { matched, bills, currency }: Pick<Matching, 'matched' | 'bills' | 'currency'>): BillLine {
  const m = matched.get(line.id);
  if (!m) return { ...line, state: 'unmatched', of: null, byHand: false, says: t('The bill was withdrawn.') };
  return { ...line, state: m.state, of: m.of && billedOf(m.of), byHand: m.state === 'matched' && m.byHand, says: lineWords(line, m, bills, currency) };
}

/** What a line was found to be, and what to do about it where it fits nothing. */
export function lineWords(line: Line, m: Matched, bills: BillRecord[], currency: string): string {
  if (m.state === 'disputed') return t('Disputed: {words}', { words: m.words });
  if (m.state === 'matched') {
    const other = line.amountMinor === m.of.feeMinor ? '' : t(', for {amountMinor} instead of {feeMinor}', { amountMinor: spokenMoney(line.amountMinor, currency), feeMinor: spokenMoney(m.of.feeMinor, currency) });
    return `${studyWords(m.of)}${m.byHand ? t(', matched by hand{other}', { other }) : ''}`;
  }
  const of = m.of ? studyWords(m.of) : '';
  switch (m.why) {
    case 'unknownNumber': return t('{reference} Ask the centre which dog it is, then match by hand or dispute it.', { reference: numberWords(line.reference) });
    case 'otherStudy': return t('The order is known, and “{study}” is no study of it that we know by this name. Match it by hand, or dispute it.', { study: line.study });
    case 'neverSent': return t('{of}: never sent to this centre. Ask what was read, or dispute it.', { of });
    case 'alreadyBilled': return t('{of}: billed already{takenBy}. Dispute this line, or that one.', { of, takenBy: whereBilled(m.takenBy, bills) });
    case 'otherAmount': return t('{of}: {amountMinor} is asked for, agreed are {feeMinor}. Match it by hand if that is right, or dispute it.', { of, amountMinor: spokenMoney(line.amountMinor, currency), feeMinor: spokenMoney(m.of?.feeMinor ?? 0, currency) });
  }
}

/** A number of ours with one wrong sign is told from one that is nobody's. */
function numberWords(reference: string): string {
  try {
    parseAccession(reference);
  } catch (error) {
    if (error instanceof ScienceError && error.code === 'ACCESSION_CHECK') return t.said(error.said);
  }
  return t('“{reference}” is no order and no package of yours.', { reference });
}

function whereBilled(line: string | null, bills: BillRecord[]): string {
  const bill = bills.find((b) => b.lines.some((l) => l.id === line));
  return bill ? t(', bill {number}, line {place}', { number: bill.number, place: bill.lines.find((l) => l.id === line)!.place }) : t(', by another line of this bill');
}
