import type { ViewName } from '../../worn/gaze.ts';

/** What the views are called on the screen. */
export const viewNames: Readonly<Record<ViewName, string>> = {
  front: 'Front',
  side: 'Side',
  back: 'Back',
  top: 'Top',
  inside: 'Inside',
};
