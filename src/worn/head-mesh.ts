import { type HeadForm, headCut } from './head-form.ts';

const [ROUND, HIGH] = [72, 56];

/** The head form for painting: positions and outward normals, mm, and the corners of its triangles. */
export const headMesh = (head: HeadForm) => {
  const position = new Float32Array(3 * (ROUND + 1) * (HIGH + 1));
  const index: number[] = [];
  for (let i = 0; i <= HIGH; i++) {
    const z = heightOf(head, i / HIGH);
    const cut = headCut(head, z) ?? { halfLength: 0, halfBreadth: 0, middle: 0 };
    for (let j = 0; j <= ROUND; j++) {
      const angle = (2 * Math.PI * j) / ROUND;
      const k = 3 * (i * (ROUND + 1) + j);
      position[k] = cut.halfBreadth * Math.cos(angle);
      position[k + 1] = cut.middle + cut.halfLength * Math.sin(angle);
      position[k + 2] = z;
      if (i < HIGH && j < ROUND) {
        const [p, q] = [k / 3, k / 3 + ROUND + 1];
        index.push(p, p + 1, q, p + 1, q + 1, q);
      }
    }
  }
  return { position, normal: smoothNormals(position), index: Uint32Array.from(index), columns: ROUND + 1 };
};

/** Close together at the top, where the form bends. */
const heightOf = ({ top, foot }: HeadForm, share: number): number => {
  const z = foot + (top - foot) * Math.sin((share * Math.PI) / 2);
  return Math.min(z, top - 1e-6);
};

const smoothNormals = (position: Float32Array): Float32Array => {
  const normal = new Float32Array(position.length);
  const width = ROUND + 1;
  for (let i = 0; i <= HIGH; i++) {
    for (let j = 0; j <= ROUND; j++) {
      const at = (row: number, column: number) =>
        3 * (Math.min(HIGH, Math.max(0, row)) * width + ((column + ROUND) % ROUND));
      const [a, b, c, d] = [at(i, j + 1), at(i, j - 1), at(i + 1, j), at(i - 1, j)];
      const [ux, uy, uz] = [0, 1, 2].map((n) => position[a + n]! - position[b + n]!) as [
        number,
        number,
        number,
      ];
      const [vx, vy, vz] = [0, 1, 2].map((n) => position[c + n]! - position[d + n]!) as [
        number,
        number,
        number,
      ];
      const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
      const length = Math.hypot(nx, ny, nz);
      normal.set(length > 1e-9 ? [nx / length, ny / length, nz / length] : [0, 0, 1], 3 * (i * width + j));
    }
  }
  return normal;
};
