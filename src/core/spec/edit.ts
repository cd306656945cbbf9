import type { Result } from '../model/issue.ts'
import type { PierDocument } from '../model/spec.ts'
import type { UnitSystem } from '../units/quantity.ts'

/** Signatures first; the bodies follow. A refused edit gives the issues and no document. */

/** Types `text` into the number field at `path`; a bare number has the unit of `system`. '' clears a nullable field. */
export declare function setField(document: PierDocument, path: string, text: string, system: UnitSystem): Result<PierDocument>
/** Puts an SI number (a slider's) into the number field at `path`; null clears a nullable field. */
export declare function setNumber(document: PierDocument, path: string, value: number | null): Result<PierDocument>
/** Switches an optional part on (filled with its initial values) or off. */
export declare function setPart(document: PierDocument, path: string, on: boolean): Result<PierDocument>
/** Picks one of a choice field's choices. */
export declare function setChoice(document: PierDocument, path: string, choice: string | number): Result<PierDocument>
