import type { FieldGroup } from '../../core/model/field.ts'

export const groups: Readonly<Record<FieldGroup, Readonly<{ label: string; help: string }>>> = {
  site: { label: 'Site', help: 'Soil, slope, water and frost.' },
  hole: { label: 'Hole', help: 'What the auger leaves.' },
  post: { label: 'Post', help: 'The wood, and where it stands.' },
  fill: { label: 'Fill', help: 'What goes into the hole.' },
  steel: { label: 'Steel', help: 'Bars and bracket.' },
  top: { label: 'Top', help: 'How it ends at the ground.' },
  concrete: { label: 'Concrete', help: 'The mix, and what to order.' },
  water: { label: 'Water', help: 'What wets the wood.' },
  loads: { label: 'Loads', help: 'What pulls up, presses down and pushes.' },
  drawing: { label: 'Drawing', help: 'What the permit drawing asks of this pier.' },
  years: { label: 'Years', help: 'How long it may last, and what it costs.' },
}
