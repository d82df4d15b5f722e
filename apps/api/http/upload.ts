import { pipeline } from 'node:stream/promises';
import busboy from 'busboy';
import type { FastifyRequest } from 'fastify';
import { badInput, StepError } from '#libs/steps/record/step-error';

/** Hands the one file of a multipart request on while it arrives; nothing of it is kept in memory here. */
export async function oneFile<T>(request: FastifyRequest, take: (file: { source: AsyncIterable<Uint8Array>; fileName: string }) => Promise<T>): Promise<T> {
  const parser = parserFor(request);
  let taken: Promise<T> | undefined;
  parser.on('file', (_name, source, info) => {
    // A file that breaks off before anybody reads it must not end the program; whoever reads it later is told.
    source.on('error', () => undefined);
    taken = take({ source, fileName: info.filename ?? '' });
    // What was refused is still read to its end, so that the answer reaches the browser.
    taken.catch(() => source.resume());
  });
  try {
    await pipeline(request.raw, parser);
  } catch (error) {
    // What was being taken fails with it; the sentence is the same for every way of breaking off.
    taken?.catch(() => undefined);
    throw new StepError('BAD_INPUT', 'The upload broke off. Send the picture again.', { fields: [{ path: 'image', message: (error as Error).message }] });
  }
  if (!taken) throw badInput('image', 'There is no file in this request. Choose a picture.');
  return taken;
}

function parserFor(request: FastifyRequest): busboy.Busboy {
  const type = request.headers['content-type'] ?? '';
  if (!/^multipart\/form-data;.*boundary=/i.test(type)) throw badInput('image', 'Send the picture as a file.');
  return busboy({ headers: request.headers, limits: { files: 1, fields: 0, parts: 2 } });
}
