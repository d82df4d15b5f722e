import type { ExplainedStudy } from '#libs/contracts/help';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import type { Protocol, ValueRule } from '#libs/science/protocols/types';
import { t } from '#libs/words/spoken';

/** The studies as the rows have them, for the page that explains them: no word of its own beside what a row and its sources say. */
export const explainedStudies = (): ExplainedStudy[] => currentProtocols().map(explained);

function explained(p: Protocol): ExplainedStudy {
  return {
    code: p.code, version: p.version, name: p.name, deskName: p.deskName, changes: p.changes,
    views: p.views.map(({ label, required, checklist }) => ({ label, required, checklist })),
    youngest: 'days' in p.youngest ? t('{days} days', { days: p.youngest.days }) : t('{months} months', { months: p.youngest.months }),
    measure: { name: p.value.name, says: saysOf(p.value) },
    dog: t('One result for the dog, from {worseWords}. {which}', { worseWords: p.dog.worseWords, which: p.dog.oneJoint === 'atLeast' ? t('With one readable joint it says “at least”.') : t('With one readable joint it is incomplete.') }),
    doubt: p.repeatability.known ? `${p.repeatability.words} (${p.repeatability.citation})` : p.repeatability.reason,
    counts: p.statistics.words,
    noValue: p.noValue.map((n) => n.words),
    sources: p.sources,
  };
}

function saysOf(value: ValueRule): string {
  if (value.kind === 'grade') return t('A grade from {code} to {code2}: an order, no number to add up. {join}.', { code: value.grades[0]!.code, code2: value.grades.at(-1)!.code, join: value.grades.map((g) => `${g.code}: ${g.words}`).join('; ') });
  return t('{which}, written with {which2}. {rangeReason}', { which: value.unit ? t('In {unit}', { unit: value.unit }) : t('A ratio without a unit'), which2: value.decimals === 0 ? 'no decimals' : value.decimals === 1 ? 'one decimal' : t('{decimals} decimals', { decimals: value.decimals }), rangeReason: value.rangeReason });
}
