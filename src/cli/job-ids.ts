/** What is kept to the end of a run over many files stands by itself: a text out of a job file would keep the whole file with it. */
export const copied = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T

/** Which file of a run has a job id first: what goes by the id holds one job of each. */
export class JobIds {
  private readonly files = new Map<string, string>()

  /** @returns the file that has that id already, if one has */
  taken(id: string, file: string): string | undefined {
    const first = this.files.get(id)
    if (first === undefined) this.files.set(copied(id), file)
    return first
  }
}
