import { StorageFullError } from './file-errors.js';

/** A full disk, a used-up quota, and 507 (RFC 4918 section 11.5), with which a bucket without room answers. */
function isFull(error: unknown): boolean {
  const { code, $metadata } = (error ?? {}) as { code?: unknown; $metadata?: { httpStatusCode?: number } };
  return code === 'ENOSPC' || code === 'EDQUOT' || $metadata?.httpStatusCode === 507;
}

export const orFull = (error: unknown): unknown => (isFull(error) ? new StorageFullError({ cause: error }) : error);
