const atOnce = 0x8000

/** Bytes as base64, in pieces that a call can take. */
export const inBase64 = (bytes: Uint8Array): string => {
  let text = ''
  for (let i = 0; i < bytes.length; i += atOnce) text += String.fromCharCode(...bytes.subarray(i, i + atOnce))
  return btoa(text)
}
