import { SecretBox } from '#libs/platform/secrets/secret-box';

/** Of tests alone, and the same in every process of one. */
export const testSecrets = new SecretBox([Buffer.alloc(32, 'only tests seal with this')]);
