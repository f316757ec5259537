import type { EdgeUse, Seam } from '../../../pattern/seam.ts';
import type { Opening } from '../../opening.ts';
import { back, inside, one, plain, ring } from '../seams/seam.ts';

/** The seam that closes a straight band into a ring, at the centre back. */
export const backSeam = (id: string, name: string, band: string): Seam =>
  plain(id, name, 'side', [one(band, 'right')], [back(band, 'left')]);

/** The upper edge of a band to what is above it, going round from the centre back; that may be longer by a ratio and gathered. */
export const topSeam = (
  id: string,
  name: string,
  above: readonly EdgeUse[],
  band: string,
  gather = 0,
): Seam => {
  const below = [back(band, 'top')];
  return gather === 0
    ? ring(id, name, 'band', above, below)
    : { ...ring(id, name, 'band', below, above), ease: gather };
};

/** The stretch of a band's lower edge, centred on the front, that a visor is sewn to. mm. */
export const visorStretchOf = (band: string, girth: number, stretch: number): EdgeUse => ({
  ...one(band, 'bottom'),
  from: (girth - stretch) / 2,
  to: (girth + stretch) / 2,
});

/** The band round its lower edge to what lies inside it, against the head: a band of lining, or its own facing. */
export const bandEdgeSeam = (lined: boolean, { shell, inner }: Opening): Seam =>
  inside(
    ring(
      'lowerEdge',
      lined ? 'Band to lining band, lower edge' : 'Band to facing, lower edge',
      'lower',
      [one('band', 'bottom')],
      [one('liningBand', 'bottom')],
    ),
    shell,
    inner,
  );
