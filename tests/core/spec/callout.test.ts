import { describe, expect, it } from 'vitest'
import { allFields } from '../../../src/core/spec/fields.ts'
import { calloutFields } from '../../../src/core/spec/pier/callout.ts'
import { setCalloutText, setChoice, setField, setPart } from '../../../src/core/spec/edit.ts'
import { defaultDocument, defaultSpec } from '../../../src/core/spec/defaults.ts'
import { parseJob } from '../../../src/core/spec/jobFile.ts'
import { writeJob } from '../../../src/core/spec/writeJob.ts'
import { linkContent } from '../../../src/core/spec/linkContent.ts'
import { documentFromContent } from '../../../src/core/spec/linkFields.ts'
import { withValueAt } from '../../../src/core/spec/path.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import type { Result } from '../../../src/core/model/issue.ts'
import { toSI } from '../../../src/core/units/factors.ts'
import { newtons } from '../../../src/core/units/quantity.ts'

const open = (result: Result<PierDocument>): PierDocument => (result.ok ? result.value : expect.fail(JSON.stringify(result.issues)))
const entered = (): PierDocument => {
  const on = open(setPart(defaultDocument, 'callout', true))
  const sized = open(setField(on, 'callout.diameter', '18', 'us'))
  return open(setChoice(sized, 'callout.mixed', 'yes'))
}

describe('[D1] the drawing in the document', () => {
  it('is none at first, and starts with nothing on it', () => {
    expect(defaultSpec.callout).toBeNull()
    expect(open(setPart(defaultDocument, 'callout', true)).spec.callout).toEqual(calloutFields.first)
  })

  it('takes over a load that was entered from the drawing', () => {
    const uplift = newtons(toSI(1234, 'lb'))
    const loads = { ...defaultSpec.loads, entered: { uplift, gravity: uplift, lateral: uplift, lateralHeight: defaultSpec.hole.depth } }
    const on = open(setPart({ ...defaultDocument, spec: { ...defaultSpec, loads } }, 'callout', true))
    expect(on.spec.callout?.uplift).toBe(uplift)
  })

  it('lets every item be left out again', () => {
    const document = entered()
    expect(document.spec.callout?.mixed).toBe('yes')
    expect(open(setChoice(document, 'callout.mixed', null)).spec.callout?.mixed).toBeNull()
    expect(open(setField(document, 'callout.diameter', '', 'us')).spec.callout?.diameter).toBeNull()
    for (const field of allFields.filter(({ group }) => group === 'drawing'))
      expect('nullable' in field && field.nullable === true, field.path).toBe(/^callout\.\w+$/.test(field.path))
  })

  it('refuses none where a choice must be made', () => {
    const refused = setChoice(defaultDocument, 'post.section', null)
    expect(refused.ok ? [] : refused.issues.map((issue) => issue.code)).toEqual(['not-a-choice'])
  })

  it('is written to the file and read back, as it was typed', () => {
    const typed = open(setField(entered(), 'callout.depth', `4'-6"`, 'us'))
    const texts = open(setCalloutText(open(setCalloutText(typed, 'number', 'S-101')), 'notes', 'see detail 3'))
    const file = writeJob(texts)
    const back = open(parseJob(file))
    expect(back.spec).toEqual(texts.spec)
    expect(writeJob(back)).toBe(file)
    expect(file).toContain(JSON.stringify(`4'-6"`))
    expect(file).toContain('see detail 3')
  })

  it('opens from a file of before it, and from one that leaves out most of it', () => {
    const job = JSON.parse(writeJob(defaultDocument)) as { pier: Record<string, unknown> }
    delete job.pier.callout
    expect(open(parseJob(JSON.stringify(job))).spec.callout).toBeNull()
    job.pier.callout = { diameter: '18 in' }
    expect(open(parseJob(JSON.stringify(job))).spec.callout).toEqual({ ...calloutFields.first, diameter: toSI(18, 'in') })
  })

  it.each([
    ['a bare number', { diameter: 18 }, 'missing-unit', 'callout.diameter'],
    ['a choice nobody has', { mixed: 'maybe' }, 'not-a-choice', 'callout.mixed'],
    ['an unknown key', { width: '18 in' }, 'unknown-key', 'callout.width'],
    ['too long a note', { notes: 'x'.repeat(4001) }, 'text-too-long', 'callout.notes'],
    ['too wide a hole', { diameter: '400 in' }, 'above-maximum', 'callout.diameter'],
  ])('refuses %s by its path', (_, callout, code, path) => {
    const job = JSON.parse(writeJob(defaultDocument)) as { pier: Record<string, unknown> }
    job.pier.callout = callout
    const read = parseJob(JSON.stringify(job))
    expect(read.ok ? [] : read.issues.map((issue) => [issue.code, issue.path])).toContainEqual([code, path])
  })

  it('travels in a link without its number, date and notes', () => {
    const secret = open(setCalloutText(open(setCalloutText(entered(), 'number', 'S-101')), 'notes', 'gate code 4711'))
    const content = linkContent(secret)
    expect(content).toBe(JSON.stringify(['qq', 1, 'qd', '18 in', 'qm', 'yes']))
    const back = open(documentFromContent(content))
    expect(back.spec.callout).toEqual({ ...secret.spec.callout, number: '', notes: '' })
  })

  it('refuses a text without a drawing, and one that is too long', () => {
    const codes = (result: Result<PierDocument>) => (result.ok ? [] : result.issues.map((issue) => issue.code))
    expect(codes(setCalloutText(defaultDocument, 'number', 'S-1'))).toEqual(['not-a-field'])
    expect(codes(setCalloutText(entered(), 'date', 'x'.repeat(41)))).toEqual(['text-too-long'])
  })

  it('says nothing about what can be built', () => {
    const odd = withValueAt(entered().spec, 'callout.depth', toSI(200, 'in'))
    expect(open(parseJob(writeJob({ ...entered(), spec: odd }))).spec.callout?.depth).toBe(toSI(200, 'in'))
  })
})
