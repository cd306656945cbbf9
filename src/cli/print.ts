/** Writes to standard output; a reader that stops early (`| head`) ends the command quietly. */
export function print(text: string): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error
  })
  process.stdout.write(text)
}
