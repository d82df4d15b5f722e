import { AddressRefusedError } from '#libs/platform/outgoing/address-refused-error';
import { saidBy } from '#libs/platform/outgoing/said-by';
import { PermanentError, RetryableError } from '#libs/platform/queue/job-errors';

interface Answer { status: number }

/** Calls, and says in words who did not answer. */
export async function calling<T extends Answer>(address: string, call: () => Promise<T>): Promise<T> {
  try {
    return await call();
  } catch (error) {
    if (error instanceof AddressRefusedError) throw new PermanentError(error.message, { cause: error });
    const { cause, message } = error as Error & { cause?: { code?: string; message?: string } };
    throw new RetryableError(`${new URL(address).host} did not answer (${cause?.code ?? cause?.message ?? message}).`, { cause: error });
  }
}

/** What an answer means that is about the whole service and not about one object; returns for any other. */
export function refuseService(address: string, { status }: Answer): void {
  const { host } = new URL(address);
  const answer = saidBy(status);
  if (answer === 'refused') throw new PermanentError(`${host} refuses the name or password (${status}). A practice manager enters the right ones at the centre, under Practice.`);
  if (answer === 'noService') throw new PermanentError(`There is no such service at ${address} (${status}). A practice manager looks at the address, under Practice.`);
  if (answer === 'busy') throw new RetryableError(`${host} is busy or broken (${status}).`);
}
