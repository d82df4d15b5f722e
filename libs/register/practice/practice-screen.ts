import type { PracticeScreen } from '#libs/contracts/register';
import { localDay } from '#libs/pathway/zones';
import type { Tx } from '#libs/platform/database/db';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { notFound } from '../refusal.js';
import { viewed, viewer } from '../viewed-sql.js';
import { staffOnly } from '../who-may.js';
import { PRACTICE, type PracticeSource } from './practice-sql.js';
import { pricesOf } from './prices-of.js';
import { whatIsMissing } from './what-is-missing.js';

const SEEN = `WITH ${viewed('viewPractice', `'{}'::jsonb`, 'true')} ${PRACTICE}`;

/** The practice's own register: read by all who work there, changed by its manager. */
export async function practiceScreen(deps: RegisterDeps, actor: Actor): Promise<PracticeScreen> {
  staffOnly(actor);
  const [source] = await deps.db.read<PracticeSource>({ practice: actor.practice }, SEEN, viewer(actor));
  return screenOf(source, deps.clock.now());
}

/** The same page from inside the transaction that has just changed it. */
export async function practiceScreenIn(tx: Tx, actor: Actor, now: Date): Promise<PracticeScreen> {
  const [source] = await tx.$queryRawUnsafe<PracticeSource[]>(PRACTICE, actor.practice);
  return screenOf(source, now);
}

function screenOf(source: PracticeSource | undefined, now: Date): PracticeScreen {
  if (!source) throw notFound();
  const { currency, prices, accreditations, ...rest } = source;
  const protocols = currentProtocols();
  const known = {
    ...rest,
    prices: pricesOf(prices, currency),
    accreditations: accreditations.map((a) => ({ ...a, protocolName: protocols.find((p) => p.code === a.protocol)?.name ?? a.protocol })),
    protocols: protocols.map(({ code, version, name, needsAccreditation }) => ({ code, version, name, needsAccreditation })),
  };
  return { ...known, missing: whatIsMissing(known, localDay(now.toISOString(), source.practice.zone)) };
}
