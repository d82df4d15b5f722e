import { HeadBucketCommand, S3Client, S3ServiceException } from '@aws-sdk/client-s3';
import { lineFault, PATIENCE_MS } from './line-fault.js';
import type { FileSettings } from './settings.js';

export async function bucketFault(files: Extract<FileSettings, { kind: 's3' }>): Promise<string | undefined> {
  const { endpoint, region, accessKeyId, secretAccessKey, forcePathStyle, bucket } = files;
  const client = new S3Client({ endpoint, region, forcePathStyle, credentials: { accessKeyId, secretAccessKey }, maxAttempts: 1 });
  try {
    await client.send(new HeadBucketCommand({ Bucket: bucket }), { abortSignal: AbortSignal.timeout(PATIENCE_MS) });
    return undefined;
  } catch (error) {
    const status = error instanceof S3ServiceException ? error.$metadata.httpStatusCode : undefined;
    if (status === 404) return `there is no bucket "${bucket}"; create it or name another.`;
    if (status === 403) return `the keys may not use the bucket "${bucket}"; check S3_ACCESS_KEY_ID, S3_SECRET_ACCESS_KEY and their rights.`;
    if (status === 301) return `the bucket "${bucket}" is in another region than S3_REGION says.`;
    const line = lineFault(error, 'file server (S3)', endpoint ?? 'https://s3.amazonaws.com');
    return line ?? `the bucket "${bucket}" cannot be used: ${(error as Error).message}.`;
  } finally {
    client.destroy();
  }
}
