import { createHash } from 'node:crypto';
import { z } from 'zod';
import { audit } from '#libs/platform/audit/audit';
import { aboutSecret } from '#libs/platform/secrets/about';
import { SecretLostError } from '#libs/platform/secrets/secret-lost-error';
import type { WithSecrets } from '#libs/platform/secrets/with-secrets';
import type { StepDeps } from '../record/step-deps.js';
import { StepError } from '../record/step-error.js';
import { verify, WINDOW_SECONDS, type Verdict } from './signature.js';

export interface Signed { centre: string; name: string; /** The centre's key that it was signed with. */ by: string; /** The message's own. */ key: string; body: Buffer }
export interface Headers { key: string; time: string; signature: string; idempotency: string }

export const MOST_BYTES = 256 * 1024;
/** Stands in where there is no secret, so that a wrong key takes as long as a wrong signature. */
const NO_SECRET = 'nobody signs with this';

const REFUSED: Record<Exclude<Verdict, 'right'> | 'replay' | 'lost', string> = {
  form: 'The headers cotyla-key, cotyla-time and cotyla-signature are needed; the signature is v1= and 64 signs. Nothing was changed.',
  signature: 'The signature does not fit, or the key is not valid any more. Sign second, idempotency key and body with the secret of this key. Nothing was changed.',
  time: `The message was signed more than ${WINDOW_SECONDS / 60} minutes ago, or the clocks differ. Set the clock and sign it anew. Nothing was changed.`,
  lost: 'This server cannot read the secret of this key any more. Whoever made the key ends it and makes another. Nothing was changed.',
  replay: 'A message with this very signature was received before. To hear its answer once more, sign it anew under the same idempotency key. Nothing was changed.',
};

/** The centre whose computer signed a message. What is forged, too old or a copy is refused, and both the audit and the centre's page have it. */
export async function whoSigned(deps: StepDeps & WithSecrets, headers: Headers, body: Buffer): Promise<Signed> {
  if (body.length > MOST_BYTES) throw new StepError('TOO_LARGE', `A message has at most ${MOST_BYTES / 1024} kB. Send the readings in several.`);
  const { data: id } = z.uuid().safeParse(headers.key);
  const [known] = id ? await deps.db.door<{ centre: string; name: string; secret: string }>('SELECT * FROM app.centre_secret($1)', [id]) : [];
  const now = deps.clock.now();
  const secret = known ? opened(deps, id!, known.secret) : NO_SECRET;
  const verdict = secret === undefined ? 'lost' : verify({ secret, time: headers.time, key: headers.idempotency, signature: headers.signature, body, now });
  const refused = verdict !== 'right' ? verdict : !known ? 'signature' : (await firstUse(deps, id!, headers, now)) ? undefined : 'replay';
  if (refused) {
    await noteRefused(deps, { key: known ? id! : null, why: refused, hash: createHash('sha256').update(body).digest('hex'), at: now });
    throw new StepError(refused === 'replay' ? 'REPLAYED' : 'SIGNATURE_REFUSED', REFUSED[refused]);
  }
  if (!/^[\x21-\x7e]{8,100}$/.test(headers.idempotency)) throw new StepError('BAD_INPUT', 'The header idempotency-key is needed: 8 to 100 signs that name this message, the same each time it is sent again. Nothing was changed.');
  return { centre: known!.centre, name: known!.name, by: id!, key: headers.idempotency, body };
}

function opened({ secrets }: WithSecrets, key: string, stored: string): string | undefined {
  try {
    return secrets.open(stored, aboutSecret.centreKey(key));
  } catch (error) {
    if (error instanceof SecretLostError) return undefined;
    throw error;
  }
}

async function firstUse({ db }: StepDeps, key: string, { signature }: Headers, now: Date): Promise<boolean> {
  const forget = new Date(now.getTime() - 3 * WINDOW_SECONDS * 1000);
  const [row] = await db.door<{ first: boolean }>('SELECT app.use_signature($1, $2, $3, $4) AS first', [key, signature, now, forget]);
  return row!.first;
}

async function noteRefused({ db }: StepDeps, { key, why, hash, at }: { key: string | null; why: string; hash: string; at: Date }): Promise<void> {
  if (key) await db.door('SELECT app.signature_refused($1, $2)', [key, at]);
  await db.outside((tx) => audit(tx, { at, by: key ?? 'unknown', role: 'centre', action: 'refuseMessage', subject: key, detail: { why, body: hash } }));
}
