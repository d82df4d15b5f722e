import pg from 'pg';

/** PostgreSQL's cannot_connect_now: it is starting, or shutting down. */
const NOT_NOW = '57P03';

/**
 * A line to the queue's database. The library pauses between its attempts only when nobody answers there at all; a database
 * that is starting would be asked thousands of times, each with an error of its own.
 */
export class QueueClient extends pg.Client {
  override connect(): Promise<this>;
  override connect(done: (error: Error) => void): void;
  override connect(done?: (error: Error) => void): Promise<this> | void {
    if (!done) return super.connect().then(() => this, (error: Error) => Promise.reject(unreachable(error)));
    super.connect((error: Error) => done(error && unreachable(error)));
  }
}

function unreachable(error: Error & { code?: string }): Error {
  if (error.code !== NOT_NOW) return error;
  return Object.assign(new Error(`The database cannot be reached now: ${error.message}`, { cause: error }), { code: 'ECONNREFUSED' });
}
