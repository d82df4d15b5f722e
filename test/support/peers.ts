import { accessSync, constants } from 'node:fs';
import path from 'node:path';

/** Programs of other people that some tests talk to, and the Debian package of each. */
const peers = {
  'redis-server': 'redis-server',
  chromium: 'chromium',
  pdftotext: 'poppler-utils',
  pdftoppm: 'poppler-utils',
  storescu: 'dcmtk',
  dciodvfy: 'dicom3tools',
  Orthanc: 'orthanc-dicomweb',
  openssl: 'openssl',
  gdcmconv: 'libgdcm-tools',
  'python3-pydicom': 'python3-pydicom',
} as const;

/** Where a peer is that is no program but a folder of files. */
const folders: Partial<Record<string, string>> = { 'python3-pydicom': '/usr/lib/python3/dist-packages/pydicom/data' };

export type Peer = keyof typeof peers;

function isExecutable(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Where the program or the folder is, or undefined. */
export function findPeer(peer: Peer): string | undefined {
  const places = folders[peer] ? [folders[peer]] : (process.env.PATH ?? '').split(path.delimiter).map((folder) => path.join(folder, peer));
  return places.find(isExecutable);
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
