import type { Viewpoint } from '../../state/appState.ts'
import { usePier, useSpec } from './usePier.ts'

const all: readonly Viewpoint[] = ['section', 'three-quarter', 'uphill', 'downhill', 'plan', 'close-up']
const ofSlope: readonly Viewpoint[] = ['uphill', 'downhill']

/** The named views of this pier: level ground has no uphill and no downhill side. The one in use stays, whatever the ground does. */
export const useViewpoints = (): readonly Viewpoint[] => {
  const isLevel = useSpec().site.slope === 0
  const now = usePier((state) => state.view.viewpoint.name)
  return isLevel ? all.filter((name) => name === now || !ofSlope.includes(name)) : all
}
