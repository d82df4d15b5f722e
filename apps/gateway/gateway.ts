import { createServer, type AddressInfo, type Server, type Socket } from 'node:net';
import { createServer as createSecureServer } from 'node:tls';
import dimse from 'dcmjs-dimse';
import { IMPLEMENTATION } from '#libs/dicom/uids';
import { MAX_IMAGE_BYTES } from '#libs/steps/imaging/store-image';
import { Line, type LineLimits, type LineOptions } from './line.js';
import { LinesOf } from './lines-of.js';

const MINUTE = 60_000;
const LIMITS: LineLimits = {
  maxImageBytes: MAX_IMAGE_BYTES, maxImageMs: 10 * MINUTE, maxImages: 2000, maxAnswers: 500, maxPdu: 131_072, maxMessageBytes: 4 * 1024 * 1024, maxLines: 20, firstWordMs: 30_000,
  // A console keeps its line open between two exposures.
  idleMs: 10 * MINUTE,
};
const MOST_LINES = 100;

export interface GatewayOptions extends Omit<LineOptions, 'limits' | 'lines'> {
  host: string;
  port: number;
  /** A second port for machines that speak TLS; with a client CA, for those alone whose certificate it signed. */
  tls?: { port: number; key: Buffer; cert: Buffer; clientCa?: Buffer | undefined } | undefined;
  limits?: Partial<LineLimits>;
}

export interface Gateway {
  port: number;
  tlsPort?: number;
  /** Resolves when every line has ended; those that still talk after so long are cut. */
  close(limitMs: number): Promise<void>;
}

/** The port that X-ray machines talk to: their worklist, and the images that they send. */
export async function startGateway({ host, port, tls, limits, ...options }: GatewayOptions): Promise<Gateway> {
  dimse.log.setLevel('silent');
  dimse.Implementation.setImplementationClassUid(IMPLEMENTATION.uid);
  dimse.Implementation.setImplementationVersion(IMPLEMENTATION.version);
  const all = { ...LIMITS, ...limits };
  dimse.Implementation.setMaxPduLength(all.maxPdu);
  const open = new Set<Socket>();
  const lines = new LinesOf();
  const keep = (socket: Socket) => {
    open.add(socket);
    socket.on('close', () => open.delete(socket));
  };
  const taken = (socket: Socket) => {
    keep(socket);
    socket.setNoDelay(true);
    const line = new Line(socket, { ...options, lines, limits: all });
    // The library counts the time to the first word only from when it is told that there is a line.
    Object.assign(line, { connected: true, connectedTime: Date.now() });
  };
  const plain = createServer(taken);
  const secure = tls && createSecureServer({ key: tls.key, cert: tls.cert, ca: tls.clientCa, requestCert: tls.clientCa !== undefined, rejectUnauthorized: tls.clientCa !== undefined, minVersion: 'TLSv1.2', handshakeTimeout: all.firstWordMs }, taken);
  // Below each secure line, and before it is one, is a plain one.
  secure?.on('connection', keep);
  secure?.on('tlsClientError', (error, socket) => {
    options.log(`a line over TLS: ${error.message}`);
    socket.destroy();
  });
  const servers = secure ? [plain, secure] : [plain];
  for (const server of servers) server.maxConnections = MOST_LINES;
  await listen(plain, port, host);
  if (secure) await listen(secure, tls.port, host);
  for (const server of servers) server.on('error', (error) => options.log('the port', error));
  return {
    port: portOf(plain),
    ...(secure && { tlsPort: portOf(secure) }),
    close: async (limitMs) => {
      const cut = setTimeout(() => { for (const socket of open) socket.destroy(); }, limitMs);
      await Promise.all(servers.map((server) => new Promise((closed) => server.close(closed))));
      clearTimeout(cut);
    },
  };
}

const portOf = (server: Server): number => (server.address() as AddressInfo).port;

function listen(server: Server, port: number, host: string): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      resolve();
    });
  });
}
