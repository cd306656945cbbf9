import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from '@playwright/test'

const dist = fileURLToPath(new URL('../../dist', import.meta.url))
const files = readdirSync(dist, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name))
const page = readFileSync(join(dist, 'index.html'), 'utf8')

test('[S1] the built page carries a strict content policy and nothing that it forbids', () => {
  const policy = (/http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(page)?.[1] ?? '').replaceAll('&#39;', "'")
  for (const rule of ["default-src 'self'", "script-src 'self'", "object-src 'none'", "base-uri 'none'", "form-action 'none'"]) {
    expect(policy).toContain(rule)
  }
  expect(policy).not.toMatch(/unsafe|https?:|\*/)
  expect(page).not.toMatch(/<script(?![^>]*\bsrc=)[^>]*>|<style|\sstyle=|\son\w+=/)
})

test('[S2] no file of the build calls code out of text', () => {
  const scripts = files.filter((file) => file.endsWith('.js'))
  expect(scripts.length).toBeGreaterThan(1)
  const evaluating = scripts.filter((file) => /\beval\(|new Function\(/.test(readFileSync(file, 'utf8')))
  expect(evaluating).toEqual([])
})

test('[S3] a file that is not there is not there', async ({ request }) => {
  const answer = await request.get('assets/nothing-1234.js')
  expect(answer.status()).toBe(404)
})

test('[S4] the picture is loaded after the page, not with it', () => {
  const withThree = files.filter((file) => file.endsWith('.js') && /WebGLRenderer/.test(readFileSync(file, 'utf8')))
  expect(withThree.length).toBeGreaterThan(0)
  const early = withThree.map((file) => file.split('/').pop() ?? '').filter((name) => page.includes(name))
  expect(early).toEqual([])
})
