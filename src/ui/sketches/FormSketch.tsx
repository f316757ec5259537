import type { FormPicture } from '../../drawing/form-picture.ts';
import { boxCentre, boxHeight, boxWidth } from '../../geometry/box.ts';

/** Room for a cap of usual size, mm: small caps look small beside large ones. */
const ROOM = { width: 280, height: 170 };

/** A cap as a small pencil sketch of its own form; the empty place of one that is still being drawn. */
export const FormSketch = ({ picture }: { readonly picture: FormPicture | undefined }) => (
  <svg className="form-sketch" viewBox={picture && viewOf(picture)} aria-hidden="true">
    {picture?.patches.map((d) => (
      <path key={d} d={d} />
    ))}
  </svg>
);

const viewOf = ({ box }: FormPicture): string => {
  const { x, y } = boxCentre(box);
  const [width, height] = [Math.max(boxWidth(box), ROOM.width), Math.max(boxHeight(box), ROOM.height)];
  return `${x - width / 2} ${-y - height / 2} ${width} ${height}`;
};
