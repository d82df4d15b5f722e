import { z } from 'zod';
import { id } from './common.js';
import { lineAnswer } from './line.js';

/** The ways in which films go to a centre. */
export const channelKinds = ['link', 'media', 'dicomweb', 'objectStore'] as const;
export type ChannelKind = (typeof channelKinds)[number];

export const channelNames: Record<ChannelKind, string> = {
  link: 'A mail with a link to the films',
  media: 'A mail with a link to a DICOM medium (zip with DICOMDIR)',
  dicomweb: 'DICOMweb: into the centre’s archive (STOW-RS)',
  objectStore: 'Signed upload to the centre’s object store (S3)',
};

const address = z.url({ protocol: /^https?$/, error: 'Write the whole address, beginning with https://.' }).max(500).optional();
const short = z.string().trim().max(200, 'At most 200 signs.').optional();

/** What each kind of channel must be told; the rest is left out. */
const NEEDS: Record<ChannelKind, [field: 'address' | 'bucket' | 'account' | 'secret', words: string][]> = {
  link: [],
  media: [],
  dicomweb: [['address', 'Write the address of the centre’s DICOMweb service.']],
  objectStore: [
    ['address', 'Write the address of the object store.'],
    ['bucket', 'Write the name of the bucket.'],
    ['account', 'Write the key id that the centre gave you.'],
    ['secret', 'Write the secret key that the centre gave you.'],
  ],
};

/** By which way this practice's films go to one centre. The secret is written and never shown again, so it is entered anew with every change. */
export const newChannel = z.object({
  kind: z.enum(channelKinds),
  address,
  bucket: z.string().regex(/^[a-z0-9][a-z0-9.-]{1,61}[a-z0-9]$/, 'A bucket’s name has 3 to 63 small letters, digits, dots and hyphens.').optional(),
  region: short,
  account: short,
  secret: z.string().trim().min(1).max(4000, 'At most 4,000 signs.').optional(),
}).superRefine((channel, context) => {
  for (const [field, message] of NEEDS[channel.kind]) if (!channel[field]) context.addIssue({ code: 'custom', path: [field], message });
  if (channel.kind === 'dicomweb' && channel.account && !channel.secret) context.addIssue({ code: 'custom', path: ['secret'], message: 'Write the password that goes with the name.' });
});

/** Whether there is a line that can be tried; what goes by mail is the mail server's. */
export const canBeTried = (kind: ChannelKind): boolean => kind === 'dicomweb' || kind === 'objectStore';

export const channels = z.object({
  rows: z.array(z.object({ id, centre: id, kind: z.enum(channelKinds), address: z.string().nullable(), bucket: z.string().nullable(), region: z.string().nullable(), account: z.string().nullable(), secret: z.boolean(),
    /** It was sealed with a key that the server does not have any more. */
    secretLost: z.boolean(),
    at: z.string(), byName: z.string(),
    /** The last one, of the channel as it stands; without an answer while it goes on. */
    trial: z.object({ at: z.string(), byName: z.string(), answer: lineAnswer.nullable(), status: z.int().nullable(), detail: z.string().nullable() }).nullable(),
  })),
});
export type Channels = z.infer<typeof channels>;
