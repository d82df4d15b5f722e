import { spawn } from 'node:child_process';
import { CreateBucketCommand, type S3Client } from '@aws-sdk/client-s3';
import { s3Client } from '#libs/platform/files/s3-client';
import type { FileSettings } from '#libs/platform/settings/settings';
import { freePort } from '../queue-support/free-port.js';

export interface S3Server {
  files: Extract<FileSettings, { kind: 's3' }>;
  client: S3Client;
  stop(): Promise<void>;
}

/** A real server that speaks S3 and keeps everything in memory. */
export async function startS3(program: string, bucket: string): Promise<S3Server> {
  const port = await freePort();
  const server = spawn(program, ['-H', '127.0.0.1', '-p', String(port)], { stdio: ['ignore', 'ignore', 'pipe'] });
  await new Promise<void>((resolve, reject) => {
    server.stderr.on('data', (line: Buffer) => line.includes('Running on') && resolve());
    server.once('exit', (code) => reject(new Error(`the S3 server ended with ${code}`)));
  });
  const endpoint = `http://127.0.0.1:${port}`;
  const files = { kind: 's3', endpoint, bucket, region: 'us-east-1', accessKeyId: 'any', secretAccessKey: 'any', forcePathStyle: true } as const;
  const client = s3Client(files);
  await client.send(new CreateBucketCommand({ Bucket: bucket }));
  return {
    files,
    client,
    stop: async () => {
      client.destroy();
      const gone = new Promise((resolve) => server.once('exit', resolve));
      server.kill();
      await gone;
    },
  };
}
