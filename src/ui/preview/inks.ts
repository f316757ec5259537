import type { Inks, Rgb } from './scene.ts';

/** '#rrggbb' as parts from 0 to 1. */
export const rgbOf = (colour: string): Rgb => {
  const n = Number.parseInt(colour.slice(1), 16);
  return [(n >> 16) / 255, ((n >> 8) & 255) / 255, (n & 255) / 255];
};

const mixed = (a: Rgb, b: Rgb, t: number): Rgb => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

/** Ink on cloth is dark in any light; the head is drawn in the room's own ink on its own paper. */
const INK: Rgb = rgbOf('#1e2a33');

/** The colours of the page as they are now, for the painter. */
export const readInks = (element: Element): Inks => {
  const style = getComputedStyle(element);
  const read = (name: string, otherwise: string): Rgb => {
    const value = style.getPropertyValue(name).trim();
    return rgbOf(/^#[0-9a-f]{6}$/i.test(value) ? value : otherwise);
  };
  const [ink, paper, chalk] = [
    read('--ink', '#1e2a33'),
    read('--paper', '#f7f4ec'),
    read('--chalk', '#1d5a97'),
  ];
  return {
    ink: INK,
    paper,
    head: mixed(paper, ink, 0.07),
    line: mixed(paper, ink, 0.75),
    chalk,
  };
};
