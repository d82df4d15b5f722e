import type { JobDefinition, JobNamed, PayloadOf } from './job-definition.js';
import { PermanentError } from './job-errors.js';

/** A payload value that could carry a name, an address or a sentence is not an id. */
const ID = /^[A-Za-z0-9._:/-]{1,128}$/;

/** All jobs that this program knows, typed by the list it was made from. */
export class JobRegistry<const Jobs extends readonly JobDefinition[]> {
  readonly jobs: Jobs;
  readonly #byName = new Map<string, JobDefinition>();

  constructor(jobs: Jobs) {
    this.jobs = jobs;
    for (const job of jobs) {
      if (!/^[a-z][a-z0-9-]*$/.test(job.name)) throw new Error(`The job name "${job.name}" must be small letters, digits and hyphens.`);
      if (this.#byName.has(job.name)) throw new Error(`Two jobs are named "${job.name}".`);
      this.#byName.set(job.name, job);
    }
  }

  get(name: string): JobDefinition {
    const job = this.#byName.get(name);
    if (!job) throw new PermanentError(`No job is named "${name}" in this version of the program.`);
    return job;
  }

  parse<Name extends Jobs[number]['name']>(name: Name, payload: unknown): PayloadOf<JobNamed<Jobs, Name>>;
  parse(name: string, payload: unknown): Record<string, string | number | undefined>;
  parse(name: string, payload: unknown): Record<string, string | number | undefined> {
    const parsed = this.get(name).payload.safeParse(payload);
    if (!parsed.success) {
      const where = parsed.error.issues.map((issue) => `${issue.path.join('.') || 'payload'}: ${issue.message}`).join('; ');
      throw new PermanentError(`The payload of job "${name}" is wrong: ${where}`, { cause: parsed.error });
    }
    for (const [key, value] of Object.entries(parsed.data))
      if (typeof value === 'string' && !ID.test(value)) throw new PermanentError(`The payload of job "${name}" may hold ids only; "${key}" is none.`);
    return parsed.data;
  }
}
