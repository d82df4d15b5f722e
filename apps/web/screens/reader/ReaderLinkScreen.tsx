import { useParams } from '@tanstack/react-router';
import { OpenLink } from '../owner/OpenLink.js';

export const ReaderLinkScreen = () => <OpenLink token={useParams({ from: '/r/$token' }).token} of="reader" />;
