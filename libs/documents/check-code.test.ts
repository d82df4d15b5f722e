import { createHash, generateKeyPairSync } from 'node:crypto';
import { deflateRawSync } from 'node:zlib';
import { certificateFacts } from './certificate-facts.js';
import { DICTIONARIES } from './check-code-dictionary.js';
import { codeText, readCode, signFacts, verifyFacts } from './check-code.js';
import { certificate, statement } from './samples.js';
import { bescheinigung, mitteilung } from './samples-german.js';

const pair = () => {
  const { privateKey, publicKey } = generateKeyPairSync('ed25519');
  return {
    private: privateKey.export({ type: 'pkcs8', format: 'pem' }).toString(),
    public: publicKey.export({ type: 'spki', format: 'pem' }).toString(),
  };
};
const key = pair();
const facts = certificateFacts(certificate);
const ADDRESS = 'https://weirside.example/check';
const signed = signFacts(facts, 'en', key.private);

describe('the check code', () => {
  it.each([certificate, bescheinigung, mitteilung])('gives back the printed facts with the public key alone ($lang)', (paper) => {
    const printed = certificateFacts(paper);
    const text = codeText(ADDRESS, paper.serial, signFacts(printed, paper.lang, key.private));
    const code = readCode(text);
    expect(code && verifyFacts(code, key.public)).toEqual(printed);
    expect(text).toMatch(/^https:\/\/weirside\.example\/check\/4HT8-QZ2N-K7WD#/);
  });

  it('refuses facts that were altered by one sign, with the first signature kept', () => {
    const altered = facts.map(([label, value]): [string, string] => [label, value.replace('grade 1', 'grade 0')]);
    const forged = { ...signFacts(altered, 'en', pair().private), signature: signed.signature };
    expect(verifyFacts(forged, key.public)).toBeNull();
  });

  it('refuses another signer', () => {
    expect(verifyFacts(signFacts(facts, 'en', pair().private), key.public)).toBeNull();
  });

  it('refuses facts under the mark of another language', () => {
    expect(verifyFacts({ ...signed, language: 'de' }, key.public)).toBeNull();
    expect(verifyFacts({ ...signFacts(facts, 'de', key.private), language: 'en' }, key.public)).toBeNull();
    // Packed anew with the other dictionary, the name that was signed still tells.
    const repacked = signFacts(facts, 'de', pair().private);
    expect(verifyFacts({ ...repacked, signature: signed.signature }, key.public)).toBeNull();
  });

  it.each(['', 'AAAA', 'not base64 at all', deflateRawSync(Buffer.alloc(1_000_000)).toString('base64url')])('refuses a damaged payload: %.20s', (payload) => {
    expect(verifyFacts({ ...signed, payload }, key.public)).toBeNull();
  });

  it('reads no code out of another address, nor of a language that there is not', () => {
    expect(readCode('https://weirside.example/check/4HT8-QZ2N-K7WD')).toBeNull();
    expect(readCode(`${ADDRESS}/4HT8-QZ2N-K7WD#xx.${signed.payload}.${signed.signature}`)).toBeNull();
  });

  it('stays coarse enough for a telephone: under 700 signs', () => {
    for (const paper of [statement, bescheinigung]) {
      expect(codeText(ADDRESS, paper.serial, signFacts(certificateFacts(paper), paper.lang, key.private)).length).toBeLessThan(700);
    }
  });
});

/** Printed, signed with a key that was thrown away, and in somebody's drawer since. */
const DRAWER = {
  key: `-----BEGIN PUBLIC KEY-----
MCowBQYDK2VwAyEAm4rYmvzgJT3SG1iKnxofMmEGUK5qBxtTIqaf5mFMmt8=
-----END PUBLIC KEY-----`,
  english: 'https://weirside.example/check/4HT8-QZ2N-K7WD#vdXBSsNAEAbgVxk8JyXZpCQeIz0IoigbKCg9LNmxOzDdymb7Xj6DTyapSzWGJEWkD7A7_2H-b15mtRsRLCQJH0dQG4f2dc86Os2sWDsFN6olC21jcIdAx5JBt2OHrYE1kmtJI1SWdorh0anGU4MRaGTcKo-6044YsrRXpeKHfLVytlu7e2IG6RW5AYZSHhWL07QshubJvbPUGpDoPbq-jV8Gim8M5jWEPBGwXE6oKBdQae5GrZCZ7G8Mr0-OjKkoAovlBV3MkmGs8_UQ_yFAKOrki9lqT9b6z7zmI76eAVaSfbzPoNVFNPQWRPUHZ8NZvwwnaT4Biuiv66IPTH5bl_HTs3iI74r16mqz-QQ.XwcQLWmtdJnInwGUuxf7nT2A8EjMcVe6dfUkGiiEamN5DNZH0EF-hRzLB4XaCwoplYY1FRHND5EbFEn787rSAg',
};

describe('a paper that was printed before', () => {
  it('in English, when there was no other language, still verifies, and its page still shows the very words', () => {
    const code = readCode(DRAWER.english)!;
    expect(verifyFacts(code, DRAWER.key)).toEqual(facts);
    expect(code.language).toBe('en');
  });

  it.each([['en', 'ad26e173351aadf39fb2433a96b008d95004848ddaec42f4a878bd323c5b41f3'], ['de', 'f9471034c714dff3bbabdfacbec839406bfadaf0a962be1739c049f55f9e8a52']] as const)('finds the dictionary that it was packed with (%s)', (language, hash) => {
    expect(createHash('sha256').update(DICTIONARIES[language]).digest('hex')).toBe(hash);
  });

  // Labels and values are compared with papers by eye: whoever edits a sentence of the certificate is told so here.
  it.each([['en', [certificate, statement], 'fa48359d8a52851b179398ab531948d2dc75a90794a9580f7b7a1f0d98be253a'], ['de', [bescheinigung, mitteilung], '82b08dd0947b7229f69ed02d6e6bf8ca02b13226b748ccb83c1bddfe3413c716']] as const)('is shown word for word as it was printed (%s)', (_, papers, hash) => {
    expect(createHash('sha256').update(JSON.stringify(papers.map((paper) => certificateFacts(paper)))).digest('hex')).toBe(hash);
  });
});
