import { generateKeyPairSync } from 'node:crypto';
import { certificateFacts } from './certificate-facts.js';
import { renderCertificate } from './certificate.js';
import { codeText, signFacts } from './check-code.js';
import { readPdf } from '#test/support/read-pdf';
import { textOnText } from '#test/support/text-on-text';
import { certificate, statement } from './samples.js';
import { bescheinigung, mitteilung } from './samples-german.js';
import type { CertificateSnapshot } from './snapshots.js';

const { privateKey } = generateKeyPairSync('ed25519');
const pem = privateKey.export({ type: 'pkcs8', format: 'pem' }).toString();

function render(snapshot: CertificateSnapshot): Promise<Buffer> {
  const code = codeText(`https://${snapshot.checkAddress}`, snapshot.serial, signFacts(certificateFacts(snapshot), snapshot.lang, pem));
  return renderCertificate({ ...snapshot, code });
}
const print = async (snapshot: CertificateSnapshot) => readPdf(await render(snapshot));

const papers: [string, CertificateSnapshot][] = [['certificate', certificate], ['statement', statement], ['German certificate', bescheinigung], ['German statement', mitteilung]];

describe('the certificate', () => {
  it.each(papers)('prints on one page every fact that the code of a %s signs', async (_, snapshot) => {
    const { pages, text } = await print(snapshot);
    expect(pages).toHaveLength(1);
    // Names, reasons and values; the parts of a joint stand on lines of their own.
    for (const [label, value] of certificateFacts(snapshot)) for (const part of [label, ...value.split('; ')]) if (!['Paper', 'From', 'Reading', 'Serial', 'Papier', 'Von', 'Beurteilung', 'Nummer'].includes(part)) expect(text).toContain(part);
  });

  it.each(papers.flatMap(([name, snapshot]) => (['A4', 'LETTER'] as const).map((paper) => [name, paper, { ...snapshot, paper }] as const)))('has words beside words and none over others, for a %s on %s', async (_, __, snapshot) => {
    expect(await textOnText(await render(snapshot))).toEqual([]);
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

  it('says all that in German, with its language in the file and no word of English', async () => {
    const { text, lang, title, figures } = await print(bescheinigung);
    expect([lang, title]).toEqual(['de', 'Bescheinigung, Tarn of Mill Stair']);
    for (const words of ['beschreibt beide Hüften und beide Ellbogen an einem Tag', 'birgt ein kleines Risiko', 'weirside.example/check zeigt jede Angabe', 'Sornish Setter, Hündin', '9. Oktober 2026', '2 Jahre 8 Monate', 'ja, Sedierung']) expect(text).toContain(words);
    expect([text, ...figures].join(' ')).not.toMatch(/\b(the|and|with|version|left|right|grade|none)\b/);
  });

  it('names no owner', () => {
    expect(JSON.stringify(certificateFacts(certificate))).not.toMatch(/owner(?! states)/i);
  });
});

describe('the facts of an English paper', () => {
  it('are told in German as far as the program put them together', () => {
    const said = Object.fromEntries(certificateFacts(statement, 'de'));
    expect(said).toMatchObject({ Papier: 'Mitteilung eines Untersuchungsergebnisses', Geboren: '1. Januar 2024 bis 31. März 2024', Transponder: 'keiner', 'Frühere Operation': 'keine, laut Besitzerin/Besitzer' });
  });
});
