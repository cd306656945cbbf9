import { type KeyboardEvent, type PointerEvent, useCallback, useEffect, useId, useMemo, useRef, useState } from 'react'
import { dismiss, notify } from '../../state/actions/notices.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'
import { SectionView } from '../section/SectionView.tsx'
import { forgetWidths, lettersReady } from '../section/typeSize.ts'
import '../section/section.css'
import { takeView } from '../../state/actions/takeView.ts'
import { offerDirector } from './capturePicture.ts'
import type { Director } from './Director.ts'
import { CutHandles } from './handles/CutHandles.tsx'
import { PictureLayer } from './overlay/PictureLayer.ts'
import { PierCanvas } from './PierCanvas.tsx'
import { PartList } from './pointing/PartList.tsx'
import { PartPlate } from './pointing/PartPlate.tsx'
import { readTones } from './readTones.ts'
import './scene.css'
import { ViewBar } from './ViewBar.tsx'

const turnStep = Math.PI / 24

/** The cutaway: canvas, words and dimensions over it, the cut's handles, and the view bar. */
export function CutawayView() {
  const words = wordsOf('scene')
  const quality = usePier((state) => state.view.quality)
  const theme = usePier((state) => state.view.theme)
  const [director, setDirector] = useState<Director | null>(null)
  const [isLost, setLost] = useState(false)
  const svg = useRef<SVGSVGElement>(null)
  const layer = useMemo(() => new PictureLayer(), [])
  const keys = useId()
  const onDirector = useCallback((made: Director | null) => setDirector(made), [])

  useEffect(() => {
    if (!director || !svg.current) return
    layer.attach(svg.current, director)
    return () => layer.detach()
  }, [director, layer])

  useEffect(() => offerDirector(director), [director])

  useEffect(() => {
    if (!isLost) return
    notify(pierStore, { code: 'scene-failed' })
    return () => dismiss(pierStore, 'scene-failed')
  }, [isLost])

  // biome-ignore lint/correctness/useExhaustiveDependencies: the theme changes what readTones reads
  useEffect(() => {
    director?.setTones(readTones())
    director?.reframe()
  }, [director, theme])

  useEffect(() => {
    let alive = true
    lettersReady().then(() => {
      if (!alive) return
      forgetWidths()
      director?.reframe()
    })
    return () => {
      alive = false
    }
  }, [director])

  const onKeyDown = ({ key, target, currentTarget }: KeyboardEvent): boolean => {
    if (!director || target !== currentTarget) return false
    if (key === 'Home') takeView(pierStore, 'section')
    else if (key === 'ArrowLeft') director.rig.nudge(turnStep, 0, 1)
    else if (key === 'ArrowRight') director.rig.nudge(-turnStep, 0, 1)
    else if (key === 'ArrowUp') director.rig.nudge(0, turnStep, 1)
    else if (key === 'ArrowDown') director.rig.nudge(0, -turnStep, 1)
    else if (key === '+' || key === '=') director.rig.nudge(0, 0, 0.88)
    else if (key === '-') director.rig.nudge(0, 0, 1 / 0.88)
    else return false
    return true
  }
  const pixel = (event: PointerEvent): readonly [number, number] => {
    const box = event.currentTarget.getBoundingClientRect()
    return [event.clientX - box.left, event.clientY - box.top]
  }

  return (
    <section
      className='cutaway'
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
        className='canvas-holder'
        onPointerMove={(event) => event.pointerType === 'mouse' && layer.pointerMoved(pixel(event))}
        onPointerLeave={() => layer.pointerMoved(null)}
        onPointerDown={(event) => layer.pressed(pixel(event))}
        onPointerUp={(event) => layer.released(pixel(event), event.pointerType)}
      >
        <PierCanvas quality={quality} onDirector={onDirector} onLost={setLost} />
      </div>
      <div className='overlay' aria-hidden='true'>
        <svg ref={svg} />
      </div>
      {isLost ? <SectionView /> : <CutHandles ground={layer} />}
      <PartPlate register={layer.registerPlate} />
      <PartList />
      <ViewBar />
    </section>
  )
}
