import { useMemo } from 'react';
import type { Form } from '../caps/form.ts';
import { formPicture } from '../drawing/form-picture.ts';
import { boxCentre, boxHeight, boxWidth } from '../geometry/box.ts';

/** Room for a cap of usual size, mm: small caps look small beside large ones. */
const ROOM = { width: 280, height: 170 };

/** A cap as a small pencil sketch of its own form. */
export const FormSketch = ({ form }: { readonly form: Form }) => {
  const { box, patches } = useMemo(() => formPicture(form), [form]);
  const { x, y } = boxCentre(box);
  const [width, height] = [Math.max(boxWidth(box), ROOM.width), Math.max(boxHeight(box), ROOM.height)];
  return (
    <svg
      className="form-sketch"
      viewBox={`${x - width / 2} ${-y - height / 2} ${width} ${height}`}
      aria-hidden="true"
    >
      {patches.map((d) => (
        <path key={d} d={d} />
      ))}
    </svg>
  );
};
