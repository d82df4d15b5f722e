import path from 'node:path';
import { SettingsError } from './settings-error.js';
import { readVariables, type Variables } from './variables.js';

export interface DatabaseSettings {
  /** The login that owns the tables and runs the migrations. */
  owner: string;
  /** Restricted logins; when not given, whoever sets up the database makes them. */
  app: string | undefined;
  worker: string | undefined;
}

export interface QueueSettings {
  backend: 'postgres' | 'redis';
  url: string;
}

export type FileSettings =
  | { kind: 'disk'; folder: string }
  | {
      kind: 's3';
      endpoint: string | undefined;
      bucket: string;
      region: string;
      accessKeyId: string;
      secretAccessKey: string;
      forcePathStyle: boolean;
    };

export type MailSettings = { captured: true; from: string } | { captured: false; url: string; from: string };

/** Machines that speak TLS; with a client CA, those alone whose certificate it signed. */
export interface GatewayTls {
  port: number;
  keyFile: string;
  certFile: string;
  clientCaFile: string | undefined;
}

export interface Settings {
  database: DatabaseSettings;
  queue: QueueSettings;
  files: FileSettings;
  mail: MailSettings;
  listen: { host: string; port: number };
  /** Where X-ray machines find the program. */
  gateway: { host: string; port: number; tls: GatewayTls | undefined };
  /** What people's browsers call this server by; no slash at the end. */
  publicUrl: string;
  demo: boolean;
  dataFolder: string;
  /** When not given, the first start keeps one in the data folder. */
  sessionSecret: string | undefined;
  /** What seals the secrets in the database; when not given, the first start makes a key and keeps it in the file. */
  secrets: { keys: string | undefined; keyFile: string };
  signingKeyFile: string;
  /** The scheme's own studies, as data; none beside the shipped ones when not given. */
  studiesFile: string | undefined;
  /** What may be called although it lies in the server's own network, each as host:port. */
  outgoing: { allow: readonly string[] };
}

/** The only reader of the environment: everything else is handed these settings. */
export function readSettings(env: Record<string, string | undefined> = process.env): Readonly<Settings> {
  const read = readVariables(env);
  if ('problems' in read) throw new SettingsError(read.problems);
  return deepFreeze(toSettings(read.variables));
}

function toSettings(v: Variables): Settings {
  const dataFolder = path.resolve(v.DATA_FOLDER);
  return {
    database: { owner: v.DATABASE_URL, app: v.APP_DATABASE_URL, worker: v.WORKER_DATABASE_URL },
    queue: v.REDIS_URL
      ? { backend: 'redis', url: v.REDIS_URL }
      : { backend: 'postgres', url: v.WORKER_DATABASE_URL ?? v.DATABASE_URL },
    files: fileSettings(v, dataFolder),
    mail: v.SMTP_URL
      ? { captured: false, url: v.SMTP_URL, from: v.MAIL_FROM ?? '' }
      : { captured: true, from: v.MAIL_FROM ?? 'Cotyla <cotyla@cotyla.example>' },
    listen: { host: v.HOST, port: v.PORT },
    gateway: { host: v.GATEWAY_HOST ?? v.HOST, port: v.GATEWAY_PORT, tls: tlsSettings(v) },
    publicUrl: v.PUBLIC_URL ?? `http://${v.HOST.includes(':') ? `[${v.HOST}]` : v.HOST}:${v.PORT}`,
    demo: v.DEMO,
    dataFolder,
    sessionSecret: v.SESSION_SECRET,
    secrets: { keys: v.SECRETS_KEY, keyFile: path.join(dataFolder, 'secrets-key') },
    signingKeyFile: path.resolve(v.SIGNING_KEY_FILE ?? path.join(dataFolder, 'signing-key.pem')),
    studiesFile: v.STUDIES_FILE === undefined ? undefined : path.resolve(v.STUDIES_FILE),
    outgoing: { allow: v.OUTGOING_ALLOW },
  };
}

function tlsSettings({ GATEWAY_TLS_PORT: port, GATEWAY_TLS_KEY_FILE: key, GATEWAY_TLS_CERT_FILE: cert, GATEWAY_TLS_CLIENT_CA_FILE: ca }: Variables): GatewayTls | undefined {
  if (port === undefined || !key || !cert) return undefined;
  return { port, keyFile: path.resolve(key), certFile: path.resolve(cert), clientCaFile: ca ? path.resolve(ca) : undefined };
}

function fileSettings(v: Variables, dataFolder: string): FileSettings {
  if (!v.S3_BUCKET) return { kind: 'disk', folder: path.join(dataFolder, 'files') };
  return {
    kind: 's3',
    endpoint: v.S3_ENDPOINT,
    bucket: v.S3_BUCKET,
    region: v.S3_REGION,
    accessKeyId: v.S3_ACCESS_KEY_ID ?? '',
    secretAccessKey: v.S3_SECRET_ACCESS_KEY ?? '',
    forcePathStyle: v.S3_FORCE_PATH_STYLE,
  };
}

function deepFreeze<T extends object>(value: T): Readonly<T> {
  for (const inner of Object.values(value)) if (inner && typeof inner === 'object') deepFreeze(inner as object);
  return Object.freeze(value);
}
