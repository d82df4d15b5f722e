import { StepError } from '../refusal.js';

/** Says in words what the database found to be there already. */
export async function orAlreadyThere<T>(write: Promise<T>, path: string, message: string): Promise<T> {
  try {
    return await write;
  } catch (error) {
    if (isUniqueViolation(error)) throw new StepError('ALREADY_THERE', message, { fields: [{ path, message }] });
    throw error;
  }
}

function isUniqueViolation(error: unknown): boolean {
  const { code, meta } = error as { code?: unknown; meta?: unknown };
  return code === 'P2002' || (code === 'P2010' && JSON.stringify(meta ?? {}).includes('23505'));
}
