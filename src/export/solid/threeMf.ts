import { strToU8, zipSync } from 'fflate'
import { xmlText } from '../xmlText.ts'
import type { PlainMesh } from './plainMesh.ts'

/** One closed body of the file: its name and its colour as #rrggbb. */
export type NamedMesh = Readonly<{ name: string; colour: string; mesh: PlainMesh }>
export type ModelWords = Readonly<{ title: string; description: string; application: string }>

const contentTypes = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>`
const relations = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>`

const materials = 1

/**
 * Closed bodies as a 3MF file (core specification 1.3), one object a body, each with its own base material. Millimetres.
 * Writing is a zip of three small files, so the bytes are the same for the same bodies.
 */
export function threeMfFile(bodies: readonly NamedMesh[], { title, description, application }: ModelWords): Uint8Array<ArrayBuffer> {
  const bases = bodies.map(({ name, colour }) => `<base name="${xmlText(name)}" displaycolor="${colour.toUpperCase()}"/>`).join('')
  const objects = bodies.map((body, i) => objectText(body, i)).join('\n')
  const items = bodies.map((_, i) => `<item objectid="${idOf(i)}"/>`).join('')
  const model = `<?xml version="1.0" encoding="UTF-8"?>
<model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">
<metadata name="Title">${xmlText(title)}</metadata>
<metadata name="Description">${xmlText(description)}</metadata>
<metadata name="Application">${xmlText(application)}</metadata>
<resources>
<basematerials id="${materials}">${bases}</basematerials>
${objects}
</resources>
<build>${items}</build>
</model>`
  return zipSync(
    {
      '[Content_Types].xml': strToU8(contentTypes),
      '_rels/.rels': strToU8(relations),
      '3D/3dmodel.model': strToU8(model),
    },
    { level: 6, mtime: earliest },
  )
}

/** The zip format knows no earlier day. */
const earliest = '1980-01-01T12:00:00'
const idOf = (i: number): number => materials + 1 + i

function objectText({ name, mesh: { positions, indices } }: NamedMesh, i: number): string {
  const vertices: string[] = []
  for (let v = 0; v < positions.length; v += 3)
    vertices.push(`<vertex x="${millimetres(positions[v])}" y="${millimetres(positions[v + 1])}" z="${millimetres(positions[v + 2])}"/>`)
  const triangles: string[] = []
  for (let t = 0; t < indices.length; t += 3) triangles.push(`<triangle v1="${indices[t]}" v2="${indices[t + 1]}" v3="${indices[t + 2]}"/>`)
  return `<object id="${idOf(i)}" type="model" name="${xmlText(name)}" pid="${materials}" pindex="${i}"><mesh><vertices>${vertices.join('')}</vertices><triangles>${triangles.join('')}</triangles></mesh></object>`
}

/** As few digits as give the same single-precision number again; a tenth of a nanometre is nothing. */
const millimetres = (value = 0): string => String(Math.abs(value) < 1e-7 ? 0 : Number(value.toPrecision(9)))
