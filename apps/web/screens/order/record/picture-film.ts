import type { OrderScreen } from '#libs/contracts/screens/order';

type Exposure = OrderScreen['exposures'][number];

/** A film that came as a PNG or JPEG, which says nothing of itself. */
export const isPicture = ({ kind, disowned }: Exposure): boolean => kind !== null && kind !== 'dicom' && !disowned;
export const maySaySize = (film: Exposure): boolean => isPicture(film) && !film.sealed;
