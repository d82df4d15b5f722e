import { said } from '#libs/words/said';
import { SaidError } from '#libs/words/said-error';
import { stored } from '#libs/words/stored';
import type { StaffSentence } from '#libs/words/words';
import type { StepDeps } from './record/step-deps.js';

const WORDS: Record<string, StaffSentence> = {
  'send-message': 'A mail could not be sent. Look at the address and the mail server, then try again.',
  'deliver-package': 'The films could not be brought to the centre.',
  'print-document': 'A paper could not be printed.',
  'chase-study': 'The reminder to the centre could not be made.',
  'wake-order': 'This order could not be brought up to date.',
};

/** The last failure of a job becomes visible on its order, once, with a button to try again. */
export async function recordProblem(deps: StepDeps, job: { name: string; payload: Record<string, unknown> }, error: Error): Promise<void> {
  await deps.db.system('record a problem', async (tx) => {
    const { order, message, document } = job.payload as Record<string, string | undefined>;
    const id = order ?? (message ? (await tx.message.findUnique({ where: { id: message }, select: { orderId: true } }))?.orderId : undefined) ?? (document ? (await tx.document.findUnique({ where: { id: document }, select: { orderId: true } }))?.orderId : undefined);
    if (!id) return;
    const why = error instanceof SaidError ? error.said : error.message.slice(0, 200);
    const { words, sentences } = stored([said('{what} ({why})', { what: said(WORDS[job.name] ?? 'Something that should have happened by itself did not.'), why })]);
    await tx.$executeRaw`INSERT INTO problem (order_id, job, payload, words, sentences)
      SELECT ${id}::uuid, ${job.name}, ${JSON.stringify(job.payload)}::jsonb, ${words}, ${sentences}::jsonb
      WHERE NOT EXISTS (SELECT 1 FROM problem WHERE order_id = ${id}::uuid AND job = ${job.name} AND payload = ${JSON.stringify(job.payload)}::jsonb AND resolved_at IS NULL)`;
  });
}

/** What failed before has now been done, by the sweep or by a person who asked for it: nobody need look at it any more. */
export async function settleProblem(deps: StepDeps, job: { name: string; payload: Record<string, unknown> }): Promise<void> {
  if (Object.keys(job.payload).length === 0) return;
  await deps.db.system('settle a problem', (tx) => tx.$executeRaw`
    UPDATE problem SET resolved_at = ${deps.clock.now()}, resolved_by = 'done since' WHERE job = ${job.name} AND payload = ${JSON.stringify(job.payload)}::jsonb AND resolved_at IS NULL`);
}
