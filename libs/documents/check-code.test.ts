import { createHash, generateKeyPairSync } from 'node:crypto';
import { deflateRawSync } from 'node:zlib';
import { certificateFacts } from './certificate-facts.js';
import { DICTIONARY_1 } from './check-code-dictionary.js';
import { codeText, readCode, signFacts, verifyFacts } from './check-code.js';
import { certificate, statement } from './samples.js';

const pair = () => {
  const { privateKey, publicKey } = generateKeyPairSync('ed25519');
  return {
    private: privateKey.export({ type: 'pkcs8', format: 'pem' }).toString(),
    public: publicKey.export({ type: 'spki', format: 'pem' }).toString(),
  };
};
const key = pair();
const facts = certificateFacts(certificate);

describe('the check code', () => {
  it('gives back the printed facts with the public key alone', () => {
    const text = codeText('https://weirside.example/check', certificate.serial, signFacts(facts, key.private));
    const code = readCode(text);
    expect(code && verifyFacts(code, key.public)).toEqual(facts);
    expect(text).toMatch(/^https:\/\/weirside\.example\/check\/4HT8-QZ2N-K7WD#/);
  });

  it('refuses facts that were altered by one sign, with the first signature kept', () => {
    const altered = facts.map(([label, value]): [string, string] => [label, value.replace('grade 1', 'grade 0')]);
    const forged = { payload: signFacts(altered, pair().private).payload, signature: signFacts(facts, key.private).signature };
    expect(verifyFacts(forged, key.public)).toBeNull();
  });

  it('refuses another signer', () => {
    expect(verifyFacts(signFacts(facts, pair().private), key.public)).toBeNull();
  });

  it.each(['', 'AAAA', 'not base64 at all', deflateRawSync(Buffer.alloc(1_000_000)).toString('base64url')])('refuses a damaged payload: %.20s', (payload) => {
    expect(verifyFacts({ payload, signature: signFacts(facts, key.private).signature }, key.public)).toBeNull();
  });

  it('reads no code out of another address', () => {
    expect(readCode('https://weirside.example/check/4HT8-QZ2N-K7WD')).toBeNull();
  });

  it('stays coarse enough for a telephone: under 700 signs for three studies', () => {
    const text = codeText('https://weirside.example/check', statement.serial, signFacts(certificateFacts(statement), key.private));
    expect(text.length).toBeLessThan(700);
  });

  it('keeps the dictionary that papers already printed were packed with', () => {
    expect(createHash('sha256').update(DICTIONARY_1).digest('hex')).toBe('ad26e173351aadf39fb2433a96b008d95004848ddaec42f4a878bd323c5b41f3');
  });
});
