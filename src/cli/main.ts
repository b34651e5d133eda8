// The program as a function of its words and the world: it gives the exit code back and ends no process.
import { Command, CommanderError, InvalidArgumentError } from 'commander'
import { description, version } from '../../package.json'
import { commands } from './commands/index.ts'
import { Closed, NotWritten, type Io } from './io.ts'
import { exit, harmless, NARROW, Run, type Exit, type GlobalOptions } from './run.ts'

const WIDTHS = { least: 40, most: 1000 } as const

/** Digits only: `parseInt` would take `80x` and an option's default for its radix. */
function columns(text: string): number {
  const n = /^\d+$/.test(text) ? Number(text) : NaN
  if (!(n >= WIDTHS.least && n <= WIDTHS.most)) throw new InvalidArgumentError(`Write a whole number from ${WIDTHS.least} to ${WIDTHS.most}.`)
  return n
}

const FIRST_STEPS = `
First steps:
  lidwork new house.job.yaml         a commented job file to write over
  lidwork check house.job.yaml       what is wrong in it, by line
  lidwork estimate house.job.yaml    work order, materials, price
`
const EXIT_CODES = `
Exit codes: 0 done · 1 findings · 2 wrong use · 3 could not read or write
4 a fault in lidwork. The highest met wins; the other files are still done.
A stopped house is a result, not a failure.
`

function program(run: Run, text: { out: string; err: string }): Command {
  const { io } = run
  const root = new Command('lidwork')
    .description(description)
    .version(version, '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print help')
    .helpCommand('help [command]', 'print help for a command')
    .option('--color', 'color, also where it is not a terminal')
    .option('--no-color', 'no color; NO_COLOR says the same, FORCE_COLOR the opposite')
    .option('--ascii', 'only letters and signs of ASCII')
    .option('--width <columns>', 'lines as wide as this; else as the terminal, else 80', columns)
    .option('--debug', 'where a fault happened, in full')
    .addHelpText('after', FIRST_STEPS + EXIT_CODES)
    .configureHelp({ showGlobalOptions: true })
    .configureOutput({
      writeOut: s => { text.out += s }, writeErr: s => { text.err += s },
      getOutHelpWidth: () => io.stdout.columns ?? NARROW, getErrHelpWidth: () => io.stderr.columns ?? NARROW,
      getOutHasColors: () => false, getErrHasColors: () => false,
      outputError: (message, write) => write(message.replace(/^error: /, 'lidwork: ')),
    })
    .showHelpAfterError('Help: lidwork --help, lidwork help COMMAND')
    .exitOverride()
  for (const add of commands) add(root, run)
  return root
}

const concise = (): string => `lidwork ${version}: one surveyed attic in a file; its work order, materials and price out.\n${FIRST_STEPS}\nAll commands: lidwork --help\n`

/** Runs one command line. @returns the exit code */
export async function main(argv: readonly string[], io: Io): Promise<Exit> {
  const text = { out: '', err: '' }
  let options = (): GlobalOptions => ({ debug: argv.includes('--debug') })
  const run = new Run(io, () => options())
  try {
    if (argv.length === 0) { await run.print(concise()); return run.code }
    const root = program(run, text)
    options = () => root.opts()
    try { await root.parseAsync(argv, { from: 'user' }) } catch (error) {
      if (!(error instanceof CommanderError)) throw error
      if (error.exitCode !== 0) run.met(exit.wrongUse)
      if (error.code === 'commander.unknownCommand' && /\.ya?ml$/.test(argv[0]!)) text.err += `To estimate it: lidwork estimate ${argv[0]}\n`
    }
    if (text.err !== '') await run.say(harmless(text.err))
    if (text.out !== '') await run.print(text.out)
  } catch (error) {
    if (error instanceof Closed) return exit.done
    if (error instanceof NotWritten) await run.fail(exit.unreadable, `could not write the output: ${error.message}`)
    else await run.fault(error, 'on this command line')
  }
  return run.code
}
