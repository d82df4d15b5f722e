declare module 's3rver' {
  export default class S3rver {
    constructor(options: { address: string; port: number; silent: boolean; directory: string });
    run(): Promise<unknown>;
    close(): Promise<void>;
  }
}
