import { localDay } from '#libs/pathway/zones';
import { say } from '../messages/say.js';
import { dayWords } from '../record/day-words.js';
import type { Work } from '../record/work.js';

/** A referral that nobody answered in time goes back to the practice that asked: told once, nothing is decided for it. */
export async function sayReferralExpired({ tx, order, facts, now }: Work): Promise<void> {
  const answered = new Set(facts('referralAnswered').map((f) => f.referral));
  const open = facts('referralOffered').findLast((f) => !answered.has(f.referral));
  if (!open || localDay(now.toISOString(), order.rules.practices[order.practice]?.zone ?? 'UTC') <= open.expires) return;
  const home = await tx.practice.findUniqueOrThrow({ where: { id: order.practice }, select: { name: true, email: true } });
  await say(tx, { once: `referral:${open.referral}:expired`, kind: 'referral', template: 'referralExpired', order: order.id, practice: order.practice, to: home, data: { accession: order.accession, to: order.practices[open.to]?.name ?? 'The other practice', expires: dayWords(open.expires) } });
}
