import busboy from 'busboy';
import type { FastifyRequest } from 'fastify';
import { StepError } from '#libs/steps/record/step-error';

/** Hands the one file of a multipart request on while it arrives; nothing of it is kept in memory here. */
export async function oneFile<T>(request: FastifyRequest, take: (file: { source: AsyncIterable<Uint8Array>; fileName: string }) => Promise<T>): Promise<T> {
  const type = request.headers['content-type'] ?? '';
  if (!type.startsWith('multipart/form-data')) throw new StepError('BAD_INPUT', 'Send the picture as a file.');
  return new Promise<T>((resolve, reject) => {
    const parser = busboy({ headers: request.headers, limits: { files: 1, fields: 0, parts: 2 } });
    let taken: Promise<T> | undefined;
    parser.on('file', (_name, source, info) => {
      taken = take({ source, fileName: info.filename ?? '' });
      // What was refused is still read to its end, so that the answer reaches the browser.
      taken.catch(() => source.resume());
    });
    parser.on('close', () => {
      if (taken) taken.then(resolve, reject);
      else reject(new StepError('BAD_INPUT', 'There is no file in this request. Choose a picture.'));
    });
    parser.on('error', () => reject(new StepError('BAD_INPUT', 'The upload broke off. Send the picture again.')));
    request.raw.on('aborted', () => parser.destroy(new Error('aborted')));
    request.raw.pipe(parser);
  });
}
