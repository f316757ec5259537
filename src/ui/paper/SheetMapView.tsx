import { pathData } from '../../drawing/path-data.ts';
import { boxHeight, boxUnion, boxWidth } from '../../geometry/box.ts';
import type { Sheet, SheetSet } from '../../print/sheet.ts';
import { useSheets } from './use-sheets.ts';

/** How the sheets join: a window for each sheet with its name, and the pieces that lie across them. */
export const SheetMapView = () => {
  const { set, stale, message } = useSheets();
  const shown = set?.sheets.flatMap(windowsOf) ?? [];
  const none = set === null || shown.length === 0;
  return (
    <div className="sheet-map" data-stale={(stale && !none) || undefined}>
      {message !== null && <p className="problem">{message}</p>}
      {none && stale && message === null && <p className="help">Laying out the sheets…</p>}
      {!none && <Sheets set={set} shown={shown} />}
    </div>
  );
};

type Shown = Sheet & { readonly shows: NonNullable<Sheet['shows']> };
const windowsOf = (sheet: Sheet): readonly Shown[] => (sheet.shows ? [{ ...sheet, shows: sheet.shows }] : []);

/** Around the map, mm. */
const ROOM = 4;

const Sheets = ({ set, shown }: { readonly set: SheetSet; readonly shown: readonly Shown[] }) => {
  const all = boxUnion(shown.map((sheet) => sheet.shows));
  const [width, height] = [boxWidth(all) + 2 * ROOM, boxHeight(all) + 2 * ROOM];
  const size = Math.max(width, height) / 34;
  return (
    <svg
      viewBox={`${all.min.x - ROOM} ${-all.max.y - ROOM} ${width} ${height}`}
      role="img"
      aria-label={`Sheet map: ${shown.map((sheet) => sheet.name).join(', ')}`}
    >
      {shown.map(({ name, shows }) => (
        <rect
          key={name}
          x={shows.min.x}
          y={-shows.max.y}
          width={boxWidth(shows)}
          height={boxHeight(shows)}
          className="window"
        />
      ))}
      {set.pieces.map((piece) => (
        <path key={piece.id} d={pathData(piece.silhouette)} className="piece" />
      ))}
      {shown.map(({ name, shows }) => (
        <text
          key={name}
          x={shows.min.x + size * 0.5}
          y={-shows.max.y + size * 1.25}
          fontSize={size}
          className="name"
        >
          {name}
        </text>
      ))}
    </svg>
  );
};
