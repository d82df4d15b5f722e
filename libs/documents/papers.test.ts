import { execFile } from 'node:child_process';
import { createHash, generateKeyPairSync } from 'node:crypto';
import { promisify } from 'node:util';
import { certificateFacts } from './certificate-facts.js';
import { renderCertificate } from './certificate.js';
import { codeText, signFacts } from './check-code.js';
import { renderConsentCopy } from './consent-copy.js';
import { renderDaySheet } from './day-sheet.js';
import { renderGoingHome } from './going-home.js';
import { renderLetter } from './letter.js';
import { readPdf } from '#test/support/read-pdf';
import {
  amendedLetter, certificate, consentCopy, correctionLetter, daySheet, goingHome, longLetter, placedLetter, rejectedLetter, resultLetter, statement,
} from './samples.js';
import type { CertificateSnapshot, Paper } from './snapshots.js';

const privateKey = generateKeyPairSync('ed25519').privateKey.export({ type: 'pkcs8', format: 'pem' }).toString();
const signed = (snapshot: CertificateSnapshot): CertificateSnapshot => ({
  ...snapshot,
  code: codeText(`https://${snapshot.checkAddress}`, snapshot.serial, signFacts(certificateFacts(snapshot), snapshot.lang, privateKey)),
});

const [oneCertificate, oneStatement] = [signed(certificate), signed(statement)];
const papers: [name: string, title: string, render: (paper: Paper) => Promise<Buffer>][] = [
  ['letter with a result', 'Brannoch’s hips', (paper) => renderLetter({ ...resultLetter, paper })],
  ['letter with a place in the breed', 'Brannoch’s hips', (paper) => renderLetter({ ...placedLetter, paper })],
  ['letter with long names and three studies', 'רקס’s hips and elbows', (paper) => renderLetter({ ...longLetter, paper })],
  ['amended letter', 'Brannoch’s hips', (paper) => renderLetter({ ...amendedLetter, paper })],
  ['correction', 'A correction about Brannoch', (paper) => renderLetter({ ...correctionLetter, paper })],
  ['letter about rejected films', 'Brannoch’s pictures need another try', (paper) => renderLetter({ ...rejectedLetter, paper })],
  ['certificate', 'Certificate, Tarn of Mill Stair', (paper) => renderCertificate({ ...oneCertificate, paper })],
  ['statement', `Statement of a screening result, ${statement.dog.registeredName}`, (paper) => renderCertificate({ ...oneStatement, paper })],
  ['going-home sheet', 'Tolle goes home', (paper) => renderGoingHome({ ...goingHome, paper })],
  ['day sheet', 'Day sheet, Wednesday 25\u00a0November\u00a02026', (paper) => renderDaySheet({ ...daySheet, paper })],
  ['consent copy', 'What was agreed for Brannoch', (paper) => renderConsentCopy({ ...consentCopy, paper })],
];

describe.each(papers)('the %s', (_, title, render) => {
  it('comes out in the same bytes every time', async () => {
    expect((await render('A4')).equals(await render('A4'))).toBe(true);
  });

  it('is tagged, titled and says its language', async () => {
    const pdf = await readPdf(await render('A4'));
    expect(pdf).toMatchObject({ title, lang: 'en', displaysTitle: true });
    expect(pdf.tags).toEqual(expect.arrayContaining(['Document', 'H1', 'P']));
  });

  it('fits A4 and Letter', async () => {
    const [a4, letter] = [await readPdf(await render('A4')), await readPdf(await render('LETTER'))];
    expect(a4.size.map(Math.round).sort()).toEqual([595, 842]);
    expect(letter.size.map(Math.round).sort()).toEqual([612, 792]);
  });

  it('embeds subsets of its fonts and uses no other', async () => {
    const bytes = (await render('A4')).toString('latin1');
    const names = [...bytes.matchAll(/\/BaseFont \/(\S+)/g)].map(([, name]) => name);
    expect(names.length).toBeGreaterThan(0);
    for (const name of names) expect(name).toMatch(/^[A-Z]{6}\+NotoSans(Hebrew)?-(Regular|SemiBold)$/);
    expect(bytes).toContain('/FontFile2');
  });
});

describe('a paper made in another process, in another time zone', () => {
  it('has the same bytes', async () => {
    const script = `
      const { renderLetter } = await import('#libs/documents/letter');
      const { resultLetter } = await import('#libs/documents/samples');
      const { createHash } = await import('node:crypto');
      process.stdout.write(createHash('sha256').update(await renderLetter(resultLetter)).digest('hex'));`;
    const loader = `
      import { transformFileSync } from '@swc/core';
      import { existsSync } from 'node:fs';
      import { fileURLToPath } from 'node:url';
      export const resolve = (name, context, next) => next(name.endsWith('.js') && context.parentURL?.endsWith('.ts') && name.startsWith('.') && existsSync(fileURLToPath(new URL(name.replace(/js$/, 'ts'), context.parentURL))) ? name.replace(/js$/, 'ts') : name, context);
      export const load = (url, context, next) => url.endsWith('.ts')
        ? { format: 'module', shortCircuit: true, source: transformFileSync(fileURLToPath(url), { swcrc: false, jsc: { target: 'es2023', parser: { syntax: 'typescript' } }, module: { type: 'es6' } }).code }
        : next(url, context);`;
    const url = (code: string) => `data:text/javascript,${encodeURIComponent(code.replace("'@swc/core'", `'${import.meta.resolve('@swc/core')}'`))}`;
    const register = `import { register } from 'node:module'; register(${JSON.stringify(url(loader))});`;
    const { stdout } = await promisify(execFile)(
      process.execPath,
      ['--conditions=development', '--import', url(register), '--input-type=module', '--eval', script],
      { env: { ...process.env, TZ: 'Pacific/Auckland', NODE_OPTIONS: '' } },
    );
    expect(stdout).toBe(createHash('sha256').update(await renderLetter(resultLetter)).digest('hex'));
  });
});

describe('a snapshot of another template', () => {
  it('is refused with what to do', async () => {
    await expect(renderLetter({ ...resultLetter, templateVersion: 99 })).rejects.toThrow('Use the stored file, or make a new snapshot.');
  });
});
