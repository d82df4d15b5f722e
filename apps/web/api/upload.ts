import type { z } from 'zod';
import type { uploaded } from '#libs/contracts/screens/order';
import { asErrorBody, csrfToken } from './client.js';
import { ApiFailure, noAnswer } from './failure.js';

export type Uploaded = z.infer<typeof uploaded>;

/** XMLHttpRequest, because fetch does not say how much of the file has left. */
export function uploadImage(order: string, file: File, onPart: (part: number) => void): Promise<Uploaded> {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    request.open('POST', `/api/orders/${order}/images`);
    request.setRequestHeader('x-csrf', csrfToken());
    request.upload.onprogress = (e) => e.lengthComputable && onPart(e.loaded / e.total);
    request.onerror = () => reject(noAnswer());
    request.onload = () => {
      const body = parsed(request.responseText);
      if (request.status >= 200 && request.status < 300) resolve(body as Uploaded);
      else reject(new ApiFailure(request.status, asErrorBody(body)));
    };
    const form = new FormData();
    form.append('image', file);
    request.send(form);
  });
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
