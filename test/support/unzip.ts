import { buffer } from 'node:stream/consumers';
import yauzl from 'yauzl';

/** Every file of a zip, by its name. */
export function unzip(content: Buffer): Promise<Map<string, Buffer>> {
  const files = new Map<string, Buffer>();
  return new Promise((resolve, reject) => {
    yauzl.fromBuffer(content, { lazyEntries: true }, (error, zip) => {
      if (error) return reject(error);
      zip.on('error', reject);
      zip.on('end', () => resolve(files));
      zip.on('entry', (entry) => {
        zip.openReadStream(entry, (broken, stream) => {
          if (broken) return reject(broken);
          buffer(stream).then((bytes) => {
            files.set(entry.fileName, bytes);
            zip.readEntry();
          }, reject);
        });
      });
      zip.readEntry();
    });
  });
}
