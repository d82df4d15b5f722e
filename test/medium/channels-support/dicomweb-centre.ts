import { buffer } from 'node:stream/consumers';
import { readDataSet } from '#libs/dicom/read-data-set';
import { Happenings } from '../queue-support/until.js';
import type { Centre, Taken } from './centre.js';
import { listening } from './http-centre.js';

/** An archive that speaks DICOMweb as the standard has it: STOW-RS and QIDO-RS, behind a name and a password. */
export async function dicomwebCentre(): Promise<Centre> {
  const had = new Map<string, { study: string }>();
  let refused: number | undefined;
  const { host, close } = await listening(async (request, response) => {
    const say = (status: number, body: unknown) => response.writeHead(status, { 'content-type': 'application/dicom+json' }).end(body === undefined ? undefined : JSON.stringify(body));
    const [path, query] = request.url!.split('?') as [string, string | undefined];
    const study = /^\/dicom-web\/studies\/([\d.]+)/.exec(path)?.[1];
    if (request.headers.authorization !== `Basic ${Buffer.from('practice:word').toString('base64')}`) return void say(401, undefined);
    if (request.method === 'GET' && path === '/dicom-web/studies') return void say(204, undefined);
    if (!study) return void say(404, undefined);
    if (request.method === 'GET') {
      const asked = new URLSearchParams(query).get('SOPInstanceUID')!;
      return void (had.get(asked)?.study === study ? say(200, [{ '00080018': { vr: 'UI', Value: [asked] } }]) : say(204, undefined));
    }
    const film = partOf(await buffer(request), request.headers['content-type']!);
    const reference = { '00081155': { vr: 'UI', Value: [film.sopUid] } };
    if (refused !== undefined && refused-- === 1) return void say(409, { '00081198': { vr: 'SQ', Value: [{ ...reference, '00081197': { vr: 'US', Value: [0x0122] } }] } });
    had.set(film.sopUid, { study });
    centre.taken.add(film);
    await centre.beforeAnswer(film);
    say(200, { '00081199': { vr: 'SQ', Value: [reference] } });
  }, () => centre.away);
  const centre: Centre = {
    channel: { kind: 'dicomweb', address: `http://${host}/dicom-web/`, account: 'practice', secret: 'word' },
    taken: new Happenings(), beforeAnswer: () => Promise.resolve(), away: false, refuse: (n) => { refused = n; }, close,
  };
  return centre;
}

function partOf(body: Buffer, type: string): Taken {
  const [, boundary] = /^multipart\/related; type="application\/dicom"; boundary=(\S+)$/.exec(type)!;
  const from = body.indexOf('\r\n\r\n') + 4;
  const content = body.subarray(from, body.lastIndexOf(`\r\n--${boundary!}--`));
  return { sopUid: readDataSet(content).string('x00080018')!, content };
}
