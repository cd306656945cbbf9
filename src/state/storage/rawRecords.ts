export const databaseName = 'pierglass'
export const storeName = 'piers'

/**
 * Every record of the browser's database as it lies there, past everything that knows what a record is: for a page that has broken.
 * Refused where there is no database; none is made by asking.
 */
export const rawRecords = (): Promise<readonly unknown[]> =>
  new Promise((resolve, reject) => {
    const opening = indexedDB.open(databaseName)
    opening.onupgradeneeded = () => opening.transaction?.abort()
    opening.onerror = () => reject(opening.error)
    opening.onsuccess = () => {
      const database = opening.result
      const all = database.transaction(storeName).objectStore(storeName).getAll()
      all.onsuccess = () => resolve(all.result)
      all.onerror = () => reject(all.error)
      database.close()
    }
  })
