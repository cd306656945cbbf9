/** Version of the job file that this code writes. Raise it with a migration from the version before and a fixture of that version. */
export const schemaVersion = 2
