import { hash, verify } from '@node-rs/argon2';

/**
 * Argon2id with 19 MiB, 2 passes and 1 lane: the OWASP Password Storage Cheat Sheet's smallest recommended setting
 * (https://cheatsheetseries.owasp.org/cheatsheets/Password_Storage_Cheat_Sheet.html, section Argon2id).
 */
const OWASP = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

/** Longer ones would only keep the server busy. */
const LONGEST = 1024;

/** Typed on one keyboard and checked on another, the same letters may arrive in different codes. */
const asTyped = (password: string) => password.normalize('NFKC');

export async function hashPassword(password: string): Promise<string> {
  if (password.length > LONGEST) throw new RangeError(`A password has at most ${LONGEST} signs.`);
  return hash(asTyped(password), OWASP);
}

export async function passwordMatches(password: string, stored: string): Promise<boolean> {
  return password.length <= LONGEST && (await verify(stored, asTyped(password)));
}

let nobody: Promise<string> | undefined;

/** Takes as long as a real check, so that the answer does not tell whether the name is known. Always false. */
export async function matchNobody(password: string): Promise<false> {
  nobody ??= hashPassword('nobody signs in with this');
  await passwordMatches(password, await nobody);
  return false;
}
