import { z } from 'zod';

/**
 * Every code that the server answers with. The sentence is the default for people;
 * a use case may give a more exact one. DEVELOPERS.md's table of codes is written from here.
 */
export const errorCodes = {
  BAD_INPUT: { status: 400, says: 'Something in the form is missing or not right. The marked fields say what to change.' },
  NOT_SIGNED_IN: { status: 401, says: 'Please sign in.' },
  WRONG_PASSWORD: { status: 401, says: 'Name and password do not belong together. Try again, or ask your practice manager for a new password.' },
  LINK_NOT_VALID: { status: 401, says: 'This link is not valid or has run out. Ask the practice to send a new one.' },
  SIGNATURE_REFUSED: { status: 401, says: 'This message is not signed as it must be. Nothing was changed.' },
  CSRF: { status: 403, says: 'The page is too old to send this. Reload it and try again; nothing was changed.' },
  NOT_YOUR_ROLE: { status: 403, says: 'Your role does not do this. The order names who does.' },
  NOT_FOUND: { status: 404, says: 'There is nothing here under that number.' },
  CHANGED_MEANWHILE: { status: 409, says: 'Somebody else changed this order in the meantime. Look at what changed, then decide again.' },
  SLOT_TAKEN: { status: 409, says: 'That time has just been taken. Choose another one; nothing was booked.' },
  ALREADY_THERE: { status: 409, says: 'This is already there.' },
  REPLAYED: { status: 409, says: 'This message was received before. Nothing was changed.' },
  NOT_AT_THIS_STEP: { status: 422, says: 'The order is not at a step where this can be done.' },
  HELD: { status: 422, says: 'Something is missing first.' },
  NOT_ELIGIBLE: { status: 422, says: 'The dog cannot have this study on that day.' },
  IMAGE_REFUSED: { status: 422, says: 'This file is not an image that can be used.' },
  TOO_LARGE: { status: 413, says: 'The file is too large.' },
  TOO_MANY: { status: 429, says: 'Too many tries. Wait a few minutes, then try again.' },
  BUSY: { status: 503, says: 'The server has so much to do that this had to wait too long. Nothing was changed. Try again in a minute; if it happens often, tell whoever runs the server.' },
  STORAGE_FULL: { status: 507, says: 'The server has no room left, so this was not stored and nothing was changed. Keep the file, ask whoever runs the server to make room, then send it again.' },
  BROKEN: { status: 500, says: 'Something broke on the server. Nothing was changed. Try again; if it happens again, tell whoever runs the server the time.' },
} as const;

export type ErrorCode = keyof typeof errorCodes;

export const apiError = z.object({
  code: z.enum(Object.keys(errorCodes) as [ErrorCode, ...ErrorCode[]]),
  message: z.string(),
  /** For BAD_INPUT: where and what. */
  fields: z.array(z.object({ path: z.string(), message: z.string() })).optional(),
  /** For HELD and NOT_AT_THIS_STEP: codes of the holds in the way, with their words, and the day from which time has cured it. */
  because: z.array(z.object({ code: z.string(), words: z.string(), earliestDate: z.string().optional() })).optional(),
  /** For CHANGED_MEANWHILE: what was added since. */
  changed: z.array(z.object({ type: z.string(), at: z.string(), by: z.string() })).optional(),
});
export type ApiErrorBody = z.infer<typeof apiError>;
