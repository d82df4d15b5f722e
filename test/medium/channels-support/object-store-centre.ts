import { request as call } from 'node:http';
import { buffer } from 'node:stream/consumers';
import { readDataSet } from '#libs/dicom/read-data-set';
import { startS3 } from '../files-support/s3-server.js';
import { Happenings } from '../queue-support/until.js';
import type { Centre } from './centre.js';
import { isSigned } from './check-signature.js';
import { listening } from './http-centre.js';

/** A real server that speaks S3, behind a line on which one sees what comes. */
export async function objectStoreCentre(): Promise<Centre> {
  const store = await startS3('films');
  const { bucket, accessKeyId, secretAccessKey } = store.files;
  const behind = new URL(store.files.endpoint!);
  let refused: number | undefined;
  const { host, close } = await listening(async (request, response) => {
    const body = await buffer(request);
    if (!isSigned(request, secretAccessKey)) return void response.writeHead(403).end();
    if (request.method === 'PUT' && refused !== undefined && refused-- === 1) return void response.writeHead(400).end('<Error><Code>EntityTooLarge</Code><Message>Your proposed upload exceeds the maximum allowed size</Message></Error>');
    const answer = await new Promise<{ status: number; headers: object; body: Buffer }>((resolve, reject) => {
      const through = call({ host: behind.hostname, port: behind.port, path: request.url, method: request.method, headers: request.headers }, (from) => {
        buffer(from).then((text) => resolve({ status: from.statusCode!, headers: from.headers, body: text }), reject);
      });
      through.on('error', reject);
      through.end(body);
    });
    if (request.method === 'PUT' && answer.status === 200) {
      const film = { sopUid: readDataSet(body).string('x00080018')!, content: body };
      centre.taken.add(film);
      await centre.beforeAnswer(film);
    }
    response.writeHead(answer.status, answer.headers as Record<string, string>).end(answer.body);
  }, () => centre.away);
  const centre: Centre = {
    channel: { kind: 'objectStore', address: `http://${host}`, bucket, account: accessKeyId, secret: secretAccessKey },
    taken: new Happenings(), beforeAnswer: () => Promise.resolve(), away: false, refuse: (n) => { refused = n; },
    close: async () => {
      await close();
      await store.stop();
    },
  };
  return centre;
}
