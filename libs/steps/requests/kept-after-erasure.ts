import { t } from '#libs/words/spoken';
const many = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`;

/** What stays when a person is erased, each with its ground. The law where the practice is decides how long. */
export function keptAfterErasure({ orders, papers, films }: { orders: number; papers: number; films: number }): { what: string; ground: string }[] {
  return [
    ...(orders > 0 ? [{ what: t('The treatment record of {orders}, with names as they were signed: who agreed to what, drugs, readings, films', { orders: many(orders, 'order', 'orders') }), ground: t('A veterinarian must keep the record of a treatment; it is appended and never rewritten.') }] : []),
    ...(papers > 0 ? [{ what: t('{papers} as issued', { papers: many(papers, 'paper', 'papers') }), ground: t('Papers that others hold must stay checkable. The public page of a certificate names no owner.') }] : []),
    ...(films > 0 ? [{ what: many(films, 'film', 'films'), ground: t('Part of the treatment record, marked with the dog’s number and not with the owner’s name.') }] : []),
    { what: t('That a reading exists in the breed’s statistics, where the owner agreed'), ground: t('It names no person. Agreement can be taken back by an objection.') },
    { what: t('Who looked at or changed the data, by id'), ground: t('Needed to account for how the data were handled.') },
    { what: t('This request, and a mark with the person’s id and the moment'), ground: t('Without them a restored backup would bring the data back.') },
  ];
}
