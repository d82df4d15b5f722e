import request, { type Test } from 'supertest';
import type { Me } from '#libs/contracts/session';

/** Somebody in front of a browser: the session's cookie, and the page's own token with whatever changes something. */
export class Session {
  constructor(readonly url: string, readonly cookie: string, readonly me: Me) {}

  get(path: string): Test {
    return request(this.url).get(path).set('cookie', this.cookie);
  }

  post(path: string, body: object = {}): Test {
    return request(this.url).post(path).set('cookie', this.cookie).set('x-csrf', this.me.csrf).send(body);
  }

  upload(path: string, content: Buffer, fileName: string): Test {
    return request(this.url).post(path).set('cookie', this.cookie).set('x-csrf', this.me.csrf).attach('image', content, fileName);
  }

  /** A file as it comes over the line. */
  async bytes(path: string): Promise<Buffer> {
    const { body } = await this.get(path).expect(200).buffer(true).parse((response, done) => {
      const parts: Buffer[] = [];
      response.on('data', (part: string) => parts.push(Buffer.from(part, 'binary')));
      response.setEncoding('binary');
      response.on('end', () => done(null, Buffer.concat(parts)));
    });
    return body as Buffer;
  }

  async read<T>(path: string): Promise<T> {
    return (await this.get(path).expect(200)).body as T;
  }

  async send<T>(path: string, body: object = {}): Promise<T> {
    return (await this.post(path, body).expect(200)).body as T;
  }
}

export const signIn = (url: string, email: string, password: string): Promise<Session> => open(url, '/api/sign-in', { email, password });

/** Follows the link of a mail, as the page behind it does. */
export function openLink(url: string, mail: { text: string }): Promise<Session> {
  const token = /https?:\/\/\S+\/[or]\/([\w-]+)/.exec(mail.text)?.[1];
  if (!token) throw new Error(`There is no link in this mail:\n${mail.text}`);
  return open(url, '/api/links/open', { token });
}

async function open(url: string, path: string, body: object): Promise<Session> {
  const answer = await request(url).post(path).send(body).expect(200);
  const set = answer.get('Set-Cookie') ?? [];
  const cookie = set.map((line) => line.split(';')[0]!).findLast((pair) => !pair.endsWith('='));
  if (!cookie) throw new Error('No session was opened.');
  return new Session(url, cookie, answer.body as Me);
}
