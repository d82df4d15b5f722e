import { useQuery } from '@tanstack/react-query';
import type { ExplainedStudy } from '#libs/contracts/help';
import { get } from '../../api/client.js';

/** What the studies are does not change while somebody works. */
export const useStudies = (enabled = true) => useQuery({ queryKey: ['help', 'studies'], queryFn: () => get<ExplainedStudy[]>('/help/studies'), staleTime: Infinity, enabled });
