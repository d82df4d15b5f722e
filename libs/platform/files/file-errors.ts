export class FileTooLargeError extends Error {
  readonly maxBytes: number;

  constructor(maxBytes: number) {
    super(`The file is larger than the ${Math.floor(maxBytes / 1024 / 1024)} MB allowed here.`);
    this.name = 'FileTooLargeError';
    this.maxBytes = maxBytes;
  }
}

/** No room for the file; nothing of it is kept. Comes right when somebody makes room. */
export class StorageFullError extends Error {
  constructor(options?: ErrorOptions) {
    super('The file store is full. Whoever runs the server must make room.', options);
    this.name = 'StorageFullError';
  }
}

/** What is kept under a name is not what was put there: a person must restore it from a backup. */
export class FileCorruptError extends Error {
  readonly sha256: string;

  constructor(sha256: string) {
    super(`The stored file ${sha256} was changed or damaged after it was stored.`);
    this.name = 'FileCorruptError';
    this.sha256 = sha256;
  }
}

export class FileMissingError extends Error {
  readonly sha256: string;

  constructor(sha256: string) {
    super(`No file ${sha256} is stored.`);
    this.name = 'FileMissingError';
    this.sha256 = sha256;
  }
}

export function assertSha256(name: string): void {
  if (!/^[0-9a-f]{64}$/.test(name)) throw new RangeError('A stored file is named by 64 hexadecimal digits.');
}
