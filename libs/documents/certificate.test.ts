import { generateKeyPairSync } from 'node:crypto';
import { certificateFacts } from './certificate-facts.js';
import { renderCertificate } from './certificate.js';
import { codeText, signFacts } from './check-code.js';
import { readPdf } from '#test/support/read-pdf';
import { certificate, statement } from './samples.js';
import type { CertificateSnapshot } from './snapshots.js';

const { privateKey } = generateKeyPairSync('ed25519');
const pem = privateKey.export({ type: 'pkcs8', format: 'pem' }).toString();

async function print(snapshot: CertificateSnapshot) {
  const code = codeText(`https://${snapshot.checkAddress}`, snapshot.serial, signFacts(certificateFacts(snapshot), pem));
  return readPdf(await renderCertificate({ ...snapshot, code }));
}

describe('the certificate', () => {
  it.each([['certificate', certificate], ['statement', statement]])('prints on one page every fact that the code of a %s signs', async (_, snapshot) => {
    const { pages, text } = await print(snapshot);
    expect(pages).toHaveLength(1);
    // Names, reasons and values; the parts of a joint stand on lines of their own.
    for (const [, value] of certificateFacts(snapshot)) for (const part of value.split('; ')) expect(text).toContain(part);
  });

  it('takes its title from who may certify', async () => {
    expect((await print(certificate)).text).toMatch(/^Certificate Reading centre, Threnfold/);
    const { text } = await print(statement);
    expect(text).toMatch(/^Statement of a screening result/);
    expect(text).toContain('The original of Kennel Union of the Upper Aldra is attached, untouched.');
    expect(text).not.toContain('Certificate');
  });

  it('says its limits, the risk of sleep medicine and where to check it', async () => {
    const { text, tags } = await print(certificate);
    expect(text).toContain('describe both hips and both elbows on one day');
    expect(text).toContain('carries a small risk');
    expect(text).toContain('weirside.example/check shows every fact printed here');
    expect(tags.filter((tag) => tag === 'Figure')).toHaveLength(2);
  });

  it('names no owner', () => {
    expect(JSON.stringify(certificateFacts(certificate))).not.toMatch(/owner(?! states)/i);
  });
});
