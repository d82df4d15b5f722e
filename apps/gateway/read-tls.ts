import { readFile } from 'node:fs/promises';
import type { GatewayTls } from '#libs/platform/settings/settings';

/** Key, certificate and the CA of the machines, read at start: one that is not there stops it, with a sentence. */
export async function readTls({ port, keyFile, certFile, clientCaFile }: GatewayTls) {
  const [key, cert, clientCa] = await Promise.all([read('GATEWAY_TLS_KEY_FILE', keyFile), read('GATEWAY_TLS_CERT_FILE', certFile), clientCaFile && read('GATEWAY_TLS_CLIENT_CA_FILE', clientCaFile)]);
  return { port, key, cert, ...(clientCa && { clientCa }) };
}

async function read(variable: string, file: string): Promise<Buffer> {
  try {
    return await readFile(file);
  } catch (error) {
    throw new Error(`${variable} names ${file}, which cannot be read.`, { cause: error });
  }
}
