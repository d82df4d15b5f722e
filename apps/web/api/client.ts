import type { ApiErrorBody } from '#libs/contracts/errors';
import { heard, unheard } from '../offline/network.js';
import { ApiFailure, noAnswer } from './failure.js';

let csrf = '';
/** Set whenever the server says who is using the page; sent back with everything that changes something. */
export const rememberCsrf = (token: string) => {
  csrf = token;
};
export const csrfToken = () => csrf;

async function request<T>(method: 'GET' | 'POST', path: string, body?: unknown, signal?: AbortSignal): Promise<T> {
  const headers: Record<string, string> = { accept: 'application/json' };
  if (method === 'POST') {
    headers['content-type'] = 'application/json';
    headers['x-csrf'] = csrf;
  }
  let reply: Response;
  let text: string;
  try {
    reply = await fetch(`/api${path}`, { method, headers, credentials: 'same-origin', body: method === 'POST' ? JSON.stringify(body ?? {}) : undefined, ...(signal && { signal }) });
    text = await reply.text();
  } catch {
    unheard();
    throw noAnswer();
  }
  heard();
  if (!reply.ok) throw new ApiFailure(reply.status, asErrorBody(parsed(text)));
  return (text ? JSON.parse(text) : undefined) as T;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

export function asErrorBody(body: unknown): ApiErrorBody {
  if (typeof body === 'object' && body !== null && 'code' in body && 'message' in body) return body as ApiErrorBody;
  return { code: 'BROKEN', message: 'The server gave an answer that this page does not understand. Nothing was changed. Reload the page and try again.' };
}

export const get = <T>(path: string) => request<T>('GET', path);
export const post = <T>(path: string, body?: unknown, signal?: AbortSignal) => request<T>('POST', path, body, signal);

/** `?a=1&b=2` of what is set. */
export function query(values: Record<string, string | number | undefined>): string {
  const set = Object.entries(values).filter((e): e is [string, string | number] => e[1] !== undefined && e[1] !== '');
  return set.length ? `?${new URLSearchParams(set.map(([k, v]) => [k, String(v)])).toString()}` : '';
}
