import type { DeliveryView, OrderScreen } from '#libs/contracts/screens/order';
import type { PerformedSaid } from '#libs/dicom/performed-step';
import type { Prices } from '#libs/contracts/register';
import type { KeptWords } from '#libs/dicom/said-of-film';
import type { DogRow } from '#libs/register/dog-of-row';
import type { Stored } from '#libs/words/stored';
import type { Said } from '#libs/words/said';
import type { IncidentKind } from '../incident/open-incident.js';
import type { RoomMarks } from '../quality/room-marks.js';
import type { OrderReadings } from '../result/accepted-readings.js';
import type { OrderRow } from '../record/order-record.js';

/** A sending as it is stored: `sayDelivery` says it. */
export interface StoredDelivery extends Omit<DeliveryView, 'words' | 'films' | 'notes'>, Stored {
  films: (Stored & { name: string; named: Said | null; state: string })[];
  notes: (Omit<DeliveryView['notes'][number], 'says'> & { said: Stored })[];
}

/** One row of SCREEN. */
export interface ScreenSource {
  record: OrderRow;
  dog: DogRow;
  documents: { id: string; kind: string; name: string; named: Said | null; at: string; serial: string | null; state: string }[];
  messages: { id: string; kind: string; to: string; subject: string; state: string; detail: string | null; at: string }[];
  problems: (Stored & { id: string; job: string; at: string })[];
  /** By sending. */
  deliveries: Record<string, StoredDelivery>;
  images: { sha: string; kind: 'dicom' | 'png' | 'jpeg'; preview: string | null; width: number; height: number; rowMm: number | null; columnMm: number | null; said: Partial<KeptWords> }[];
  /** Images that an X-ray machine sent, named or not. */
  arrived: { image: string; at: string; from: string; previewable: boolean; imageDay: string | null; patientId: string | null; said: { viewPosition?: string; laterality?: string; procedures?: string[] }; width: number; height: number }[];
  /** What machines said of their own work, in its order; `here` are the images that it names and that came. */
  performed: { step: string; at: string; from: string; state: OrderScreen['performed'][number]['state']; said: PerformedSaid; here: string[] }[];
  marks: RoomMarks[];
  staff: { id: string; name: string; roles: string[] }[];
  rooms: { id: string; name: string }[];
  /** X-ray machines of which somebody has said how large their pixels are. */
  detectors: { id: string; name: string; pixelMm: number }[];
  directory: { id: string; name: string; place: string }[];
  authorities: { id: string; agent: string; owner: string; covers: string[]; until: string }[];
  prices: Prices | null;
  incidents: { id: string; kind: IncidentKind; openedAt: string; openedBy: string; closedAt: string | null; closedBy: string | null; words: string | null }[];
  /** Of the dog's other orders. */
  others: OrderReadings[];
}

/** Who looks: what they may do is marked for them. */
export interface Viewer {
  id: string;
  roles: string[];
  practice: string;
}
