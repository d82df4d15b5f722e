import { S3Client } from '@aws-sdk/client-s3';
import type { FileSettings } from '../settings/settings.js';

export function s3Client(settings: Extract<FileSettings, { kind: 's3' }>): S3Client {
  const { endpoint, region, accessKeyId, secretAccessKey, forcePathStyle } = settings;
  return new S3Client({
    endpoint,
    region,
    forcePathStyle,
    credentials: { accessKeyId, secretAccessKey },
    // the checksums that the client adds by itself are refused by many self-hosted servers; we hash everything anyway
    requestChecksumCalculation: 'WHEN_REQUIRED',
    responseChecksumValidation: 'WHEN_REQUIRED',
  });
}
