/** The part of the validator that the tests use; the package brings no types. */
declare module 'gltf-validator' {
  export function validateBytes(bytes: Uint8Array): Promise<unknown>
}
