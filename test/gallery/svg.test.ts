import paper from 'paper/dist/paper-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { arrange } from '../../src/drawing/arrange.ts';
import { drawPattern } from '../../src/drawing/draw-piece.ts';
import { pathData } from '../../src/drawing/path-data.ts';
import { areaOf } from '../../src/geometry/area.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { arc, circle, line, type Path } from '../../src/geometry/path.ts';
import { point } from '../../src/geometry/point.ts';
import { cap } from '../drawing/caps.ts';
import { expectNear } from '../geometry/near.ts';
import { samplePieces } from '../pattern/sample-pieces.ts';
import { toSvg } from './svg.ts';

beforeAll(() => {
  paper.setup(new paper.Size(10, 10));
});

/** The path as an independent reader of SVG (Paper) sees it. */
const read = (path: Path): paper.CompoundPath => new paper.CompoundPath(pathData(path));

describe('a path in SVG', () => {
  it('has the length, area and bounds of the path, as read by Paper, y down', () => {
    const paths = samplePieces.map((p) => p.outline.flatMap((e) => e.path));
    for (const path of [...paths, circle(point(3, 4), 50)]) {
      const theirs = read(path);
      // Paper's own arcs are cubics, good to 3 parts in 10,000 of the radius.
      expectNear(theirs.length / pathLength(path), 1, 5e-4);
      expectNear(Math.abs(theirs.area) / areaOf(path), 1, 1e-3);
      const { min, max } = boundsOf(path);
      expectNear(theirs.bounds.left, min.x, 0.05);
      expectNear(theirs.bounds.bottom, -min.y, 0.05);
      expectNear(theirs.bounds.top, -max.y, 0.05);
    }
  });

  it('keeps arcs as arcs, to the side they bulge to, and says closed only of closed paths', () => {
    const half = [arc(point(0, 0), point(10, 0), Math.PI)];
    expectNear(read(half).bounds.top, -10, 0.01);
    expectNear(read(half).bounds.bottom, 0, 0.01);
    expect(pathData(half)).toMatch(/^M10,0A10 10 .*A10 10 0 0 0 -10,0$/);
    expect(pathData([line(point(0, 0), point(1, 2))])).toBe('M0,0L1,-2');
    expect(pathData(circle(point(0, 0), 5))).toMatch(/Z$/);
  });
});

describe('a drawing in SVG', () => {
  const svg = toSvg(
    arrange(drawPattern(cap(), { unit: 'cm', halves: false, dimensions: false, label: null })),
    'Cornet’s cap',
  );

  it('is at true scale: a user unit is a millimetre', () => {
    const [, width, height, box] = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]+)"/.exec(svg)!;
    expect(box!.split(' ').slice(2)).toEqual([width, height]);
  });

  it('has a group for each piece, named by its title', () => {
    expect([...svg.matchAll(/<g id="(\w+)"/g)].map((m) => m[1])).toEqual([
      'tip',
      'sideBand',
      'visor',
      'stiffener',
      'band',
      'strap',
      'liningTip',
      'liningSide',
      'liningBand',
    ]);
    expect(svg).toContain('<title>Visor stiffener</title>');
    expect(svg).toContain('<title>Cornet’s cap</title>');
  });

  it('sets letters that mean something to SVG as letters', () => {
    const label = { cap: 'Brass & <Silver>', wearer: '', finishedGirth: 558.8, date: '' };
    const [tip] = drawPattern(cap(), { unit: 'cm', halves: false, dimensions: false, label });
    expect(toSvg(arrange([tip!]), '')).toContain('Brass &amp; &lt;Silver&gt;');
  });
});
