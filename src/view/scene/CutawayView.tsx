import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useId, useLayoutEffect, useRef, useState } from 'react'
import { dismiss, notify } from '../../state/actions/notices.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'
import { SectionView } from '../section/SectionView.tsx'
import { forgetWidths, lettersReady } from '../section/typeSize.ts'
import '../section/section.css'
import { takeView } from '../../state/actions/takeView.ts'
import { picture as firstPicture } from '../live/opening.ts'
import { offerPicture } from './capturePicture.ts'
import { SceneCanvas } from './canvas/SceneCanvas.tsx'
import { CutHandles } from './handles/CutHandles.tsx'
import { PictureLayer } from './overlay/PictureLayer.ts'
import type { LivePicture } from './PierColumns.tsx'
import { PierPicture } from './PierPicture.tsx'
import { PartList } from './pointing/PartList.tsx'
import { PartPlate } from './pointing/PartList.tsx'
import './scene.css'
import { readTones } from './site/tones.ts'
import { ViewBar } from './ViewBar.tsx'

const turnStep = Math.PI / 24

/** The cutaway: canvas, words and dimensions over it, the cut's handles, and the view bar with what is handed in. */
export function CutawayView({ children }: Readonly<{ children: ReactNode }>) {
  const words = wordsOf('scene')
  const quality = usePier((state) => state.view.quality)
  const theme = usePier((state) => state.view.theme)
  const [picture, setPicture] = useState<LivePicture | null>(null)
  const [isLost, setLost] = useState(false)
  const [isHeld, setHeld] = useState(false)
  const [letters, setLetters] = useState(0)
  const svg = useRef<SVGSVGElement>(null)
  const [layer, setLayer] = useState<PictureLayer | null>(null)
  const keys = useId()

  useLayoutEffect(() => {
    if (!svg.current) return
    const made = new PictureLayer(svg.current, setHeld)
    setLayer(made)
    return () => made.dispose()
  }, [])

  useEffect(() => {
    if (layer) layer.picture = picture
    offerPicture(picture)
    layer?.settle()
    return () => offerPicture(null)
  }, [picture, layer])

  useEffect(() => {
    if (!isLost) return
    notify(pierStore, { code: 'scene-failed' })
    // Nobody waits for a picture that will not come.
    firstPicture.pass()
    return () => dismiss(pierStore, 'scene-failed')
  }, [isLost])

  // biome-ignore lint/correctness/useExhaustiveDependencies: the theme changes what readTones reads
  useEffect(() => picture?.dress(readTones()), [picture, theme])

  useEffect(() => {
    let alive = true
    lettersReady().then(() => {
      if (!alive) return
      forgetWidths()
      setLetters((before) => before + 1)
      layer?.settle()
    })
    return () => {
      alive = false
    }
  }, [layer])

  const onKeyDown = ({ key, target, currentTarget }: KeyboardEvent): boolean => {
    if (!picture || target !== currentTarget) return false
    if (key === 'Home') takeView(pierStore, 'section')
    else if (key === 'ArrowLeft') picture.eye.nudge(turnStep, 0, 1)
    else if (key === 'ArrowRight') picture.eye.nudge(-turnStep, 0, 1)
    else if (key === 'ArrowUp') picture.eye.nudge(0, turnStep, 1)
    else if (key === 'ArrowDown') picture.eye.nudge(0, -turnStep, 1)
    else if (key === '+' || key === '=') picture.eye.nudge(0, 0, 0.88)
    else if (key === '-') picture.eye.nudge(0, 0, 1 / 0.88)
    else return false
    return true
  }
  const pixel = (event: PointerEvent): readonly [number, number] => {
    const box = event.currentTarget.getBoundingClientRect()
    return [event.clientX - box.left, event.clientY - box.top]
  }

  return (
    <section
      className='cutaway ring-inside fills'
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is turned with the keyboard
      tabIndex={0}
      aria-label={words.picture}
      aria-describedby={keys}
      onKeyDown={(event) => onKeyDown(event) && event.preventDefault()}
    >
      <p id={keys} className='spoken'>
        {words.pictureKeys}
      </p>
      <div
        className='fills'
        onPointerMove={(event) => event.pointerType === 'mouse' && layer?.pointerMoved(pixel(event))}
        onPointerLeave={() => layer?.pointerMoved(null)}
        onPointerDown={(event) => layer?.pressed(pixel(event))}
        onPointerUp={(event) => layer?.released(pixel(event), event.pointerType)}
      >
        {layer && (
          <SceneCanvas key={quality} isFull={quality === 'full'} onLost={setLost}>
            {(size, lives) => (
              <PierPicture size={size} lives={lives} layer={layer} room={`${theme} ${letters}`} isHeld={isHeld} onStand={setPicture} />
            )}
          </SceneCanvas>
        )}
      </div>
      <div className='overlay fills' aria-hidden='true'>
        <svg ref={svg} />
      </div>
      {isLost ? <SectionView /> : layer && <CutHandles ground={layer} />}
      {layer && <PartPlate register={layer.registerPlate} />}
      <PartList />
      <ViewBar>{children}</ViewBar>
    </section>
  )
}
