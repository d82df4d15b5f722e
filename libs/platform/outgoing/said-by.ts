/** What a status that is no success says of a service as a whole. */
export function saidBy(status: number): 'refused' | 'noService' | 'busy' | 'unexpected' {
  if (status === 401 || status === 403) return 'refused';
  if (status === 404 || status === 405 || status === 501) return 'noService';
  return status === 408 || status === 429 || status >= 500 ? 'busy' : 'unexpected';
}
