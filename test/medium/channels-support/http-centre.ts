import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { once } from 'node:events';

/** A server on this machine whose line can be lost. */
export async function listening(answer: (request: IncomingMessage, response: ServerResponse) => Promise<void>, isAway: () => boolean): Promise<{ host: string; close(): Promise<void> }> {
  const server: Server = createServer((request, response) => {
    if (isAway()) return void request.destroy();
    answer(request, response).catch(() => request.destroy());
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  return {
    host: `127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: async () => {
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
    },
  };
}
