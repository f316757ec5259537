import type { ClothLay } from '../../cloth/cloth-lay.ts';
import { pathData } from '../../drawing/path-data.ts';
import { polygon } from '../../geometry/path.ts';
import { add } from '../../geometry/point.ts';

/** What the pieces lie on; `length` of a width of cloth is what is shown of it, mm. */
export const Ground = ({ lay, length }: { readonly lay: ClothLay; readonly length: number }) =>
  lay.scraps.length > 0 ? <Scraps lay={lay} /> : <Width lay={lay} length={length} />;

/** A width of cloth, off the bolt or as a remnant. */
const Width = ({ lay, length }: { readonly lay: ClothLay; readonly length: number }) => (
  <>
    <rect className="cloth" x={0} y={-lay.width} width={length} height={lay.width} />
    <line className="selvedge" x1={0} x2={length} y1={-lay.width} y2={-lay.width} />
    <line className={lay.folded ? 'fold' : 'selvedge'} x1={0} x2={length} y1={0} y2={0} />
    {lay.remnant === null && <line className="end" x1={lay.length} x2={lay.length} y1={-lay.width} y2={0} />}
  </>
);

const Scraps = ({ lay }: { readonly lay: ClothLay }) =>
  lay.scraps.flatMap(({ scrap, shift }) =>
    [scrap.outline, ...scrap.flaws].map((ring, i) => {
      const d = pathData(polygon(ring.map((p) => add(p, shift))));
      return <path key={d} d={d} className={i === 0 ? 'cloth' : 'flaw'} />;
    }),
  );
