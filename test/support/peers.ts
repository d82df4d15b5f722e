import { accessSync, constants } from 'node:fs';
import path from 'node:path';

/** Programs of other people that some tests talk to, and the Debian package of each. */
const peers = {
  'redis-server': 'redis-server',
  chromium: 'chromium',
  pdftotext: 'poppler-utils',
  pdftoppm: 'poppler-utils',
} as const;

export type Peer = keyof typeof peers;

function isExecutable(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Where the program is, or undefined. */
export function findPeer(peer: Peer): string | undefined {
  const folders = (process.env.PATH ?? '').split(path.delimiter);
  return folders.map((folder) => path.join(folder, peer)).find(isExecutable);
}

/** Tests that need a peer: skipped with the reason where it is not installed, failed there with REQUIRE_PEERS=1. */
export function describeWithPeer(peer: Peer, title: string, tests: (program: string) => void): void {
  const program = findPeer(peer);
  if (program) {
    describe(title, () => tests(program));
    return;
  }
  const reason = `${peer} is not on this machine (Debian package ${peers[peer]})`;
  if (process.env.REQUIRE_PEERS === '1') {
    describe(title, () => {
      it(`needs a peer: ${reason}`, () => {
        throw new Error(`REQUIRE_PEERS=1, but ${reason}`);
      });
    });
    return;
  }
  describe.skip(`${title} (skipped: ${reason})`, () => tests(''));
}
