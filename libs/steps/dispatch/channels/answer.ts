import { said } from '#libs/words/said';
import { AddressRefusedError } from '#libs/platform/outgoing/address-refused-error';
import { saidBy } from '#libs/platform/outgoing/said-by';
import { PermanentError, RetryableError } from '#libs/platform/queue/job-errors';

interface Answer { status: number }

/** Calls, and says who did not answer. */
export async function calling<T extends Answer>(address: string, call: () => Promise<T>): Promise<T> {
  try {
    return await call();
  } catch (error) {
    if (error instanceof AddressRefusedError) throw new PermanentError(error.said, { cause: error });
    const { cause, message } = error as Error & { cause?: { code?: string; message?: string } };
    throw new RetryableError(said('{host} did not answer ({why}).', { host: new URL(address).host, why: cause?.code ?? cause?.message ?? message }), { cause: error });
  }
}

/** What an answer means that is about the whole service and not about one object; returns for any other. */
export function refuseService(address: string, { status }: Answer): void {
  const { host } = new URL(address);
  const answer = saidBy(status);
  if (answer === 'refused') throw new PermanentError(said('{host} refuses the name or password ({status}). A practice manager enters the right ones at the centre, under Practice.', { host, status: String(status) }));
  if (answer === 'noService') throw new PermanentError(said('There is no such service at {address} ({status}). A practice manager looks at the address, under Practice.', { address, status: String(status) }));
  if (answer === 'busy') throw new RetryableError(said('{host} is busy or broken ({status}).', { host, status: String(status) }));
}
