import type { Contact } from '../../core/model/kind.ts'
import type { Role } from '../../core/model/solid.ts'

/** What things in the ground are made of: name, and one line on what it is. */
const roles: Readonly<Record<Role, Readonly<{ label: string; what: string }>>> = {
  topsoil: { label: 'Topsoil', what: 'Dark soil with roots. Not counted on in any check.' },
  soil: { label: 'Undisturbed soil', what: 'Ground that the auger did not touch.' },
  'soil-lower': { label: 'Lower soil layer', what: 'A second layer of ground that the auger did not touch.' },
  backfill: { label: 'Backfill', what: 'Soil thrown back into the hole.' },
  granular: { label: 'Packed gravel', what: 'Crushed stone packed in thin lifts.' },
  gravel: { label: 'Gravel bed', what: 'Washed stone at the bottom of the hole.' },
  mulch: { label: 'Heaped soil', what: 'Soil or mulch piled over the top.' },
  'dry-mix': { label: 'Dry-placed mix', what: 'Bagged mix that was not mixed with water before it went in.' },
  concrete: { label: 'Mixed concrete', what: 'Concrete that was mixed before it went in.' },
  'flowable-fill': { label: 'Flowable fill', what: 'A weak, flowing mix of cement, sand and water.' },
  wood: { label: 'Post', what: 'The wood post.' },
  bar: { label: 'Bar', what: 'Reinforcing steel.' },
  steel: { label: 'Bracket steel', what: 'Galvanised plates and bolts.' },
}

/** What stands against the wood. */
const contacts: Readonly<Record<Contact, string>> = {
  air: 'air',
  'native-soil': 'undisturbed soil',
  backfill: 'backfill',
  granular: 'packed gravel',
  'flowable-fill': 'flowable fill',
  'dry-mix': 'dry-placed mix',
  concrete: 'concrete',
  gravel: 'gravel bed',
}

/** Words for what lies in the ground. */
export const materials = { roles, contacts }
