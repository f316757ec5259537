import { Geometry, Mesh, Program, Renderer, Texture, Transform } from 'ogl';
import { axesOf, type Gaze } from '../../worn/gaze.ts';
import type { headMesh } from '../../worn/head-mesh.ts';
import type { Mesh as ClothMesh } from '../../worn/mesh.ts';
import type { Frame } from './framing.ts';
import { ribbons, type SeamPath } from './ribbons.ts';
import * as shaders from './shaders.ts';

/** Colours as red, green and blue from 0 to 1. */
export type Rgb = readonly [number, number, number];

export interface Inks {
  readonly ink: Rgb;
  readonly paper: Rgb;
  readonly head: Rgb;
  readonly line: Rgb;
  readonly chalk: Rgb;
}

/** What a picture hangs on. */
export interface Sight {
  readonly cloth: ClothMesh;
  readonly head: ReturnType<typeof headMesh>;
  /** From below the head would hide what lies in the cap. */
  readonly headShown: boolean;
  /** The seam that is lit: lines in space. */
  readonly seam: readonly SeamPath[];
  readonly lit: string | null;
  readonly chosen: string | null;
  readonly gaze: Gaze;
  readonly frame: Frame;
  readonly weave: number;
  readonly colour: Rgb;
  readonly swatch: Swatch | null;
  /** Of the lining; no colour where the cap has none. */
  readonly lining: Rgb | null;
  readonly liningSwatch: Swatch | null;
  readonly inks: Inks;
  /** Of the canvas, CSS pixels. */
  readonly width: number;
  readonly height: number;
}

/** A picture of cloth, and how broad it truly is, mm. */
export interface Swatch {
  readonly image: HTMLCanvasElement;
  readonly mm: number;
}

export interface Scene {
  readonly paint: (sight: Sight) => void;
  readonly close: () => void;
}

/** Opens a canvas for painting; null where the browser has no WebGL 2. The only place that knows the library. */
export const openScene = (canvas: HTMLCanvasElement): Scene | null => {
  if (canvas.getContext('webgl2', { alpha: true, antialias: true, depth: true }) === null) return null;
  const renderer = new Renderer({ canvas, alpha: true, antialias: true, premultipliedAlpha: true, webgl: 2 });
  const { gl } = renderer;
  gl.clearColor(0, 0, 0, 0);
  const root = new Transform();
  const placing = { uAxes: { value: [] as number[] }, uCentre: { value: [0, 0] }, uScale: { value: [1, 1] } };
  const colours = { uInk: { value: [0, 0, 0] }, uChalk: { value: [0, 0, 0] } };
  const photo = () =>
    new Texture(gl, {
      wrapS: gl.REPEAT,
      wrapT: gl.REPEAT,
      generateMipmaps: true,
      minFilter: gl.LINEAR_MIPMAP_LINEAR,
    });
  const [swatch, liningSwatch] = [photo(), photo()];
  const cloth = openPart(gl, root, shaders.clothVertex, shaders.clothFragment, {
    ...placing,
    ...colours,
    uCloth: { value: [1, 1, 1] },
    uLining: { value: [1, 1, 1] },
    uLined: { value: 0 },
    uLiningSwatch: { value: liningSwatch },
    uLiningSize: { value: 0 },
    uLit: { value: -1 },
    uChosen: { value: -1 },
    uWeave: { value: 0 },
    uSwatch: { value: swatch },
    uSwatchSize: { value: 0 },
  });
  const head = openPart(gl, root, shaders.headVertex, shaders.headFragment, {
    ...placing,
    ...colours,
    uPaper: { value: [1, 1, 1] },
    uLine: { value: [0, 0, 0] },
  });
  const seam = openPart(gl, root, shaders.seamVertex, shaders.seamFragment, {
    ...placing,
    ...colours,
    uPixel: { value: [1, 1] },
  });
  let before: Sight | null = null;

  const paint = (sight: Sight): void => {
    const { gaze, frame, width, height, inks } = sight;
    const ratio = Math.min(window.devicePixelRatio || 1, 2);
    if (before?.width !== width || before.height !== height || renderer.dpr !== ratio) {
      renderer.dpr = ratio;
      renderer.setSize(width, height);
    }
    const { right, up, eye } = axesOf(gaze);
    placing.uAxes.value = [right.x, up.x, eye.x, right.y, up.y, eye.y, right.z, up.z, eye.z];
    const { centre } = frame;
    placing.uCentre.value = [right, up].map(
      (axis) => axis.x * centre.x + axis.y * centre.y + axis.z * centre.z,
    );
    placing.uScale.value = [(2 * frame.scale) / width, (2 * frame.scale) / height];
    seam.uniforms.uPixel!.value = [2 / width, 2 / height];
    colours.uInk.value = [...inks.ink];
    colours.uChalk.value = [...inks.chalk];
    head.uniforms.uPaper!.value = [...inks.head];
    head.uniforms.uLine!.value = [...inks.line];
    if (before?.cloth !== sight.cloth) {
      const { position, normal, cloth: places, edges, trim, part, index } = sight.cloth;
      cloth.shape({
        position: { size: 3, data: position },
        normal: { size: 3, data: normal },
        cloth: { size: 2, data: places },
        edges: { size: 4, data: edges },
        trim: { size: 4, data: trim },
        part: { size: 2, data: part },
        index: { data: index },
      });
    }
    if (before?.head !== sight.head) {
      head.shape({
        position: { size: 3, data: sight.head.position },
        normal: { size: 3, data: sight.head.normal },
        index: { data: sight.head.index },
      });
    }
    if (before?.seam !== sight.seam) seam.shape(ribbons(sight.seam));
    const partOf = (id: string | null) => (id === null ? -1 : sight.cloth.parts.indexOf(id));
    const { uniforms } = cloth;
    uniforms.uCloth!.value = [...sight.colour];
    uniforms.uLining!.value = [...(sight.lining ?? sight.colour)];
    uniforms.uLined!.value = sight.lining ? 1 : 0;
    uniforms.uLiningSize!.value = sight.liningSwatch?.mm ?? 0;
    uniforms.uLit!.value = partOf(sight.lit);
    uniforms.uChosen!.value = partOf(sight.chosen);
    uniforms.uWeave!.value = sight.weave;
    uniforms.uSwatchSize!.value = sight.swatch?.mm ?? 0;
    if (sight.swatch && before?.swatch?.image !== sight.swatch.image) {
      swatch.image = sight.swatch.image;
      swatch.needsUpdate = true;
    }
    if (sight.liningSwatch && before?.liningSwatch?.image !== sight.liningSwatch.image) {
      liningSwatch.image = sight.liningSwatch.image;
      liningSwatch.needsUpdate = true;
    }
    head.show(sight.headShown);
    renderer.render({ scene: root, sort: false, frustumCull: false });
    before = sight;
  };

  return {
    paint,
    close: () => {
      for (const one of [cloth, head, seam]) one.close();
      for (const { texture } of [swatch, liningSwatch]) gl.deleteTexture(texture);
      // Else the browser keeps the context until the canvas is collected, and it has few of them.
      gl.getExtension('WEBGL_lose_context')?.loseContext();
    },
  };
};

type Attributes = ConstructorParameters<typeof Geometry>[1] & object;

/** One kind of thing in the scene: its program, and its shape, which may change. */
const openPart = (
  gl: Renderer['gl'],
  root: Transform,
  vertex: string,
  fragment: string,
  uniforms: Record<string, { value: unknown }>,
) => {
  const program = new Program(gl, { vertex, fragment, uniforms, cullFace: false });
  let mesh: Mesh | null = null;
  const clear = (): void => {
    if (!mesh) return;
    mesh.setParent(null);
    mesh.geometry.remove();
    mesh = null;
  };
  return {
    uniforms,
    show: (shown: boolean): void => {
      if (mesh) mesh.visible = shown;
    },
    shape: (attributes: Attributes): void => {
      const counts = (map: Record<string, { data?: { length: number } }>) =>
        Object.values(map)
          .map(({ data }) => data?.length ?? 0)
          .join();
      if (mesh && counts(mesh.geometry.attributes) === counts(attributes)) {
        for (const [name, { data }] of Object.entries(attributes)) {
          const kept = mesh.geometry.attributes[name]!;
          if (data) kept.data = data;
          kept.needsUpdate = true;
        }
        return;
      }
      clear();
      if ((attributes.index?.data?.length ?? 0) === 0) return;
      mesh = new Mesh(gl, { geometry: new Geometry(gl, attributes), program, frustumCulled: false });
      mesh.setParent(root);
    },
    close: (): void => {
      clear();
      program.remove();
    },
  };
};
