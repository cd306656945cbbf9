import type { Rule } from './rules.ts'
import { target } from './sourceFile.ts'

/** What every room of the view may use: parts that know no pier, what is read of the page, files in and out, what runs while it is open. */
const below = ['kit', 'hooks', 'files', 'live', 'lazyPage.tsx']
/** Pages know what is drawn and the rows of a comparison, and meet each other only in `app`. */
const page = [...below, 'cells', 'section', 'scene']
const rooms: Readonly<Record<string, readonly string[]>> = {
  kit: [],
  hooks: [],
  files: [],
  live: [],
  'lazyPage.tsx': ['kit'],
  cells: ['kit', 'hooks'],
  section: ['kit', 'hooks'],
  scene: [...below, 'section'],
  compare: page,
  export: page,
  panels: page,
  sheet: page,
  shelf: page,
  time: page,
  app: [...page, 'compare', 'export', 'panels', 'sheet', 'shelf', 'time'],
}

const view = 'src/view/'
const roomOf = (path: string): string => path.slice(view.length).split('/')[0] ?? ''
const isCode = (path: string): boolean => /\.tsx?$/.test(path)

/** Types count as well. */
export const walls: Rule = {
  name: 'rooms of the view point one way',
  check: (file) => {
    if (!file.path.startsWith(view)) return []
    const own = roomOf(file.path)
    const mayImport = rooms[own]
    if (!mayImport) return [`${file.path} stands in no room`]
    return file.imports.flatMap((wanted) => {
      const to = target(file, wanted)
      if (to === null || !isCode(to) || !to.startsWith(view) || roomOf(to) === own || mayImport.includes(roomOf(to))) return []
      return [`${file.path} imports ${wanted.from}`]
    })
  },
  plant: [
    ['src/view/kit/a.tsx', "import { usePier } from '../hooks/usePier.ts'"],
    ['src/view/hooks/a.ts', "import type { Fact } from '../panels/fact.ts'"],
    ['src/view/files/a.ts', "import { Head } from '../app/Head.tsx'"],
    ['src/view/live/a.ts', "import { TimeBar } from '../time/TimeBar.tsx'"],
    ['src/view/lazyPage.tsx', "import { usePier } from './hooks/usePier.ts'"],
    ['src/view/cells/a.tsx', "import type { Row } from '../compare/row.ts'"],
    ['src/view/section/a.ts', "import type { Eye } from '../scene/camera/Eye.tsx'"],
    ['src/view/scene/a.tsx', "import { TimeButton } from '../time/TimeButton.tsx'"],
    ['src/view/compare/a.tsx', "import { SheetButton } from '../sheet/SheetButton.tsx'"],
    ['src/view/export/a.ts', "import { useSheet } from '../sheet/useSheet.ts'"],
    ['src/view/panels/inputs/a.tsx', "import { PageSwitches } from '../../app/PageSwitches.tsx'"],
    ['src/view/sheet/a.tsx', "const late = import('../compare/CompareView.tsx')"],
    ['src/view/shelf/a.tsx', "import type { Issues } from '../panels/issues.ts'"],
    ['src/view/time/a.tsx', "import { LifePanel } from '../panels/years/LifePanel.tsx'"],
    ['src/view/app/a.tsx', "import { Elsewhere } from '../elsewhere/Elsewhere.tsx'"],
    ['src/view/elsewhere/a.tsx', ''],
  ],
}

/** A part of the kit is shown what to say: it reads nothing of the open pier itself. */
export const kitKnowsNoPier: Rule = {
  name: 'the kit knows no pier',
  check: (file) =>
    file.path.startsWith('src/view/kit/')
      ? file.imports.filter((wanted) => !wanted.typeOnly && target(file, wanted)?.startsWith('src/state/')).map(({ from }) => from)
      : [],
  plant: [['src/view/kit/a.tsx', "import { pierStore } from '../../state/store.ts'"]],
}
