import { BackSide, ShaderMaterial, Vector2 } from 'three'

/**
 * A thin dark rim round a part, as a draughtsman inks its outline: the back faces, pushed out by `uWidth` pixels. The size of the picture
 * [px] is written into `uSize` before each draw.
 */
export const createRimMaterial = (ink: readonly [number, number, number], width: number): ShaderMaterial =>
  new ShaderMaterial({
    side: BackSide,
    uniforms: { uWidth: { value: width }, uSize: { value: new Vector2(1, 1) }, uRim: { value: ink } },
    vertexShader: `
uniform float uWidth; uniform vec2 uSize;
void main() {
  vec4 at = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  vec2 way = normalMatrix[0].xy * normal.x + normalMatrix[1].xy * normal.y + normalMatrix[2].xy * normal.z;
  float reach = length(way);
  if (reach > 1e-5) at.xy += way / reach * 2.0 * uWidth / uSize * at.w;
  gl_Position = at;
}`,
    fragmentShader: `
uniform vec3 uRim;
void main() { gl_FragColor = vec4(uRim, 1.0); }`,
  })
