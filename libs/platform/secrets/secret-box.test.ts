import { randomBytes } from 'node:crypto';
import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openSecretBox } from './open-secret-box.js';
import { parseKeys } from './parse-keys.js';
import { SecretBox } from './secret-box.js';
import { SecretLostError } from './secret-lost-error.js';

const [first, second] = [randomBytes(32), randomBytes(32)];
const word = 'correct horse – Pferd';

describe('a sealed secret', () => {
  it('opens where it belongs, and is sealed otherwise each time', () => {
    const box = new SecretBox([first]);
    const sealed = box.seal(word, 'webhook 1');
    expect(box.open(sealed, 'webhook 1')).toBe(word);
    expect(sealed).not.toContain('horse');
    expect(box.seal(word, 'webhook 1')).not.toBe(sealed);
  });

  it('does not open in another row, with another key, or with a sign changed anywhere', () => {
    const box = new SecretBox([first]);
    const sealed = box.seal(word, 'webhook 1');
    expect(() => box.open(sealed, 'webhook 2')).toThrow(SecretLostError);
    expect(() => new SecretBox([second]).open(sealed, 'webhook 1')).toThrow(/which this server does not have/);
    const body = sealed.lastIndexOf('.') + 1;
    for (let at = body; at < sealed.length - 1; at += 1) expect(() => box.open(sealed.slice(0, at) + (sealed[at] === 'A' ? 'B' : 'A') + sealed.slice(at + 1), 'webhook 1')).toThrow(SecretLostError);
    for (const cut of [sealed.slice(0, body), sealed.slice(0, body + 20), sealed.slice(0, body - 3)]) expect(() => box.open(cut, 'webhook 1')).toThrow(SecretLostError);
  });

  it('opens by a key before, while the new one seals', () => {
    const sealed = new SecretBox([first]).seal(word, 'a');
    const both = new SecretBox([second, first]);
    expect(both.open(sealed, 'a')).toBe(word);
    expect(new SecretBox([second]).open(both.seal(word, 'a'), 'a')).toBe(word);
    expect([both.knows(new SecretBox([first]).keyId), both.knows(null), both.knows('00000000')]).toEqual([true, true, false]);
  });

  it('that was stored before secrets were sealed is read as it stands', () => {
    expect(new SecretBox([first]).open('plain', 'a')).toBe('plain');
  });
});

describe('keys', () => {
  it('are 32 bytes in base64, one or several', () => {
    expect(parseKeys(`${first.toString('base64')}\n ${second.toString('base64url')}`)).toEqual([first, second]);
    for (const wrong of ['', 'word', first.toString('base64').slice(1), `${first.toString('base64')} word`, randomBytes(31).toString('base64')]) expect(parseKeys(wrong)).toBeUndefined();
  });

  it('are made once, whoever starts first, and read by nobody else', async () => {
    const folder = await mkdtemp(path.join(tmpdir(), 'keys-'));
    const secrets = { keys: undefined, keyFile: path.join(folder, 'new', 'secrets-key') };
    const boxes = await Promise.all([1, 2, 3, 4].map(() => openSecretBox({ secrets })));
    expect(new Set(boxes.map((box) => box.keyId)).size).toBe(1);
    expect((await stat(secrets.keyFile)).mode & 0o777).toBe(0o600);
    expect(parseKeys(await readFile(secrets.keyFile, 'utf8'))).toHaveLength(1);
    await writeFile(secrets.keyFile, 'cut short');
    await expect(openSecretBox({ secrets })).rejects.toThrow(/holds no key/);
    expect((await openSecretBox({ secrets: { ...secrets, keys: first.toString('base64') } })).keyId).toBe(new SecretBox([first]).keyId);
    await rm(folder, { recursive: true });
  });
});
