import { BEHIND } from '../../worn/mesh.ts';
import { EYELET_RIM } from '../../worn/trimmed.ts';

/** Where a corner is in the picture: a far eye, so that a front view is a true elevation. */
const PLACED = `
uniform mat3 uAxes;
uniform vec2 uCentre;
uniform vec2 uScale;
vec4 placed(vec3 p) {
  vec3 seen = uAxes * p;
  return vec4((seen.xy - uCentre) * uScale, -seen.z / 1000.0, 1.0);
}`;

/** Soft light from above on the left, as drawings have it: a wash of ink on paper, and a line where a surface turns away. */
const WASHED = `
uniform vec3 uInk;
vec3 washed(vec3 colour, vec3 n, float depth) {
  float light = smoothstep(-0.55, 0.95, dot(n, normalize(vec3(-0.45, 0.62, 0.64))));
  return mix(mix(colour, uInk, depth), colour, light);
}
float turning(float facing) {
  return 1.0 - smoothstep(0.6, 1.7, abs(facing) / max(fwidth(facing), 1e-5));
}
float line(float mm, float px) {
  return 1.0 - smoothstep(px - 0.5, px + 0.5, mm / max(fwidth(mm), 1e-5));
}`;

export const clothVertex = `#version 300 es
in vec3 position;
in vec3 normal;
in vec2 cloth;
in vec4 edges;
in vec4 trim;
in vec2 part;
out vec3 vNormal;
out vec2 vCloth;
out vec4 vEdges;
out vec2 vRuns;
flat out float vStitch;
flat out float vPleat;
flat out vec2 vPart;
${PLACED}
void main() {
  vNormal = uAxes * normal;
  vCloth = cloth;
  vEdges = edges;
  vRuns = trim.xy;
  vStitch = trim.z;
  vPleat = trim.w;
  vPart = part;
  // What lies within is farther than what it lies in seems from outside, and nearer than its inside.
  float behind = part.y > 1.5 ? 1.0 : part.y < 0.5 ? 2.0 * smoothstep(0.0, 0.2, -vNormal.z) : 0.0;
  gl_Position = placed(position) + vec4(0.0, 0.0, behind * ${(BEHIND / 1000).toFixed(4)}, 0.0);
}`;

export const clothFragment = `#version 300 es
precision highp float;
in vec3 vNormal;
in vec2 vCloth;
in vec4 vEdges;
in vec2 vRuns;
flat in float vStitch;
flat in float vPleat;
flat in vec2 vPart;
uniform vec3 uCloth;
uniform vec3 uLining;
uniform float uLined;
uniform sampler2D uLiningSwatch;
uniform float uLiningSize;
uniform vec3 uChalk;
uniform float uLit;
uniform float uChosen;
uniform float uWeave;
uniform sampler2D uSwatch;
uniform float uSwatchSize;
out vec4 painted;
${WASHED}

/** How much of a pattern is left where a pixel takes in so many mm of it. */
float clear(float mm, float size) { return 1.0 - smoothstep(0.25, 0.6, mm / size); }

/** The cloth at its place on the piece: x across the grain, y along it, mm. */
vec3 woven() {
  if (uSwatchSize > 0.0) return texture(uSwatch, vCloth / uSwatchSize).rgb;
  vec2 fine = fwidth(vCloth);
  if (uWeave > 1.5) {
    vec2 at = abs(fract(vCloth / 24.0) - 0.5) * 24.0;
    vec2 bar = (1.0 - smoothstep(vec2(3.0) - fine, vec2(3.0) + fine, at)) * 0.22;
    return mix(uCloth, uInk, bar.x + bar.y);
  }
  if (uWeave > 0.5) {
    float rib = 0.5 + 0.5 * cos(vCloth.x * 6.28318 / 3.5);
    return mix(uCloth, uInk, 0.3 * rib * rib * clear(fine.x, 3.5));
  }
  return uCloth;
}

/** Stitches in a line so far from an edge, by the way along it. */
float dashed(float mm, float at, float run) {
  float fine = max(fwidth(mm), 1e-5);
  float on = 1.0 - smoothstep(0.3, 1.0, abs(mm - at) / fine);
  return on * smoothstep(0.3, 0.38, abs(fract(run / 4.5) - 0.5) * 1.4) * clear(fine, 3.0);
}

/** Stitches along the rails, in rows from the outer edge, the folds of cloth that is drawn up, or the hole of an eyelet. */
float stitched() {
  if (vStitch < 0.5) return 0.0;
  if (vStitch < 1.5) return max(dashed(vEdges.x, 2.5, vRuns.x), dashed(vEdges.y, 2.5, vRuns.y));
  float run = mix(vRuns.x, vRuns.y, vEdges.x / max(vEdges.x + vEdges.y, 1e-3));
  if (vStitch < 2.5) {
    float row = floor((vEdges.y - 6.0) / 7.0 + 0.5);
    return vEdges.x < 8.0 || row < 0.0 ? 0.0 : dashed(vEdges.y, 6.0 + 7.0 * row, run);
  }
  if (vStitch > 3.5) return 1.7 * smoothstep(-0.5, 0.5, (vEdges.y - ${EYELET_RIM.toFixed(1)}) / max(fwidth(vEdges.y), 1e-5));
  float near = max(0.0, 1.0 - vEdges.y / 18.0);
  float fine = max(fwidth(vRuns.y), 1e-5);
  float fold = vPleat > 0.0
    ? abs(fract(vRuns.y / vPleat) - 0.5) * vPleat
    : abs(fract(vRuns.y / 9.0 + 0.08 * sin(vRuns.y / 5.0)) - 0.5) * 9.0;
  return (1.0 - smoothstep(0.5, 1.6, fold / fine)) * (vPleat > 0.0 ? 1.7 * step(0.001, near) : near);
}

/** The lining at its place on its own piece. */
vec3 lined() {
  return uLiningSize > 0.0 ? texture(uLiningSwatch, vCloth / uLiningSize).rgb : uLining;
}

void main() {
  vec3 n = normalize(vNormal);
  vec3 cloth = woven();
  vec3 within = lined();
  if (vPart.y > 1.5 && gl_FrontFacing) discard;
  bool outside = vPart.y < 1.5 && (gl_FrontFacing || vPart.y > 0.5);
  float facing = n.z;
  if (n.z < 0.0) n = -n;
  // An unlined cap shows the wrong side of its own cloth.
  vec3 inside = vPart.y > 2.5 ? cloth : vPart.y > 1.5 ? within : uLined > 0.5 ? uLining : mix(cloth, uInk, 0.15);
  vec3 colour = outside ? cloth : inside;
  bool lit = abs(vPart.x - uLit) < 0.5 || abs(vPart.x - uChosen) < 0.5;
  if (lit) colour = mix(colour, uChalk, 0.42);
  colour = washed(colour, n, outside ? 0.36 : 0.55);
  float seam = max(max(line(vEdges.x, 0.75), line(vEdges.y, 0.75)), max(line(vEdges.z, 0.75), line(vEdges.w, 0.75)));
  colour = mix(colour, lit ? uChalk : uInk, 0.85 * seam);
  if (outside) colour = mix(colour, uInk, 0.5 * stitched());
  colour = mix(colour, uInk, 0.9 * turning(facing));
  painted = vec4(colour, 1.0);
}`;

export const headVertex = `#version 300 es
in vec3 position;
in vec3 normal;
out vec3 vNormal;
${PLACED}
void main() {
  vNormal = uAxes * normal;
  // Hair under the cap is pressed by it.
  gl_Position = placed(position) + vec4(0.0, 0.0, 0.003, 0.0);
}`;

export const headFragment = `#version 300 es
precision highp float;
in vec3 vNormal;
uniform vec3 uPaper;
uniform vec3 uLine;
out vec4 painted;
${WASHED}
void main() {
  vec3 n = normalize(vNormal);
  vec3 colour = washed(uPaper, n, 0.2);
  painted = vec4(mix(colour, uLine, 0.75 * turning(n.z)), 1.0);
}`;

/** A line of some pixels' breadth through points in space: each point twice, moved to either side of its way. */
export const seamVertex = `#version 300 es
in vec3 position;
in vec3 before;
in vec3 after;
in float side;
in float nearer;
uniform vec2 uPixel;
${PLACED}
void main() {
  vec4 here = placed(position);
  vec2 way = (placed(after).xy - placed(before).xy) / uPixel;
  float size = max(length(way), 1e-6);
  vec2 out2 = vec2(-way.y, way.x) / size * side * 2.0;
  gl_Position = vec4(here.xy + out2 * uPixel, here.z - nearer, 1.0);
}`;

export const seamFragment = `#version 300 es
precision highp float;
uniform vec3 uChalk;
out vec4 painted;
void main() { painted = vec4(uChalk, 1.0); }`;
