import { Suspense } from 'react'
import { Comparing } from '../compare/Comparing.tsx'
import { lazyPage } from '../lazyPage.tsx'
import { SheetButton } from '../sheet/SheetButton.tsx'
import { PageSwitches } from './PageSwitches.tsx'

/** Waits for the browser's own print. */
const ComparedPrint = lazyPage(
  () => import('../sheet/ComparedPrint.tsx').then((module) => module.ComparedPrint),
  ['answers', 'compare', 'drawing', 'looking', 'materials', 'moisture', 'reasons', 'sheet', 'steps', 'takeAlong', 'time'],
)

const tools = (
  <>
    <PageSwitches />
    <SheetButton className='button' />
  </>
)

/** Piers side by side, with what other parts of the page do for them. */
export const Comparison = ({ drawsIn3D }: Readonly<{ drawsIn3D: boolean }>) => (
  <Comparing drawsIn3D={drawsIn3D} tools={tools}>
    <Suspense>
      <ComparedPrint />
    </Suspense>
  </Comparing>
)
