import type { JobText } from '../core/job/jobText';
import type { JobFile } from './draft';
import { sameContent } from './sameContent';

export type SaveStatus = 'same-as-file' | 'changed-since-file' | 'never-saved-to-file';

export function compareWithFile(job: JobText, file: JobFile): SaveStatus {
  if (file.savedJob === null) return 'never-saved-to-file';
  return sameContent(job, file.savedJob) ? 'same-as-file' : 'changed-since-file';
}
