import type { CrewQuestion } from '../../export/questions/index.ts';
import type { WellSummary } from '../../folder/summary.ts';

/** One well of a list. */
export interface Listed {
  /** Its log, as the user called it. */
  readonly file: string;
  readonly summary: WellSummary;
  readonly questions: readonly CrewQuestion[];
}
