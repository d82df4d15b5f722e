/** The part of yauzl 3.2 that the tests use; it ships without types. */
declare module 'yauzl' {
  import type { EventEmitter } from 'node:events';
  import type { Readable } from 'node:stream';

  interface Entry { fileName: string }
  interface ZipFile extends EventEmitter {
    on(event: 'entry', listener: (entry: Entry) => void): this;
    on(event: 'end', listener: () => void): this;
    on(event: 'error', listener: (error: Error) => void): this;
    readEntry(): void;
    openReadStream(entry: Entry, done: (...answer: [error: Error, stream: undefined] | [error: null, stream: Readable]) => void): void;
  }
  const yauzl: { fromBuffer(content: Buffer, options: { lazyEntries: boolean }, done: (...answer: [error: Error, zip: undefined] | [error: null, zip: ZipFile]) => void): void };
  export default yauzl;
}
