import { once } from 'node:events';
import http, { type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { buffer } from 'node:stream/consumers';
import { setTimeout as pause } from 'node:timers/promises';
import type { Chance } from './chance.js';

interface Answer { status: number; headers: http.IncomingHttpHeaders; body: Buffer }
/** An action that somebody was told has been done. */
export interface Acknowledged { order: string; action: string; key: string; version: number }

const AGAIN_MS = 100;
const PATIENCE_MS = 60_000;
const TWICE = 0.15;

/** One address before two apis: a request that got no answer, or that broke, is sent again as it was; some are sent to both at once. */
export class FrontDoor {
  readonly acknowledged: Acknowledged[] = [];
  requests = 0;
  sentAgain = 0;
  sentToBoth = 0;
  #server: http.Server | undefined;

  constructor(private readonly apis: string[], private readonly chance: Chance) {}

  async open(): Promise<string> {
    this.#server = http.createServer((request, response) => void this.#pass(request, response));
    this.#server.listen(0, '127.0.0.1');
    await once(this.#server, 'listening');
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}`;
  }

  async close(): Promise<void> {
    this.#server?.closeAllConnections();
    await new Promise((resolve) => this.#server?.close(resolve));
  }

  async #pass(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const body = await buffer(request);
    this.requests++;
    const answer = await this.#answerTo(request, body);
    this.#note(request, body, answer);
    const { connection: _c, 'keep-alive': _k, 'transfer-encoding': _t, ...headers } = answer.headers;
    response.writeHead(answer.status, { ...headers, 'content-length': answer.body.length }).end(answer.body);
  }

  async #answerTo(request: IncomingMessage, body: Buffer): Promise<Answer> {
    const deadline = Date.now() + PATIENCE_MS;
    for (let first = true; ; first = false) {
      if (!first) this.sentAgain++;
      const answer = await this.#once(request, body);
      if (answer && answer.status < 500) return answer;
      if (Date.now() > deadline) return answer ?? { status: 504, headers: {}, body: Buffer.from('No api answered.') };
      await pause(AGAIN_MS);
    }
  }

  async #once(request: IncomingMessage, body: Buffer): Promise<Answer | undefined> {
    const both = isAction(request) && this.chance.next() < TWICE;
    if (!both) return ask(this.chance.oneOf(this.apis), request, body);
    this.sentToBoth++;
    const answers = (await Promise.all(this.apis.map((api) => ask(api, request, body)))).filter((a) => a !== undefined);
    // One and the same request may not be done by one and refused by the other.
    const refused = answers.find((a) => a.status >= 400 && a.status < 500);
    return refused ?? answers.find((a) => a.status < 400) ?? answers[0];
  }

  #note(request: IncomingMessage, body: Buffer, answer: Answer): void {
    const [, order, action] = ACTION.exec(request.url ?? '') ?? [];
    if (!order || !action || answer.status !== 200) return;
    const { key } = JSON.parse(body.toString()) as { key: string };
    const { version } = JSON.parse(answer.body.toString()) as { version: number };
    this.acknowledged.push({ order, action, key, version });
  }
}

const ACTION = /^\/api\/orders\/([^/]+)\/actions\/(\w+)$/;
const isAction = (request: IncomingMessage): boolean => request.method === 'POST' && ACTION.test(request.url ?? '');

/** Undefined when the line broke before the answer was whole. */
function ask(api: string, from: IncomingMessage, body: Buffer): Promise<Answer | undefined> {
  return new Promise((resolve) => {
    const headers = { ...from.headers, connection: 'close' };
    const request = http.request(`${api}${from.url}`, { method: from.method, headers, agent: false, timeout: 20_000 }, (response) => {
      buffer(response).then((all) => resolve({ status: response.statusCode!, headers: response.headers, body: all }), () => resolve(undefined));
    });
    request.on('timeout', () => request.destroy());
    request.on('error', () => resolve(undefined));
    request.end(body);
  });
}
