import { randomUUID } from 'node:crypto';
import type { CentreKeyRow, KeyMade } from '#libs/contracts/results-in';
import { t } from '#libs/words/spoken';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { aboutSecret } from '#libs/platform/secrets/about';
import type { WithSecrets } from '#libs/platform/secrets/with-secrets';
import type { StepDeps } from '../record/step-deps.js';
import { badInput, notFound, StepError } from '../record/step-error.js';
import { centresOf, look, personOf, type Centre, type Onlooker } from './onlooker.js';
import { newSecret } from './signature.js';
import { utc } from './utc.js';

/** So that one takes over from the other without a gap, and no forgotten one stays behind. */
const MOST_VALID = 2;

const makesKeys = (who: Onlooker): boolean => 'lead' in who || ('practice' in who && who.practice.roles.includes('manager'));

/** The lead makes every centre's keys; a manager those of the centres that the practice registered. Null for who makes none. */
export async function keyCentres(deps: StepDeps, who: Onlooker): Promise<Centre[] | null> {
  if (!makesKeys(who)) return null;
  const all = await centresOf(deps, who);
  return 'practice' in who ? all.filter((c) => c.registeredBy === who.practice.practice) : all;
}

/** The secret is answered here and never again. */
export async function makeKey(deps: StepDeps & WithSecrets, who: Onlooker, centre: string): Promise<KeyMade> {
  const mine = await keysOnly(deps, who);
  if (!mine.some((c) => c.id === centre)) throw badInput('centre', t('The keys of this centre are made by whoever registered it, or by the scheme’s lead.'));
  const made = { key: randomUUID(), secret: newSecret() };
  const { id, name, role, practice } = personOf(who);
  const make = async (tx: Tx) => {
    await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtext(${`keys of ${centre}`}))`;
    const [row] = await tx.$queryRaw<{ valid: number }[]>`SELECT count(*)::int AS valid FROM centre_key WHERE centre_id = ${centre}::uuid AND ended_at IS NULL`;
    if (row!.valid >= MOST_VALID) throw new StepError('ALREADY_THERE', t('Two keys of this centre are valid. End the older one once the centre’s computer signs with the newer; then make another.'));
    await tx.$executeRaw`INSERT INTO centre_key (id, centre_id, secret, at, by, by_name) VALUES (${made.key}::uuid, ${centre}::uuid, ${deps.secrets.seal(made.secret, aboutSecret.centreKey(made.key))}, ${deps.clock.now()}, ${id}, ${name})`;
    await audit(tx, { by: id, role, action: 'makeCentreKey', practice, subject: made.key, detail: { centre } });
  };
  await ('practice' in who ? deps.db.practice(who.practice.practice, make) : deps.db.centre(centre, make));
  return made;
}

/** From now on nothing that is signed with it is taken; what it brought stays. */
export async function endKey(deps: StepDeps, who: Onlooker, key: string): Promise<void> {
  await keysOnly(deps, who);
  const { id, name, role, practice } = personOf(who);
  const ended = await look(deps, who, async (tx) => {
    const count = await tx.$executeRaw`UPDATE centre_key SET ended_at = ${deps.clock.now()}, ended_by_name = ${name} WHERE id = ${key}::uuid AND ended_at IS NULL`;
    if (count > 0) await audit(tx, { by: id, role, action: 'endCentreKey', practice, subject: key });
    return count;
  });
  if (!ended.includes(1)) throw notFound();
}

async function keysOnly(deps: StepDeps, who: Onlooker): Promise<Centre[]> {
  const mine = await keyCentres(deps, who);
  if (!mine) throw new StepError('NOT_YOUR_ROLE', t('Keys are made and ended by the practice manager or the scheme’s lead.'));
  return mine;
}

const KEYS = `SELECT k.id, c.name AS centre, ${utc('k.at')} AS at, k.by_name AS by, ${utc('k.ended_at')} AS "endedAt", ${utc('k.last_used_at')} AS "lastUsedAt", ${utc('k.last_refused_at')} AS "lastRefusedAt", k.key_id AS "keyId"
FROM centre_key k JOIN centre c ON c.id = k.centre_id ORDER BY k.ended_at DESC NULLS FIRST, k.at DESC LIMIT 50`;

export async function readKeys(deps: StepDeps & WithSecrets, who: Onlooker): Promise<CentreKeyRow[]> {
  const rows = await look(deps, who, (tx) => tx.$queryRawUnsafe<(Omit<CentreKeyRow, 'secretLost'> & { keyId: string | null })[]>(KEYS));
  return rows.flat().map(({ keyId, ...row }) => ({ ...row, secretLost: !deps.secrets.knows(keyId) }));
}
