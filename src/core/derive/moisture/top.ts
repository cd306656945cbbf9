import { fallAway, workedGroundFall } from '../../engineering/moisture/fallAway.ts'
import { type InDish, pondedVolume, workedPondedVolume } from '../../engineering/moisture/pondedVolume.ts'
import { workedRunoff } from '../../engineering/moisture/runoff.ts'
import { splashBand } from '../../engineering/moisture/splashBand.ts'
import { moistureDeficit, workedPondingStart } from '../../engineering/moisture/pondingStart.ts'
import { topSlope, workedTopSlope } from '../../engineering/moisture/topSlope.ts'
import { type WaterPath, waterPath } from '../../engineering/moisture/waterPath.ts'
import { textures } from '../../engineering/tables/infiltration.ts'
import { lotDrainage } from '../../engineering/tables/lotDrainage.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import { startingSaturation } from '../../engineering/tables/startingSaturation.ts'
import { heightAt } from '../../geometry/surface.ts'
import type { Pond, TopResult } from '../../model/moistureResult.ts'
import type { Worked } from '../../model/worked.ts'
import { cubicMetres, metres, slope, squareMetres } from '../../units/quantity.ts'
import { given, lengthTerm } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { renamed } from '../../engineering/showing.ts'
import { waterLine } from './waterLine.ts'

/** Two heights closer than this are the same height [m]. */
const same = 1e-9
const rimOf = ({ profile }: PierFrame) => metres(profile.shaftRadius)
const signedRise = ({ shape, rise }: PierFrame['spec']['top']) => metres({ flat: 0, crowned: rise, dished: -rise }[shape])
const rimAbove = ({ spec, profile }: PierFrame) => ({
  uphill: metres(spec.top.rim),
  downhill: metres(spec.top.rim + 2 * spec.site.slope * profile.shaftRadius),
})

/**
 * Where rain ends. Without a finished top soil lies against the wood: rain ends there unless the ground falls away on every side,
 * and sheet water comes from uphill on a slope. A swale keeps sheet water away, and with it the reason of a rim that lies low on
 * the uphill side alone.
 */
export function pierWaterPath(frame: PierFrame): WaterPath {
  const { spec } = frame
  const { fall, swale } = spec.water
  if (frame.end.kind !== 'top') {
    const away = fall !== null && fall > 0
    return {
      end: away ? 'ground' : 'post',
      reasons: away ? [] : ['soil-against-post'],
      fromUphill: !away && swale === 'no' && spec.site.slope > 0,
      overRim: metres(0),
    }
  }
  const rim = rimAbove(frame)
  const path = waterPath({
    slope: topSlope({ rise: signedRise(spec.top), rimRadius: rimOf(frame), innerRadius: metres(frame.innerRadius) }),
    rimAboveUphill: rim.uphill,
    rimAboveDownhill: rim.downhill,
    heaped: spec.top.heaped,
  })
  if (swale === 'no' || !path.fromUphill || rim.downhill < -same) return path
  const reasons = path.reasons.filter((reason) => reason !== 'rim-below-uphill-grade')
  return { ...path, reasons, fromUphill: false, end: reasons.length > 0 ? 'post' : 'ground' }
}

/** Does the top send water down along the post? Rain that soaks into level soil where it falls is no more than the ground's own wetness. */
export const isFed = (frame: PierFrame, path: WaterPath): boolean => (frame.end.kind === 'top' ? path.end === 'post' : path.fromUphill)

/** Everything that the top and the ground round it do with rain. */
export function topResult(frame: PierFrame, path: WaterPath, pond: Pond | null, splashFrom: number): TopResult {
  const { spec } = frame
  const hasTop = frame.end.kind === 'top'
  const ponded = hasTop ? pondedOf(frame, path) : null
  const rim = rimAbove(frame)
  return {
    slope: hasTop ? slopeOf(frame) : null,
    path,
    line: waterLine(frame, path),
    ponded,
    pondedVolume: cubicMetres(ponded?.value ?? 0),
    pond,
    rimAboveUphill: hasTop
      ? given('rim-above-uphill', rim.uphill, 'length', { formula: 't_u = t', inputs: [lengthTerm('t', 'rim', spec.top.rim)] })
      : null,
    rimAboveDownhill: hasTop
      ? given('rim-above-downhill', rim.downhill, 'length', {
          formula: 't_d = t + 2\\,s\\,R',
          inputs: [
            lengthTerm('t', 'rim', spec.top.rim),
            { symbol: 's', name: 'siteSlope', value: spec.site.slope, quantity: 'slope' },
            lengthTerm('R', 'rimRadius', frame.profile.shaftRadius),
          ],
        })
      : null,
    fall: fallOf(frame),
    swale: spec.water.swale === 'yes',
    runoff: runoffOf(frame),
    ponding: pondingOf(frame),
    splash: splashBand({ around: spec.water.around, groundAtPost: metres(splashFrom) }),
    heaped: hasTop ? spec.top.heaped : metres(0),
  }
}

function slopeOf(frame: PierFrame): Worked | null {
  const inputs = { rise: signedRise(frame.spec.top), rimRadius: rimOf(frame), innerRadius: metres(frame.innerRadius) }
  const worked: Worked | null = workedTopSlope(inputs)
  return worked && renamed(worked, { rise: 'topRise' })
}

function pondedOf(frame: PierFrame, { overRim }: WaterPath): Worked | null {
  const { spec } = frame
  if (spec.top.shape !== 'dished') return null
  const { shape, width, depth } = postSections[spec.post.section]
  const inside: InDish = frame.bracketSite ? { shape: 'landing' } : shape === 'round' ? { shape, diameter: width } : { shape, width, depth }
  const inputs = { rimRadius: rimOf(frame), innerRadius: metres(frame.innerRadius), dish: spec.top.rise, overRim, inside }
  return pondedVolume(inputs) === null ? null : workedPondedVolume(inputs)
}

/**
 * Water in a dished top when it is full: up to its rim, or over it as far as water stands in a pit. Null where the volume is.
 * @param frame of the pier @param path where its rain ends
 */
export function pondOf(frame: PierFrame, path: WaterPath): Pond | null {
  const { end, innerRadius } = frame
  if (end.kind !== 'top' || pondedOf(frame, path) === null) return null
  const rim = rimOf(frame)
  const onBed = (r: number) => [r, heightAt(end.surface, r, 0)] as const
  return {
    level: metres(heightAt(end.surface, rim, 0) + path.overRim),
    bed: [onBed(rim), ...(frame.bracketSite ? [onBed(innerRadius)] : []), onBed(0)],
  }
}

/** Fall of the ground away from the pier on its uphill side, where it is least. */
function fallOf({ spec }: PierFrame): TopResult['fall'] {
  const away = spec.water.fall ?? slope(-spec.site.slope)
  const run = lotDrainage.within.value
  return {
    worked: workedGroundFall({ drop: metres(away * run || 0), run }, { sources: ['user'] }),
    asked: workedGroundFall({ drop: lotDrainage.fall.value, run }, { id: 'ground-fall-asked' }),
    reached: fallAway(slope(away)).reached,
  }
}

/** Most that a strip as wide as the pier, and as long as the rule looks, can send down to it: the ground takes none of it. */
function runoffOf({ spec, profile }: PierFrame): Worked | null {
  const { fall, swale, rain } = spec.water
  if (!(spec.site.slope > 0) || swale === 'yes' || (fall !== null && fall > 0)) return null
  const area = squareMetres(2 * profile.shaftRadius * lotDrainage.within.value)
  return renamed(workedRunoff({ share: 1, rain, area }, { standings: ['assumed here'], sources: ['assumption', 'irc-r401-3'] }), {
    share: 'runoffShare',
  })
}

/** Time until water stands on the ground in the rain entered; null without a texture, or where the ground takes all of it. */
function pondingOf({ spec }: PierFrame): Worked | null {
  const { texture, rain, ground } = spec.water
  if (texture === null) return null
  const row = textures[texture]
  const start = startingSaturation[ground]
  return workedPondingStart(
    {
      conductivity: row.conductivity.value,
      suction: row.suction.value,
      deficit: moistureDeficit({ effectivePorosity: row.effectivePorosity.value, saturation: start.value }),
      rain,
    },
    { standings: [row.conductivity.standing, start.standing], sources: [row.conductivity.source, start.source] },
  )
}
