import { createServer, type IncomingMessage, type Server } from 'node:http';
import { once } from 'node:events';
import type { AddressInfo } from 'node:net';

export interface Heard { headers: IncomingMessage['headers']; body: string }

/** Another program that is called: keeps what it hears, and answers what a test wants; silent where that is nothing. */
export class Receiver {
  readonly heard: Heard[] = [];
  answer: number | undefined = 204;
  /** Host and port, as in OUTGOING_ALLOW. */
  place = '';
  #server: Server | undefined;

  async start(): Promise<this> {
    this.#server = createServer((request, response) => void this.#hear(request).then(() => this.answer !== undefined && response.writeHead(this.answer).end()));
    this.#server.listen(0, '127.0.0.1');
    await once(this.#server, 'listening');
    this.place = `127.0.0.1:${(this.#server.address() as AddressInfo).port}`;
    return this;
  }

  get address(): string {
    return `http://${this.place}/told`;
  }

  close(): void {
    this.#server?.closeAllConnections();
    this.#server?.close();
  }

  async #hear(request: IncomingMessage): Promise<void> {
    const parts: Buffer[] = [];
    for await (const part of request) parts.push(part as Buffer);
    this.heard.push({ headers: request.headers, body: Buffer.concat(parts).toString() });
  }
}
