import { wordsIn } from '#libs/words/words';
import type { Joint } from '#libs/contracts/common';
import type { Protocol } from '#libs/science/protocols/types';
import { jointWords } from '../order-screen/reading-words.js';
import type { Work } from '../record/work.js';

interface Signed { ref: string; joints: Joint[]; comment?: string | undefined; signedBy: string }

/** The centre sees its own reading as it was signed. */
export async function noteAtReader({ tx, now }: Work, at: { package: string; centre: string }, protocol: Protocol, { ref, joints, comment, signedBy }: Signed): Promise<void> {
  const reading = { ref, joints: joints.map((j) => jointWords(protocol, j, wordsIn('en'))).map(({ name, words, flags }) => ({ name, words: [words, ...flags].join('; ') })), comment: comment ?? null, signedBy, at: now.toISOString() };
  await tx.$executeRaw`UPDATE package_access SET reading = ${JSON.stringify(reading)}::jsonb WHERE package_id = ${at.package}::uuid AND centre_id = ${at.centre}::uuid`;
}
