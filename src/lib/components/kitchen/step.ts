import type { FormState } from '$lib/forms/fields';
import type { ShownIn } from '$lib/forms/lot-form';
import type { Entered } from '$lib/forms/read-form';
import type { Batch } from '$lib/planning/model/batch';
import type { Kitchen } from '$lib/planning/model/kitchen';
import type { WordedSheet } from '$lib/presentation/batch-words';

/** What each step of a batch sheet is shown from. */
export type StepProps = {
  batch: Batch;
  sheet: WordedSheet;
  kitchen: Kitchen;
  shown: ShownIn;
  /** What the forms of the sheet are filled with. */
  fields: Entered;
  /** The page's `form`, where it is of this step. */
  form: FormState;
  version: string;
};
