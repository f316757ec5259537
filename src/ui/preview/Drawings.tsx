import { useMemo } from 'react';
import { type ViewName, views } from '../../worn/gaze.ts';
import { useShownAtRest } from '../use-shown-at-rest.ts';
import { drawingData } from './drawing-data.ts';
import { drawnFrom } from './drawn-from.ts';
import { viewNames } from './view-names.ts';
import { wornNow } from './worn-now.ts';

/** The drawing follows a change once it has rested this long, ms. */
const REST = 120;

/** Room about a drawing. */
const ROOM = 1.12;

/** The cap on its head as a shaded line drawing from four sides, and from below. */
export const Drawings = ({ tilted }: { readonly tilted: boolean }) => {
  const spec = useShownAtRest(REST);
  const worn = useMemo(() => wornNow(spec, tilted), [spec, tilted]);
  const drawn = useMemo(
    () =>
      worn === null
        ? []
        : (Object.keys(views) as ViewName[]).map((view) => ({
            view,
            data: drawingData(drawnFrom(worn, views[view])),
          })),
    [worn],
  );
  const size = ROOM * Math.max(...drawn.flatMap(({ data }) => [data.width, data.height]), 1);
  return (
    <div className="worn-drawings">
      {drawn.map(({ view, data }) => (
        <figure key={view}>
          <svg
            viewBox={`${data.middle.x - size / 2} ${-data.middle.y - size / 2} ${size} ${size}`}
            role="img"
            aria-label={`The cap on a head, ${viewNames[view].toLowerCase()}`}
          >
            {data.paths.map(({ role, d }) => (
              <path key={role} className={role} d={d} />
            ))}
          </svg>
          <figcaption>{viewNames[view]}</figcaption>
        </figure>
      ))}
    </div>
  );
};
