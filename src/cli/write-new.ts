// A new file of a format, and the schema beside it that editors read.
import { failed } from './io.ts'
import { exit, type Run } from './run.ts'

export interface NewFile { readonly text: string; readonly schema: { readonly beside: string; readonly text: string }; readonly next: string }

/** Writes the file and its schema and says so; without a name the text goes to the output. */
export async function writeNew(run: Run, file: string | undefined, force: boolean, { text, schema, next }: NewFile): Promise<void> {
  if (file === undefined || file === '-') { await run.print(text); return }
  const refused = run.io.writeFile(file, text, { force })
  if (failed(refused)) {
    await run.fail(exit.unreadable, `could not write ${file}: ${refused.message}${refused.failure === 'exists' ? '; --force writes over it' : ''}`)
    return
  }
  await run.say(`wrote ${file}\n`)
  const beside = file.replace(/[^/\\]*$/, schema.beside)
  const kept = run.io.writeFile(beside, schema.text)
  if (!failed(kept)) await run.say(`wrote ${beside}, which editors read to help and to check\n`)
  else if (kept.failure !== 'exists') await run.fail(exit.unreadable, `could not write ${beside}: ${kept.message}`)
  await run.say(`next: ${next}\n`)
}
