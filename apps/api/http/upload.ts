import { pipeline } from 'node:stream/promises';
import busboy from 'busboy';
import type { FastifyRequest } from 'fastify';
import { badInput, StepError } from '#libs/steps/record/step-error';
import { t } from '#libs/words/spoken';

/** Hands the one file of a multipart request on while it arrives; nothing of it is kept in memory here. */
export async function oneFile<T>(request: FastifyRequest, take: (file: { source: AsyncIterable<Uint8Array>; fileName: string }) => Promise<T>): Promise<T> {
  const parser = parserFor(request);
  let taken: Promise<T> | undefined;
  parser.on('file', (_name, source, info) => {
    // A file that breaks off before anybody reads it must not end the program; whoever reads it later is told.
    source.on('error', () => undefined);
    // Who stops reading must not end the stream: the rest of it is still to come, and the parser waits for somebody to take it.
    taken = take({ source: source.iterator({ destroyOnReturn: false }), fileName: info.filename ?? '' });
    // What was refused is still read to its end, so that the answer reaches the browser.
    taken.catch(() => source.resume());
  });
  try {
    await pipeline(request.raw, parser);
  } catch (error) {
    // What was being taken fails with it; the sentence is the same for every way of breaking off.
    taken?.catch(() => undefined);
    throw new StepError('BAD_INPUT', t('The upload broke off. Send the picture again.'), { fields: [{ path: 'image', message: (error as Error).message }] });
  }
  if (!taken) throw badInput('image', t('There is no file in this request. Choose a picture.'));
  return taken;
}

function parserFor(request: FastifyRequest): busboy.Busboy {
  const type = request.headers['content-type'] ?? '';
  if (!/^multipart\/form-data;.*boundary=/i.test(type)) throw badInput('image', t('Send the picture as a file.'));
  return busboy({ headers: request.headers, limits: { files: 1, fields: 0, parts: 2 } });
}
