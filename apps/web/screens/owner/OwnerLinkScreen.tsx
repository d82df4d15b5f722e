import { useParams } from '@tanstack/react-router';
import { OpenLink } from './OpenLink.js';

export const OwnerLinkScreen = () => <OpenLink token={useParams({ from: '/o/$token' }).token} of="owner" />;
