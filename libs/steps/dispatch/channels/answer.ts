import { AddressRefusedError } from '#libs/platform/outgoing/address-refused-error';
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
  if (status === 401 || status === 403) throw new PermanentError(`${host} refuses the name or password (${status}). A practice manager enters the right ones at the centre, under Practice.`);
  if (status === 404 || status === 405 || status === 501) throw new PermanentError(`There is no such service at ${address} (${status}). A practice manager looks at the address, under Practice.`);
  if (status === 408 || status === 429 || status >= 500) throw new RetryableError(`${host} is busy or broken (${status}).`);
}
