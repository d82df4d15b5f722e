import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { CreateBucketCommand, type S3Client } from '@aws-sdk/client-s3';
import S3rver from 's3rver';
import { s3Client } from '#libs/platform/files/s3-client';
import type { FileSettings } from '#libs/platform/settings/settings';
import { freePort } from '../queue-support/free-port.js';

export interface S3Server {
  files: Extract<FileSettings, { kind: 's3' }>;
  client: S3Client;
  stop(): Promise<void>;
}

/** The key that this test server knows; it looks at no signature. */
const KEY = 'S3RVER';

/** A real server that speaks S3 over HTTP, with its files in a folder of its own. */
export async function startS3(bucket: string): Promise<S3Server> {
  const directory = mkdtempSync(path.join(os.tmpdir(), 'cotyla-s3-'));
  const port = await freePort();
  const server = new S3rver({ address: '127.0.0.1', port, silent: true, directory });
  await server.run();
  const files = { kind: 's3', endpoint: `http://127.0.0.1:${port}`, bucket, region: 'us-east-1', accessKeyId: KEY, secretAccessKey: KEY, forcePathStyle: true } as const;
  const client = s3Client(files);
  await client.send(new CreateBucketCommand({ Bucket: bucket }));
  return {
    files,
    client,
    stop: async () => {
      client.destroy();
      await server.close();
      rmSync(directory, { recursive: true, force: true });
    },
  };
}
