import { useQuery } from '@tanstack/react-query';
import { get } from '../../api/client.js';

export interface StudyOption { id: string; name: string }
/** The studies that a round may be read for. */
export function useStudies(): StudyOption[] {
  return useQuery({ queryKey: ['scheme', 'studies'], queryFn: () => get<StudyOption[]>('/scheme/reading-round'), staleTime: Infinity }).data ?? [];
}
