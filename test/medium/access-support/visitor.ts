import type { Me } from '#libs/contracts/session';
import { DEMO_PASSWORD } from '#seed/sign-ins';

export interface Request {
  method: 'GET' | 'POST';
  url: string;
  body?: unknown;
  headers?: Record<string, string>;
}

export interface Answer {
  status: number;
  /** Parsed where it is JSON, else the text itself. */
  body: unknown;
  headers: Headers;
}

/** Somebody with a browser: sends the session's cookie and the page's token, as the web app does. */
export class Visitor {
  constructor(
    readonly name: string,
    private readonly server: string,
    readonly cookie = '',
    readonly csrf = '',
  ) {}

  async ask({ method, url, body, headers = {} }: Request): Promise<Answer> {
    const own: Record<string, string> = { ...(this.cookie ? { cookie: this.cookie } : {}), ...(method === 'POST' && this.csrf ? { 'x-csrf': this.csrf } : {}) };
    const raw = typeof body === 'string' || body instanceof FormData || body === undefined;
    const type: Record<string, string> = raw ? {} : { 'content-type': 'application/json' };
    const sent = await fetch(this.server + url, { method, redirect: 'manual', headers: { ...own, ...type, ...headers }, ...(body === undefined ? {} : { body: raw ? body : JSON.stringify(body) }) });
    const json = (sent.headers.get('content-type') ?? '').startsWith('application/json');
    return { status: sent.status, body: json ? await sent.json() : await sent.text(), headers: sent.headers };
  }

  get = (url: string): Promise<Answer> => this.ask({ method: 'GET', url });
  post = (url: string, body: unknown = {}): Promise<Answer> => this.ask({ method: 'POST', url, body });
}

export async function signIn(server: string, email: string, password = DEMO_PASSWORD): Promise<Visitor> {
  return entered(server, email, { method: 'POST', url: '/api/sign-in', body: { email, password } });
}

export async function openLink(server: string, name: string, token: string): Promise<Visitor> {
  return entered(server, name, { method: 'POST', url: '/api/links/open', body: { token } });
}

async function entered(server: string, name: string, request: Request): Promise<Visitor> {
  const { status, body, headers } = await new Visitor(name, server).ask(request);
  if (status !== 200) throw new Error(`${name} could not come in: ${JSON.stringify(body)}`);
  const cookie = headers.getSetCookie().at(-1)!.split(';')[0]!;
  return new Visitor(name, server, cookie, (body as Me).csrf);
}
