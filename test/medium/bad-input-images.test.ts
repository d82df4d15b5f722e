import sharp from 'sharp';
import yazl from 'yazl';
import { buffer } from 'node:stream/consumers';
import type { Uploaded } from '#libs/contracts/screens/order';
import { complaintOf } from './access-support/complaint.js';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { contentOf } from './access-support/tables.js';
import { signIn, type Visitor } from './access-support/visitor.js';
import { dicomFile, pixels16 } from './files-support/dicom-file.js';

let open: OpenApi;
let sef: Visitor;
let url: string;
let whole: Record<'png' | 'jpeg' | 'dicom', Buffer>;

beforeAll(async () => {
  open = await openApi(['Nettle']);
  sef = await signIn(open.url, 'sef@weirside.example');
  url = `/api/orders/${open.roads[0]!.order}/images`;
  const noise = sharp({ create: { width: 400, height: 300, channels: 3, background: { r: 90, g: 90, b: 90 }, noise: { type: 'gaussian', mean: 100, sigma: 40 } } });
  whole = { png: await noise.clone().png().toBuffer(), jpeg: await noise.clone().jpeg().toBuffer(), dicom: dicomFile({ rows: 2, columns: 3, pixels: pixels16(1, 2, 3, 4, 5, 6) }) };
}, 60_000);
afterAll(() => open.close());

function upload(content: Uint8Array, name: string, type = ''): Promise<{ status: number; body: unknown; headers: Headers }> {
  const form = new FormData();
  form.append('image', new Blob([content], { type }), name);
  return sef.ask({ method: 'POST', url, body: form });
}

function zip(): Promise<Buffer> {
  const archive = new yazl.ZipFile();
  archive.addBuffer(Buffer.from('words'), 'words.txt');
  archive.end();
  return buffer(archive.outputStream);
}

const half = (content: Buffer) => content.subarray(0, content.length / 2);
const html = Buffer.from('<!doctype html><script>alert(1)</script>');
const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>');

const lies: [string, () => Promise<Buffer> | Buffer, string][] = [
  ['half a PNG', () => half(whole.png), 'film.png'],
  ['half a JPEG', () => half(whole.jpeg), 'film.jpg'],
  ['half a DICOM file', () => half(whole.dicom), 'film.dcm'],
  ['a DICOM file without its last pixel', () => whole.dicom.subarray(0, whole.dicom.length - 2), 'film.dcm'],
  ['the first bytes of a PNG', () => whole.png.subarray(0, 8), 'film.png'],
  ['a text named .png', () => Buffer.from('This is a text.'), 'film.png'],
  ['a page named .jpg', () => html, 'film.jpg'],
  ['a drawing with a script named .png', () => svg, 'film.png'],
  ['a zip named .dcm', zip, 'film.dcm'],
  ['a PDF named .png', () => Buffer.from('%PDF-1.7\n%%EOF'), 'film.png'],
  ['nothing', () => Buffer.alloc(0), 'film.png'],
];

describe('a file that is cut short or not what it says', () => {
  it.each(lies)('%s is refused with a sentence, and no image is there', async (what, content, name) => {
    const before = await contentOf(open.owner);
    const complaint = complaintOf(await upload(await content(), name, 'image/png'), what);
    expect(complaint.code).toBe('IMAGE_REFUSED');
    expect(await contentOf(open.owner)).toEqual(before);
    expect(open.broken).toEqual([]);
  });

  it('is what the refusals above were about: the whole files are taken', async () => {
    for (const [kind, content] of Object.entries(whole)) expect({ kind, ...(await upload(content, `film.${kind}`)) }).toMatchObject({ kind, status: 201, body: { kind } satisfies Partial<Uploaded> | object });
  });

  it('is kept under its content, wherever its name points', async () => {
    const answer = await upload(await sharp(whole.png).negate().toBuffer(), '../../etc/passwd');
    expect(answer).toMatchObject({ status: 201, body: { kind: 'png' } });
  });
});

describe('a request that should bring a file', () => {
  const form = { 'content-type': 'multipart/form-data; boundary=abc' };
  const broken: [string, Record<string, string>, string][] = [
    ['without one', form, '--abc--\r\n'],
    ['with a field in its place', form, '--abc\r\ncontent-disposition: form-data; name="image"\r\n\r\nwords\r\n--abc--\r\n'],
    ['that breaks off', form, '--abc\r\ncontent-disposition: form-data; name="image"; filename="a.png"\r\n\r\nhalf'],
    ['without a boundary', { 'content-type': 'multipart/form-data' }, 'words'],
    ['that is JSON', { 'content-type': 'application/json' }, '{"image": "x"}'],
    ['that is no form at all', { 'content-type': 'multipart/form-data; boundary=abc' }, 'words'],
  ];

  it.each(broken)('%s is refused', async (what, headers, body) => {
    const before = await contentOf(open.owner);
    const { code } = complaintOf(await sef.ask({ method: 'POST', url, headers, body }), what);
    expect(['BAD_INPUT', 'IMAGE_REFUSED']).toContain(code);
    expect(await contentOf(open.owner)).toEqual(before);
    expect(open.broken).toEqual([]);
  });

  it('for an order that is not there is refused', async () => {
    const form = new FormData();
    form.append('image', new Blob([whole.png]), 'film.png');
    const answer = await sef.ask({ method: 'POST', url: url.replace(/[0-9a-f-]{36}/, '00000000-0000-4000-8000-000000000000'), body: form });
    expect(complaintOf(answer, 'another order').code).toBe('NOT_FOUND');
  });
});
