import type { ApiErrorBody } from '#libs/contracts/errors';
import { ApiFailure, noAnswer } from './failure.js';

let csrf = '';
/** Set whenever the server says who is using the page; sent back with everything that changes something. */
export const rememberCsrf = (token: string) => {
  csrf = token;
};
export const csrfToken = () => csrf;

async function request<T>(method: 'GET' | 'POST', path: string, body?: unknown): Promise<T> {
  const headers: Record<string, string> = { accept: 'application/json' };
  if (method === 'POST') {
    headers['content-type'] = 'application/json';
    headers['x-csrf'] = csrf;
  }
  let reply: Response;
  try {
    reply = await fetch(`/api${path}`, { method, headers, credentials: 'same-origin', body: method === 'POST' ? JSON.stringify(body ?? {}) : undefined });
  } catch {
    throw noAnswer();
  }
  if (!reply.ok) throw await failureOf(reply);
  const text = await reply.text();
  return (text ? JSON.parse(text) : undefined) as T;
}

async function failureOf(reply: Response): Promise<ApiFailure> {
  const body: unknown = await reply.json().catch(() => null);
  return new ApiFailure(reply.status, asErrorBody(body));
}

export function asErrorBody(body: unknown): ApiErrorBody {
  if (typeof body === 'object' && body !== null && 'code' in body && 'message' in body) return body as ApiErrorBody;
  return { code: 'BROKEN', message: 'The server gave an answer that this page does not understand. Nothing was changed. Reload the page and try again.' };
}

export const get = <T>(path: string) => request<T>('GET', path);
export const post = <T>(path: string, body?: unknown) => request<T>('POST', path, body);

/** `?a=1&b=2` of what is set. */
export function query(values: Record<string, string | number | undefined>): string {
  const set = Object.entries(values).filter((e): e is [string, string | number] => e[1] !== undefined && e[1] !== '');
  return set.length ? `?${new URLSearchParams(set.map(([k, v]) => [k, String(v)])).toString()}` : '';
}
